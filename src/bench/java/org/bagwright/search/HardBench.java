package org.bagwright.search;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.bagwright.search.exact.BenchCase;
import org.bagwright.search.exact.ExactResult;
import org.bagwright.search.exact.OurRun;
import org.bagwright.search.score.Cost;

/**
 * Our search on bags and teams made to be hard: a table of what it proves or how far its bounds are.
 *
 * <p>Arguments {@code name=value}: {@code kinds} (a must on spread of so many hundredths of a
 * point, must40; a team of so many with one impossible must, 12), {@code seeds} (how many of each),
 * {@code capS} (for each).
 */
public final class HardBench {
    private static final double NS_PER_S = 1e9;

    private HardBench() {}

    public static void main(String[] args) {
        List<String> kinds =
                Arrays.asList(argument(args, "kinds", "must40,must12,12,40").split(","));
        int seeds = Integer.parseInt(argument(args, "seeds", "5"));
        double capS = Double.parseDouble(argument(args, "capS", "20"));
        OurRun.result(BenchCase.bag(1000).problem(), 5);
        System.out.println("| problem | seed | ends | breaks, bound | points, bound | least whatever breaks | gap |"
                + " CPU s | Msteps |");
        System.out.println("|---|---|---|---|---|---|---|---|---|");
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
        double startS = processorS();
        ExactResult result = OurRun.result(of.problem(), capS);
        double usedS = processorS() - startS;
        Cost cost = result.cost();
        Cost bound = result.bound();
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %s | %d, %d | %.4f, %.4f | %.4f | %s | %.2f | %d |%n",
                of.name(),
                of.seed(),
                result.ending(),
                cost.toldBreaks(),
                bound.toldBreaks(),
                cost.micropoints() / 1e6,
                bound.micropoints() / 1e6,
                result.leastMicropoints() / 1e6,
                gap(cost, bound),
                usedS,
                result.steps() / 1_000_000);
    }

    private static String gap(Cost cost, Cost bound) {
        return cost.toldBreaks() == bound.toldBreaks()
                ? String.format(Locale.ROOT, "%.3f %%", percent(cost.micropoints(), bound.micropoints()))
                : String.format(Locale.ROOT, "breaks %.2f %%", percent(cost.toldBreaks(), bound.toldBreaks()));
    }

    private static double percent(long found, long bound) {
        return 100.0 * (found - bound) / Math.max(1, found);
    }

    private static double processorS() {
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        return system.getProcessCpuTime() / NS_PER_S;
    }
}
