package org.bagwright.workbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.PlannedDemos;
import org.bagwright.ResultCells;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a screen of 1366 x 768 pixels shows of the sheet Plan of each demo, right after it is opened. */
@Tag("regression")
class CockpitTest {
    /** Pixels to a character of the book's letters in the program that draws them widest; others need 7 (measured). */
    private static final double PIXELS_PER_CHAR = 7.9;

    private static final double PIXELS_PER_POINT = 96 / 72.0;
    private static final double SCREEN_PIXELS = 1300;
    /** What menus, bars and tabs leave of the height of the screen (measured). */
    private static final double SCREEN_HEIGHT_PIXELS = 557;

    private static final int MOST_COLUMNS = 40;
    private static final int HEADING_ROW = 6;
    private static final List<String> COCKPIT = List.of(
            "Live club",
            "Pin",
            "Live loft [deg]",
            "Live lie [deg]",
            "Live sits [deg]",
            "Live carry [yd]",
            "Live gap [yd]",
            "Gap wish [yd]",
            "Live penalty",
            "Live fit",
            "Today set-up",
            "Today carry [yd]",
            "Today gap [yd]",
            "Plan set-up",
            "Plan carry [yd]",
            "Plan gap [yd]");

    private static XSSFWorkbook planned(String demo) throws Exception {
        return PlannedDemos.open(demo);
    }

    private static double pixels(XSSFSheet plan, int firstColumn, int endColumn) {
        return IntStream.range(firstColumn, endColumn)
                .filter(column -> !plan.isColumnHidden(column))
                .mapToDouble(column -> plan.getColumnWidth(column) / 256.0 * PIXELS_PER_CHAR)
                .sum();
    }

