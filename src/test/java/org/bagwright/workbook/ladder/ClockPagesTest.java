package org.bagwright.workbook.ladder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.ChartPlace;
import org.bagwright.workbook.pen.SheetPen;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Charts of sleeves next to each other: none covers another or is cut by the end of a page. */
@Tag("analytic")
class ClockPagesTest {
    private static final int FIRST_ROW = 20;
    private static final int CHARTS = 40;

    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final XSSFSheet sheet = workbook.createSheet(LadderSheet.NAME);
    private final SheetPen pen = new SheetPen(sheet, new BookStyles(workbook));

    @AfterEach
    void close() throws Exception {
        workbook.close();
    }

    private static List<ChartPlace> places(ClockPages pages, int charts) {
        return IntStream.range(0, charts).mapToObj(chart -> pages.next()).toList();
    }

    private static boolean overlap(ChartPlace one, ChartPlace other) {
        return Math.abs(one.row() - other.row()) < one.rows()
                && (one.columns() != other.columns() || one.part() == other.part());
    }

    /** The chart of gaps ends above, at or far below the carries. */
    @ParameterizedTest
    @ValueSource(ints = {FIRST_ROW, FIRST_ROW + 12, FIRST_ROW + 25, FIRST_ROW + 60})
    void manySleeves_coverNothingAndAreNotCut(int endOfPage) {
        ClockPages pages = new ClockPages(pen, FIRST_ROW, endOfPage);
        List<ChartPlace> places = places(pages, CHARTS);
        for (int chart = 0; chart < CHARTS; chart++) {
            ChartPlace place = places.get(chart);
            assertTrue(place.row() >= FIRST_ROW && place.part() >= 0 && place.part() < place.parts(), place.toString());
            for (ChartPlace other : places.subList(0, chart)) {
                assertFalse(overlap(place, other), place + " covers " + other);
            }
            for (int cut : sheet.getRowBreaks()) {
                assertFalse(place.row() <= cut && cut < place.row() + place.rows() - 1, place + " cut at " + cut);
            }
            boolean underCarries = place.column() > 0;
            assertTrue(
                    underCarries ? place.row() + place.rows() <= endOfPage : place.row() > endOfPage, place.toString());
        }
        ChartPlace last = places.get(CHARTS - 1);
        assertEquals(last.row() + last.rows(), pages.end());
    }

    @Test
    void pagesOfTheirOwn_haveThreeLinesOfFive() {
        ClockPages pages = new ClockPages(pen, FIRST_ROW, FIRST_ROW);
        List<ChartPlace> places = places(pages, CHARTS);
        List<Integer> lines = places.stream().map(ChartPlace::row).distinct().toList();
        assertEquals(CHARTS / 5, lines.size());
        List<Integer> firstOfPages = new ArrayList<>();
        for (int line = 0; line < lines.size(); line += 3) {
            firstOfPages.add(lines.get(line) - 1);
        }
        assertEquals(firstOfPages, IntStream.of(sheet.getRowBreaks()).boxed().toList());
    }

    @Test
    void noSleeve_takesNoRows() {
        assertEquals(FIRST_ROW, new ClockPages(pen, FIRST_ROW, FIRST_ROW + 60).end());
    }
}
