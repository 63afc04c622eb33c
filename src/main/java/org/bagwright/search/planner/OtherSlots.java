package org.bagwright.search.planner;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.bagwright.domain.book.Aim;
import org.bagwright.search.model.Candidate;
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
    private final Map<String, Group> groups = new LinkedHashMap<>();
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
            other.match().ifPresent(match -> groups.computeIfAbsent(match.group(), name -> new Group())
                    .add(match.valueMeasureUnits()));
        }
    }

    /** What an option adds to the cost of the others, micropoints. */
    double micropoints(Candidate option) {
        double sum = EXCESS_MICROPOINTS * excess(option)
                + weighed(option.own().cost().breaks(), option.own().cost().micropoints());
        if (option.flies()) {
            sum += gap(before, option) + gap(option, after);
        } else {
            sum += gap(before, after);
        }
        if (!groups.isEmpty() && option.match().isPresent()) {
            Group group = groups.get(option.match().get().group());
            sum += group == null ? 0 : group.more(option.match().get().valueMeasureUnits());
        }
        return sum;
    }

    private int excess(Candidate option) {
        int excess = Math.max(0, changes + option.changes() - bag.affordedChanges())
                + PenaltyRules.clubsBeyond(clubs + (option.carried() ? 1 : 0));
        for (int pile = 0; pile < piecesLeft.length && !option.taken().isEmpty(); pile++) {
            excess += Math.max(0, option.pieces(piles.get(pile).item()) - piecesLeft[pile]);
        }
        return excess;
    }

    /** The gap between two clubs, or what it costs that the second is the first that flies. */
    private double gap(Candidate from, Candidate to) {
        if (to == null) {
            return 0;
        }
        if (from == null) {
            return weighed(to.first().cost().breaks(), to.first().cost().micropoints());
        }
        double gapM = from.carryM() - to.carryM();
        long breaks = PenaltyRules.carryBreaks(gapM)
                + PenaltyRules.gapMustBreaks(bag.gapAim(), gapM, from.wishM())
                + PenaltyRules.gapLimitBreaks(bag.gapAim(), gapM, from.gapLimitsM());
        return weighed(breaks, PenaltyRules.gapMicropoints(bag.gapAim(), gapM, from.wishM()));
    }

    private double weighed(long breaks, long micropoints) {
        return breakMicropoints * breaks + micropoints;
    }

    /** The other clubs with which the club is matched. */
    private final class Group {
        private final double[] values = new double[bag.slotCount()];
        private int count;
        private double sum;

        void add(double value) {
            values[count++] = value;
            sum += value;
        }

        /** What one more club costs the group, itself included. */
        double more(double value) {
            Aim aim = bag.spreadAim();
            double apart = (value - sum / count) * Math.sqrt(count / (count + 1.0));
            double points = MICROPOINTS_PER_POINT * aim.penaltyPoints(apart);
            if (!aim.must()) {
                return points;
            }
            double mean = (sum + value) / (count + 1);
            long more = aim.hardBreakThousandths(value - mean) + breaks(mean) - breaks(sum / count);
            return points + breakMicropoints * more;
        }

        private long breaks(double mean) {
            long breaks = 0;
            for (int place = 0; place < count; place++) {
                breaks += bag.spreadAim().hardBreakThousandths(values[place] - mean);
            }
            return breaks;
        }
    }
}
