package org.bagwright.workbook.ladder;

import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.workbook.plan.PlanState;

/**
 * What the axis of a chart of gaps shows: the gaps of today, planned and live and their wishes, and as much of what live can
 * become as leaves a gap a fair distance from its wish. In the book's unit of distance.
 */
record GapAxis(double leastMeasureUnits, double mostMeasureUnits, LengthUnit distance) {
    static final double STEP = 5;
    private static final double ROOM = 0.5;
    /** A longer axis needs a higher chart: 41 m, about 45 yd. */
    private static final double USUAL_SPAN_M = 41;
    /** How much of the axis a further row of the sheet is worth, so that 3 yd stay 20 pixels. */
    private static final double ROW_M = 2.3;

    private static final int MOST_ROWS = 20;

    /** @param reach how far the wish is shown as a band to both sides */
    static GapAxis of(LengthUnit distance, BagResult bag, double reach) {
        DoubleSummaryStatistics possible = possibleM(bag).map(distance::fromM).summaryStatistics();
        DoubleSummaryStatistics shown = shownM(bag).map(distance::fromM).summaryStatistics();
        DoubleSummaryStatistics wished = wishesM(bag).map(distance::fromM).summaryStatistics();
        if (shown.getCount() == 0) {
            return rounded(possible.getMin(), possible.getMax(), distance);
        }
        double least = Math.min(shown.getMin() - ROOM, wished.getMin() - reach - ROOM);
        double most = Math.max(shown.getMax() + ROOM, wished.getMax() + reach + ROOM);
        return rounded(least, most, distance).widened(possible.getMin(), possible.getMax());
    }

    private static GapAxis rounded(double least, double most, LengthUnit distance) {
        return new GapAxis(STEP * Math.floor(least / STEP), STEP * Math.ceil(most / STEP), distance);
    }

    private GapAxis widened(double toLeast, double toMost) {
        double from = leastMeasureUnits;
        double to = mostMeasureUnits;
        while ((from > toLeast || to < toMost) && to - from + STEP <= distance.fromM(USUAL_SPAN_M)) {
            if (to < toMost && (from <= toLeast || toMost - to >= from - toLeast)) {
                to += STEP;
            } else {
                from -= STEP;
            }
        }
        return new GapAxis(from, to, distance);
    }

    /** By how many rows the chart is higher than usual. */
    int moreRows() {
        double beyond = mostMeasureUnits - leastMeasureUnits - distance.fromM(USUAL_SPAN_M);
        return (int) Math.min(MOST_ROWS, Math.ceil(Math.max(0, beyond) / distance.fromM(ROW_M)));
    }

    private static Stream<GapTerm> terms(BagResult bag) {
        return Arrays.stream(PlanState.values()).flatMap(state -> state.of(bag).gaps().stream());
    }

    private static DoubleStream shownM(BagResult bag) {
        return terms(bag).mapToDouble(GapTerm::gapM);
    }

    private static DoubleStream wishesM(BagResult bag) {
        return terms(bag).mapToDouble(GapTerm::wishM);
    }

    /** The shortest and the longest gap that any choice leaves between two slots that follow each other. */
    private static DoubleStream possibleM(BagResult bag) {
        List<DoubleSummaryStatistics> carriesM = bag.options().slots().stream()
                .map(GapAxis::carriesM)
                .filter(carries -> carries.getCount() > 0)
                .toList();
        DoubleStream.Builder gapsM = DoubleStream.builder();
        for (int slot = 1; slot < carriesM.size(); slot++) {
            gapsM.add(carriesM.get(slot - 1).getMin() - carriesM.get(slot).getMax());
            gapsM.add(carriesM.get(slot - 1).getMax() - carriesM.get(slot).getMin());
        }
        return gapsM.build();
    }

    private static DoubleSummaryStatistics carriesM(SlotOptions slot) {
        return slot.options().stream()
                .map(Option::carryM)
                .flatMapToDouble(carryM -> carryM.stream())
                .summaryStatistics();
    }
}
