package org.bagwright.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.bagwright.search.score.Compared;
import org.bagwright.search.score.Solved;

/** The results as two tables of Markdown: each size in one line for each solver, then every problem. */
final class BenchReport {
    static final String OURS = "ours";
    static final String CP_SAT = "CP-SAT";
    static final String ANNEALING = "annealing";
    static final String PLANNER = "OptaPlanner";
    private static final List<String> SOLVERS = List.of(OURS, CP_SAT, ANNEALING, PLANNER);

    private final List<Compared> results;
    private final StringBuilder text = new StringBuilder();

    private BenchReport(List<Compared> results) {
        this.results = results;
    }

    static String of(List<Compared> results) {
        BenchReport report = new BenchReport(results);
        report.sizes();
        report.near();
        report.referee();
        report.every();
        return report.text.toString();
    }

    private void line(String format, Object... numbers) {
        text.append(String.format(Locale.ROOT, format, numbers)).append('\n');
    }

    private void sizes() {
        line("## By size");
        line("");
        line(
                "| size | solver | runs | cap | more breaks than the best plan | best plan | proven |"
                        + " time to its best: median, worst | time to proof: median, worst | gap to the best bound: median, worst |");
        line("|---|---|---|---|---|---|---|---|---|---|");
        results.stream()
                .map(result -> result.of().name())
                .distinct()
                .forEach(size -> SOLVERS.forEach(solver -> size(size, solver)));
        line("");
    }

    private void size(String size, String solver) {
        List<Compared> runs = results.stream()
                .filter(result -> result.of().name().equals(size))
                .filter(result -> result.bySolver().containsKey(solver))
                .toList();
        if (runs.isEmpty()) {
            return;
        }
        List<Solved> found = runs.stream()
                .flatMap(run -> run.bySolver().get(solver).stream())
                .toList();
        long best = runs.stream()
                .filter(run -> run.bySolver().get(solver).stream()
                        .anyMatch(solved -> solved.cost().equals(run.best())))
                .count();
        long more = runs.stream()
                .filter(run -> run.bySolver().get(solver).stream().noneMatch(run::asFewBreaks))
                .count();
        DoubleStream gaps = runs.stream().flatMap(run -> gap(run, solver)).mapToDouble(x -> x);
        line(
                "| %s | %s | %d | %.0f s | %d | %d | %d | %s | %s | %s |",
                size,
                solver,
                runs.size(),
                solver.equals(OURS) || solver.equals(CP_SAT)
                        ? runs.get(0).capS()
                        : runs.get(0).othersCapS(),
                more,
                best,
                found.stream().filter(solved -> solved.provenS().isPresent()).count(),
                spread(found.stream().mapToDouble(Solved::bestS), "%.2f s"),
                spread(found.stream().flatMapToDouble(solved -> solved.provenS().stream()), "%.2f s"),
                spread(gaps, "%.3f %%"));
    }

    /** When each solver first came near the best plan that any of them found. */
    private void near() {
        line("## Time to a plan near the best");
        line("");
        line(
                "The best plan is the best that any solver found. Each cell gives in how many runs the solver came so near, and");
        line("the median and the worst of its times in these runs.");
        line("");
        line("| size | solver | runs | within 1 %% | within 0.1 %% | the best |");
        line("|---|---|---|---|---|---|");
        results.stream()
                .map(result -> result.of().name())
                .distinct()
                .forEach(size -> SOLVERS.forEach(solver -> near(size, solver)));
        line("");
    }

    private void near(String size, String solver) {
        List<Compared> runs = results.stream()
                .filter(result -> result.of().name().equals(size))
                .filter(result -> result.bySolver().containsKey(solver))
                .toList();
        if (!runs.isEmpty()) {
            line(
                    "| %s | %s | %d | %s | %s | %s |",
                    size, solver, runs.size(), near(runs, solver, 1), near(runs, solver, 0.1), near(runs, solver, 0));
        }
    }

