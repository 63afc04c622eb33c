package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagScore;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.pen.BookChart;
import org.bagwright.workbook.pen.PageFill;
import org.bagwright.workbook.pen.SeriesLook;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;
import org.bagwright.workbook.schema.ResultSheet;

/** The sheet Steps: what each further change brings, golfer by golfer, as a table and as a curve. */
final class StepsSheet {
    static final String NAME = "Steps";
    private static final int CURVE = 0;
    static final int CHANGES = 1;
    static final int PENALTY = 2;
    static final int GAIN = 3;
    static final int UNEVENNESS = 4;
    static final int BREAKS = 5;
    static final int PLAN = 6;
    static final int FRESH = 7;
    static final int ALL = 8;

    private static final double CURVE_CHARS = 31;
    private static final double FRESH_CHARS = 33;
    private static final double ALL_CHARS = 74;
    private static final double CHART_POINTS = 140;
    private static final double ROW_POINTS = 13;
    /** Steps that bring less are shown together. */
    private static final double LITTLE_POINTS = 0.01;

    private final SheetPen pen;
    private final TablePen table;
    private final BookResult result;

    StepsSheet(SheetPen pen, BookResult result) {
        this.pen = pen;
        this.table = new TablePen(pen, result.book().settings().units());
        this.result = result;
    }

    void write() {
        table.title(
                NAME,
                "The best bag for each number of changes: which turn of the wrench helps most. " + ResultSheet.REBUILT);
        headings();
        table.finishUpright(0, table.golfers(result.bags(), FRESH, this::golfer), FRESH);
    }

    private void headings() {
        List<String> headings = List.of(
                "Penalty by number of changes",
                "Changes allowed",
                "Penalty [points]",
                "Gain on the step before [points]",
                table.inDistance("Gap unevenness"),
                "Musts missed by [tolerances]",
                "The plan [points]",
                "New against the step before",
                "All that is done, compared with today");
        table.headings(TablePen.HEADING_ROW, headings, 54);
        table.widths(CURVE_CHARS, 8.5, 8, 8, 10.5, 11.5, 11.5, FRESH_CHARS, ALL_CHARS);
    }

    private int golfer(BagResult bag, int row, PageFill page) {
        table.band(row, ALL, bag.golfer().name());
        if (bag.steps().isEmpty()) {
            pen.text(row + 1, 0, Role.PLAIN, "No steps are settled in the time.");
            return row + 1;
        }
        int first = row + 1;
        int next = first;
        for (Run run : runs(bag)) {
            run(bag, next++, run);
        }
        int last = next - 1;
        if (planned(bag) < 0) {
            pen.text(next++, CHANGES, Role.FAINT, apart(bag));
        }
        int charted = last > first ? chart(bag, first, last) : next;
        int end = Math.max(next, charted);
        page.mayDivide(row, charted, end);
        return end;
    }

    /** Steps that are shown on one line, by their places. */
    private record Run(int first, int last) {
        boolean isOne() {
            return first == last;
        }
    }

    /** Steps one by one, but those that bring next to nothing together; the plan always ends its line. */
    private static List<Run> runs(BagResult bag) {
        int planned = planned(bag);
        List<Run> runs = new ArrayList<>();
        for (int step = 0; step < bag.steps().size(); step++) {
            boolean joins = step > 0 && step - 1 != planned && isSmall(bag, step) && isSmall(bag, step - 1);
            runs.add(new Run(joins ? runs.remove(runs.size() - 1).first() : step, step));
        }
        return runs;
    }

    private static boolean isSmall(BagResult bag, int step) {
        if (step == 0) {
            return false;
        }
        BagScore before = bag.steps().get(step - 1).state().score();
        BagScore after = bag.steps().get(step).state().score();
        return before.hardBreaks() == after.hardBreaks()
                && Math.abs(before.penaltyPoints() - after.penaltyPoints()) < LITTLE_POINTS;
    }

