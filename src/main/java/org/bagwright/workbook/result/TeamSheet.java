package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.plan.BagFigures;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.GapOutlook;
import org.bagwright.workbook.pen.BookChart;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SeriesLook;
import org.bagwright.workbook.pen.SheetBlock;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.ResultSheets;

/** The sheet Team: all golfers of a book beside each other, and the stock that they share. */
final class TeamSheet {
    static final String NAME = "Team";
    static final int HEADING_ROW = 3;

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
    static final int SURE = 11;

    private static final int STOCK_LAST = 4;
    private static final int CHART_ROWS = 20;

    private final SheetPen pen;
    private final SheetBlock block;
    private final BookResult result;

    private TeamSheet(SheetPen pen, BookResult result) {
        this.pen = pen;
        this.block = new SheetBlock(pen, result.book().settings().units());
        this.result = result;
    }

    static void write(XSSFWorkbook workbook, BookStyles styles, BookResult result) {
        SheetPen pen = new SheetPen(workbook.getSheet(NAME), styles);
        TeamSheet team = new TeamSheet(pen, result);
        pen.text(0, 0, Role.TITLE, NAME);
        pen.text(1, 0, Role.FAINT, "All golfers of this book, today and as planned. " + ResultSheets.MADE_ANEW);
        team.headings();
        int first = HEADING_ROW + 1;
        int next = first;
        for (BagResult bag : result.bags()) {
            team.golfer(next++, bag);
        }
        team.totals(next, first);
        int last = team.words(next + 1);
        team.chart(last + 2, first, next - 1);
        last = team.stock(last + 2 + CHART_ROWS + 1);
        pen.sheet().createFreezePane(1, HEADING_ROW + 1);
        pen.print(PageSetup.landscape(HEADING_ROW, last, SURE));
    }

    private void headings() {
        List<String> headings = List.of(
                "Golfer",
                "Hand",
                block.inDistance("Gap unevenness today"),
                block.inDistance("Gap unevenness planned"),
                "Worst miss today [tolerances]",
                "Worst miss planned [tolerances]",
                "Where planned",
                "Penalty today [points]",
                "Penalty planned [points]",
                "Changes [items]",
                "Head room [points]",
                "Sureness [%]");
        block.headings(HEADING_ROW, 0, headings, 42);
        block.widths(24, 9, 13, 13, 13, 13, 24, 10, 10, 10, 10, 10);
    }

    private void golfer(int row, BagResult bag) {
        pen.text(row, GOLFER, Role.TEXT, bag.golfer().name());
        pen.text(row, HAND, Role.COUNT, bag.golfer().hand().name().toLowerCase(Locale.ROOT));
        block.distance(row, UNEVEN_TODAY, Role.NUMBER, BagFigures.unevennessM(bag.today()));
        block.distance(row, UNEVEN_PLANNED, Role.NUMBER, BagFigures.unevennessM(bag.planned()));
        Optional<BagFigures.Miss> planned =
                BagFigures.worstMiss(bag, bag.planned(), result.book().aims());
        block.number(
                row,
                WORST_TODAY,
                Role.NUMBER,
                "0.0",
                size(BagFigures.worstMiss(bag, bag.today(), result.book().aims())));
        block.number(row, WORST_PLANNED, Role.NUMBER, "0.0", size(planned));
        pen.text(
                row,
                WORST_WHERE,
                Role.TEXT,
                planned.map(miss -> where(bag, miss)).orElse(""));
        pen.number(
                row,
                PENALTY_TODAY,
                Role.NUMBER,
                SheetBlock.POINTS,
                bag.today().score().penaltyPoints());
        pen.number(
                row,
                PENALTY_PLANNED,
                Role.NUMBER,
                SheetBlock.POINTS,
                bag.planned().score().penaltyPoints());
        pen.number(row, CHANGES, Role.NUMBER, "0", bag.changesOf(bag.planned()));
        block.number(row, HEAD_ROOM, Role.NUMBER, SheetBlock.POINTS, BagFigures.headRoomPoints(bag));
        block.number(row, SURE, Role.NUMBER, "0", surePercent(bag));
    }

    private static OptionalDouble size(Optional<BagFigures.Miss> miss) {
        return miss.stream().mapToDouble(BagFigures.Miss::toleranceRatio).findFirst();
    }

    private static String where(BagResult bag, BagFigures.Miss miss) {
        String club = bag.optionsOf(bag.planned()).get(miss.index()).clubText();
        String what = miss.measure().label();
        return miss.toleranceRatio() == 0
                ? "nothing off"
                : what.equals("gap") ? "gap after " + club : what + " of " + club;
    }

    private static OptionalDouble surePercent(BagResult bag) {
        return bag.outlook().flatMap(BagOutlook::leastSureGap).stream()
                .mapToDouble(GapOutlook::chanceRatio)
                .map(chance -> 100 * chance)
                .findFirst();
    }

    private void totals(int row, int first) {
        for (int column = 0; column <= SURE; column++) {
            pen.blank(row, column, Role.TOTAL);
        }
        pen.text(row, GOLFER, Role.TOTAL, "All " + (row - first));
        pen.number(row, PENALTY_TODAY, Role.TOTAL, SheetBlock.POINTS, result.todayPoints());
        pen.number(row, PENALTY_PLANNED, Role.TOTAL, SheetBlock.POINTS, result.plannedPoints());
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
                "Gap unevenness: root mean square of gap less wish. Worst miss: over loft, lie, sits, carry and gap.");
        pen.text(
                row + 1,
                0,
                Role.FAINT,
                "Head room: what the best single relaxation on the sheet Others would bring."
                        + " Sureness: the chance of the least sure gap.");
        return row + 1;
    }

    private void chart(int row, int first, int last) {
        BookChart chart = new BookChart(pen.sheet(), 0, row, WORST_WHERE + 2, CHART_ROWS);
        chart.title("Gap unevenness today and planned");
        chart.axes("Golfer", block.inDistance("Gap unevenness"));
        chart.valueFormat("0.0");
        chart.startAt(0);
        chart.columns(List.of(
                new BookChart.Series("Today", first, last, GOLFER, UNEVEN_TODAY, SeriesLook.TODAY),
                new BookChart.Series("Planned", first, last, GOLFER, UNEVEN_PLANNED, SeriesLook.PLANNED)));
    }

    /** The shared stock from a row on; gives the last row used. */
    private int stock(int row) {
        pen.text(row, 0, Role.GROUP, "Shared stock");
        for (int column = 1; column <= STOCK_LAST; column++) {
            pen.blank(row, column, Role.GROUP);
        }
        if (result.stock().isEmpty()) {
            pen.text(row + 1, 0, Role.PLAIN, "The book limits no stock.");
            return row + 1;
        }
        block.headings(
                row + 1, 0, List.of("Item", "Available", "Taken today", "Taken by the plan", "Left by the plan"), 30);
        for (int item = 0; item < result.stock().size(); item++) {
            item(row + 2 + item, item);
        }
        return row + 1 + result.stock().size();
    }

    private void item(int row, int item) {
        StockLimit limit = result.stock().get(item);
        int planned = result.taken(item, BagResult::planned);
        String words = limit.item().inWords();
        pen.text(row, 0, Role.CELL, words);
        pen.number(row, 1, Role.COUNT, "0", limit.available());
        pen.number(row, 2, Role.COUNT, "0", result.taken(item, BagResult::today));
        pen.number(row, 3, Role.COUNT, "0", planned);
        pen.number(row, 4, Role.COUNT, "0;-0;0", limit.available() - planned);
        pen.height(row, SheetBlock.heightPoints(words, 24));
    }
}