    private static int lastColumn(XSSFSheet plan) {
        return plan.getRow(HEADING_ROW).getLastCellNum() - 1;
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void cockpit_isWithinTheScreen(String demo) throws Exception {
        try (XSSFWorkbook book = planned(demo)) {
            XSSFSheet plan = book.getSheet("Plan");
            int chart = chart(plan).getCol1();
            assertTrue(pixels(plan, 0, chart + 1) <= SCREEN_PIXELS, "pixels: " + pixels(plan, 0, chart + 1));
            assertTrue(pixels(plan, chart, chart + 1) >= 80, "a chart that can be read");
            for (String heading : COCKPIT) {
                int column = ResultCells.column(plan, heading);
                assertTrue(column < chart && !plan.isColumnHidden(column), heading);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void firstGolferWithHisTotalsAndChart_isWithinTheScreen(String demo) throws Exception {
        try (XSSFWorkbook book = planned(demo)) {
            XSSFSheet plan = book.getSheet("Plan");
            int last = chart(plan).getRow2() + 2;
            double pixels = IntStream.rangeClosed(0, last)
                    .filter(row -> plan.getRow(row) == null || !plan.getRow(row).getZeroHeight())
                    .mapToDouble(row -> plan.getRow(row) == null
                            ? plan.getDefaultRowHeightInPoints()
                            : plan.getRow(row).getHeightInPoints())
                    .sum();
            assertTrue(pixels * PIXELS_PER_POINT <= SCREEN_HEIGHT_PIXELS, "pixels: " + pixels * PIXELS_PER_POINT);
        }
    }

    /** The first chart, and that a line of it is next to each slot of the first golfer. */
    private static XSSFClientAnchor chart(XSSFSheet plan) {
        XSSFClientAnchor anchor = null;
        for (XSSFShape shape : plan.getDrawingPatriarch().getShapes()) {
            XSSFClientAnchor other = (XSSFClientAnchor) shape.getAnchor();
            anchor = anchor == null || other.getRow1() < anchor.getRow1() ? other : anchor;
        }
        assertEquals(ResultCells.slot(plan, 0).getRowNum(), anchor.getRow1());
        return anchor;
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void aGolferHasAChartOfHisOwn_withTodayPlanAndLive(String demo) throws Exception {
        try (XSSFWorkbook book = planned(demo)) {
            List<XSSFChart> charts = book.getSheet("Plan").getDrawingPatriarch().getCharts();
            assertEquals(golfers(book).size(), charts.size());
            for (XSSFChart chart : charts) {
                String xml = chart.getCTChart().xmlText();
                for (String series : List.of("Today", "Plan", "Live")) {
                    assertTrue(xml.contains(">" + series + "<"), series);
                }
            }
        }
    }

    private static Set<String> golfers(XSSFWorkbook book) {
        Set<String> golfers = new HashSet<>();
        book.getSheet("Settings").forEach(row -> {
            if (row.getRowNum() > 3 && row.getCell(0) != null) {
                golfers.add(row.getCell(0).getStringCellValue());
            }
        });
        return golfers;
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void fewColumnsAreShown_andNoHelpers(String demo) throws Exception {
        try (XSSFWorkbook book = planned(demo)) {
            XSSFSheet plan = book.getSheet("Plan");
            List<String> shown = new ArrayList<>();
            for (int column = 0; column <= lastColumn(plan); column++) {
                if (!plan.isColumnHidden(column)) {
                    shown.add(plan.getRow(HEADING_ROW).getCell(column).getStringCellValue());
                }
            }
            assertTrue(shown.size() <= MOST_COLUMNS, shown.size() + ": " + shown);
            int helpers = ResultCells.column(plan, "Today loft bend [deg]");
            for (int column = helpers; column <= lastColumn(plan); column++) {
                assertTrue(plan.isColumnHidden(column), "helper column " + column);
            }
            for (String closed :
                    List.of("Live launch [deg]", "Live total mass [g]", "Today setting", "Planned setting")) {
                int column = ResultCells.column(plan, closed);
                assertTrue(plan.isColumnHidden(column), closed);
                assertEquals(1, plan.getColumnOutlineLevel(column), closed);
            }
            assertEquals(demo.equals("team"), shown.contains("Golfer"), "only where there are several");
            assertEquals(demo.equals("team"), plan.getCTWorksheet().isSetAutoFilter(), "to pick a golfer");
            assertEquals(!demo.equals("trio"), shown.contains("Live weighting"));
            assertEquals(!demo.equals("trio"), shown.contains("Live loft bend [deg]"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void theBookOpensOnPlan_atItsFirstChoiceCell(String demo) throws Exception {
        try (XSSFWorkbook book = planned(demo)) {
            XSSFSheet plan = book.getSheet("Plan");
            assertEquals(book.getSheetIndex(plan), book.getActiveSheetIndex());
            Cell first = ResultCells.slot(plan, 0).getCell(ResultCells.column(plan, "Live setting"));
            assertEquals(first.getAddress(), plan.getActiveCell());
            assertFalse(first.getCellStyle().getLocked());
            assertTrue(plan.getDataValidations().stream()
                    .anyMatch(validation ->
                            validation.getRegions().getCellRangeAddresses()[0].isInRange(first)));
            assertEquals(HEADING_ROW + 1, plan.getPaneInformation().getHorizontalSplitPosition());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void choiceCells_haveAFrameThatOtherCellsToFillInHaveNot(String demo) throws Exception {
        try (XSSFWorkbook book = planned(demo)) {
            Cell choice = ResultCells.plan(book, 0, "Live setting");
            Cell wish = ResultCells.plan(book, 0, "Loft target [deg]");
            assertEquals(BorderStyle.MEDIUM, choice.getCellStyle().getBorderTop());
            assertNotEquals(BorderStyle.MEDIUM, wish.getCellStyle().getBorderTop());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void everyTextOfTheTopRows_hasARowHighEnough(String demo) throws Exception {
        try (XSSFWorkbook book = planned(demo)) {
            XSSFSheet plan = book.getSheet("Plan");
            for (int row = 0; row <= HEADING_ROW; row++) {
                if (plan.getRow(row).getZeroHeight()) {
                    continue;
                }
                for (Cell cell : plan.getRow(row)) {
                    boolean shown = !plan.isColumnHidden(cell.getColumnIndex())
                            && cell.getCellType() != CellType.BLANK
                            && !cell.toString().isEmpty();
                    double letters =
                            book.getFontAt(cell.getCellStyle().getFontIndex()).getFontHeightInPoints();
                    assertTrue(
                            !shown || plan.getRow(row).getHeightInPoints() >= 1.25 * letters,
                            cell.getAddress() + ": " + cell);
                }
            }
        }
    }
}
