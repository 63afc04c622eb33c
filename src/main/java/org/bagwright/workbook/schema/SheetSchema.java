package org.bagwright.workbook.schema;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.text.CloseNames;

/**
 * One input sheet.
 *
 * @param name its name
 * @param about what a row of it is, for people
 * @param columns its columns in the template's order
 * @param nameColumns the columns that name a row; a row whose name starts with "Example" is not read
 */
public record SheetSchema(String name, String about, List<Column> columns, List<Column> nameColumns) {
    public SheetSchema {
        columns = List.copyOf(columns);
        nameColumns = List.copyOf(nameColumns);
    }

    public Optional<Column> column(String header) {
        String key = CloseNames.key(header);
        return columns.stream()
                .filter(column -> CloseNames.key(column.header()).equals(key))
                .findFirst();
    }

    public boolean isCalled(String sheetName) {
        return squeezed(sheetName).equals(squeezed(name));
    }

    private static String squeezed(String sheetName) {
        return CloseNames.key(sheetName).replace(" ", "");
    }
}
