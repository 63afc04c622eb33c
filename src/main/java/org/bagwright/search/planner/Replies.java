package org.bagwright.search.planner;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.bagwright.search.model.Candidate;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchBag;
import org.bagwright.search.model.SlotAssignment;
import org.bagwright.search.model.StockPile;
import org.bagwright.search.score.PenaltyRules;

/**
 * A choice that is tried beside the one at hand: some slots get an option, others answer with the one that is then best for
 * them. What an answer counts is near the score, not the score itself: the planner scores the move that comes of it. So
 * that answers differ from draw to draw, a break is worth more or less against points, and each option's value has noise.
 */
final class Replies {
    /** More than any breaks and points: a limit that no plan trades. */
    private static final double EXCESS_VALUE = 1e30;

    private static final double BREAK_FIRST = 1e12;
    private static final double LEAST_BREAK_EXPONENT = 2;
    private static final double BREAK_EXPONENTS = 6;
    private static final double NOISE_EXPONENTS = 4;

    private final PlanningProblem problem;
    private final Random random;
    private final Map<SlotAssignment, Candidate> tried = new LinkedHashMap<>();

    /** What one thousandth of a break counts, micropoints. */
    private final double breakValue;

    /** The size of the noise, micropoints. */
    private final double noise;

    Replies(PlanningProblem problem, Random random) {
        this.problem = problem;
        this.random = random;
        breakValue = random.nextBoolean()
                ? BREAK_FIRST
                : Math.pow(10, LEAST_BREAK_EXPONENT + BREAK_EXPONENTS * random.nextDouble());
        double each = 1
                + (double) problem.cost().micropoints() / problem.assignments().size();
        noise = random.nextBoolean() ? 0 : each * Math.pow(10, -NOISE_EXPONENTS * random.nextDouble());
    }

    /** Gives a slot an option. */
    Replies put(SlotAssignment slot, Candidate option) {
        tried.put(slot, option);
        return this;
    }

    /** Gives a slot the option that is best for it as the others are. */
    Replies answer(SlotAssignment slot) {
        Setting setting = new Setting(slot);
        Candidate best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Candidate option : slot.open()) {
            double value = setting.value(option);
            if (noise > 0) {
                value += noise * Math.log(-Math.log(1 - random.nextDouble()) + 1e-300);
            }
            if (value < least) {
                least = value;
                best = option;
            }
        }
        return put(slot, best);
    }

    /** The move to what was tried. */
    AssignmentMove move() {
        return new AssignmentMove(List.copyOf(tried.keySet()), List.copyOf(tried.values()));
    }

    private Candidate choice(SlotAssignment slot) {
        Candidate put = tried.get(slot);
        return put == null ? slot.choice() : put;
    }

    /** What the other slots leave to one. */
    private final class Setting {
        private final SearchBag bag;
        private final double pointsPerSquare;
        private final Map<String, Group> groups = new LinkedHashMap<>();
        private final int[] piecesLeft;
        private final List<StockPile> piles = problem.stock();
        private Candidate before;
        private Candidate after;
        private int changes;
        private int clubs;

        Setting(SlotAssignment slot) {
            bag = slot.bag();
            pointsPerSquare = bag.spreadAim().penaltyPoints(1) * 1e6;
            for (SlotAssignment other : problem.bagOf(slot)) {
                if (other != slot) {
                    add(other.id() < slot.id(), choice(other));
                }
            }
            piecesLeft = piles.stream().mapToInt(pile -> left(slot, pile)).toArray();
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

        private int left(SlotAssignment slot, StockPile pile) {
            int left = pile.available();
            for (SlotAssignment other : problem.assignments()) {
                left -= other == slot ? 0 : choice(other).pieces(pile.item());
            }
            return Math.max(0, left);
        }

        double value(Candidate option) {
            double value = EXCESS_VALUE * excess(option)
                    + breakValue * option.own().cost().breaks()
                    + option.own().cost().micropoints();
            if (option.flies()) {
                value += before == null ? 0 : gap(before, option);
                value += after == null ? 0 : gap(option, after);
            } else if (before != null && after != null) {
                value += gap(before, after);
            }
            if (bag.isMatched() && option.match().isPresent()) {
                Group group = groups.get(option.match().get().group());
                value += group == null ? 0 : spread(group, option.match().get().valueMeasureUnits());
            }
            return value;
        }

        private int excess(Candidate option) {
            int excess = Math.max(0, changes + option.changes() - bag.affordedChanges())
                    + PenaltyRules.clubsBeyond(clubs + (option.carried() ? 1 : 0));
            for (int pile = 0; pile < piecesLeft.length && !option.taken().isEmpty(); pile++) {
                excess += Math.max(0, option.pieces(piles.get(pile).item()) - piecesLeft[pile]);
            }
            return excess;
        }

        private double gap(Candidate from, Candidate to) {
            double gapM = from.carryM() - to.carryM();
            long breaks = PenaltyRules.carryBreaks(gapM) + PenaltyRules.gapMustBreaks(bag.gapAim(), gapM, from.wishM());
            return breakValue * breaks + PenaltyRules.gapMicropoints(bag.gapAim(), gapM, from.wishM());
        }

        private double spread(Group group, double value) {
            double value2 = pointsPerSquare * group.moreSquares(value);
            return bag.spreadAim().must() ? value2 + breakValue * group.moreBreaks(value) : value2;
        }

        /** The other clubs with which a club is matched. */
        private final class Group {
            private final List<Double> values = new ArrayList<>();
            private double sum;
            private double squares;

            void add(double value) {
                values.add(value);
                sum += value;
                squares += value * value;
            }

            /** What one more club adds to the sum of squares about the mean. */
            double moreSquares(double value) {
                int count = values.size();
                double apart = value - sum / count;
                return apart * apart * count / (count + 1);
            }

            long moreBreaks(double value) {
                return breaks((sum + value) / (values.size() + 1))
                        + breaksAt(value, (sum + value) / (values.size() + 1))
                        - breaks(sum / values.size());
            }

            private long breaks(double mean) {
                long breaks = 0;
                for (double value : values) {
                    breaks += breaksAt(value, mean);
                }
                return breaks;
            }

            private long breaksAt(double value, double mean) {
                return bag.spreadAim().hardBreakThousandths(value - mean);
            }
        }
    }
}
