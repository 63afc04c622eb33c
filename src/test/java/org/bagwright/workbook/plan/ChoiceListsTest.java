package org.bagwright.workbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What each choice cell of the sheet Plan offers, from the first to the last: all that the input sheets allow, and no more. */
@Tag("analytic")
class ChoiceListsTest {
    @TempDir
    static Path folder;

    private static XSSFWorkbook book;

    @BeforeAll
    static void plan() throws Exception {
        Path source = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Iron speed")
                .row("Golfer A", 95, 80)
                .sheet(
                        "Clubs",
                        "Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Weighting, In bag,"
                                + " Bend limit, Bend step, Loft bend, Lie bend, Optional")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58, 45, "S", 2, "K: mid")
                .row("Golfer A", 2, "5 wood", "wood", 18, 58.5, 42, "T", "A")
                .row("Golfer A", 2, "7 wood", "wood", 21, 58.5, 41.5, "S", 3, "K: toe", "yes")
                .row("Golfer A", 3, "7 iron", "iron", 31, 62, 37, null, null, null, null, 1, 0.5, 0.5, 0, "yes")
                .sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Turns shaft")
                .row("S", 1, 12, 1.5, "yes")
                .row("S", 2, 3, 1.5, "yes")
                .row("S", 3, 6, 1.5, "yes")
                .row("S", 4, 9, 1.5, "yes")
                .row("T", "A", 12, 1, "yes")
                .row("T", "B", 6, 1, "yes")
                .weights()
                .row("K", "heel", "h", 10, -20, 30, 5)
                .row("K", "mid", "m", 10, -20, 0, 5)
                .row("K", "toe", "t", 10, -20, -30, 5)
                .write(folder.resolve("bag.xlsx"));
        Path result = folder.resolve("plan.xlsx");
        Terminal run = Terminal.run("plan", source, "-o", result);
        assertEquals(0, run.code(), run.err());
        book = ResultCells.open(result);
    }

    @AfterAll
    static void close() throws Exception {
        book.close();
    }

    @Test
    void slotWithOneClub_offersAllOfIt() {
        assertEquals(List.of("1.0", "2.0", "3.0", "4.0"), offered(0, "Live setting"));
        assertEquals(List.of("heel", "mid", "toe"), offered(0, "Live weighting"));
    }

    @Test
    void slotThatMayStayEmpty_offersTheClubAndNone_andItsBendsToBothEnds() {
        assertEquals(List.of("7 iron", "left out"), offered(2, "Live club"));
        ResultCells.set(book, 2, "Live club", "7 iron");
        assertEquals(List.of("-1.0", "-0.5", "0.0", "0.5", "1.0"), offered(2, "Live loft bend [deg]"));
        assertEquals(List.of("-1.0", "-0.5", "0.0", "0.5", "1.0"), offered(2, "Live lie bend [deg]"));
    }

    @Test
    void slotWithSeveralClubs_offersWhatTheLiveOneMayHave() {
        assertEquals(List.of("5 wood", "7 wood"), offered(1, "Live club"));
        ResultCells.set(book, 1, "Live club", "7 wood");
        assertEquals(List.of("1.0", "2.0", "3.0", "4.0"), offered(1, "Live setting"));
        assertEquals(List.of("heel", "mid", "toe"), offered(1, "Live weighting"));
        ResultCells.set(book, 1, "Live club", "5 wood");
        assertEquals(List.of("A", "B"), offered(1, "Live setting"));
    }

    /** What the list of a cell holds, as the spreadsheet works its range out. */
    private static List<String> offered(int slot, String heading) {
        Cell cell = ResultCells.plan(book, slot, heading);
        XSSFSheet plan = book.getSheet("Plan");
        String list = plan.getDataValidations().stream()
                .filter(validation ->
                        validation.getRegions().getCellRangeAddresses()[0].isInRange(cell))
                .map(validation -> validation.getValidationConstraint().getFormula1())
                .findFirst()
                .orElseThrow();
        FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
        Cell scratch = plan.getRow(0).createCell(16_000);
        scratch.setCellFormula("ROWS(" + list + ")*COLUMNS(" + list + ")");
        int count = (int) evaluator.evaluate(scratch).getNumberValue();
        List<String> offered = new ArrayList<>();
        for (int place = 1; place <= count; place++) {
            scratch.setCellFormula("INDEX(" + list + "," + place + ")");
            evaluator.notifySetFormula(scratch);
            CellValue value = evaluator.evaluate(scratch);
            offered.add(
                    value.getStringValue() == null ? String.valueOf(value.getNumberValue()) : value.getStringValue());
        }
        return offered;
    }
}
