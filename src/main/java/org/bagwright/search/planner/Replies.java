package org.bagwright.search.planner;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.bagwright.search.model.Candidate;
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

    private final PlanningProblem problem;
    private final Random random;
    private final Map<SlotAssignment, Candidate> tried = new LinkedHashMap<>();
    private final double breakMicropoints;
    private final double noiseMicropoints;

    Replies(PlanningProblem problem, Random random) {
        this.problem = problem;
        this.random = random;
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
        Candidate best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Candidate option : slot.open()) {
            double value = others.micropoints(option) - noise();
            if (value < least) {
                least = value;
                best = option;
            }
        }
        return put(slot, best);
    }

    /** Noise after which the least value is drawn as if each option were as likely as its cost at this temperature. */
    private double noise() {
        return noiseMicropoints == 0 ? 0 : -noiseMicropoints * Math.log(-Math.log(1 - random.nextDouble()));
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
