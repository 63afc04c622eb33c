package org.bagwright.workbook.result;

import java.util.Arrays;
import java.util.Optional;
import org.bagwright.domain.book.Measure;

/** A column of the sheet Bench card. */
enum BenchColumn {
    BOX("Done", 5.5),
    CLUB("Club", 14.5),
    WORK("What to do", 37),
    STATE("When", 6.5),
    LOFT("Gauge loft [deg]", 7, Measure.LOFT),
    LIE("Gauge lie [deg]", 7, Measure.LIE),
    SITS("Sits [deg]", 9.5, Measure.SITS),
    SWINGWEIGHT("Swing- weight", 7.5, Measure.SWINGWEIGHT),
    CARRY("Carry", 7, Measure.CARRY),
    GAP("Gap", 6.5, Measure.GAP);

    static final int LAST = values().length - 1;
    static final double ALL_CHARS =
            Arrays.stream(values()).mapToDouble(BenchColumn::widthChars).sum();

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
