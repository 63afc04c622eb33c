package org.bagwright.search.exact;

import java.util.List;
import java.util.OptionalInt;

/**
 * One problem that all solvers get.
 *
 * @param name what it is called in the table
 * @param seed the seed it is drawn from, and that of every solver's random choices
 * @param problem the problem
 */
public record BenchCase(String name, int seed, ExactProblem problem) {
    private static final ExactInstances.Shape SHAPE = new ExactInstances.Shape(9, 12, 3);
    private static final int FIRST_IRON = 4;
    private static final int CLUBS_OF_THREE = 3;

    /** Three neighbouring irons of a full bag with its stock, at most two changes. */
    public static BenchCase three(int seed) {
        ExactProblem full = ExactInstances.full(seed, SHAPE);
        ExactBag bag = full.bags().get(0);
        List<List<ExactOption>> irons = bag.slots().subList(FIRST_IRON, FIRST_IRON + CLUBS_OF_THREE);
        ExactBag small = new ExactBag(irons, OptionalInt.of(2), bag.gapAim(), bag.spreadAim());
        return new BenchCase("3 clubs", seed, new ExactProblem(List.of(small), full.available()));
    }

    public static BenchCase bag(int seed) {
        return new BenchCase("14 clubs", seed, ExactInstances.full(seed, SHAPE));
    }

    public static BenchCase team(int seed, int golfers) {
        ExactInstances.Shape shape = new ExactInstances.Shape(9, 12, 1 + seed % 6);
        return new BenchCase("team of " + golfers, seed, ExactInstances.team(seed, golfers, shape));
    }

    /**
     * A hard one by its kind: a bag with a must on spread of so many hundredths of a point ("must50"), or a team of so
     * many with an impossible must.
     */
    public static BenchCase hard(String kind, int seed) {
        if (kind.startsWith("must")) {
            double points = Integer.parseInt(kind.substring("must".length())) / 100.0;
            return new BenchCase("must on spread " + points, seed, HardInstances.bag(seed, points));
        }
        return new BenchCase(
                "team of " + kind + ", one impossible must", seed, HardInstances.team(seed, Integer.parseInt(kind)));
    }

    /** How many options all slots have together. */
    public int options() {
        return problem.bags().stream()
                .flatMap(bag -> bag.slots().stream())
                .mapToInt(List::size)
                .sum();
    }
}
