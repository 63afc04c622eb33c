package org.bagwright.search;

import java.util.Locale;
import org.bagwright.search.exact.BenchCase;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.planner.OurRun;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.Solved;

/**
 * How near the construction and the local search come by themselves, on 30 full bags: without the exact search, ended by a
 * count of score calculations. The best known plan is the proven one.
 */
public final class LocalBench {
    private static final int BAGS = 30;
    private static final double CALCULATION_RATIO = 16;
    private static final double NEAR_PERCENT = 0.5;

    private LocalBench() {}

    public static void main(String[] args) {
        SearchLimits whole = new SearchLimits(1, 60);
        SearchLimits local = whole.counting(1, CALCULATION_RATIO, 0);
        int near = 0;
        System.out.println("| seed | options | best known | local search | above | time |");
        System.out.println("|---|---|---|---|---|---|");
        for (int seed = 0; seed < BAGS; seed++) {
            BenchCase bag = BenchCase.bag(seed);
            Cost best = OurRun.solve(bag.problem(), whole).solved().cost();
            long startNs = System.nanoTime();
            Solved found = OurRun.solve(bag.problem(), local).solved();
            double usedS = (System.nanoTime() - startNs) / 1e9;
            double above = 100.0 * (found.cost().micropoints() - best.micropoints()) / best.micropoints();
            near += found.cost().breaks() <= best.breaks() && above <= NEAR_PERCENT ? 1 : 0;
            System.out.printf(
                    Locale.ROOT,
                    "| %d | %d | %.4f (%d) | %.4f (%d) | %.3f %% | %.2f s |%n",
                    seed,
                    bag.options(),
                    best.micropoints() / 1e6,
                    best.breaks(),
                    found.cost().micropoints() / 1e6,
                    found.cost().breaks(),
                    above,
                    usedS);
        }
        System.out.println("within " + NEAR_PERCENT + " %: " + near + " of " + BAGS);
    }
}
