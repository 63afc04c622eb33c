package org.bagwright.workbook.plan;

import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.workbook.pen.StripChart;
import org.bagwright.workbook.settings.SettingsColumn;

/** What the chart of gaps shows of one slot: how far its gap is off the wish, and the tolerance. */
final class GapMarks {
    private static final double STEP = 5;
    private static final double LEAST_SPAN = 10;
    private static final double MOST_SPAN = 30;

    private final PlanRowPen pen;
    private final PlanPlace place;
    private final PlanRow values;
    private final double span;

    /** @param span what the chart shows to each side of the wish, in the unit of the book */
    GapMarks(PlanRowPen pen, double span) {
        this.pen = pen;
        this.place = pen.place();
        this.values = pen.values();
        this.span = span;
    }

    /** A round number that has room for the gaps of a bag today and as planned, in the unit of the book. */
    static double span(BagResult bag, LengthUnit unit) {
        double mostM = IntStream.range(0, bag.options().slots().size())
                .mapToObj(index -> new PlanRow(bag, index))
                .flatMapToDouble(row -> IntStream.range(0, PlanState.values().length)
                        .mapToObj(state -> row.offWishM(PlanState.values()[state]))
                        .flatMapToDouble(OptionalDouble::stream))
                .map(Math::abs)
                .max()
                .orElse(0);
        return Math.max(LEAST_SPAN, Math.min(MOST_SPAN, STEP * Math.ceil((unit.fromM(mostM) + 1) / STEP)));
    }

    void write() {
        for (PlanState state : PlanState.values()) {
            state(state);
        }
        double tolerance = pen.units().distance().fromM(values.aim(Measure.GAP).toleranceMeasureUnits());
        String named = PlanAims.tolerance(Measure.GAP);
        pen.number(PlanColumn.LEAST_OFF, "0.0", "-MIN(" + span + "," + named + ")", -Math.min(span, tolerance));
        pen.number(PlanColumn.MOST_OFF, "0.0", "MIN(" + span + "," + named + ")", Math.min(span, tolerance));
        pen.number(PlanColumn.BAND_LINE, bandLine());
    }

    private void state(PlanState state) {
        String gap = place.at(state, PlanQuantity.GAP);
        String wish = place.fixed()
                ? place.at(PlanColumn.GAP_WISH)
                : pen.formulas().index(state, SettingsColumn.GAP_WISH, place);
        String has = "AND(ISNUMBER(" + gap + "),ISNUMBER(" + wish + "))";
        OptionalDouble off = pen.distance(values.offWishM(state));
        double drawn = off.isPresent() ? Math.max(-span, Math.min(span, off.getAsDouble())) : 0;
        String shown = "MAX(-" + span + ",MIN(" + span + "," + gap + "-" + wish + "))";
        if (values.mayHaveGap()) {
            pen.number(PlanColumn.of(state, PlanQuantity.OFF_WISH), "0.0", "IF(" + has + "," + shown + ",0)", drawn);
            String line = "IF(" + has + "," + line() + ",0)";
            pen.number(PlanColumn.of(state, PlanQuantity.LINE), "0.0", line, off.isPresent() ? line() : 0);
        }
    }

    /** The height of this row in the chart. */
    private double line() {
        return StripChart.BOTTOM + place.lastRow() - place.row() + 0.5;
    }

    /** The line of the tolerance goes from the upper edge of the first row to the lower edge of the last. */
    private double bandLine() {
        if (place.row() == place.firstRow()) {
            return line() + 0.5;
        }
        return place.row() == place.lastRow() ? line() - 0.5 : line();
    }
}
