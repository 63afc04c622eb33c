package org.bagwright.domain.book;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Cells as a person reads them: {@code Clubs!C6:C8, C11}.
 *
 * @param cells each {@code Sheet!C7}, or the name of a sheet
 */
public record CellRanges(List<String> cells) {
    private static final int MOST_SHOWN = 6;
    private static final Pattern CELL = Pattern.compile("(.+)!([A-Z]+)(\\d+)");

    public CellRanges {
        cells = List.copyOf(cells);
    }

    /** A run of cells below each other in one column; a cell without an address is a run by itself. */
    private record Run(String sheet, String column, int firstRow, int lastRow) {
        static Run of(String cell) {
            Matcher matcher = CELL.matcher(cell);
            return matcher.matches()
                    ? new Run(matcher.group(1), matcher.group(2), number(matcher), number(matcher))
                    : new Run(cell, "", 0, 0);
        }

        private static int number(Matcher matcher) {
            return Integer.parseInt(matcher.group(3));
        }

        boolean isFollowedBy(Run other) {
            return !column.isEmpty()
                    && sheet.equals(other.sheet)
                    && column.equals(other.column)
                    && other.firstRow == lastRow + 1;
        }

        Run upTo(Run other) {
            return new Run(sheet, column, firstRow, other.lastRow);
        }

        String text(String sheetBefore) {
            if (column.isEmpty()) {
                return sheet;
            }
            String start = (sheet.equals(sheetBefore) ? "" : sheet + "!") + column + firstRow;
            return lastRow > firstRow ? start + ":" + column + lastRow : start;
        }
    }

    /** The cells in their order; of many runs the first few. */
    public String text() {
        List<Run> runs = runs();
        List<String> texts = new ArrayList<>();
        String sheet = "";
        for (Run run : runs.subList(0, Math.min(MOST_SHOWN, runs.size()))) {
            texts.add(run.text(sheet));
            sheet = run.sheet();
        }
        return String.join(", ", texts) + (runs.size() > MOST_SHOWN ? ", ..." : "");
    }

    private List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        for (String cell : cells) {
            Run run = Run.of(cell);
            int last = runs.size() - 1;
            if (last >= 0 && runs.get(last).isFollowedBy(run)) {
                runs.set(last, runs.get(last).upTo(run));
            } else {
                runs.add(run);
            }
        }
        return runs;
    }
}