    private static String near(List<Compared> runs, String solver, double percent) {
        double[] timesS = runs.stream()
                .flatMapToDouble(run -> run.bySolver().get(solver).stream()
                        .flatMapToDouble(solved -> solved.withinS(run.best(), percent).stream()))
                .toArray();
        return timesS.length + ": " + spread(Arrays.stream(timesS), "%.2f s");
    }

    private static Stream<Double> gap(Compared run, String solver) {
        Optional<Solved> solved = run.bySolver().get(solver).filter(run::asFewBreaks);
        if (solved.isEmpty() || run.bestBound().isEmpty()) {
            return Stream.of();
        }
        return Stream.of(solved.orElseThrow().gapPercent(run.bestBound().getAsLong()));
    }

    private static String spread(DoubleStream numbers, String format) {
        double[] sorted = numbers.sorted().toArray();
        if (sorted.length == 0) {
            return "none";
        }
        return Arrays.stream(new double[] {sorted[sorted.length / 2], sorted[sorted.length - 1]})
                .mapToObj(number -> String.format(Locale.ROOT, format, number))
                .reduce((median, worst) -> median + ", " + worst)
                .orElseThrow();
    }

    private void referee() {
        List<Compared> both = results.stream()
                .filter(run ->
                        run.bySolver().containsKey(OURS) && run.bySolver().containsKey(CP_SAT))
                .toList();
        int[] counts = new int[3];
        int none = 0;
        for (Compared run : both) {
            Optional<Solved> theirs = run.bySolver().get(CP_SAT);
            Solved ours = run.bySolver().get(OURS).orElseThrow();
            if (theirs.isEmpty()) {
                none++;
            } else {
                counts[1 + Integer.signum(ours.cost().compareTo(theirs.get().cost()))]++;
            }
        }
        line("## Against CP-SAT's best plan");
        line("");
        line(
                "Of %d problems, ours is lower in %d, equal to the micropoint in %d, and higher in %d. CP-SAT finds no"
                        + " plan in time in %d.",
                both.size(), counts[0], counts[1], counts[2], none);
        line(
                "A bound of one solver is above a plan of another in %d (must be 0).",
                results.stream().filter(Compared::contradicts).count());
        line("");
    }

    private void every() {
        line("## Every problem");
        line("");
        line("Each cell gives the penalty in points, broken musts in thousandths in brackets if there are any, and then"
                + " the time to the proof or the last bound of the solver.");
        line("");
        line("| size | seed | %s |", String.join(" | ", SOLVERS));
        line("|---|---|---|---|---|---|");
        for (Compared run : results) {
            List<String> cells = new ArrayList<>();
            SOLVERS.forEach(solver -> cells.add(cell(run, solver)));
            line("| %s | %d | %s |", run.of().name(), run.of().seed(), String.join(" | ", cells));
        }
    }

    private static String cell(Compared run, String solver) {
        if (!run.bySolver().containsKey(solver)) {
            return "not run";
        }
        return run.bySolver().get(solver).map(BenchReport::cell).orElse("no plan");
    }

    private static String cell(Solved solved) {
        String breaks = solved.cost().breaks() > 0 ? " (" + solved.cost().breaks() + ")" : "";
        String pieces = solved.cost().excess() > 0
                ? ", beyond the limits by " + solved.cost().excess()
                : "";
        String end = solved.provenS().isPresent()
                ? String.format(Locale.ROOT, ", proven %.2f s", solved.provenS().getAsDouble())
                : solved.boundMicropoints().isPresent()
                        ? String.format(
                                Locale.ROOT,
                                ", bound %.4f",
                                Math.max(0, solved.boundMicropoints().getAsLong()) / 1e6)
                        : "";
        String note = solved.note().isEmpty() ? "" : ", " + solved.note();
        return String.format(Locale.ROOT, "%.6f", solved.cost().micropoints() / 1e6) + breaks + pieces + end + note;
    }
}
