package org.bagwright.search.planner;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.bagwright.domain.plan.BrokenRule;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchBag;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.SlotAssignment;
import org.bagwright.search.model.StockPile;
import org.bagwright.search.score.Cost;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.constraint.ConstraintMatch;
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

    /** What the choice of a problem breaks, from the matches of the constraints: bag by bag, slot by slot. */
    public List<BrokenRule> broken(PlanningProblem problem) {
        return manager.explain(problem).getConstraintMatchTotalMap().values().stream()
                .flatMap(total -> total.getConstraintMatchSet().stream())
                .filter(match ->
                        match.getScore().hardScore() != 0 || match.getScore().mediumScore() != 0)
                .map(match -> broken(problem, match))
                .sorted(Comparator.comparing((BrokenRule each) -> each.bags().toString())
                        .thenComparing(each -> each.slots().toString())
                        .thenComparing(BrokenRule::rule))
                .toList();
    }

    private static BrokenRule broken(PlanningProblem problem, ConstraintMatch<HardMediumSoftLongScore> match) {
        List<Object> facts = match.getIndictedObjectList();
        List<SlotAssignment> slots = facts.stream()
                .flatMap(fact -> fact instanceof SlotAssignment slot ? Stream.of(slot) : Stream.empty())
                .toList();
        List<Integer> bags = facts.stream()
                .flatMap(fact -> bags(problem, fact))
                .map(problem::place)
                .distinct()
                .toList();
        return new BrokenRule(
                match.getConstraintName(),
                bags,
                slots.stream().map(SlotAssignment::slot).toList(),
                -match.getScore().hardScore(),
                -match.getScore().mediumScore());
    }

    private static Stream<SearchBag> bags(PlanningProblem problem, Object fact) {
        if (fact instanceof SlotAssignment slot) {
            return Stream.of(slot.bag());
        }
        if (fact instanceof SearchBag bag) {
            return Stream.of(bag);
        }
        return fact instanceof StockPile pile
                ? problem.assignments().stream()
                        .filter(slot -> slot.choice().pieces(pile.item()) > 0)
                        .map(SlotAssignment::bag)
                : Stream.empty();
    }
}
