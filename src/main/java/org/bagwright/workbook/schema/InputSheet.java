package org.bagwright.workbook.schema;

import java.util.Arrays;
import java.util.Optional;

/** The sheets with headings that are read, in the template's order. */
public enum InputSheet {
    GOLFERS(GolferColumns.SHEET),
    CLUBS(ClubColumns.SHEET),
    SLEEVES(SleeveColumns.SHEET),
    READINGS(ReadingColumns.SHEET),
    SHOTS(ShotColumns.SHEET),
    WEIGHTS(WeightColumns.SHEET),
    STOCK(StockColumns.SHEET),
    AIMS(AimColumns.SHEET);

    @SuppressWarnings("ImmutableEnumChecker") // its lists are copies that cannot change
    private final SheetSchema schema;

    InputSheet(SheetSchema schema) {
        this.schema = schema;
    }

    public SheetSchema schema() {
        return schema;
    }

    public static Optional<InputSheet> called(String sheetName) {
        return Arrays.stream(values())
                .filter(sheet -> sheet.schema.isCalled(sheetName))
                .findFirst();
    }
}
