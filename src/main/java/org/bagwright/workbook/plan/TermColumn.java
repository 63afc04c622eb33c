package org.bagwright.workbook.plan;

import java.util.Arrays;
import java.util.List;
import org.bagwright.domain.book.Measure;
import org.bagwright.workbook.settings.SheetColumn;

/**
 * A column of the sheet Plan with what one measure costs in one state.
 *
 * @param state the state
 * @param measure the measure
 */
record TermColumn(PlanState state, Measure measure) implements SheetColumn {
    private static final int USUAL_WIDTH_CHARS = 8;

    /** All of them, state by state in the order of the measures. */
    static List<TermColumn> all() {
        return Arrays.stream(PlanState.values())
                .flatMap(state -> Arrays.stream(Measure.values()).map(measure -> new TermColumn(state, measure)))
                .toList();
    }

    @Override
    public int index() {
        return PlanColumn.FIRST_TERM + state.ordinal() * Measure.values().length + measure.ordinal();
    }

    @Override
    public String heading() {
        return state.heading() + " " + measure.label() + " points";
    }

    @Override
    public double widthChars() {
        return Math.max(USUAL_WIDTH_CHARS, measure.label().length());
    }

    @Override
    public String group() {
        return PlanColumn.LIVE_WORST.group();
    }
}
