package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.bagwright.domain.book.Aim;
import org.bagwright.search.team.ExactSearch;

/** Times the exact search on full bags and teams; run by hand. */
public final class ExactTimes {
    private ExactTimes() {}

    public static void main(String[] args) {
        String what = args.length > 0 ? args[0] : "bags";
        int count = args.length > 1 ? Integer.parseInt(args[1]) : 30;
        int first = args.length > 2 ? Integer.parseInt(args[2]) : 0;
        switch (what) {
            case "bags" -> bags(count, first, new ExactInstances.Shape(9, 12, 3));
            case "fine" -> bags(count, first, new ExactInstances.Shape(17, 16, 4));
            case "team12" -> teams(count, first, 12, 20, true);
            case "team40" -> teams(count, first, 40, 60, true);
            case "team12-without-musts" -> teams(count, first, 12, 20, false);
            case "team40-without-musts" -> teams(count, first, 40, 60, false);
            case "spread-must" -> spreadMust(count, first);
            default -> throw new IllegalArgumentException(what);
        }
    }

    private static void bags(int count, int first, ExactInstances.Shape shape) {
        List<Double> times = new ArrayList<>();
        for (int seed = first; seed < first + count; seed++) {
            times.add(search("bag " + seed, ExactInstances.full(seed, shape), 60));
        }
        Collections.sort(times);
        System.out.printf(
                Locale.ROOT, "%s: median %.2f s, worst %.2f s%n", shape, times.get(count / 2), times.get(count - 1));
    }

    /** Full bags with a must on spread, which most cannot meet. */
    private static void spreadMust(int count, int first) {
        List<Double> times = new ArrayList<>();
        for (int seed = first; seed < first + count; seed++) {
            ExactProblem free = ExactInstances.full(seed, new ExactInstances.Shape(9, 12, 3));
            times.add(search("bag with a spread must " + seed, withMusts(free, false, true), 60));
        }
        Collections.sort(times);
        System.out.printf(Locale.ROOT, "median %.2f s, worst %.2f s%n", times.get(count / 2), times.get(count - 1));
    }

    private static ExactProblem withMusts(ExactProblem problem, boolean gap, boolean spread) {
        return new ExactProblem(
                problem.bags().stream()
                        .map(bag -> new ExactBag(
                                bag.slots(), bag.mostChanges(), with(bag.gapAim(), gap), with(bag.spreadAim(), spread)))
                        .toList(),
                problem.available());
    }

    private static Aim with(Aim aim, boolean must) {
        return new Aim(aim.measure(), aim.toleranceMeasureUnits(), aim.importancePoints(), must);
    }

    private static void teams(int count, int first, int bags, double capS, boolean musts) {
        for (int seed = first; seed < first + count; seed++) {
            ExactProblem team = ExactInstances.team(seed, bags, new ExactInstances.Shape(9, 12, 1 + seed % 6));
            search("team of " + bags + ", seed " + seed, musts ? team : withMusts(team, false, false), capS);
        }
    }

    private static double search(String name, ExactProblem problem, double capS) {
        SearchClock clock = new SearchClock(capS);
        ExactResult result = new ExactSearch(clock, 2).best(problem, Long.MAX_VALUE);
        double elapsedS = clock.elapsedS();
        print(name, result, elapsedS);
        return elapsedS;
    }

    private static void print(String name, ExactResult result, double elapsedS) {
        double gap = 100.0
                * (result.cost().micropoints() - result.bound().micropoints())
                / Math.max(1, result.cost().micropoints());
        System.out.printf(
                Locale.ROOT,
                "%s: %.2f s, %d Msteps, %s, pieces %d, breaks %d (%d), %.6f points, bound %.6f, gap %.4f %%%n",
                name,
                elapsedS,
                result.steps() / 1_000_000,
                result.ending(),
                result.cost().excess(),
                result.cost().breaks(),
                result.bound().breaks(),
                result.cost().micropoints() / 1e6,
                result.bound().micropoints() / 1e6,
                gap);
    }
}
