package org.bagwright.search.planner;

import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.score.Cost;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.SolutionManager;
import org.optaplanner.core.api.solver.SolverFactory;

/** Scores choices by the planner's constraints. */
public final class ConstraintScorer {
    private final SolutionManager<PlanningProblem, HardMediumSoftLongScore> manager;

    /** Takes about half a second the first time in a program. */
    public ConstraintScorer(SearchLimits limits) {
        manager = SolutionManager.create(SolverFactory.create(new SolverSettings(limits).scoring()));
    }

    /** What the choice of a problem costs, which is the problem's cost from then on. */
    public Cost cost(PlanningProblem problem) {
        manager.update(problem);
        return problem.cost();
    }

    /**
     * The same for a plan that is given out.
     *
     * @param bySum what it costs by a sum without constraints
     * @throws IllegalStateException if the two differ: one of them is wrong
     */
    public Cost checked(PlanningProblem problem, Cost bySum) {
        Cost cost = cost(problem);
        if (!cost.equals(bySum)) {
            throw new IllegalStateException(
                    "the constraints score the plan " + cost + " and the plain sum gives " + bySum);
        }
        return cost;
    }
}
