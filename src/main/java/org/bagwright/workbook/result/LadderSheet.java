package org.bagwright.workbook.result;

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
import org.bagwright.workbook.plan.PlanBlock;
import org.bagwright.workbook.plan.PlanLayout;
import org.bagwright.workbook.plan.PlanRow;
import org.bagwright.workbook.plan.PlanState;
import org.bagwright.workbook.settings.SettingsSheet;
import org.bagwright.workbook.schema.ResultSheet;

/** The sheet Ladder: for each golfer a table and two charts, of carries and of gaps, and a chart for each sleeve. */
final class LadderSheet {
    static final String NAME = "Ladder";
    /** Rows that one golfer's charts need at least. */
    private static final int BLOCK_ROWS = 44;

    private static final int LAST_COLUMN = LadderCharts.LAST_COLUMN;

    private final SheetPen pen;
    private final TablePen table;
    private final BookResult result;
    private final SettingsSheet settings;
    private final Units units;
    private final boolean hasCandidates;

    LadderSheet(SheetPen pen, BookResult result, SettingsSheet settings) {
        this.pen = pen;
        this.result = result;
        this.settings = settings;
        this.units = result.book().settings().units();
        this.table = new TablePen(pen, units);
        this.hasCandidates = new PlanLayout(result).hasCandidates();
    }

    void write() {
        table.title("Ladder", "Carries and gaps today, planned, and live from the sheet Plan. " + ResultSheet.REBUILT);
        int row = TablePen.HEADING_ROW;
        for (PlanBlock block : PlanBlock.all(result)) {
            BagResult bag = block.bag();
            int planRow = block.firstRow();
            int end = Math.max(golfer(bag, row, planRow), row + BLOCK_ROWS);
            row = clocks(bag, end, planRow) + 1;
            pen.sheet().setRowBreak(row - 1);
        }
        pen.print(PageSetup.landscape(-1, row - 2, LAST_COLUMN + 1));
    }

    private int golfer(BagResult bag, int row, int planRow) {
        table.band(row, LAST_COLUMN, bag.golfer().name());
        List<SlotOptions> slots = bag.options().slots();
        List<Integer> carrying = IntStream.range(0, slots.size())
                .filter(index -> new PlanRow(bag, index).mayCarry())
                .boxed()
                .toList();
        new LadderTable(pen, units, bag, hasCandidates, planRow).write(row + 1, carrying);
        pen.width(LadderCharts.FIRST_COLUMN, 20);
        int first = row + 2;
        int last = first + carrying.size() - 1;
        if (carrying.size() > 1) {
            new LadderCharts(pen, units.distance(), bag, first, last).draw(row + 1);
        }
        if (bag.outlook().isEmpty() || carrying.isEmpty()) {
            return last + 1;
        }
        List<SlotOptions> shown = carrying.stream().map(slots::get).toList();
        return new OutlookTable(pen, units, bag.outlook().get()).write(shown, last + 2);
    }

    /** The settings of every club with a sleeve, two in a row, six on a page; gives the first free row. */
    private int clocks(BagResult bag, int row, int planRow) {
        List<ClockTable.Sleeved> sleeved = sleeved(bag, planRow);
        int next = row;
        for (int pair = 0; pair < sleeved.size(); pair += 2) {
            if (pair % 6 == 0) {
                pen.sheet().setRowBreak(next);
                next += 2;
            }
            int end = clock(bag, sleeved.get(pair), ClockTable.Place.LEFT, next);
            if (pair + 1 < sleeved.size()) {
                end = Math.max(end, clock(bag, sleeved.get(pair + 1), ClockTable.Place.RIGHT, next));
            }
            next = end;
        }
        return next;
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

    private int clock(BagResult bag, ClockTable.Sleeved club, ClockTable.Place place, int row) {
        return new ClockTable(pen, settings, bag, club, place).write(row);
    }
}
