package org.bagwright.search.planner;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.bagwright.search.model.Candidate;
import org.bagwright.search.model.OptionTable;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SlotAssignment;

/**
 * A choice that is tried instead of the one at hand: some slots get an option, others answer with the one that is then best
 * for them. What an answer counts is near the score, not the score itself: the planner scores the move that comes of it. So
 * that answers differ from draw to draw, a break is worth more or less against points, and each option's value has noise.
 */
final class Replies {
    /** What a thousandth of a break counts where breaks come first, micropoints. */
    private static final double BREAKS_FIRST = 1e12;

    /** The powers of ten of the micropoints that it counts in the other draws. */
    private static final double LEAST_BREAK_POWER = 2;

    private static final double MOST_BREAK_POWER = 8;

    /** How many powers of ten the noise can be below what a slot costs on average. */
    private static final double NOISE_POWERS = 4;

    private static final double[] QUANTILES = IntStream.range(0, 1 << 12)
            .mapToDouble(place -> -Math.log(-Math.log((place + 0.5) / (1 << 12))))
            .toArray();

    private final PlanningProblem problem;
    private final Map<SlotAssignment, Candidate> tried = new LinkedHashMap<>();
    private final double breakMicropoints;
    private final double noiseMicropoints;

    /** The state of a generator of its own (xorshift, never 0), which is faster than the shared one. */
    private long draws;

    Replies(PlanningProblem problem, Random random) {
        this.problem = problem;
        draws = random.nextLong() | 1;
        breakMicropoints = random.nextBoolean()
                ? BREAKS_FIRST
                : Math.pow(10, LEAST_BREAK_POWER + (MOST_BREAK_POWER - LEAST_BREAK_POWER) * random.nextDouble());
        double each = 1
                + (double) problem.cost().micropoints() / problem.assignments().size();
        noiseMicropoints = random.nextBoolean() ? 0 : each * Math.pow(10, -NOISE_POWERS * random.nextDouble());
    }

    /** Gives a slot an option. */
    Replies put(SlotAssignment slot, Candidate option) {
        tried.put(slot, option);
        return this;
    }

    /** Gives a slot the option that is best for it as the others are. */
    Replies answer(SlotAssignment slot) {
        OtherSlots others = new OtherSlots(problem, slot, this::choice, breakMicropoints);
        OptionTable table = slot.bag().table(slot.slot());
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int place = 0; place < table.options.size(); place++) {
            double noise = noise();
            double value = others.micropoints(table, place, least + noise) - noise;
            if (value < least) {
                least = value;
                best = place;
            }
        }
        return put(slot, table.options.get(best));
    }

    /**
     * Noise after which each option has the least value as often as its cost tells at this temperature (Gumbel's
     * distribution). Drawn from a table of its quantiles, since an answer draws for hundreds of options.
     */
    private double noise() {
        if (noiseMicropoints == 0) {
            return 0;
        }
        draws ^= draws << 13;
        draws ^= draws >>> 7;
        draws ^= draws << 17;
        return noiseMicropoints * QUANTILES[(int) (draws >>> 1) & (QUANTILES.length - 1)];
    }

    /** The slots that can give up a change where a slot was given an option with one too many; none where it was not. */
    List<SlotAssignment> givers(SlotAssignment first) {
        List<SlotAssignment> bag = problem.bagOf(first);
        int changes = 0;
        for (SlotAssignment slot : bag) {
            changes += choice(slot).changes();
        }
        return changes <= first.bag().affordedChanges()
                ? List.of()
                : bag.stream()
                        .filter(slot -> slot != first && choice(slot).changes() > 0)
                        .toList();
    }

    /** The move to what was tried. */
    AssignmentMove move() {
        return new AssignmentMove(List.copyOf(tried.keySet()), List.copyOf(tried.values()));
    }

    private Candidate choice(SlotAssignment slot) {
        Candidate put = tried.get(slot);
        return put == null ? slot.choice() : put;
    }
}
