package org.bagwright.search;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.bagwright.search.exact.BenchCase;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.planner.OurRun;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.Solved;

/**
 * Our search on bags and teams made to be hard: a table of what it proves or how far its bounds are.
 *
 * <p>Arguments {@code name=value}: {@code kinds} (a must on spread of so many hundredths of a
 * point, must40; a team of so many with one impossible must, 12), {@code seeds} (how many of each),
 * {@code capS} (for each).
 */
public final class HardBench {
    private HardBench() {}

    public static void main(String[] args) {
        List<String> kinds =
                Arrays.asList(argument(args, "kinds", "must40,must12,12,40").split(","));
        int seeds = Integer.parseInt(argument(args, "seeds", "5"));
        double capS = Double.parseDouble(argument(args, "capS", "20"));
        OurRun.solve(BenchCase.bag(1000).problem(), new SearchLimits(1, 5));
        System.out.println(
                "| problem | seed | options | ends | breaks, bound | points, bound | gap | at 1 s above the last plan |");
        System.out.println("|---|---|---|---|---|---|---|---|");
        for (String kind : kinds) {
            for (int seed = 0; seed < seeds; seed++) {
                run(BenchCase.hard(kind, seed), capS);
            }
        }
    }

    private static String argument(String[] args, String name, String usual) {
        return Arrays.stream(args)
                .filter(arg -> arg.startsWith(name + "="))
                .map(arg -> arg.substring(name.length() + 1))
                .findFirst()
                .orElse(usual);
    }

    private static void run(BenchCase of, double capS) {
        OurRun.Run run = OurRun.solve(of.problem(), new SearchLimits(1, capS));
        Solved solved = run.solved();
        Cost cost = solved.cost();
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %s | %d, %d | %.4f, %.4f | %s | %s |%n",
                of.name(),
                of.seed(),
                of.options(),
                solved.provenS().isPresent()
                        ? String.format(
                                Locale.ROOT, "proven %.1f s", solved.provenS().getAsDouble())
                        : "open",
                cost.toldBreaks(),
                run.bound().toldBreaks(),
                cost.micropoints() / 1e6,
                run.bound().micropoints() / 1e6,
                gap(cost, run.bound()),
                solved.costAt(1).map(first -> gap(first, cost)).orElse("no plan"));
    }

    private static String gap(Cost cost, Cost bound) {
        return cost.toldBreaks() == bound.toldBreaks()
                ? String.format(Locale.ROOT, "%.3f %%", percent(cost.micropoints(), bound.micropoints()))
                : String.format(Locale.ROOT, "breaks %.2f %%", percent(cost.toldBreaks(), bound.toldBreaks()));
    }

    private static double percent(long found, long bound) {
        return 100.0 * (found - bound) / Math.max(1, found);
    }
}