    /** Which step is the plan; -1 if none is. */
    private static int planned(BagResult bag) {
        return IntStream.range(0, bag.steps().size())
                .filter(step -> bag.steps()
                        .get(step)
                        .state()
                        .chosen()
                        .equals(bag.planned().chosen()))
                .findFirst()
                .orElse(-1);
    }

    private static String apart(BagResult bag) {
        return "The plan, with a penalty of "
                + Numbers.fixed(bag.planned().score().penaltyPoints(), 2) + " points and "
                + bag.changesOf(bag.planned()) + " changes, is not one of these steps.";
    }

    private void run(BagResult bag, int row, Run run) {
        BagState state = bag.steps().get(run.last()).state();
        double points = state.score().penaltyPoints();
        pen.number(row, CHANGES, Role.COUNT, "0", bag.steps().get(run.last()).changes());
        pen.number(row, PENALTY, Role.NUMBER, TablePen.POINTS, points);
        table.distance(row, UNEVENNESS, Role.NUMBER, state.unevennessM());
        table.breaks(row, BREAKS, Role.COUNT, state.score().hardBreaks());
        if (run.last() == planned(bag)) {
            pen.number(row, PLAN, Role.MARKED, "\"plan \"0.00", points);
        } else {
            pen.blank(row, PLAN, Role.CELL);
        }
        gain(bag, row, run);
        String all = done(bag, bag.today(), state)
                + TablePen.missed(bag.broken(state, result.book().settings()));
        pen.text(row, ALL, Role.TEXT, all);
    }

    /** What the steps of a line bring on the step before, and what is new in them. */
    private void gain(BagResult bag, int row, Run run) {
        OptionalDouble gainPoints = OptionalDouble.empty();
        String fresh = "";
        if (run.first() > 0) {
            BagState state = bag.steps().get(run.last()).state();
            BagState before = bag.steps().get(run.first() - 1).state();
            gainPoints = OptionalDouble.of(
                    before.score().penaltyPoints() - state.score().penaltyPoints());
            fresh = (run.isOne() ? "" : little(bag, run)) + done(bag, before, state);
        }
        table.number(row, GAIN, Role.NUMBER, TablePen.SIGNED_POINTS, gainPoints);
        pen.text(row, FRESH, Role.CELL, fresh);
        pen.height(row, TablePen.heightPoints(fresh, FRESH_CHARS));
    }

    private static String little(BagResult bag, Run run) {
        return bag.steps().get(run.first()).changes() + " to "
                + bag.steps().get(run.last()).changes() + " changes bring less than 0.01 each: ";
    }

    private static String done(BagResult bag, BagState from, BagState to) {
        List<Option> before = bag.optionsOf(from);
        List<Option> after = bag.optionsOf(to);
        String done = IntStream.range(0, before.size())
                .mapToObj(slot -> new OptionChange(before.get(slot), after.get(slot)))
                .filter(change -> !change.isNone())
                .map(OptionChange::inWords)
                .collect(Collectors.joining("; "));
        return done.isEmpty() ? "nothing" : TablePen.arrows(done);
    }

    /** Draws the curve of steps to the left of them, and gives the first row below the curve. */
    private int chart(BagResult bag, int first, int last) {
        int end = first;
        for (double heightPoints = 0; heightPoints < CHART_POINTS; end++) {
            pen.usualHeight(end, ROW_POINTS);
            heightPoints += pen.sheet().getRow(end).getHeightInPoints();
        }
        BookChart chart = new BookChart(pen.sheet(), CURVE, first, 1, end - first);
        chart.title(bag.golfer().name());
        chart.axes("Changes allowed", "Penalty [points]");
        double most = bag.steps().stream()
                .mapToDouble(step -> step.state().score().penaltyPoints())
                .max()
                .orElse(0);
        chart.valueFormat(most < 10 ? "0.0" : "0");
        chart.startAt(0);
        chart.lines(List.of(
                new BookChart.Series("Best", first, last, CHANGES, PENALTY, SeriesLook.ALLOWED),
                new BookChart.Series("The plan", first, last, CHANGES, PLAN, SeriesLook.PLANNED)));
        return end;
    }
}
