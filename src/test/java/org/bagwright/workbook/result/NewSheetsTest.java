package org.bagwright.workbook.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.SampleBags;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.OtherPlan;
import org.bagwright.domain.plan.PlanReasons;
import org.bagwright.domain.plan.Step;
import org.bagwright.domain.text.Numbers;
import org.bagwright.search.BagSearch;
import org.bagwright.workbook.Cells;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.ResultSheet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the sheets Steps, Others, Measure next, Bench card, Golfer card and Team show of a book whose sums are done by hand. */
@Tag("analytic")
class NewSheetsTest {
    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final BookStyles styles = new BookStyles(workbook);
    private final BookResult result = SampleBags.book();

    /** Gaps against the wish of 20 m cost twice the square of the tolerances of 3 yd; a changed item costs 0.05. */
    private static double points(int changes, double... deviationsM) {
        double points = 0.05 * changes;
        for (double deviationM : deviationsM) {
            points += 2 * Math.pow(deviationM / (3 * 0.9144), 2);
        }
        return points;
    }

    private static final double TODAY_POINTS = points(0, -10, 20);
    private static final double PLANNED_POINTS = points(5, 5, 20);

    @AfterEach
    void close() throws Exception {
        workbook.close();
    }

    private XSSFSheet sheet(String name, BiConsumer<SheetPen, BookResult> writer) {
        XSSFSheet sheet = workbook.createSheet(name);
        writer.accept(new SheetPen(sheet, styles), result);
        return sheet;
    }

    private XSSFSheet steps() {
        return sheet(StepsSheet.NAME, (pen, book) -> new StepsSheet(pen, book).write());
    }

    private XSSFSheet others() {
        return sheet(OthersSheet.NAME, (pen, book) -> new OthersSheet(pen, book).write());
    }

    private XSSFSheet benchCard() {
        return sheet(BenchCardSheet.NAME, (pen, book) -> new BenchCardSheet(pen, book).write());
    }

    private XSSFSheet team() {
        return sheet(TeamSheet.NAME, (pen, book) -> new TeamSheet(pen, book).write());
    }

    private XSSFSheet measureNext() {
        return sheet(MeasureNextSheet.NAME, (pen, book) -> new MeasureNextSheet(pen, book).write());
    }

    @Test
    void measureNext_showsAdviceWithItsWorth() {
        XSSFSheet sheet = measureNext();
        int first = Cells.row(sheet, "Golfer A") + 1;
        assertEquals("5 shots with the Driver at setting B", Cells.text(sheet, first, MeasureNextSheet.WHAT));
        assertEquals(1.234, number(sheet, first, MeasureNextSheet.WORTH), 1e-12);
        assertEquals("would likely change the plan", Cells.text(sheet, first, MeasureNextSheet.WORDS));
        assertEquals("a gauge reading of the 7 iron", Cells.text(sheet, first + 1, MeasureNextSheet.WHAT));
        assertEquals("little to gain", Cells.text(sheet, first + 1, MeasureNextSheet.WORDS));
    }

    @Test
    void measureNext_showsHowSureEachChoiceIs() {
        XSSFSheet sheet = measureNext();
        int first = Cells.row(sheet, "Planned choice") + 1;
        assertEquals(
                List.of(
                        "Driver: setting E, weighting heel heavy",
                        "7 wood",
                        "7 iron: loft +1, lie -0.5",
                        "Putter: as it is"),
                column(sheet, first, MeasureNextSheet.CHOICE, 4));
        assertEquals(List.of("62", "45", "71", "100"), column(sheet, first, MeasureNextSheet.CASES, 4));
        assertEquals(
                List.of("Driver: setting B, weighting even", "5 wood", "", ""),
                column(sheet, first, MeasureNextSheet.NEXT, 4));
        assertEquals(List.of("30", "55", "", ""), column(sheet, first, MeasureNextSheet.NEXT_CASES, 4));
    }

    private static double number(XSSFSheet sheet, int row, int column) {
        return sheet.getRow(row).getCell(column).getNumericCellValue();
    }

