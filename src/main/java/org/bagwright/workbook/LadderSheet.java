package org.bagwright.workbook;

import static org.bagwright.workbook.BookStyles.Role;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.BagOutlook;
import org.bagwright.domain.BagResult;
import org.bagwright.domain.BagState;
import org.bagwright.domain.BookResult;
import org.bagwright.domain.CarryBand;
import org.bagwright.domain.DistanceUnit;
import org.bagwright.domain.GapTerm;
import org.bagwright.domain.SlotOptions;
import org.bagwright.domain.Units;

/** The sheet Ladder: for each golfer a table and two charts, of carries and of gaps. */
final class LadderSheet {
    static final String NAME = "Ladder";
    /** Rows that one golfer's charts need at least. */
    private static final int BLOCK_ROWS = 44;

    private static final int CHART_COLUMN = 10;
    private static final int CARRY_COLUMN = 1;
    private static final int GAP_COLUMN = 5;
    private static final int SURE_COLUMN = 9;

    private final SheetPen pen;
    private final SettingsSheet settings;
    private final DistanceUnit distance;
    private final OutlookTable outlooks;

    private LadderSheet(SheetPen pen, SettingsSheet settings, Units units) {
        this.pen = pen;
        this.settings = settings;
        this.distance = units.distance();
        this.outlooks = new OutlookTable(pen, units);
    }

    static void write(XSSFWorkbook workbook, BookStyles styles, BookResult result, SettingsSheet settings) {
        SheetPen pen = new SheetPen(workbook.getSheet(NAME), styles);
        LadderSheet ladder =
                new LadderSheet(pen, settings, result.book().settings().units());
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
        ResultSheets.printLandscape(pen.sheet(), -1, row - 2, CHART_COLUMN + 10);
    }

    private int golfer(BagResult bag, int row, int planRow) {
        pen.text(row, 0, Role.GROUP, bag.golfer().name());
        for (int column = 1; column < CHART_COLUMN + 10; column++) {
            pen.blank(row, column, Role.GROUP);
        }
        headings(row + 1);
        List<Integer> carrying = IntStream.range(0, bag.options().slots().size())
                .filter(index ->
                        bag.options().slots().get(index).today().carryM().isPresent())
                .boxed()
                .toList();
        int first = row + 2;
        for (int position = 0; position < carrying.size(); position++) {
            club(bag, first + position, carrying.get(position), planRow);
        }
        int last = first + carrying.size() - 1;
        if (carrying.size() > 1) {
            charts(bag, row, first, last);
        }
        return bag.outlook().isPresent() && !carrying.isEmpty()
                ? outlooks.write(bag.outlook().get(), last + 2)
                : last + 1;
    }

    /** The settings of every club with a sleeve, two beside each other, six on a page; gives the first free row. */
    private int clocks(BagResult bag, int row, int planRow) {
        List<Integer> sleeved = IntStream.range(0, bag.options().slots().size())
                .filter(index ->
                        bag.options().slots().get(index).main().sleeve().isPresent())
                .boxed()
                .toList();
        int next = row;
        for (int pair = 0; pair < sleeved.size(); pair += 2) {
            if (pair % 6 == 0) {
                pen.sheet().setRowBreak(next);
                next += 2;
            }
            int end = clock(bag, sleeved.get(pair), planRow, ClockTable.Place.LEFT, next);
            if (pair + 1 < sleeved.size()) {
                end = Math.max(end, clock(bag, sleeved.get(pair + 1), planRow, ClockTable.Place.RIGHT, next));
            }
            next = end;
        }
        return next;
    }

    private int clock(BagResult bag, int index, int planRow, ClockTable.Place place, int row) {
        return new ClockTable(pen, settings, bag, index, planRow + index, place).write(row);
    }

    private void headings(int row) {
        String unit = " [" + distance.label() + "]";
        List<String> headings = List.of(
                "Club",
                "Today carry" + unit,
                "Planned carry" + unit,
                "Live carry" + unit,
                "Gap between",
                "Today gap" + unit,
                "Planned gap" + unit,
                "Live gap" + unit,
                "Gap wish" + unit,
                "Planned gap sure [%]");
        double[] widths = {16, 8.5, 8.5, 8.5, 30, 8.5, 8.5, 8.5, 8.5, 8.5};
        for (int column = 0; column < widths.length; column++) {
            pen.heading(row, column, headings.get(column), widths[column]);
        }
        pen.width(CHART_COLUMN, 20);
        pen.height(row, 42);
    }

