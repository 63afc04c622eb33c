package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.pen.BookChart;
import org.bagwright.workbook.pen.SeriesLook;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.ResultSheet;

/** The sheet Steps: what each further change brings, golfer by golfer, as a table and as a curve. */
final class StepsSheet {
    static final String NAME = "Steps";
    static final int CHANGES = 0;
    static final int PENALTY = 1;
    static final int GAIN = 2;
    static final int UNEVENNESS = 3;
    static final int BREAKS = 4;
    static final int PLAN = 5;
    static final int FRESH = 6;
    static final int ALL = 7;

    private static final double FRESH_CHARS = 46;
    private static final double ALL_CHARS = 74;
    private static final int CHART_ROWS = 20;
    /** A longer table leaves no room for the chart on its page. */
    private static final double TABLE_OVER_CHART_POINTS = 200;

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
        table.finish(0, table.golfers(result.bags(), this::golfer), FRESH);
    }

    private void headings() {
        List<String> headings = List.of(
                "Changes allowed",
                "Penalty [points]",
                "Gain on the step before [points]",
                table.inDistance("Gap unevenness"),
                "Musts missed by [tolerances]",
                "The plan [points]",
                "New against the step before",
                "All that is done, compared with today");
        table.headings(TablePen.HEADING_ROW, headings, 42);
        table.widths(9, 9, 11, 11.5, 11.5, 12, FRESH_CHARS, ALL_CHARS);
    }

    private int golfer(BagResult bag, int row) {
        table.band(row, ALL, bag.golfer().name());
        if (bag.steps().isEmpty()) {
            pen.text(row + 1, 0, Role.PLAIN, "No steps were computed.");
            return row + 1;
        }
        int planned = planned(bag);
        int next = row + 1;
        for (int step = 0; step < bag.steps().size(); step++) {
            step(bag, next++, step, step == planned);
        }
        int last = next - 1;
        if (planned < 0) {
            pen.text(next++, 0, Role.FAINT, apart(bag));
        }
        return bag.steps().size() > 1 ? chart(bag, row + 1, last, next) : next;
    }

    private double heightPoints(int first, int last) {
        return IntStream.rangeClosed(first, last)
                .mapToDouble(row -> pen.sheet().getRow(row).getHeightInPoints())
                .sum();
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

    private void step(BagResult bag, int row, int index, boolean planned) {
        BagState state = bag.steps().get(index).state();
        double points = state.score().penaltyPoints();
        pen.number(row, CHANGES, Role.COUNT, "0", bag.steps().get(index).changes());
        pen.number(row, PENALTY, Role.NUMBER, TablePen.POINTS, points);
        table.distance(row, UNEVENNESS, Role.NUMBER, state.unevennessM());
        table.breaks(row, BREAKS, Role.COUNT, state.score().hardBreaks());
        if (planned) {
            pen.number(row, PLAN, Role.MARKED, "\"plan \"0.00", points);
        } else {
            pen.blank(row, PLAN, Role.CELL);
        }
        gain(bag, row, index);
        String all = done(bag, bag.today(), state) + TablePen.missed(bag.broken(state, result.book().settings()));
        pen.text(row, ALL, Role.TEXT, all);
    }

    /** What a step brings on the step before, and what is new in it. */
    private void gain(BagResult bag, int row, int index) {
        OptionalDouble gainPoints = OptionalDouble.empty();
        String fresh = "";
        if (index > 0) {
            BagState state = bag.steps().get(index).state();
            BagState before = bag.steps().get(index - 1).state();
            gainPoints = OptionalDouble.of(
                    before.score().penaltyPoints() - state.score().penaltyPoints());
            fresh = done(bag, before, state);
        }
        table.number(row, GAIN, Role.NUMBER, TablePen.SIGNED_POINTS, gainPoints);
        pen.text(row, FRESH, Role.CELL, fresh);
        pen.height(row, TablePen.heightPoints(fresh, FRESH_CHARS));
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

    /** Draws the curve of steps from a row to a row, below them, and gives the first free row. */
    private int chart(BagResult bag, int first, int last, int row) {
        if (heightPoints(first, last) > TABLE_OVER_CHART_POINTS) {
            pen.sheet().setRowBreak(row);
        }
        BookChart chart = new BookChart(pen.sheet(), 0, row + 1, FRESH + 1, CHART_ROWS - 1);
        chart.title("Penalty by number of changes, " + bag.golfer().name());
        chart.axes("Changes allowed", "Penalty [points]");
        double most = bag.steps().stream()
                .mapToDouble(step -> step.state().score().penaltyPoints())
                .max()
                .orElse(0);
        chart.valueFormat(most < 10 ? "0.0" : "0");
        chart.startAt(0);
        chart.lines(List.of(
                new BookChart.Series("Best for so many changes", first, last, CHANGES, PENALTY, SeriesLook.ALLOWED),
                new BookChart.Series("The plan", first, last, CHANGES, PLAN, SeriesLook.PLANNED)));
        return row + CHART_ROWS + 1;
    }
}