    @Test
    void steps_showPenaltyGainAndUnevennessOfEach() {
        XSSFSheet sheet = steps();
        int first = Cells.row(sheet, "Golfer A") + 1;
        assertEquals(List.of("0", "1", "2", "5"), column(sheet, first, StepsSheet.CHANGES, 4));
        assertEquals(TODAY_POINTS, number(sheet, first, StepsSheet.PENALTY), 1e-9);
        assertEquals("", Cells.text(sheet, first, StepsSheet.GAIN));
        double one = points(1, -5, 15);
        assertEquals(one, number(sheet, first + 1, StepsSheet.PENALTY), 1e-9);
        assertEquals(TODAY_POINTS - one, number(sheet, first + 1, StepsSheet.GAIN), 1e-9);
        assertEquals(List.of("15.8", "11.2", "13.9", "14.6"), column(sheet, first, StepsSheet.UNEVENNESS, 4));
        assertEquals("none", Cells.text(sheet, first, StepsSheet.BREAKS));
    }

    @Test
    void steps_sayWhatIsDoneAndWhatIsNew() {
        XSSFSheet sheet = steps();
        int first = Cells.row(sheet, "Golfer A") + 1;
        assertEquals("nothing", Cells.text(sheet, first, StepsSheet.ALL));
        assertEquals("7 wood: in place of 5 wood", Cells.text(sheet, first + 1, StepsSheet.FRESH));
        assertEquals("7 iron: loft bend 0 \u2192 +1", Cells.text(sheet, first + 2, StepsSheet.FRESH));
        assertEquals(
                "7 wood: in place of 5 wood; 7 iron: loft bend 0 \u2192 +1",
                Cells.text(sheet, first + 2, StepsSheet.ALL));
        assertEquals(
                "Driver: setting A \u2192 E, weighting even \u2192 heel heavy; 7 iron: lie bend 0 \u2192 -0.5",
                Cells.text(sheet, first + 3, StepsSheet.FRESH));
    }

    @Test
    void steps_markThePlanOnce() {
        XSSFSheet sheet = steps();
        int first = Cells.row(sheet, "Golfer A") + 1;
        String plan = "plan " + Numbers.fixed(PLANNED_POINTS, 2);
        assertEquals(List.of("", "", "", plan), column(sheet, first, StepsSheet.PLAN, 4));
        assertTrue(Cells.shown(sheet).contains(List.of("No steps are settled in the time.")), "golfer B");
    }

    /** Two steps after the plan change nothing more: they share a line, which does not take in the plan's. */
    @Test
    void steps_thatBringNothing_shareALine() {
        BagResult bag = SampleBags.golferA();
        List<Step> more = new ArrayList<>(bag.steps());
        more.add(new Step(6, bag.planned()));
        more.add(new Step(7, bag.planned()));
        BagResult longer = bag.withReasons(new PlanReasons(more, List.of(), List.of(), List.of()));
        XSSFSheet sheet = workbook.createSheet(StepsSheet.NAME);
        new StepsSheet(new SheetPen(sheet, styles), SampleBags.book(List.of(longer))).write();
        int first = Cells.row(sheet, "Golfer A") + 1;
        assertEquals(List.of("0", "1", "2", "5", "7"), column(sheet, first, StepsSheet.CHANGES, 5));
        assertEquals(0, number(sheet, first + 4, StepsSheet.GAIN), 1e-12);
        assertEquals(
                "6 to 7 changes bring less than 0.01 each: nothing", Cells.text(sheet, first + 4, StepsSheet.FRESH));
    }

    private static List<String> column(XSSFSheet sheet, int first, int column, int rows) {
        return IntStream.range(first, first + rows)
                .mapToObj(row -> Cells.text(sheet, row, column))
                .toList();
    }

    @Test
    void others_standBesideThePlanWithWhatDiffersMarked() {
        XSSFSheet sheet = others();
        int driver = Cells.row(sheet, "1  Driver");
        assertEquals("setting E, weighting heel heavy", Cells.text(sheet, driver, 1));
        assertEquals("* setting B, weighting even", Cells.text(sheet, driver, 2));
        assertEquals("setting E, weighting heel heavy", Cells.text(sheet, driver, 3));
        assertEquals(
                FillPatternType.SOLID_FOREGROUND,
                sheet.getRow(driver).getCell(2).getCellStyle().getFillPattern());
        assertEquals(
                FillPatternType.NO_FILL,
                sheet.getRow(driver).getCell(3).getCellStyle().getFillPattern());
        assertEquals("7 wood", Cells.text(sheet, driver + 1, 2));
        assertEquals("* left out", Cells.text(sheet, driver + 1, 3));
        assertEquals("The same in all", Cells.text(sheet, driver + 2, 0));
        assertEquals("7 iron: loft +1, lie -0.5; Putter: as it is", Cells.text(sheet, driver + 2, 1));
    }

