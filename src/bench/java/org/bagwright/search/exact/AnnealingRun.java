package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.IntStream;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.ExactEnumeration;
import org.bagwright.search.score.LexCost;
import org.bagwright.search.score.PenaltyRules;
import org.bagwright.search.score.Solved;

/**
 * Plain simulated annealing, as a textbook has it: one slot takes a random option; a worse choice is accepted with the
 * probability of its excess at a temperature that falls from 30 to 0.01 points by the same factor all the time. A thousandth
 * of a broken must counts a tenth of a point, a piece beyond a limit a thousand points.
 */
public final class AnnealingRun {
    private static final double FIRST_POINTS = 30;
    private static final double LAST_POINTS = 0.01;
    private static final double POINTS_PER_BREAK = 0.1;
    private static final double POINTS_PER_EXCESS = 1000;
    private static final double POINTS_PER_WEIGHT = 1e-6 / LexCost.WEIGHT_PER_MICROPOINT;
    private static final int MOVES_PER_LOOK = 100;
    private static final double NS_PER_S = 1e9;

    private final ExactProblem problem;
    private final Random random;
    private final long startNs = System.nanoTime();
    private final List<List<ExactOption>> chosen = new ArrayList<>();
    private final double[] bagPoints;
    private final int[] taken;
    private final List<Solved.Better> course = new ArrayList<>();
    private double excessPoints;

    private AnnealingRun(ExactProblem problem, int seed) {
        this.problem = problem;
        random = new Random(seed);
        taken = new int[problem.available().size()];
        bagPoints = new double[problem.bags().size()];
        for (int bag = 0; bag < bagPoints.length; bag++) {
            chosen.add(new ArrayList<>(problem.bags().get(bag).slots().stream()
                    .map(slot -> slot.get(0))
                    .toList()));
            chosen.get(bag).forEach(option -> take(option, 1));
            bagPoints[bag] = points(bag);
        }
        excessPoints = excessPoints();
    }

    public static Solved solve(ExactProblem problem, int seed, double capS) {
        return new AnnealingRun(problem, seed).run(capS);
    }

    private Solved run(double capS) {
        double temperature = FIRST_POINTS;
        double least = total();
        note();
        for (double nowS = 0; nowS < capS; nowS = elapsedS()) {
            temperature = FIRST_POINTS * Math.pow(LAST_POINTS / FIRST_POINTS, nowS / capS);
            for (int move = 0; move < MOVES_PER_LOOK; move++) {
                move(temperature);
                if (total() < least - 1e-9) {
                    least = total();
                    note();
                }
            }
        }
        Solved.Better best = course.get(course.size() - 1);
        return new Solved(best.cost(), OptionalLong.empty(), course, OptionalDouble.empty(), "");
    }

    private void move(double temperature) {
        int bag = random.nextInt(bagPoints.length);
        List<List<ExactOption>> slots = problem.bags().get(bag).slots();
        int slot = random.nextInt(slots.size());
        ExactOption before = chosen.get(bag).get(slot);
        double wasPoints = bagPoints[bag];
        double wasExcess = excessPoints;
        replace(
                bag,
                slot,
                before,
                slots.get(slot).get(random.nextInt(slots.get(slot).size())));
        bagPoints[bag] = points(bag);
        excessPoints = excessPoints();
        double worse = bagPoints[bag] - wasPoints + excessPoints - wasExcess;
        if (worse > 0 && random.nextDouble() >= Math.exp(-worse / temperature)) {
            replace(bag, slot, chosen.get(bag).get(slot), before);
            bagPoints[bag] = wasPoints;
            excessPoints = wasExcess;
        }
    }

    private void replace(int bag, int slot, ExactOption from, ExactOption to) {
        take(from, -1);
        take(to, 1);
        chosen.get(bag).set(slot, to);
    }

    private void take(ExactOption option, int sign) {
        for (int item = 0; item < taken.length; item++) {
            taken[item] += sign * option.needs().takes().get(item);
        }
    }

    private double points(int bag) {
        List<ExactOption> options = chosen.get(bag);
        LexCost cost = problem.bags().get(bag).cost(options);
        int changes = options.stream().mapToInt(ExactOption::changes).sum();
        long clubs = options.stream().filter(option -> option.needs().carried()).count();
        int beyond =
                Math.max(0, changes - problem.bags().get(bag).changesLimit()) + PenaltyRules.clubsBeyond((int) clubs);
        return POINTS_PER_EXCESS * beyond + POINTS_PER_BREAK * cost.breaks() + POINTS_PER_WEIGHT * cost.weight();
    }

    private double excessPoints() {
        return POINTS_PER_EXCESS
                * IntStream.range(0, taken.length)
                        .map(item ->
                                Math.max(0, taken[item] - problem.available().get(item)))
                        .sum();
    }

    private double total() {
        double total = excessPoints;
        for (double points : bagPoints) {
            total += points;
        }
        return total;
    }

    /** Keeps the choice if it is better by the order that the plan is judged by, too. */
    private void note() {
        List<List<Integer>> indexes = chosen.stream()
                .map(bag -> bag.stream().map(ExactOption::index).toList())
                .toList();
        Cost cost = ExactEnumeration.cost(indexes, problem);
        if (course.isEmpty() || cost.compareTo(course.get(course.size() - 1).cost()) < 0) {
            course.add(new Solved.Better(elapsedS(), cost));
        }
    }

    private double elapsedS() {
        return (System.nanoTime() - startNs) / NS_PER_S;
    }
}
