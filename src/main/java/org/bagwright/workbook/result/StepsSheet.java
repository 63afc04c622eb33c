package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagFigures;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.plan.Step;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.pen.BookChart;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SeriesLook;
import org.bagwright.workbook.pen.SheetBlock;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.ResultSheets;

/** The sheet Steps: what each further change brings, golfer by golfer, as a table and as a curve. */
final class StepsSheet {
    static final String NAME = "Steps";
    static final int HEADING_ROW = 3;

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
    private static final double TABLE_BESIDE_CHART_POINTS = 200;

    private final SheetPen pen;
    private final SheetBlock block;

    private StepsSheet(SheetPen pen, SheetBlock block) {
        this.pen = pen;
        this.block = block;
    }

    static void write(XSSFWorkbook workbook, BookStyles styles, BookResult result) {
        SheetPen pen = new SheetPen(workbook.getSheet(NAME), styles);
        SheetBlock block = new SheetBlock(pen, result.book().settings().units());
        StepsSheet steps = new StepsSheet(pen, block);
        pen.text(0, 0, Role.TITLE, NAME);
        pen.text(
                1,
                0,
                Role.FAINT,
                "The best bag with at most so many changes: which turn of the wrench brings most. "
                        + ResultSheets.MADE_ANEW);
        steps.headings();
        int row = HEADING_ROW + 1;
        for (BagResult bag : result.bags()) {
            row = steps.golfer(bag, row) + 1;
            pen.sheet().setRowBreak(row - 1);
        }
        pen.sheet().createFreezePane(0, HEADING_ROW + 1);
        pen.print(PageSetup.landscape(HEADING_ROW, row - 2, FRESH));
    }

    private void headings() {
        List<String> headings = List.of(
                "Changes allowed",
                "Penalty [points]",
                "Gain on the step before [points]",
                block.inDistance("Gap unevenness"),
                "Musts missed by [tolerances]",
                "The plan [points]",
                "New against the step before",
                "All that is done, compared with today");
        block.headings(HEADING_ROW, 0, headings, 42);
        block.widths(9, 9, 11, 11.5, 11.5, 12, FRESH_CHARS, ALL_CHARS);
    }

    /** Writes one golfer from a row on and gives the last row used. */
    private int golfer(BagResult bag, int row) {
        block.band(row, ALL, bag.golfer().name());
        if (bag.steps().isEmpty()) {
            pen.text(row + 1, 0, Role.PLAIN, "No steps were computed.");
            return row + 1;
        }
        int first = row + 1;
        int planned = planned(bag);
        for (int step = 0; step < bag.steps().size(); step++) {
            step(bag, first + step, step, step == planned);
        }
        int last = first + bag.steps().size() - 1;
        int next = last + 1;
        if (planned < 0) {
            pen.text(next++, 0, Role.FAINT, apart(bag));
        }
        if (bag.steps().size() > 1) {
            if (heightPoints(first, last) > TABLE_BESIDE_CHART_POINTS) {
                pen.sheet().setRowBreak(next);
            }
            chart(bag, next + 1, first, last);
            next += CHART_ROWS + 1;
        }
        return next;
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
                + bag.changesOf(bag.planned()) + " changes, is none of these steps.";
    }

    private void step(BagResult bag, int row, int index, boolean planned) {
        Step step = bag.steps().get(index);
        double points = step.state().score().penaltyPoints();
        pen.number(row, CHANGES, Role.COUNT, "0", step.changes());
        pen.number(row, PENALTY, Role.NUMBER, SheetBlock.POINTS, points);
        block.distance(row, UNEVENNESS, Role.NUMBER, BagFigures.unevennessM(step.state()));
        block.breaks(row, BREAKS, Role.COUNT, step.state().score().hardBreaks());
        if (planned) {
            pen.number(row, PLAN, Role.MARKED, "\"plan \"0.00", points);
        } else {
            pen.blank(row, PLAN, Role.CELL);
        }
        String fresh = "";
        if (index == 0) {
            pen.blank(row, GAIN, Role.NUMBER);
        } else {
            BagState before = bag.steps().get(index - 1).state();
            double gain = before.score().penaltyPoints() - points;
            pen.number(row, GAIN, Role.NUMBER, SheetBlock.SIGNED_POINTS, gain);
            fresh = done(bag, before, step.state());
        }
        String all = done(bag, bag.today(), step.state());
        pen.text(row, FRESH, Role.CELL, fresh);
        pen.text(row, ALL, Role.TEXT, all);
        pen.height(row, SheetBlock.heightPoints(fresh, FRESH_CHARS));
    }

    private static String done(BagResult bag, BagState from, BagState to) {
        List<Option> before = bag.optionsOf(from);
        List<Option> after = bag.optionsOf(to);
        String done = IntStream.range(0, before.size())
                .mapToObj(slot -> new OptionChange(before.get(slot), after.get(slot)))
                .filter(change -> !change.isNone())
                .map(OptionChange::inWords)
                .collect(Collectors.joining("; "));
        return done.isEmpty() ? "nothing" : SheetBlock.arrows(done);
    }

    private void chart(BagResult bag, int row, int first, int last) {
        BookChart chart = new BookChart(pen.sheet(), 0, row, FRESH + 1, CHART_ROWS - 1);
        chart.title("Penalty by number of changes, " + bag.golfer().name());
        chart.axes("Changes allowed", "Penalty [points]");
        double most = bag.steps().stream()
                .mapToDouble(step -> step.state().score().penaltyPoints())
                .max()
                .orElse(0);
        chart.valueFormat(most < 10 ? "0.0" : "0");
        chart.startAt(0);
        chart.lines(List.of(
                new BookChart.Series("Best with so many changes", first, last, CHANGES, PENALTY, SeriesLook.ALLOWED),
                new BookChart.Series("The plan", first, last, CHANGES, PLAN, SeriesLook.PLANNED)));
    }
}
