package org.bagwright.search.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.exact.SearchClock;
import org.bagwright.search.model.PlannerBook;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.Team;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.ExactEnumeration;
import org.bagwright.search.score.Solved;
import org.bagwright.search.team.ExactSearch;

/** Our own search as the program runs it, on two threads. */
public final class OurRun {
    private static final int THREADS = 2;
    private static final double NS_PER_S = 1e9;

    private final List<Solved.Better> course = new ArrayList<>();
    private final long startNs = System.nanoTime();

    private OurRun() {}

    /**
     * What it found.
     *
     * @param solved the plan
     * @param bound what no plan is below
     */
    public record Run(Solved solved, Cost bound) {}

    public static Run solve(ExactProblem problem, SearchLimits limits) {
        return solve(problem, PlannerBook.team(problem), limits);
    }

    private static Run solve(ExactProblem problem, Team team, SearchLimits limits) {
        return new OurRun().run(problem, team, limits);
    }

    private Run run(ExactProblem problem, Team team, SearchLimits limits) {
        SearchClock clock = new SearchClock(limits.mostS());
        clock.onBetter(better -> course.add(new Solved.Better(elapsedS(), better)));
        TeamSolver.Found found = new TeamSolver(limits, clock, new ExactSearch(clock, THREADS)).best(team);
        double endS = elapsedS();
        Cost cost = ExactEnumeration.cost(found.chosen(), problem);
        if (!cost.equals(found.cost())) {
            throw new IllegalStateException("reported " + found.cost() + ", costs " + cost);
        }
        if (course.isEmpty() || !course.get(course.size() - 1).cost().equals(cost)) {
            course.add(new Solved.Better(endS, cost));
        }
        Cost bound = found.bound();
        boolean asFew = bound.excess() == cost.excess() && bound.breaks() == cost.breaks();
        Solved solved = new Solved(
                cost,
                asFew ? OptionalLong.of(bound.micropoints()) : OptionalLong.empty(),
                course,
                bound.equals(cost) ? OptionalDouble.of(endS) : OptionalDouble.empty(),
                "");
        return new Run(solved, bound);
    }

    private double elapsedS() {
        return (System.nanoTime() - startNs) / NS_PER_S;
    }
}
