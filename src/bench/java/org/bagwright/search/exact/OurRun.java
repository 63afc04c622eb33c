package org.bagwright.search.exact;

import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.ExactEnumeration;
import org.bagwright.search.score.Solved;
import org.bagwright.search.team.ExactSearch;

/** Our own search on two threads. */
public final class OurRun {
    private static final int THREADS = 2;

    private Cost last;
    private double lastS;

    private OurRun() {}

    public static Solved solve(ExactProblem problem, double capS) {
        return new OurRun().run(problem, capS);
    }

    private Solved run(ExactProblem problem, double capS) {
        ExactLimits limits = new ExactLimits(Long.MAX_VALUE, capS, THREADS, () -> false, this::told);
        ExactResult result = ExactSearch.book(problem, limits);
        Cost cost = ExactEnumeration.cost(result.chosen(), problem);
        if (!cost.equals(result.cost())) {
            throw new IllegalStateException("told " + result.cost() + ", costs " + cost);
        }
        boolean asFew =
                result.bound().excess() == cost.excess() && result.bound().breaks() == cost.breaks();
        return new Solved(
                cost,
                asFew ? OptionalLong.of(result.bound().micropoints()) : OptionalLong.empty(),
                cost.equals(last) ? lastS : result.elapsedS(),
                result.proven() ? OptionalDouble.of(result.elapsedS()) : OptionalDouble.empty(),
                "");
    }

    private void told(Cost best, Cost bound, double elapsedS) {
        if (!best.equals(last)) {
            last = best;
            lastS = elapsedS;
        }
    }
}
