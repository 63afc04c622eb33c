package org.bagwright.workbook.ladder;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.SampleBags;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.search.BagSearch;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.settings.SettingsSheet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** From where to where the axes of the sheet Ladder go, for a bag with round carries; half a unit stays free at both ends. */
@Tag("analytic")
class ChartAxesTest {
    private static final double REACH = 3;

    private final BagResult bag = SampleBags.golferA();

    private BagResult all(List<Integer> chosen) {
        BagState state = BagSearch.state(bag.options(), chosen);
        return BagResult.of(bag.options(), state, state);
    }

    private static GapAxis axis(double least, double most) {
        return new GapAxis(least, most, LengthUnit.METRE);
    }

    /** Gaps of 10, 25 and 40 m; every possible gap is from 10 to 45 m. */
    @Test
    void gaps_areAllOnTheAxis() {
        assertEquals(axis(5, 45), GapAxis.of(LengthUnit.METRE, bag, REACH));
    }

    /** Gaps of 25 and 40 m and the wish of 20 with its band would need 15 to 45: the possible gap of 10 m still fits. */
    @Test
    void axis_isWidenedToPossibleGaps() {
        assertEquals(
                axis(10, 45), GapAxis.of(LengthUnit.METRE, all(bag.planned().chosen()), REACH));
    }

    /** A gap of 50 m without the wood: from 15 to 55 m, and a further step would be more than the usual 41 m. */
    @Test
    void axis_isNotWidenedBeyondTheUsualSpan() {
        assertEquals(axis(15, 55), GapAxis.of(LengthUnit.METRE, all(List.of(0, 2, 0, 0)), REACH));
    }

    /** The shortest carry of any option is 145 m; the axis starts at the next lower multiple of 20 that is 5 below. */
    @Test
    void carries_startClearlyBelowTheShortestPossible() throws Exception {
        BookResult book = SampleBags.book(List.of(BagResult.of(bag.options(), bag.today(), bag.planned())));
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            BookStyles styles = new BookStyles(workbook);
            SettingsSheet settings = SettingsSheet.write(new SheetPen(workbook.createSheet("Settings"), styles), book);
            XSSFSheet sheet = workbook.createSheet(LadderSheet.NAME);
            new LadderSheet(new SheetPen(sheet, styles), book, settings).write();
            var plot = sheet.createDrawingPatriarch()
                    .getCharts()
                    .get(0)
                    .getCTChart()
                    .getPlotArea();
            assertEquals(140, plot.getValAxArray(0).getScaling().getMin().getVal(), 0);
        }
    }
}