    @Test
    void others_areAllShown() {
        BagResult bag = SampleBags.golferA();
        List<OtherPlan> five = Collections.nCopies(5, bag.others().get(0));
        BagResult more = bag.withReasons(new PlanReasons(List.of(), five, List.of(), List.of()));
        XSSFSheet sheet = workbook.createSheet(OthersSheet.NAME);
        new OthersSheet(new SheetPen(sheet, styles), SampleBags.book(List.of(more))).write();
        assertTrue(Cells.shown(sheet)
                .contains(List.of("The plan", "Other 1", "Other 2", "Other 3", "Other 4", "Other 5")));
        assertEquals("* setting B, weighting even", Cells.text(sheet, Cells.row(sheet, "1  Driver"), 6));
    }

    @Test
    void others_haveTheirFigures() {
        XSSFSheet sheet = others();
        int penalty = Cells.row(sheet, "Penalty [points]");
        double fewer = points(4, 45);
        assertEquals(PLANNED_POINTS, number(sheet, penalty, 1), 1e-9);
        assertEquals(fewer, number(sheet, penalty, 3), 1e-9);
        assertEquals(0, number(sheet, penalty + 1, 1), 1e-12);
        assertEquals(number(sheet, penalty, 3) - PLANNED_POINTS, number(sheet, penalty + 1, 3), 1e-9);
        assertEquals("4", Cells.text(sheet, Cells.row(sheet, "Changes [items]"), 2));
        assertEquals("45.0", Cells.text(sheet, Cells.row(sheet, "Gap unevenness [m]"), 3));
        assertEquals(45 / (3 * 0.9144), number(sheet, Cells.row(sheet, "Worst miss [tolerances]"), 3), 1e-9);
    }

    @Test
    void others_listWhatHoldsThePlanBackBiggestFirst() {
        XSSFSheet sheet = others();
        int row = Cells.row(sheet, "What holds the plan back") + 2;
        assertEquals(List.of("the must of gap", "Aims!D5", "0.25", "0.40"), line(sheet, row));
        assertEquals(List.of("the limit of 5 changes", "Golfers!L2", "3.25", "none"), line(sheet, row + 1));
        assertEquals(List.of("the bend limit of the 7 iron", "Clubs!H5", "0.50", "none"), line(sheet, row + 2));
    }

    private static List<String> line(XSSFSheet sheet, int row) {
        return IntStream.range(0, 4)
                .mapToObj(column -> Cells.text(sheet, row, column))
                .toList();
    }

    /** Golfer A's driver by hand: F and E are passed while hours fall, which is clockwise from a right-hander's grip end. */
    @Test
    void benchCard_saysWhatToDoAndTheFiguresBeforeAndAfter() {
        List<List<String>> rows = Cells.shown(benchCard());
        String driver = "Sleeve A \u2192 E:\n2 marks clockwise";
        assertTrue(
                rows.contains(List.of("Driver", driver, "now", "10.5", "58.0", "square", "D2", "200.0", "10.0")),
                rows.toString());
        assertTrue(
                rows.contains(
                        List.of("Weights even \u2192 heel heavy: heel: 2 g out, 12 g in; toe: 2 g out, stays empty")),
                rows.toString());
        assertTrue(
                rows.contains(List.of("then", "12.3", "58.6", "1.2 open", "D6.5", "210.0", "25.0")), rows.toString());
        assertTrue(
                rows.contains(List.of("7 wood", "Put in for 5 wood", "now", "21.0", "62.0", "square", "D0", "185.0")),
                rows.toString());
        String iron = "Bend 1 deg weaker\nBend 0.5 deg flatter";
        assertTrue(
                rows.contains(List.of("7 iron", iron, "now", "32.0", "62.0", "square", "D0", "150.0")),
                rows.toString());
        assertTrue(rows.contains(List.of("then", "33.0", "61.5", "square", "D0", "145.0")), rows.toString());
        assertTrue(
                rows.contains(List.of("Putter", "Leave as it is", "stays", "4.0", "62.0", "square", "D0")),
                rows.toString());
    }

