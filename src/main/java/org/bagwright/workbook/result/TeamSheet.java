package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.GapOutlook;
import org.bagwright.domain.text.ListText;
import org.bagwright.workbook.pen.BookChart;
import org.bagwright.workbook.pen.SeriesLook;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;
import org.bagwright.workbook.schema.ResultSheet;

/** The sheet Team: all golfers of a book, a row each, and the stock that they share. */
final class TeamSheet {
    static final String NAME = "Team";

    static final int GOLFER = 0;
    static final int HAND = 1;
    static final int UNEVEN_TODAY = 2;
    static final int UNEVEN_PLANNED = 3;
    static final int WORST_TODAY = 4;
    static final int WORST_PLANNED = 5;
    static final int WORST_WHERE = 6;
    static final int PENALTY_TODAY = 7;
    static final int PENALTY_PLANNED = 8;
    static final int CHANGES = 9;
    static final int HEAD_ROOM = 10;
    static final int GAP_CHANCE = 11;

    private static final int CHART_ROWS = 9;

    private final SheetPen pen;
    private final TablePen table;
    private final BookResult result;

    TeamSheet(SheetPen pen, BookResult result) {
        this.pen = pen;
        this.table = new TablePen(pen, result.book().settings().units());
        this.result = result;
    }

    void write() {
        table.title(NAME, "All golfers of this book, today and as planned. " + ResultSheet.REBUILT);
        headings();
        int first = TablePen.HEADING_ROW + 1;
        int next = first;
        for (BagResult bag : result.bags()) {
            golfer(next++, bag);
        }
        totals(next, first);
        int last = words(next + 1);
        chart(last + 2, first, next - 1);
        last = new StockTable(pen, table, result).write(last + 2 + CHART_ROWS + 1);
        table.finish(1, last, GAP_CHANCE);
    }

    private void headings() {
        List<String> headings = List.of(
                "Golfer",
                "Hand",
                table.inDistance("Gap unevenness today"),
                table.inDistance("Gap unevenness planned"),
                "Worst miss today [tolerances]",
                "Worst miss planned [tolerances]",
                "Where planned",
                "Penalty today [points]",
                "Penalty planned [points]",
                "Changes [items]",
                "Head room [points]",
                "Gap chance [%]");
        table.headings(TablePen.HEADING_ROW, headings, 42);
        table.widths(24, 9, 13, 13, 13, 13, 24, 10, 10, 10, 10, 10);
    }

    private void golfer(int row, BagResult bag) {
        pen.text(row, GOLFER, Role.TEXT, bag.golfer().name());
        pen.text(row, HAND, Role.COUNT, bag.golfer().hand().name().toLowerCase(Locale.ROOT));
        table.distance(row, UNEVEN_TODAY, Role.NUMBER, bag.today().unevennessM());
        table.distance(row, UNEVEN_PLANNED, Role.NUMBER, bag.planned().unevennessM());
        misses(row, bag);
        points(row, PENALTY_TODAY, bag.today());
        points(row, PENALTY_PLANNED, bag.planned());
        pen.number(row, CHANGES, Role.NUMBER, "0", bag.changesOf(bag.planned()));
        table.number(row, HEAD_ROOM, Role.NUMBER, TablePen.POINTS, bag.headRoomPoints());
        table.number(row, GAP_CHANCE, Role.NUMBER, "0", surePercent(bag));
    }

    private void misses(int row, BagResult bag) {
        WorstMiss today = new WorstMiss(bag, bag.today());
        WorstMiss planned = new WorstMiss(bag, bag.planned());
        boolean nothingOff = planned.toleranceRatio().equals(OptionalDouble.of(0));
        table.number(row, WORST_TODAY, Role.NUMBER, "0.0", today.toleranceRatio());
        table.number(row, WORST_PLANNED, Role.NUMBER, "0.0", planned.toleranceRatio());
        pen.text(row, WORST_WHERE, Role.TEXT, nothingOff ? "nothing off" : planned.where());
    }

    private void points(int row, int column, BagState state) {
        pen.number(row, column, Role.NUMBER, TablePen.POINTS, state.score().penaltyPoints());
    }

    private static OptionalDouble surePercent(BagResult bag) {
        return bag.outlook().flatMap(BagOutlook::leastSureGap).stream()
                .mapToDouble(GapOutlook::chanceRatio)
                .map(chance -> 100 * chance)
                .findFirst();
    }

    private void totals(int row, int first) {
        for (int column = 0; column <= GAP_CHANCE; column++) {
            pen.blank(row, column, Role.TOTAL);
        }
        pen.text(row, GOLFER, Role.TOTAL, "All " + (row - first));
        pen.number(row, PENALTY_TODAY, Role.TOTAL, TablePen.POINTS, result.todayPoints());
        pen.number(row, PENALTY_PLANNED, Role.TOTAL, TablePen.POINTS, result.plannedPoints());
        pen.number(
                row,
                CHANGES,
                Role.TOTAL,
                "0",
                result.bags().stream()
                        .mapToInt(bag -> bag.changesOf(bag.planned()))
                        .sum());
    }

    private int words(int row) {
        pen.text(
                row,
                0,
                Role.FAINT,
                "Gap unevenness: root mean square of gap minus wish. Worst miss: over "
                        + ListText.allOf(Arrays.stream(Measure.values())
                                .filter(Measure::canBeWorstMiss)
                                .map(Measure::label)
                                .toList())
                        + ".");
        pen.text(
                row + 1,
                0,
                Role.FAINT,
                "Head room: the gain from the best single relaxation on the sheet Others."
                        + " Gap chance: that of the least certain gap.");
        return row + 1;
    }

    private void chart(int row, int first, int last) {
        BookChart chart = new BookChart(pen.sheet(), 0, row, WORST_WHERE + 2, CHART_ROWS);
        chart.title("Gap unevenness today and planned");
        chart.axes("Golfer", table.inDistance("Gap unevenness"));
        chart.valueFormat("0.0");
        chart.startAt(0);
        chart.columns(List.of(
                new BookChart.Series("Today", first, last, GOLFER, UNEVEN_TODAY, SeriesLook.TODAY),
                new BookChart.Series("Planned", first, last, GOLFER, UNEVEN_PLANNED, SeriesLook.PLANNED)));
    }
}
