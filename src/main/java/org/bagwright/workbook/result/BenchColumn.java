package org.bagwright.workbook.result;

import java.util.Arrays;
import java.util.Optional;
import org.bagwright.domain.book.Measure;

/** A column of the sheet Bench card. */
enum BenchColumn {
    BOX("Done", 5),
    CLUB("Club", 12),
    WORK("What to do", 24.5),
    STATE("When", 5.5),
    LOFT("Gauge loft [deg]", 5.5, Measure.LOFT),
    LIE("Gauge lie [deg]", 5.5, Measure.LIE),
    SITS("Sits [deg]", 9.5, Measure.SITS),
    SWINGWEIGHT("Swing- weight", 6.5, Measure.SWINGWEIGHT),
    CARRY("Carry", 6.5, Measure.CARRY),
    GAP("Gap", 5.5, Measure.GAP);

    static final int LAST = values().length - 1;
    static final double ALL_CHARS = charsFrom(BOX);

    private final String heading;
    private final double widthChars;
    private final Optional<Measure> measure;

    BenchColumn(String heading, double widthChars) {
        this(heading, widthChars, null);
    }

    BenchColumn(String heading, double widthChars, Measure measure) {
        this.heading = heading;
        this.widthChars = widthChars;
        this.measure = Optional.ofNullable(measure);
    }

    /** The width of a column and all to its right. */
    static double charsFrom(BenchColumn first) {
        return Arrays.stream(values())
                .skip(first.ordinal())
                .mapToDouble(BenchColumn::widthChars)
                .sum();
    }

    String heading() {
        return heading;
    }

    double widthChars() {
        return widthChars;
    }

    /** By what its figures are judged; empty for a column without figures. */
    Optional<Measure> measure() {
        return measure;
    }

    boolean isDistance() {
        return this == CARRY || this == GAP;
    }
}
