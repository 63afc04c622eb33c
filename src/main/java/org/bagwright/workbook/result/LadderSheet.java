package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.CarryBand;
import org.bagwright.domain.units.DistanceUnit;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.BookChart;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SeriesLook;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.plan.PlanLayout;
import org.bagwright.workbook.plan.PlanRow;
import org.bagwright.workbook.plan.PlanSheet;
import org.bagwright.workbook.plan.PlanState;
import org.bagwright.workbook.plan.SettingsSheet;
import org.bagwright.workbook.schema.ResultSheets;

/** The sheet Ladder: for each golfer a table and two charts, of carries and of gaps, and a chart for each sleeve. */
final class LadderSheet {
    static final String NAME = "Ladder";
    /** Rows that one golfer's charts need at least. */
    private static final int BLOCK_ROWS = 44;

    private static final int CHART_COLUMN = 10;

    private final SheetPen pen;
    private final SettingsSheet settings;
    private final DistanceUnit distance;
    private final OutlookTable outlooks;
    private final boolean hasCandidates;

    private LadderSheet(SheetPen pen, SettingsSheet settings, Units units, boolean hasCandidates) {
        this.pen = pen;
        this.settings = settings;
        this.distance = units.distance();
        this.outlooks = new OutlookTable(pen, units);
        this.hasCandidates = hasCandidates;
    }

    static void write(XSSFWorkbook workbook, BookStyles styles, BookResult result, SettingsSheet settings) {
        SheetPen pen = new SheetPen(workbook.getSheet(NAME), styles);
        boolean hasCandidates = new PlanLayout(result).hasCandidates();
        LadderSheet ladder =
                new LadderSheet(pen, settings, result.book().settings().units(), hasCandidates);
        pen.text(0, 0, Role.TITLE, "Ladder");
        pen.text(
                1,
                0,
                Role.FAINT,
                "Carries and gaps today, planned, and live from the sheet Plan. " + ResultSheets.MADE_ANEW);
        int row = 3;
        int planRow = PlanSheet.FIRST_ROW;
        for (BagResult bag : result.bags()) {
            int end = Math.max(ladder.golfer(bag, row, planRow), row + BLOCK_ROWS);
            row = ladder.clocks(bag, end, planRow) + 1;
            planRow += bag.options().slots().size();
            pen.sheet().setRowBreak(row - 1);
        }
        pen.print(PageSetup.landscape(-1, row - 2, CHART_COLUMN + 10));
    }

    private int golfer(BagResult bag, int row, int planRow) {
        pen.text(row, 0, Role.GROUP, bag.golfer().name());
        for (int column = 1; column < CHART_COLUMN + 10; column++) {
            pen.blank(row, column, Role.GROUP);
        }
        List<SlotOptions> slots = bag.options().slots();
        List<Integer> carrying = IntStream.range(0, slots.size())
                .filter(index -> new PlanRow(bag, index).mayCarry())
                .boxed()
                .toList();
        new LadderTable(pen, distance, bag, hasCandidates, planRow).write(row + 1, carrying);
        pen.width(CHART_COLUMN, 20);
        int first = row + 2;
        int last = first + carrying.size() - 1;
        if (carrying.size() > 1) {
            charts(bag, row, first, last);
        }
        return bag.outlook().isPresent() && !carrying.isEmpty()
                ? outlooks.write(
                        bag.outlook().get(), carrying.stream().map(slots::get).toList(), last + 2)
                : last + 1;
    }

    /** The settings of every club with a sleeve, two beside each other, six on a page; gives the first free row. */
    private int clocks(BagResult bag, int row, int planRow) {
        List<ClockTable.Shown> sleeved = sleeved(bag, planRow);
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
    private static List<ClockTable.Shown> sleeved(BagResult bag, int planRow) {
        List<ClockTable.Shown> sleeved = new ArrayList<>();
        for (int index = 0; index < bag.options().slots().size(); index++) {
            PlanRow row = new PlanRow(bag, index);
            Set<Club> clubs = new LinkedHashSet<>();
            row.option(PlanState.TODAY).setup().map(ClubSetup::club).ifPresent(clubs::add);
            row.option(PlanState.PLANNED).setup().map(ClubSetup::club).ifPresent(clubs::add);
            for (Club club : clubs) {
                if (club.sleeve().isPresent()) {
                    sleeved.add(new ClockTable.Shown(club, index, planRow + index));
                }
            }
        }
        return sleeved;
    }

    private int clock(BagResult bag, ClockTable.Shown shown, ClockTable.Place place, int row) {
        return new ClockTable(pen, settings, bag, shown, place).write(row);
    }

    private void charts(BagResult bag, int row, int first, int last) {
        String name = bag.golfer().name();
        BookChart carries = new BookChart(pen.sheet(), CHART_COLUMN, row + 1, 10, 21);
        carries.title("Carry by club, " + name);
        carries.axes("Club", "Carry [" + distance.label() + "]");
        carries.startAt(axisStart(bag));
        carryLines(carries, bag, first, last);
        BookChart gaps = new BookChart(pen.sheet(), CHART_COLUMN, row + 23, 10, 21);
        gaps.title("Gap to the next club, " + name);
        gaps.axes("From club to club", "Gap [" + distance.label() + "]");
        gaps.columns(series(first, last - 1, LadderTable.GAP_NAME_COLUMN, LadderTable.GAP_COLUMN));
        gaps.line(new BookChart.Series(
                "Wish", first, last - 1, LadderTable.GAP_NAME_COLUMN, LadderTable.GAP_COLUMN + 3, SeriesLook.WISH));
    }

    /** A blank is drawn as 0 by some programs: points alone then stay out of sight below the axis, a line would not. */
    private static void carryLines(BookChart chart, BagResult bag, int first, int last) {
        boolean mayBeBlank = bag.options().slots().stream().anyMatch(SlotOptions::hasCandidates);
        List<BookChart.Series> series = series(first, last, 0, LadderTable.CARRY_COLUMN);
        if (bag.outlook().isPresent()) {
            int low = last + 2 + OutlookTable.rowsAbove();
            int high = low + last - first;
            series.add(new BookChart.Series("Band low", low, high, 0, OutlookTable.LOW_COLUMN, SeriesLook.BAND));
            series.add(new BookChart.Series("Band high", low, high, 0, OutlookTable.HIGH_COLUMN, SeriesLook.BAND));
        }
        if (mayBeBlank) {
            chart.points(series);
        } else {
            chart.lines(series);
        }
    }

    /** A round number clearly below the shortest carry of any option and of single shots. */
    private double axisStart(BagResult bag) {
        DoubleStream optionsM = bag.options().slots().stream()
                .flatMap(club -> club.options().stream())
                .flatMapToDouble(option -> option.carryM().stream());
        DoubleStream bandsM =
                bag.outlook().map(BagOutlook::bands).orElse(List.of()).stream().mapToDouble(CarryBand::lowM);
        double leastM = DoubleStream.concat(optionsM, bandsM).min().orElse(0);
        return Math.max(0, Math.floor((distance.fromM(leastM) - 5) / 20) * 20);
    }

    private static List<BookChart.Series> series(int first, int last, int categoryColumn, int firstColumn) {
        List<BookChart.Series> series = new ArrayList<>();
        series.add(new BookChart.Series("Today", first, last, categoryColumn, firstColumn, SeriesLook.TODAY));
        series.add(new BookChart.Series("Planned", first, last, categoryColumn, firstColumn + 1, SeriesLook.PLANNED));
        series.add(new BookChart.Series("Live", first, last, categoryColumn, firstColumn + 2, SeriesLook.LIVE));
        return series;
    }
}
