package org.bagwright.search.exact;

import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.ExactEnumeration;
import org.bagwright.search.score.PenaltyRules;
import org.bagwright.search.score.Solved;
import org.bagwright.search.team.ExactSearch;

/** Our own search on two threads. */
public final class OurRun {
    private static final int THREADS = 2;

    private long lastBreaks;
    private double lastPoints = Double.NaN;
    private double lastS;

    private OurRun() {}

    public static Solved solve(ExactProblem problem, double capS) {
        return new OurRun().run(problem, capS);
    }

    public static ExactResult result(ExactProblem problem, double capS) {
        return new ExactSearch(new SearchClock(capS), THREADS).best(problem, Long.MAX_VALUE);
    }

    private Solved run(ExactProblem problem, double capS) {
        SearchClock clock = new SearchClock(capS);
        clock.onProgress(this::report);
        ExactResult result = new ExactSearch(clock, THREADS).best(problem, Long.MAX_VALUE);
        double elapsedS = clock.elapsedS();
        Cost cost = ExactEnumeration.cost(result.chosen(), problem);
        if (!cost.equals(result.cost())) {
            throw new IllegalStateException("reported " + result.cost() + ", costs " + cost);
        }
        boolean asFew =
                result.bound().excess() == cost.excess() && result.bound().breaks() == cost.breaks();
        return new Solved(
                cost,
                asFew ? OptionalLong.of(result.bound().micropoints()) : OptionalLong.empty(),
                reported(cost) ? lastS : elapsedS,
                result.proven() ? OptionalDouble.of(elapsedS) : OptionalDouble.empty(),
                "");
    }

    private boolean reported(Cost cost) {
        return lastBreaks == cost.toldBreaks() && lastPoints == PenaltyRules.points(cost.micropoints());
    }

    private void report(long breaks, double points, double bound, double elapsedS) {
        if (breaks != lastBreaks || points != lastPoints) {
            lastBreaks = breaks;
            lastPoints = points;
            lastS = elapsedS;
        }
    }
}
