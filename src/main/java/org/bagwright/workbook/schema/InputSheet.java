package org.bagwright.workbook.schema;

import java.util.Arrays;
import java.util.Optional;

/** The sheets with headings that are read, in the template's order. */
public enum InputSheet {
    GOLFERS(GolferColumn.SHEET),
    CLUBS(ClubColumn.SHEET),
    SLEEVES(SleeveColumn.SHEET),
    READINGS(ReadingColumn.SHEET),
    SHOTS(ShotColumn.SHEET),
    WEIGHTS(WeightColumn.SHEET),
    STOCK(StockColumn.SHEET),
    AIMS(AimColumn.SHEET);

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
