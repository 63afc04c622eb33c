package org.bagwright.planning.sureness;

import java.util.Map;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.option.WantedRange;

/** One option of a slot: what it costs whatever its carry is, and what its carry costs. */
final class ChainOption {
    private static final double THOUSANDTHS = 1000;
    /** An option that a plan may not take outranks what musts and limits can be missed by. */
    private static final double CLOSED_THOUSANDTHS = 1e6;

    private static final double ALIKE_M = 0.1;
    private static final double ALIKE_POINTS = 0.005;

    private final int index;
    private final Option option;
    private final CarryDoubt doubt;
    private final double carryM;
    private final double points;
    private final double breakThousandths;
    private final Aims aims;
    private final Aim carryAim;
    private final WantedRange wantedM;
    private final WantedRange limitsM;

    /** @param index its place among the options of its slot */
    ChainOption(BagOptions bag, int index, Option option) {
        this.index = index;
        this.option = option;
        this.doubt = option.doubt();
        this.carryM = option.carryM().orElse(Double.NaN);
        this.aims = bag.aims();
        this.carryAim = bag.aims().of(Measure.CARRY);
        this.wantedM =
                option.setup().flatMap(made -> made.wishes().of(Measure.CARRY)).orElse(WantedRange.ANY);
        this.limitsM = carryLimits(option);
        Terms terms = option.terms();
        this.points = terms.totalPoints() - terms.points(Measure.CARRY);
        this.breakThousandths = terms.totalBreaks()
                - terms.breaks(Measure.CARRY)
                - terms.limitBreaks(LimitKind.CARRY_LEAST)
                - terms.limitBreaks(LimitKind.CARRY_MOST)
                + (option.open() ? 0 : CLOSED_THOUSANDTHS);
    }

    private static WantedRange carryLimits(Option option) {
        Map<LimitKind, StatedLimit> limits = option.setup()
                .map(ClubSetup::wishes)
                .map(wishes -> wishes.limits().byKind())
                .orElse(Map.of());
        StatedLimit least = limits.get(LimitKind.CARRY_LEAST);
        StatedLimit most = limits.get(LimitKind.CARRY_MOST);
        return new WantedRange(
                least == null ? Double.NEGATIVE_INFINITY : least.valueMeasureUnits(),
                Math.max(
                        least == null ? Double.NEGATIVE_INFINITY : least.valueMeasureUnits(),
                        most == null ? Double.POSITIVE_INFINITY : most.valueMeasureUnits()));
    }

    int index() {
        return index;
    }

    Option option() {
        return option;
    }

    /** Whether it has a carry: no putter, and no slot that is left empty. */
    boolean flies() {
        return !Double.isNaN(carryM);
    }

    /** The carry at the best guess, m; not a number where it does not fly. */
    double carryM() {
        return carryM;
    }

    CarryDoubt doubt() {
        return doubt;
    }

    /** How much each measure counts. */
    Aims aims() {
        return aims;
    }

    int changes() {
        return option.changes();
    }

    /** What it costs by itself but for its carry, points. */
    double points() {
        return points;
    }

    /** What it breaks by itself but for its carry, thousandths of a tolerance. */
    double breakThousandths() {
        return breakThousandths;
    }

    /**
     * What it costs by itself, points.
     *
     * @param atM its carry, m
     * @param varianceM2 what is not known of that, m2
     * @param pointsPerThousandth what a broken thousandth of a tolerance costs, points
     */
    double ownPoints(double atM, double varianceM2, double pointsPerThousandth) {
        double cost = points + pointsPerThousandth * breakThousandths;
        if (!flies()) {
            return cost;
        }
        if (wantedM.leastMeasureUnits() > Double.NEGATIVE_INFINITY) {
            double offM = atM - wantedM.leastMeasureUnits();
            cost += carryAim.penaltyPoints(offM) + carryAim.importancePoints() * varianceM2 / squared(carryAim);
            cost += pointsPerThousandth * beyond(carryAim, offM);
        }
        double outsideM = Math.abs(limitsM.deviationMeasureUnits(atM));
        return cost + pointsPerThousandth * THOUSANDTHS * outsideM / carryAim.toleranceMeasureUnits();
    }

    private static double squared(Aim aim) {
        return aim.toleranceMeasureUnits() * aim.toleranceMeasureUnits();
    }

    /** How far a deviation is beyond a must, thousandths of its tolerance. */
    static double beyond(Aim aim, double offMeasureUnits) {
        return aim.isHard() ? THOUSANDTHS * Math.max(0, aim.tolerances(offMeasureUnits) - 1) : 0;
    }

    /** How much two carries vary together, m2; those of different clubs share the golfer alone. */
    double covarianceM2(ChainOption other) {
        double sum = 0;
        for (int factor = 0; factor < CarryDoubt.SHARED; factor++) {
            sum += doubt.sharedM(factor) * other.doubt.sharedM(factor);
        }
        if (isOfSameClub(other)) {
            for (int factor = 0; factor < doubt.ownCount(); factor++) {
                sum += doubt.ownM(factor) * other.doubt.ownM(factor);
            }
        }
        return sum;
    }

    boolean isOfSameClub(ChainOption other) {
        return flies() && other.flies() && option.club().equals(other.option.club());
    }

    /** Whether a fitter could not tell it from another: it is the same club, flies as far and costs as much. */
    boolean isAlike(ChainOption other) {
        return option.clubText().equals(other.option.clubText())
                && Math.abs(points - other.points) < ALIKE_POINTS
                && breakThousandths == other.breakThousandths
                && isAsLong(other);
    }

    private boolean isAsLong(ChainOption other) {
        return flies() ? Math.abs(carryM - other.carryM) < ALIKE_M : !other.flies();
    }
}