    private void club(BagResult bag, int row, int index, int planRow) {
        SlotOptions club = bag.options().slots().get(index);
        pen.text(row, 0, Role.TEXT, club.main().name());
        linked(row, CARRY_COLUMN, PlanColumn.TODAY_CARRY, planRow + index, carry(bag, bag.today(), index));
        linked(row, CARRY_COLUMN + 1, PlanColumn.PLANNED_CARRY, planRow + index, carry(bag, bag.planned(), index));
        linked(row, CARRY_COLUMN + 2, PlanColumn.LIVE_CARRY, planRow + index, carry(bag, bag.planned(), index));
        bag.today().gapAfter(index).ifPresent(gap -> gap(bag, row, gap, planRow + index));
    }

    private void gap(BagResult bag, int row, GapTerm today, int planRow) {
        GapTerm planned = bag.planned().gapAfter(today.fromIndex()).orElseThrow();
        String next = bag.options().slots().get(today.toIndex()).main().name();
        String from = bag.options().slots().get(today.fromIndex()).main().name();
        pen.text(row, GAP_COLUMN - 1, Role.TEXT, from + " \u2013 " + next);
        linked(row, GAP_COLUMN, PlanColumn.TODAY_GAP, planRow, distance.fromM(today.gapM()));
        linked(row, GAP_COLUMN + 1, PlanColumn.PLANNED_GAP, planRow, distance.fromM(planned.gapM()));
        linked(row, GAP_COLUMN + 2, PlanColumn.LIVE_GAP, planRow, distance.fromM(planned.gapM()));
        linked(row, GAP_COLUMN + 3, PlanColumn.GAP_WISH, planRow, distance.fromM(today.wishM()));
        bag.outlook().stream()
                .flatMap(outlook -> outlook.gaps().stream())
                .filter(gap -> gap.fromIndex() == today.fromIndex())
                .forEach(gap -> OutlookTable.chance(pen, row, SURE_COLUMN, gap));
    }

    private double carry(BagResult bag, BagState state, int index) {
        OptionalDouble carryM = bag.optionsOf(state).get(index).carryM();
        return distance.fromM(carryM.orElseThrow());
    }

    private void linked(int row, int column, PlanColumn from, int planRow, double cached) {
        pen.formula(row, column, Role.NUMBER, "0.0", PlanSheet.NAME + "!" + from.at(planRow), cached);
    }

    private void charts(BagResult bag, int row, int first, int last) {
        String name = bag.golfer().name();
        BookChart carries = new BookChart(pen.sheet(), CHART_COLUMN, row + 1, 10, 21);
        carries.title("Carry by club, " + name);
        carries.axes("Club", "Carry [" + distance.label() + "]");
        carries.startAt(axisStart(bag));
        carries.lines(carrySeries(bag, first, last));
        BookChart gaps = new BookChart(pen.sheet(), CHART_COLUMN, row + 23, 10, 21);
        gaps.title("Gap to the next club, " + name);
        gaps.axes("From club to club", "Gap [" + distance.label() + "]");
        List<BookChart.Series> columns = series(first, last - 1, GAP_COLUMN - 1, GAP_COLUMN);
        gaps.columns(columns);
        gaps.line(new BookChart.Series("Wish", first, last - 1, GAP_COLUMN - 1, GAP_COLUMN + 3, SeriesLook.WISH));
    }

    private static List<BookChart.Series> carrySeries(BagResult bag, int first, int last) {
        List<BookChart.Series> series = series(first, last, 0, CARRY_COLUMN);
        if (bag.outlook().isPresent()) {
            int low = last + 2 + OutlookTable.rowsAbove();
            int high = low + last - first;
            series.add(new BookChart.Series("Band low", low, high, 0, OutlookTable.LOW_COLUMN, SeriesLook.BAND));
            series.add(new BookChart.Series("Band high", low, high, 0, OutlookTable.HIGH_COLUMN, SeriesLook.BAND));
        }
        return series;
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
