package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.StripChart;
import org.bagwright.workbook.settings.SettingsSheet;

/**
 * The sheet Plan: each slot with its choice cells, what they cause, and the bag today and as planned. Totals are over the
 * table, a block of rows has one golfer, and everything that decides is on the first screen.
 */
public final class PlanSheet {
    public static final String NAME = "Plan";
    static final int BOOK_ROW = 1;
    static final int GOLFER_ROW = 2;
    static final int HEADING_ROW = 6;
    public static final int FIRST_ROW = HEADING_ROW + 1;
    /** The height of a row with one line of text. */
    static final double LINE_POINTS = 14.25;

    private final SheetPen pen;
    private final BookResult result;
    private final SettingsSheet settings;
    private final PlanLayout layout;
    private final List<PlanBlock> blocks;
    private final int lastRow;

    private PlanSheet(SheetPen pen, BookResult result, SettingsSheet settings) {
        this.pen = pen;
        this.result = result;
        this.settings = settings;
        this.layout = new PlanLayout(result);
        this.blocks = PlanBlock.all(result);
        this.lastRow = blocks.get(blocks.size() - 1).lastRow();
    }

    /** Writes the sheet, which comes before Settings but looks its numbers up there. */
    public static void write(SheetPen pen, BookResult result, SettingsSheet settings) {
        new PlanSheet(pen, result, settings).write();
    }

    private void write() {
        new PlanHeadings(pen, result, layout, HEADING_ROW).write();
        PlanVerdict verdict = new PlanVerdict(result);
        VerdictLine line = new VerdictLine(FIRST_ROW, lastRow, BOOK_ROW, result.stock());
        rows(line, verdict);
        new PlanTotals(pen, blocks, line, verdict).write();
        missing(line);
        int lastAim = new PlanAims(pen, result.book().settings())
                .write(result.book().aims(), blocks.get(blocks.size() - 1).endRow() + 1);
        blocks.forEach(this::chart);
        new PlanView(pen, layout, blocks).set(lastAim);
    }

    private void rows(VerdictLine line, PlanVerdict verdict) {
        PlanFormulas formulas = new PlanFormulas(settings, hasWildcards());
        PlanTermFormulas terms = new PlanTermFormulas(formulas);
        Units units = result.book().settings().units();
        for (PlanBlock block : blocks) {
            for (int index = 0; index < block.slots(); index++) {
                SlotOptions slot = block.bag().options().slots().get(index);
                PlanPlace place = new PlanPlace(block.firstRow() + index, block.firstRow(), block.lastRow(), slot);
                PlanRowPen row = new PlanRowPen(pen, formulas, units, place, new PlanRow(block.bag(), index));
                row(row, terms, span(block));
                new PlanRules(row, settings, line, verdict).write();
                pen.height(place.row(), LINE_POINTS);
            }
        }
    }

    /** How many pieces of each item of the stock are missing. */
    private void missing(VerdictLine line) {
        for (StockColumn column : StockColumn.all(result.stock())) {
            int missing = Math.max(
                    0,
                    result.taken(column.item(), PlanState.LIVE::of)
                            - column.limit().available());
            pen.formula(BOOK_ROW, column.index(), Role.NUMBER, "0", line.missing(column), missing);
        }
    }

    private boolean hasWildcards() {
        return result.bags().stream()
                .flatMap(bag -> bag.options().slots().stream())
                .flatMap(club -> club.options().stream())
                .anyMatch(option -> option.key().matches(".*[*?~].*"));
    }

    private void row(PlanRowPen row, PlanTermFormulas terms, double span) {
        new PlanWanted(row).write();
        new PlanChoiceCells(row, settings.lists()).write(row.values().pinned(result.book()));
        new PlanRowWriter(row, settings, terms).write();
        new PlanBuild(row).write();
        new GapMarks(row, span).write();
    }

    private double span(PlanBlock block) {
        return GapMarks.span(block.bag(), result.book().settings().units().distance());
    }

    /** Next to a golfer's slots, a line of the chart to a row of the table; a single club has no gaps. */
    private void chart(PlanBlock block) {
        if (IntStream.range(0, block.slots()).noneMatch(index -> new PlanRow(block.bag(), index).mayHaveGap())) {
            return;
        }
        List<StripChart.Marks> marks = List.of(
                marks("Live", PlanColumn.LIVE_OFF, PlanColumn.LIVE_LINE, StripChart.Look.LIVE),
                marks("Plan", PlanColumn.PLANNED_OFF, PlanColumn.PLANNED_LINE, StripChart.Look.PLAN),
                marks("Today, inside", PlanColumn.TODAY_OFF, PlanColumn.TODAY_LINE, StripChart.Look.HOLLOW),
                marks("Today", PlanColumn.TODAY_OFF, PlanColumn.TODAY_LINE, StripChart.Look.TODAY),
                marks("Tolerance below", PlanColumn.LEAST_OFF, PlanColumn.BAND_LINE, StripChart.Look.BAND),
                marks("Tolerance above", PlanColumn.MOST_OFF, PlanColumn.BAND_LINE, StripChart.Look.BAND));
        new StripChart(pen, PlanColumn.CHART.index(), block.firstRow(), block.lastRow()).draw(span(block), marks);
    }

    private static StripChart.Marks marks(String title, PlanColumn across, PlanColumn line, StripChart.Look look) {
        return new StripChart.Marks(title, across.index(), line.index(), look);
    }
}