    @Test
    void benchCard_hasTheToleranceOfEachFigure() {
        List<List<String>> rows = Cells.shown(benchCard());
        assertTrue(
                rows.contains(List.of(
                        "Good enough within",
                        "\u00b1 0.5",
                        "\u00b1 1",
                        "\u00b1 1",
                        "\u00b1 1",
                        "\u00b1 4.57",
                        "\u00b1 2.74")),
                rows.toString());
        assertTrue(rows.contains(List.of("Nothing to change: today's bag is the plan.", "Done by")), rows.toString());
    }

    /** No gauge, no grams and no marks: what the golfer sees and feels, and how far his clubs carry. */
    @Test
    void golferCard_saysWhatChangedAndHowFarEachClubCarries() {
        XSSFSheet sheet = sheet(GolferCardSheet.NAME, (pen, book) -> new GolferCardSheet(pen, book).write());
        List<List<String>> rows = Cells.shown(sheet);
        assertTrue(
                rows.contains(List.of(
                        "Driver",
                        "200.0",
                        "210.0",
                        "10.0",
                        "25.0",
                        "more loft, more upright, more open, weights moved")),
                rows.toString());
        assertTrue(
                rows.contains(List.of("7 wood", "190.0", "185.0", "40.0", "40.0", "new, in place of 5 wood")),
                rows.toString());
        assertTrue(rows.contains(List.of("7 iron", "150.0", "145.0", "more loft, flatter")), rows.toString());
        assertTrue(rows.contains(List.of("Putter", "as before")), rows.toString());
        assertTrue(rows.contains(List.of("3 clubs changed. Gaps before 10 to 40 m, now 25 to 40 m")), rows.toString());
        String text = rows.toString().toLowerCase(Locale.ROOT);
        for (String word : List.of(" g ", "gauge", "mark", "sleeve", "swingweight", "bend")) {
            assertFalse(text.contains(word), word);
        }
        assertEquals(2, sheet.getDrawingPatriarch().getCharts().size());
    }

    /** A club that goes out or comes in is on the card; a slot that was empty and stays so is not. */
    @Test
    void golferCard_listsClubsThatGoOutOrComeIn() {
        List<Integer> all = List.of(0, 1, 0, 0);
        List<Integer> fewer = List.of(0, 2, 0, 0);
        assertTrue(golferCard(all, fewer).contains(List.of("7 wood", "185.0", "35.0", "no longer in the bag")));
        assertTrue(golferCard(fewer, all).contains(List.of("7 wood", "185.0", "35.0", "new in the bag")));
        List<List<String>> without = golferCard(fewer, fewer);
        assertTrue(without.toString().contains("Driver") && without.toString().contains("7 iron"), without.toString());
        assertFalse(without.toString().contains("wood"), without.toString());
    }

    private List<List<String>> golferCard(List<Integer> today, List<Integer> planned) {
        BagOptions options = SampleBags.golferA().options();
        BagResult bag = BagResult.of(options, BagSearch.state(options, today), BagSearch.state(options, planned));
        XSSFSheet sheet = workbook.createSheet();
        new GolferCardSheet(new SheetPen(sheet, styles), SampleBags.book(List.of(bag))).write();
        return Cells.shown(sheet);
    }

    @Test
    void benchCard_hasABoxForEachThingToDoAndALineForDateAndName() {
        XSSFSheet sheet = benchCard();
        int boxes = 0;
        for (var row : sheet) {
            var cell = row.getCell(BenchColumn.BOX.ordinal());
            if (cell != null && cell.getCellStyle().getBorderLeft() == BorderStyle.THIN) {
                assertEquals("", Cells.text(sheet, row.getRowNum(), BenchColumn.BOX.ordinal()));
                boxes++;
            }
        }
        assertEquals(7, boxes, "three clubs to change, two rows each, and one for what is long to say");
        assertEquals("Bench card: Golfer A", Cells.text(sheet, 0, 0));
        assertEquals("Spring fitting", Cells.text(sheet, 1, 0));
        assertEquals("Date", Cells.text(sheet, 1, BenchColumn.LIE.ordinal()));
        assertEquals("Done by", Cells.text(sheet, 2, BenchColumn.LIE.ordinal()));
        assertTrue(Cells.shown(sheet).contains(List.of("Bench card: Golfer B (left-handed)")));
    }

