package org.bagwright.search.exact;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.WantedRange;
import org.bagwright.search.score.LexCost;
import org.bagwright.search.score.PenaltyRules;

/**
 * One way to fill a slot, as the exact search sees it.
 *
 * @param index its place among the options of its slot
 * @param breaks the musts it breaks by itself, thousandths
 * @param micropoints its own penalty, millionths of a point
 * @param needs what it uses of the limits
 * @param flight what counts for gaps; empty for a putter and for an empty slot
 * @param match how it compares with the other clubs of its group; empty if it is not matched
 */
public record ExactOption(
        int index, long breaks, long micropoints, Needs needs, Optional<Flight> flight, Optional<Match> match) {
    /** The group of an option that is not matched. */
    static final int NO_GROUP = -1;

    public ExactOption {
        require(breaks >= 0 && micropoints >= 0, "costs must be 0 or more");
        require(needs.carried() || flight.isEmpty(), "an empty slot cannot fly");
        require(needs.carried() || match.isEmpty(), "an empty slot cannot be matched");
    }

    /**
     * What an option uses of the limits that a plan keeps.
     *
     * @param changes items that differ from today
     * @param carried whether a club is in the slot; an empty slot is an option that is not carried
     * @param takes the pieces it takes of each stock item
     */
    public record Needs(int changes, boolean carried, List<Integer> takes) {
        public Needs {
            takes = List.copyOf(takes);
            require(changes >= 0, "changes must be 0 or more");
            require(takes.stream().allMatch(pieces -> pieces >= 0), "pieces taken must be 0 or more");
        }

        /** What it uses of a resource: the stock items in their order, then the clubs carried. */
        int of(int resource) {
            if (resource < takes.size()) {
                return takes.get(resource);
            }
            return carried ? 1 : 0;
        }

        /** Whether it is no more in any way, and less in one. */
        public boolean isLessThan(Needs other) {
            for (int item = 0; item < takes.size(); item++) {
                if (takes.get(item) > other.takes.get(item)) {
                    return false;
                }
            }
            return changes <= other.changes && (other.carried || !carried) && !equals(other);
        }
    }

    /**
     * A club that flies.
     *
     * @param carryM carry, metres
     * @param wishM the gap wished from it to the next club that flies, metres
     * @param gapLimitsM the gaps to that club that keep their limits, metres
     * @param doubt how far the carry may be off; nothing where that costs nothing
     * @param first what it costs if no club before it flies
     */
    public record Flight(double carryM, double wishM, WantedRange gapLimitsM, CarryDoubt doubt, LexCost first) {
        /** A flight that is certain, whose gaps have no limits, and which costs nothing as the first. */
        public Flight(double carryM, double wishM) {
            this(carryM, wishM, WantedRange.ANY, CarryDoubt.NONE, LexCost.NONE);
        }

        public Flight {
            require(Double.isFinite(carryM) && Double.isFinite(wishM), "a club that flies needs a carry");
        }

        /** What the gap to the next club that flies costs. */
        LexCost gap(Aim aim, Flight next) {
            double gapM = carryM - next.carryM;
            long breaks = PenaltyRules.gapMustBreaks(aim, gapM, wishM)
                    + PenaltyRules.gapLimitBreaks(aim, gapM, gapLimitsM)
                    + PenaltyRules.carryBreaks(gapM);
            double varianceM2 = doubt.gapVarianceM2(next.doubt);
            return new LexCost(breaks, LexCost.weight(PenaltyRules.gapMicropoints(aim, gapM, wishM, varianceM2), 0));
        }
    }

    /**
     * A club that is compared with others.
     *
     * @param group the clubs it is matched with, 0 or more
     * @param valueMeasureUnits the number to be matched: swingweight points or kg cm2; rounded to parts of 2^-32 so that sums are
     *     exact in any order
     */
    public record Match(int group, double valueMeasureUnits) {
        private static final double STEPS = 1L << 32;
        private static final double MOST = 1 << 16;

        public Match {
            require(group >= 0, "a group is 0 or more");
            require(Math.abs(valueMeasureUnits) < MOST, "a matched club needs a number");
            valueMeasureUnits = Math.rint(valueMeasureUnits * STEPS) / STEPS;
        }
    }

    public int changes() {
        return needs.changes();
    }

    boolean flies() {
        return flight.isPresent();
    }

    /** The group it is matched in, or {@link #NO_GROUP}. */
    int group() {
        return match.isPresent() ? match.get().group() : NO_GROUP;
    }

    /** The number to be matched, or 0. */
    double matchMeasureUnits() {
        return match.isPresent() ? match.get().valueMeasureUnits() : 0;
    }

    /** What it costs by itself. */
    LexCost own() {
        return new LexCost(breaks, LexCost.weight(micropoints, changes()));
    }

    /** The same option with more breaks and micropoints. */
    ExactOption plus(LexCost more) {
        return new ExactOption(index, breaks + more.breaks(), micropoints + more.micropoints(), needs, flight, match);
    }

    private static void require(boolean holds, String problem) {
        if (!holds) {
            throw new IllegalArgumentException(problem);
        }
    }
}
