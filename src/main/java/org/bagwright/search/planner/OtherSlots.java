package org.bagwright.search.planner;

import java.util.List;
import java.util.function.Function;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.WantedRange;
import org.bagwright.search.model.Candidate;
import org.bagwright.search.model.OptionTable;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchBag;
import org.bagwright.search.model.SlotAssignment;
import org.bagwright.search.model.StockPile;
import org.bagwright.search.score.PenaltyRules;

/** What the choices of all other slots make of the options of one slot: what each of them adds to the cost, in one number. */
final class OtherSlots {
    /** More than any breaks and points: what no plan trades. */
    private static final double EXCESS_MICROPOINTS = 1e30;

    private static final double MICROPOINTS_PER_POINT = 1e6;

    private final SearchBag bag;
    private final List<StockPile> piles;
    private final double breakMicropoints;
    private final int[] piecesLeft;
    private final Group[] groups;
    private final Aim gapAim;
    private final boolean beforeHasLimits;
    private final double passedOver;
    private Candidate before;
    private Candidate after;
    private int changes;
    private int clubs;

    /**
     * @param choice what each other slot has
     * @param breakMicropoints what a thousandth of a break counts
     */
    OtherSlots(
            PlanningProblem problem,
            SlotAssignment slot,
            Function<SlotAssignment, Candidate> choice,
            double breakMicropoints) {
        this.breakMicropoints = breakMicropoints;
        bag = slot.bag();
        gapAim = bag.gapAim();
        groups = new Group[bag.groups().size()];
        piles = problem.stock();
        for (SlotAssignment other : problem.bagOf(slot)) {
            if (other != slot) {
                add(other.id() < slot.id(), choice.apply(other));
            }
        }
        piecesLeft = new int[piles.size()];
        for (int pile = 0; pile < piecesLeft.length; pile++) {
            int left = piles.get(pile).available();
            for (SlotAssignment other : problem.assignments()) {
                left -= other == slot
                        ? 0
                        : choice.apply(other).pieces(piles.get(pile).item());
            }
            piecesLeft[pile] = Math.max(0, left);
        }
        beforeHasLimits = before != null && !before.gapLimitsM().equals(WantedRange.ANY);
        passedOver = passedOver();
    }

    private void add(boolean isBefore, Candidate other) {
        changes += other.changes();
        clubs += other.carried() ? 1 : 0;
        if (other.flies() && isBefore) {
            before = other;
        } else if (other.flies() && after == null) {
            after = other;
        }
        if (bag.isMatched()) {
            other.match().ifPresent(this::add);
        }
    }

    private void add(MatchValue match) {
        int group = bag.groups().indexOf(match.group());
        if (groups[group] == null) {
            groups[group] = new Group();
        }
        groups[group].add(match.valueMeasureUnits());
    }

    /**
     * What the option at a place of the slot's table adds to the cost of the others, micropoints; or no less than a limit.
     *
     * @param table the options of the slot
     * @param limit what is of no interest: a part of the cost is left out where the rest is above
     */
    double micropoints(OptionTable table, int place, double limit) {
        double sum = weighed(table.ownBreaks[place], table.ownMicropoints[place]);
        if (sum >= limit) {
            return sum;
        }
        sum += table.flies[place] ? gaps(table, place) : passedOver;
        if (sum >= limit) {
            return sum;
        }
        sum += EXCESS_MICROPOINTS * excess(table, place);
        int group = table.groups[place];
        return sum >= limit || group == OptionTable.NO_GROUP || groups[group] == null
                ? sum
                : sum + groups[group].more(table.matchMeasureUnits[place]);
    }

    private int excess(OptionTable table, int place) {
        int excess = Math.max(0, changes + table.changes[place] - bag.affordedChanges())
                + PenaltyRules.clubsBeyond(clubs + (table.carried[place] ? 1 : 0));
        if (table.takes[place]) {
            for (int pile = 0; pile < piecesLeft.length; pile++) {
                excess += Math.max(0, table.pieces(place, piles.get(pile).item()) - piecesLeft[pile]);
            }
        }
        return excess;
    }

    /** The gaps to the clubs before and after it, or what it costs to be the first that flies. */
    private double gaps(OptionTable table, int place) {
        double sum = before == null
                ? weighed(table.firstBreaks[place], table.firstMicropoints[place])
                : gap(
                        before.carryM() - table.carryM[place],
                        before.wishM(),
                        before.doubt().gapVarianceM2(table.doubts[place]),
                        beforeHasLimits ? before : null);
        if (after != null) {
            Candidate limited = table.hasGapLimits[place] ? table.options.get(place) : null;
            double varianceM2 = table.doubts[place].gapVarianceM2(after.doubt());
            sum += gap(table.carryM[place] - after.carryM(), table.wishM[place], varianceM2, limited);
        }
        return sum;
    }

    /** What the others cost where the slot holds nothing that flies. */
    private double passedOver() {
        if (after == null) {
            return 0;
        }
        return before == null
                ? weighed((double) after.first().cost().breaks(), (double)
                        after.first().cost().micropoints())
                : gap(
                        before.carryM() - after.carryM(),
                        before.wishM(),
                        before.doubt().gapVarianceM2(after.doubt()),
                        before);
    }

    /** @param limited the club whose gap limits count; null for none */
    private double gap(double gapM, double wishM, double varianceM2, Candidate limited) {
        double sum = MICROPOINTS_PER_POINT * gapAim.penaltyPoints(gapM - wishM, varianceM2);
        if (gapM > 0 && !gapAim.must() && limited == null) {
            return sum;
        }
        double breaks = PenaltyRules.carryBreaks(gapM) + PenaltyRules.gapMustBreaks(gapAim, gapM, wishM);
        if (limited != null) {
            breaks += PenaltyRules.gapLimitBreaks(gapAim, gapM, limited.gapLimitsM());
        }
        return sum + breakMicropoints * breaks;
    }

    private double weighed(double breaks, double micropoints) {
        return breakMicropoints * breaks + micropoints;
    }

    /** The other clubs with which the club is matched. */
    private final class Group {
        private final double[] values = new double[bag.slotCount()];
        private final double toleranceMeasureUnits = bag.spreadAim().toleranceMeasureUnits();
        private int count;
        private double sum;

        void add(double value) {
            values[count++] = value;
            sum += value;
        }

        /** What one more club costs the group, itself included; breaks without their rounding up. */
        double more(double value) {
            Aim aim = bag.spreadAim();
            double apart = (value - sum / count) * Math.sqrt(count / (count + 1.0));
            double points = MICROPOINTS_PER_POINT * aim.penaltyPoints(apart);
            if (!aim.must()) {
                return points;
            }
            double mean = (sum + value) / (count + 1);
            double breaks = breaksAt(value, mean);
            for (int place = 0; place < count; place++) {
                breaks += breaksAt(values[place], mean);
            }
            return points + breakMicropoints * breaks;
        }

        private double breaksAt(double value, double mean) {
            double beyond = Math.abs(value - mean) / toleranceMeasureUnits - 1;
            return beyond > 0 ? PenaltyRules.BREAK_THOUSANDTHS * beyond : 0;
        }
    }
}
