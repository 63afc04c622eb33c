package org.bagwright.domain.session;

import java.util.List;

/**
 * A table of texts as a file has it, with whatever is above and below it.
 *
 * @param name where it is: the file, and its sheet where it has sheets
 * @param rows its rows in order, blank ones too
 */
public record PlainTable(String name, List<Row> rows) {
    public PlainTable {
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param line its line in the file, from 1
     * @param cells its cells, an empty text for a blank one
     */
    public record Row(int line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        public boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }

        /** The text of a column, stripped; empty where the row is shorter. */
        public String cell(int column) {
            return column < cells.size() ? cells.get(column).strip() : "";
        }
    }
}
