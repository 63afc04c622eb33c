package org.bagwright.workbook.ladder;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;
import org.bagwright.workbook.plan.PlanBlock;
import org.bagwright.workbook.plan.PlanLayout;
import org.bagwright.workbook.plan.PlanRow;
import org.bagwright.workbook.plan.PlanState;
import org.bagwright.workbook.schema.ResultSheet;
import org.bagwright.workbook.settings.SettingsSheet;

/**
 * The sheet Ladder: for each golfer a page with a table, charts of carries and of gaps, and a chart for each sleeve. To the
 * right of what is printed: how the carries answer to changes, and the numbers of the charts of sleeves.
 */
public final class LadderSheet {
    public static final String NAME = "Ladder";
    private static final double ROW_POINTS = 13;
    /** A golfer's rows where he has no charts. */
    private static final int LEAST_ROWS = 4;

    private final SheetPen pen;
    private final TablePen table;
    private final BookResult result;
    private final SettingsSheet settings;
    private final Units units;
    private final boolean hasCandidates;

    public LadderSheet(SheetPen pen, BookResult result, SettingsSheet settings) {
        this.pen = pen;
        this.result = result;
        this.settings = settings;
        this.units = result.book().settings().units();
        this.table = new TablePen(pen, units);
        this.hasCandidates = new PlanLayout(result).hasCandidates();
    }

    public void write() {
        table.title("Ladder", "Carries and gaps today, planned, and live from the sheet Plan. " + ResultSheet.REBUILT);
        int row = TablePen.HEADING_ROW;
        for (PlanBlock block : PlanBlock.all(result)) {
            row = golfer(block.bag(), row, block.firstRow());
            pen.sheet().setRowBreak(row - 1);
        }
        pen.print(PageSetup.landscape(-1, row - 1, LadderCharts.LAST_COLUMN));
    }

    /** Writes one golfer from a row on and gives the first free row. */
    private int golfer(BagResult bag, int row, int planRow) {
        List<SlotOptions> slots = bag.options().slots();
        List<Integer> carrying = IntStream.range(0, slots.size())
                .filter(index -> new PlanRow(bag, index).mayCarry())
                .boxed()
                .toList();
        int first = row + 2;
        int last = first + carrying.size() - 1;
        new LadderTable(pen, units, bag, hasCandidates, planRow).write(row + 1, carrying);
        widths();
        int tables = Math.max(last + 1, row + LEAST_ROWS);
        if (bag.outlook().isPresent() && !carrying.isEmpty()) {
            List<SlotOptions> shown = carrying.stream().map(slots::get).toList();
            tables = Math.max(tables, new OutlookTable(pen, units, bag.outlook().get()).write(shown, row));
        }
        int charts = carrying.size() > 1
                ? new LadderCharts(pen, units.distance(), bag, first, last).draw(row + 1)
                : last + 1;
        ClockPages clocks = new ClockPages(
                pen, row + 1 + LadderCharts.CARRY_ROWS, Math.max(charts, row + 1 + LadderCharts.PAGE_ROWS));
        List<ClockTable.Sleeved> sleeved = sleeved(bag, planRow);
        for (int index = 0; index < sleeved.size(); index++) {
            int end = new ClockTable(pen, settings, bag, sleeved.get(index)).write(row, index, clocks.next());
            tables = Math.max(tables, end);
        }
        table.band(row, LadderCharts.LAST_COLUMN, bag.golfer().name());
        int end = Math.max(tables, Math.max(charts, clocks.end()));
        heights(row, end);
        return end + 1;
    }

    private void widths() {
        for (int column = LadderCharts.FIRST_COLUMN; column <= LadderCharts.LAST_COLUMN; column++) {
            pen.width(column, LadderCharts.COLUMN_CHARS);
        }
    }

    /** The charts are as high as their rows, which programs would make of different heights. */
    private void heights(int first, int end) {
        for (int row = first; row < end; row++) {
            pen.usualHeight(row, ROW_POINTS);
        }
    }

    /** The clubs with a sleeve that are in the bag today or planned. */
    private static List<ClockTable.Sleeved> sleeved(BagResult bag, int planRow) {
        List<ClockTable.Sleeved> sleeved = new ArrayList<>();
        for (int index = 0; index < bag.options().slots().size(); index++) {
            PlanRow row = new PlanRow(bag, index);
            Set<Club> clubs = new LinkedHashSet<>();
            row.option(PlanState.TODAY).setup().map(ClubSetup::club).ifPresent(clubs::add);
            row.option(PlanState.PLANNED).setup().map(ClubSetup::club).ifPresent(clubs::add);
            for (Club club : clubs) {
                if (club.sleeve().isPresent()) {
                    sleeved.add(new ClockTable.Sleeved(club, index, planRow + index));
                }
            }
        }
        return sleeved;
    }
}
