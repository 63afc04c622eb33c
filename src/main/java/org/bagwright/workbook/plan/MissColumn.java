package org.bagwright.workbook.plan;

import java.util.Arrays;
import java.util.List;
import org.bagwright.domain.book.Measure;
import org.bagwright.workbook.settings.SheetColumn;

/**
 * A column of the sheet Plan with how far the live choice misses by one measure, in tolerances.
 *
 * @param measure the measure, one that can be missed
 */
record MissColumn(Measure measure) implements SheetColumn {
    private static final List<Measure> MEASURES = Arrays.stream(Measure.values())
            .filter(measure -> measure.scope() != Measure.Scope.ITEMS)
            .toList();

    /** All of them, in the order of the measures. */
    static List<MissColumn> all() {
        return MEASURES.stream().map(MissColumn::new).toList();
    }

    @Override
    public int index() {
        return PlanColumn.FIRST_MISS + MEASURES.indexOf(measure);
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
}
