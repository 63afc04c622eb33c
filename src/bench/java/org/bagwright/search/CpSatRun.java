package org.bagwright.search;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Predicate;
import org.bagwright.search.exact.CpSatBag;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.ExactEnumeration;
import org.bagwright.search.score.Solved;

/**
 * CP-SAT with two workers: first as few breaks as it can, then the least penalty with no more of them. Stock, most changes
 * and most clubs are constraints, so a problem that cannot keep them has no plan here.
 */
final class CpSatRun {
    /** Small enough that rounding lifts or lowers a penalty by no more than about 0.01 %, large enough for 64 bits. */
    private static final double UNIT_MICROPOINTS = 0.0025;

    private static final double NS_PER_S = 1e9;

    private final ExactProblem problem;
    private final int seed;
    private final double capS;
    private final long startNs = System.nanoTime();
    private final CpModel model = new CpModel();
    private final List<CpSatBag> bags = new ArrayList<>();
    private final LinearExprBuilder penalty = LinearExpr.newBuilder();
    private final LinearExprBuilder breaks = LinearExpr.newBuilder();

    private Cost best;
    private List<List<Integer>> chosen;
    private final List<Solved.Better> course = new ArrayList<>();

    private CpSatRun(ExactProblem problem, int seed, double capS) {
        this.problem = problem;
        this.seed = seed;
        this.capS = capS;
    }

    /** What it found; nothing if it found no plan in time. */
    static Optional<Solved> solve(ExactProblem problem, int seed, double capS) {
        return new CpSatRun(problem, seed, capS).run();
    }

    private Optional<Solved> run() {
        problem.bags().forEach(bag -> bags.add(new CpSatBag(model, bag, UNIT_MICROPOINTS, penalty, breaks)));
        stock();
        LinearArgument broken = breaks.build();
        model.minimize(broken);
        CpSolver first = solver(capS / 2);
        CpSolverStatus fewest = first.solve(model, new Noting());
        if (best == null) {
            return Optional.empty();
        }
        model.addLessOrEqual(broken, Math.round(first.objectiveValue()));
        hint();
        model.clearObjective();
        model.minimize(penalty.build());
        CpSolver second = solver(Math.max(1, capS - elapsedS()));
        CpSolverStatus least = second.solve(model, new Noting());
        boolean proven = fewest == CpSolverStatus.OPTIMAL && least == CpSolverStatus.OPTIMAL;
        return Optional.of(new Solved(
                best,
                fewest == CpSolverStatus.OPTIMAL && least != CpSolverStatus.UNKNOWN
                        ? OptionalLong.of(bound(second.bestObjectiveBound()))
                        : OptionalLong.empty(),
                course,
                proven ? OptionalDouble.of(elapsedS()) : OptionalDouble.empty(),
                fewest == CpSolverStatus.OPTIMAL ? "" : "fewest breaks not shown"));
    }

    private void stock() {
        for (int item = 0; item < problem.available().size(); item++) {
            int place = item;
            LinearExprBuilder used = LinearExpr.newBuilder();
            bags.forEach(
                    bag -> used.add(bag.sum(option -> option.needs().takes().get(place))));
            model.addLessOrEqual(used, problem.available().get(item));
        }
    }

    /** One family of presolve rules is off: in 9.15 it loses the best plans (or-tools issue 5293). */
    private CpSolver solver(double mostS) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setNumWorkers(2)
                .setRandomSeed(seed)
                .setPresolveInclusionWorkLimit(0)
                .setMaxTimeInSeconds(mostS);
        return solver;
    }

    private double elapsedS() {
        return (System.nanoTime() - startNs) / NS_PER_S;
    }

    /**
     * Its bound on the rounded penalty less the most by which the rounding can lift the true best above its own: each
     * square of a deviation d, wrong by at most one unit, by 2 |d| + 1, and the sum of the |d| at most the root of their
     * number times what a plan costs that is already known.
     */
    private long bound(double units) {
        int squares = bags.stream().mapToInt(bag -> bag.squares).sum();
        int roundings = bags.stream().mapToInt(bag -> bag.roundings).sum();
        double known = best.micropoints() / UNIT_MICROPOINTS;
        double rounding = 2 * Math.sqrt(squares * known) + squares + roundings * (1 + 0.5 / UNIT_MICROPOINTS);
        return (long) Math.floor((units - rounding) * UNIT_MICROPOINTS);
    }

    private void hint() {
        model.clearHints();
        for (int bag = 0; bag < bags.size(); bag++) {
            for (int slot = 0; slot < bags.get(bag).taken.size(); slot++) {
                for (int option = 0; option < bags.get(bag).taken.get(slot).size(); option++) {
                    int index = problem.bags()
                            .get(bag)
                            .slots()
                            .get(slot)
                            .get(option)
                            .index();
                    boolean taken = chosen.get(bag).get(slot) == index;
                    model.addHint(bags.get(bag).taken.get(slot).get(option), taken);
                }
            }
        }
    }

    private List<List<Integer>> read(Predicate<com.google.ortools.sat.BoolVar> yes) {
        List<List<Integer>> read = new ArrayList<>();
        for (CpSatBag bag : bags) {
            List<Integer> indexes = new ArrayList<>();
            for (int slot = 0; slot < bag.taken.size(); slot++) {
                for (int option = 0; option < bag.taken.get(slot).size(); option++) {
                    if (yes.test(bag.taken.get(slot).get(option))) {
                        indexes.add(bag.bag.slots().get(slot).get(option).index());
                    }
                }
            }
            read.add(indexes);
        }
        return read;
    }

    /** Keeps of all plans the solver passes through the one that is truly best. */
    private final class Noting extends CpSolverSolutionCallback {
        @Override
        public void onSolutionCallback() {
            List<List<Integer>> read = read(option -> booleanValue(option));
            Cost cost = ExactEnumeration.cost(read, problem);
            if (best == null || cost.compareTo(best) < 0) {
                best = cost;
                chosen = read;
                course.add(new Solved.Better(elapsedS(), cost));
            }
        }
    }
}
