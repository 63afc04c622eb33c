package org.bagwright.workbook.schema;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.text.CloseNames;

/** Every input sheet and column of a book: what the reader looks for and what the template offers. */
public final class Schema {
    public static final String START = "Start";

    /** The sheets with headings that are read, in the template's order. */
    public static final List<SheetSchema> READ = List.of(
            GolferColumns.SHEET,
            ClubColumns.SHEET,
            SleeveColumns.SHEET,
            ReadingColumns.SHEET,
            ShotColumns.SHEET,
            WeightColumns.SHEET,
            StockColumns.SHEET,
            AimColumns.SHEET);

    private Schema() {}

    /** Whether the tool knows a sheet of this name, as input or as a result. */
    public static boolean knows(String sheetName) {
        String key = CloseNames.key(sheetName);
        return key.equals(CloseNames.key(START))
                || ResultSheet.NAMES.stream()
                        .anyMatch(name -> CloseNames.key(name).equals(key))
                || input(sheetName).isPresent();
    }

    static Optional<SheetSchema> input(String sheetName) {
        return READ.stream().filter(schema -> schema.isCalled(sheetName)).findFirst();
    }
}
