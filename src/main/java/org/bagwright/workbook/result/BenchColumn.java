package org.bagwright.workbook.result;

import java.util.Arrays;

/** A column of the sheet Bench card. */
enum BenchColumn {
    BOX("Done", 5),
    CLUB("Club", 15),
    WHAT("What", 10),
    FROM("From", 11),
    TO("To", 11),
    HOW("How", 32),
    LOFT("Gauge loft then [deg]", 10.5),
    LIE("Gauge lie then [deg]", 10.5),
    SITS("Sits then [deg]", 10.5),
    SWINGWEIGHT(TablePen.arrows("Swingweight before -> after"), 13);

    static final int LAST = values().length - 1;
    static final double ALL_CHARS =
            Arrays.stream(values()).mapToDouble(BenchColumn::widthChars).sum();

    private final String heading;
    private final double widthChars;

    BenchColumn(String heading, double widthChars) {
        this.heading = heading;
        this.widthChars = widthChars;
    }

    String heading() {
        return heading;
    }

    double widthChars() {
        return widthChars;
    }
}
