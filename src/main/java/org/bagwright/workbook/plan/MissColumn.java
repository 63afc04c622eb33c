package org.bagwright.workbook.plan;

import java.util.Arrays;
import java.util.List;
import org.bagwright.domain.book.Measure;

/**
 * A column of the sheet Plan with how far the live choice misses by one measure, in tolerances.
 *
 * @param measure the measure, one that can be missed
 */
record MissColumn(Measure measure) implements SheetColumn {
    private static final List<Measure> MEASURES = Arrays.stream(Measure.values())
            .filter(measure -> measure.scope() != Measure.Scope.ITEMS)
            .toList();
    static final int COUNT = MEASURES.size();

    /** All of them, in the order of the measures. */
    static List<MissColumn> all() {
        return MEASURES.stream().map(MissColumn::new).toList();
    }

    @Override
    public int index() {
        return PlanColumn.FIRST_TERM + TermColumn.COUNT + MEASURES.indexOf(measure);
    }

    @Override
    public String heading() {
        return "Live " + measure.label() + " miss [tolerances]";
    }

    @Override
    public double widthChars() {
        return Math.max(10, measure.label().length());
    }

    @Override
    public String group() {
        return PlanColumn.LIVE_WORST.group();
    }

    /** Whether the must of this measure is missed in a row. */
    String isBroken(int row) {
        String miss = at(row);
        return "AND(" + PlanAims.must(measure) + "=\"yes\",ISNUMBER(" + miss + ")," + miss + ">1.000000001)";
    }
}
