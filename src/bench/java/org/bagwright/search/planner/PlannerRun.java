package org.bagwright.search.planner;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.model.PlannerBook;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.ExactEnumeration;
import org.bagwright.search.score.Solved;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.constructionheuristic.ConstructionHeuristicPhaseConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.solver.SolverConfig;

/**
 * OptaPlanner with our constraints and all else as it comes: its default construction heuristic, its default local search
 * with its default moves, one thread (more cost extra there).
 */
public final class PlannerRun {
    private static final double NS_PER_S = 1e9;

    private PlannerRun() {}

    public static Solved solve(ExactProblem problem, int seed, double capS) {
        SolverConfig config = new SolverSettings(new SearchLimits(seed, capS))
                .scoring()
                .withRandomSeed((long) seed)
                .withTerminationSpentLimit(Duration.ofMillis((long) (capS * 1000)))
                .withPhases(new ConstructionHeuristicPhaseConfig(), new LocalSearchPhaseConfig());
        Solver<PlanningProblem> solver =
                SolverFactory.<PlanningProblem>create(config).buildSolver();
        List<Solved.Better> course = new ArrayList<>();
        long startNs = System.nanoTime();
        solver.addEventListener(event -> {
            if (event.getNewBestSolution().isComplete()) {
                course.add(new Solved.Better(
                        (System.nanoTime() - startNs) / NS_PER_S,
                        event.getNewBestSolution().cost()));
            }
        });
        PlanningProblem found = solver.solve(PlannerBook.team(problem).problem());
        List<List<Integer>> chosen = found.chosen();
        Cost cost = ExactEnumeration.cost(chosen, problem);
        if (!cost.equals(found.cost())) {
            throw new IllegalStateException("reported " + found.cost() + ", costs " + cost);
        }
        return new Solved(cost, OptionalLong.empty(), course, OptionalDouble.empty(), "");
    }
}
