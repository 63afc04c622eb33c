package org.bagwright.search;

import com.google.ortools.Loader;
import com.google.ortools.init.OrToolsVersion;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bagwright.search.exact.AnnealingRun;
import org.bagwright.search.exact.BenchCase;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.planner.OurRun;
import org.bagwright.search.planner.PlannerRun;
import org.bagwright.search.score.Compared;
import org.bagwright.search.score.Solved;
import org.optaplanner.core.api.solver.SolverFactory;

/**
 * Our search, CP-SAT and OptaPlanner with default moves on the same problems, one after the other.
 *
 * <p>Arguments {@code name=value}: {@code sizes} (of 3, 14, 12x14, 40x14), {@code bags} (how many full bags),
 * {@code capS} (for our search and CP-SAT on each bag), {@code othersCapS} (for annealing and OptaPlanner, at most), {@code teamCapS} (for the team of 12 and that of 40), {@code plannerBags}
 * (on how many of the bags OptaPlanner runs too), {@code solvers} ({@code all} or {@code ours}), {@code out} (the file, or nothing to print only).
 */
public final class SearchBench {
    private static final int SMALL_BAGS = 5;
    private static final double SMALL_CAP_S = 5;

    private static final Map<String, String> USUAL = Map.of(
            "sizes", "3,14,12x14,40x14",
            "bags", "30",
            "capS", "60",
            "othersCapS", "20",
            "teamCapS", "20,60",
            "plannerBags", "5",
            "solvers", "all",
            "out", "src/docs/bench-search.md");

    private final Map<String, String> given = new HashMap<>(USUAL);
    private final List<Compared> results = new ArrayList<>();
    private final double load =
            Math.max(0, ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());

    private SearchBench(String[] args) {
        for (String arg : args) {
            String[] parts = arg.split("=", 2);
            given.put(parts[0], parts[1]);
        }
    }

    public static void main(String[] args) throws IOException {
        Loader.loadNativeLibraries();
        SearchBench bench = new SearchBench(args);
        bench.warmUp();
        bench.run();
        bench.write();
    }

    /** So that no solver pays for what only the first run of a process needs. */
    private void warmUp() {
        ExactProblem problem = BenchCase.three(1000).problem();
        OurRun.solve(problem, new SearchLimits(1, 1));
        CpSatRun.solve(problem, 1, 5);
        PlannerRun.solve(problem, 1, 1);
        AnnealingRun.solve(problem, 1, 1);
        OurRun.solve(BenchCase.bag(1000).problem(), new SearchLimits(1, 5));
    }

    private void run() {
        List<String> sizes = Arrays.asList(given.get("sizes").split(","));
        double capS = Double.parseDouble(given.get("capS"));
        String[] teamCapS = given.get("teamCapS").split(",");
        if (sizes.contains("3")) {
            for (int seed = 0; seed < SMALL_BAGS; seed++) {
                compare(BenchCase.three(seed), Math.min(SMALL_CAP_S, capS), true);
            }
        }
        if (sizes.contains("14")) {
            for (int seed = 0; seed < number("bags"); seed++) {
                compare(BenchCase.bag(seed), capS, seed < number("plannerBags"));
            }
        }
        if (sizes.contains("12x14")) {
            compare(BenchCase.team(0, 12), Double.parseDouble(teamCapS[0]), true);
        }
        if (sizes.contains("40x14")) {
            compare(BenchCase.team(0, 40), Double.parseDouble(teamCapS[1]), true);
        }
    }

    private int number(String name) {
        return Integer.parseInt(given.get(name));
    }

    private void compare(BenchCase of, double capS, boolean planner) {
        Map<String, Optional<Solved>> bySolver = new LinkedHashMap<>();
        bySolver.put(
                BenchReport.OURS,
                Optional.of(
                        OurRun.solve(of.problem(), new SearchLimits(1, capS)).solved()));
        boolean others = given.get("solvers").equals("all");
        double othersCapS = Math.min(capS, Double.parseDouble(given.get("othersCapS")));
        if (others) {
            bySolver.put(BenchReport.CP_SAT, CpSatRun.solve(of.problem(), of.seed(), capS));
        }
        if (others) {
            bySolver.put(BenchReport.ANNEALING, Optional.of(AnnealingRun.solve(of.problem(), of.seed(), othersCapS)));
        }
        if (others && planner) {
            bySolver.put(BenchReport.PLANNER, Optional.of(PlannerRun.solve(of.problem(), of.seed(), othersCapS)));
        }
        results.add(new Compared(of, capS, othersCapS, bySolver));
        System.out.println(of.name() + ", seed " + of.seed());
        bySolver.forEach((solver, solved) -> System.out.println("  " + solver + ": "
                + solved.map(found -> found.cost() + " at " + found.bestS() + " s, proven " + found.provenS())
                        .orElse("no plan")));
    }

    private void write() throws IOException {
        String page = head() + BenchReport.of(results);
        System.out.println(page);
        if (!given.get("out").isEmpty()) {
            Files.writeString(Path.of(given.get("out")), page);
        }
    }

    private String head() {
        return """
                # The search against others

                This page compares our search with CP-SAT (OR-Tools %s, two workers), plain simulated annealing
                (one thread) and OptaPlanner (%s, our constraints, its default construction heuristic and local search,
                one thread). They run one after the other, on the same seeded problems, in one run. Two cores, with a
                load of %.0f at the start (above 0: shared with other work), Java %s, %s. This command writes the page:

                    mvn -q -Pbench test-compile exec:java -Dexec.classpathScope=test \\
                        -Dexec.mainClass=org.bagwright.search.SearchBench \\
                        -Dexec.args="bags=%s capS=%s othersCapS=%s teamCapS=%s plannerBags=%s sizes=%s"

                Without arguments it runs 30 full bags with 60 s for CP-SAT on each and 20 s for annealing, and
                20 s for OptaPlanner on five: 30 to 50 minutes in all. A plan of ours is proven by the exact search,
                and its score is checked by separate sums.

                All solve the same problem. They start from the same options with the same numbers, and one plain
                sum that none of them uses prices every plan.

                - Ours: the program's own solver, from construction to proof.
                - Annealing: one slot at a time takes a random option; the temperature falls from 30 to 0.01 points over the
                  whole time.
                - OptaPlanner: the options become clubs of a book. The program checks that the same options come
                  back.
                - CP-SAT: each option is a yes or no, exactly one in each slot. Carries are rounded to about 0.1 mm
                  and matched numbers to 0.00007 points; then the square of a gap or of a spread is an exact product
                  of whole numbers. Squares about the mean are n times the sum of squares minus the square of the
                  sum, over n, with one constraint for each n where it varies. Stock, most changes and most clubs are
                  constraints. It first looks for the fewest broken musts, in at most half of the time, and then for
                  the lowest penalty with no more of them. Of all plans that it finds, it keeps the one that is truly
                  best.

                The bound of CP-SAT on this page is its own bound minus the largest effect of the rounding. So it holds
                for the true penalty, except for a plan that meets a must by less than the rounding, which CP-SAT can
                rule out. Its "proven" is for its rounded numbers. One family of its presolve rules is off: with it,
                this version calls plans best that are not (or-tools issue 5293).

                """
                .formatted(
                        OrToolsVersion.getVersionString(),
                        SolverFactory.class.getPackage().getImplementationVersion(),
                        load,
                        Runtime.version().feature(),
                        LocalDate.now(),
                        given.get("bags"),
                        given.get("capS"),
                        given.get("othersCapS"),
                        given.get("teamCapS"),
                        given.get("plannerBags"),
                        given.get("sizes"));
    }
}
