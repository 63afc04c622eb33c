package org.bagwright.workbook;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.Aims;
import org.bagwright.domain.BagResult;
import org.bagwright.domain.BagState;
import org.bagwright.domain.Club;
import org.bagwright.domain.GapTerm;
import org.bagwright.domain.Golfer;
import org.bagwright.domain.Measure;
import org.bagwright.domain.Option;
import org.bagwright.domain.SlotOptions;

/** One club of one bag as the sheet Plan shows it: the program's own values for the cells that hold formulas. */
final class PlanRow {
    private final BagResult bag;
    private final int index;

    PlanRow(BagResult bag, int index) {
        this.bag = bag;
        this.index = index;
    }

    Golfer golfer() {
        return bag.golfer();
    }

    Club club() {
        return options().main();
    }

    SlotOptions options() {
        return bag.options().slots().get(index);
    }

    /** The state with this name: the live choice starts as the plan. */
    private BagState state(String state) {
        return state.equals("TODAY") ? bag.today() : bag.planned();
    }

    Option option(String state) {
        return options().options().get(state(state).chosen().get(index));
    }

    Optional<GapTerm> gap(String state) {
        return state(state).gapAfter(index);
    }

    /** How many rows further down the next carrying club stands; 0 if there is none. */
    int rowsToNext() {
        return gap("TODAY").map(gap -> gap.toIndex() - gap.fromIndex()).orElse(0);
    }

    double penaltyPoints(String state) {
        return option(state).terms().totalPoints()
                + gap(state).map(GapTerm::penaltyPoints).orElse(0.0);
    }

    /** The greatest miss of the live choice, in tolerances. */
    double worstTolerances(Aims aims) {
        Option option = option("LIVE");
        Club club = club();
        double worst = tolerances(
                aims, Measure.LOFT, option.pose().gaugeLoftDeg(), club.targets().loftDeg());
        worst = Math.max(
                worst,
                tolerances(aims, Measure.LIE, option.pose().gaugeLieDeg(), OptionalDouble.of(club.lieTargetDeg())));
        double outsideDeg = golfer().sitsRange().outsideDeg(option.pose().sitsClosedDeg());
        worst = Math.max(worst, tolerances(aims, Measure.SITS, outsideDeg, OptionalDouble.of(0)));
        if (option.carryM().isPresent()) {
            worst = Math.max(
                    worst,
                    tolerances(
                            aims,
                            Measure.CARRY,
                            option.carryM().getAsDouble(),
                            club.targets().carryM()));
        }
        double gap = gap("LIVE")
                .map(term -> tolerances(aims, Measure.GAP, term.gapM(), OptionalDouble.of(term.wishM())))
                .orElse(0.0);
        return Math.max(worst, gap);
    }

    private static double tolerances(Aims aims, Measure measure, double value, OptionalDouble target) {
        return target.isPresent()
                ? Math.abs(value - target.getAsDouble()) / aims.of(measure).toleranceMeasureUnits()
                : 0;
    }
}