    @Test
    void benchCard_isPrintedUprightWithABreakAfterEachGolfer() {
        XSSFSheet sheet = benchCard();
        assertFalse(sheet.getPrintSetup().getLandscape());
        assertEquals(PaperSize.A4_PAPER, sheet.getPrintSetup().getPaperSizeEnum());
        assertEquals(1, sheet.getPrintSetup().getFitWidth());
        int second = Cells.row(sheet, "Bench card: Golfer B (left-handed)");
        assertTrue(List.of(second - 1, sheet.getLastRowNum() - 1)
                .equals(Arrays.stream(sheet.getRowBreaks()).boxed().toList()));
    }

    /** The words that a bench card must not be without, and figures that it must not hold. */
    @Test
    void benchCard_endsWithTheCautions() {
        String text = Cells.shown(benchCard()).toString();
        for (String word :
                List.of("eye protection", "maker allows", "torque tool", "Epoxy", "first shots", "4.1a(3)")) {
            assertTrue(text.contains(word), word);
        }
        assertFalse(text.matches("(?s).*\\d\\s*(Nm|N m|in lb|inch).*"), "no torque figure");
    }

    @Test
    void team_hasOneRowAGolferAndTotals() {
        XSSFSheet sheet = team();
        int row = Cells.row(sheet, "Golfer A");
        assertEquals(Math.sqrt(250), number(sheet, row, TeamSheet.UNEVEN_TODAY), 1e-9);
        assertEquals(Math.sqrt(212.5), number(sheet, row, TeamSheet.UNEVEN_PLANNED), 1e-9);
        assertEquals(20 / (3 * 0.9144), number(sheet, row, TeamSheet.WORST_TODAY), 1e-9);
        assertEquals("gap after 7 wood", Cells.text(sheet, row, TeamSheet.WORST_WHERE));
        assertEquals(TODAY_POINTS, number(sheet, row, TeamSheet.PENALTY_TODAY), 1e-9);
        assertEquals(PLANNED_POINTS, number(sheet, row, TeamSheet.PENALTY_PLANNED), 1e-9);
        assertEquals("5", Cells.text(sheet, row, TeamSheet.CHANGES));
        assertEquals("3.25", Cells.text(sheet, row, TeamSheet.HEAD_ROOM));
        assertEquals("64", Cells.text(sheet, row, TeamSheet.GAP_CHANCE));
        assertEquals("left", Cells.text(sheet, row + 1, TeamSheet.HAND));
        assertEquals("3.0", Cells.text(sheet, row + 1, TeamSheet.UNEVEN_TODAY));
        assertEquals("", Cells.text(sheet, row + 1, TeamSheet.GAP_CHANCE));
        assertEquals("All 2", Cells.text(sheet, row + 2, 0));
        assertEquals(TODAY_POINTS + points(0, 3), number(sheet, row + 2, TeamSheet.PENALTY_TODAY), 1e-9);
    }

    /** One 12 g piece, taken by the plan; three sleeves, one in the driver before and after. */
    @Test
    void team_countsTheSharedStock() {
        XSSFSheet sheet = team();
        int pieces = Cells.row(sheet, "12 g pieces");
        assertEquals(List.of("1", "0", "1", "0"), counts(sheet, pieces));
        assertEquals(List.of("3", "1", "1", "2"), counts(sheet, pieces + 1));
        assertEquals("sleeve S1", Cells.text(sheet, pieces + 1, 0));
    }

    private static List<String> counts(XSSFSheet sheet, int row) {
        return IntStream.rangeClosed(1, 4)
                .mapToObj(column -> Cells.text(sheet, row, column))
                .toList();
    }

    @Test
    void everySheet_saysThatItIsMadeAnew() {
        for (XSSFSheet sheet : List.of(steps(), others(), benchCard(), team())) {
            assertTrue(Cells.shown(sheet).toString().contains(ResultSheet.REBUILT), sheet.getSheetName());
        }
    }
}
