package org.bagwright.workbook.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.SampleBags;
import org.bagwright.Spreadsheet;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.OtherPlan;
import org.bagwright.domain.plan.PlanReasons;
import org.bagwright.domain.plan.Relaxation;
import org.bagwright.domain.plan.Step;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.Planning;
import org.bagwright.search.BagSearch;
import org.bagwright.workbook.Cells;
import org.bagwright.workbook.cells.ResultSheets;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.SheetPen;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The result sheets of whole books: which there are, that they replace each other, what a spreadsheet makes of them. */
@Tag("regression")
class ResultSheetsTest {
    private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page[^s]");
    private static final List<String> OWN = List.of("Golfers", "Clubs", "Sleeves");

    @TempDir
    Path folder;

    private Path book(int golfers) throws IOException {
        BookSketch sketch = new BookSketch().sheet("Golfers", "Golfer, Driver speed");
        for (int golfer = 1; golfer <= golfers; golfer++) {
            sketch.row("Golfer " + golfer, 90 + golfer);
        }
        sketch.sheet(
                "Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Sleeve, Setting, Bend limit, Bend step, Carry target");
        for (int golfer = 1; golfer <= golfers; golfer++) {
            sketch.row("Golfer " + golfer, 1, "Driver", "driver", 10.5, 58, "S", "A", null, null, 225)
                    .row("Golfer " + golfer, 2, "5 wood", "wood", 18, 58, "S", "B", null, null, 190)
                    .row("Golfer " + golfer, 3, "7 iron", "iron", 32, 62.5, null, null, 2, 1, 145);
        }
        sketch.sheet("Sleeves", "Sleeve, Setting, Clock, Bend")
                .row("S", "A", 12, 1.5)
                .row("S", "B", 3, 1.5)
                .row("S", "C", 6, 1.5)
                .row("S", "D", 9, 1.5);
        return sketch.write(folder.resolve("team.xlsx"));
    }

    /** A planned book to which steps, other plans and relaxations were added. */
    private static BookResult planned(Path file) throws Exception {
        BookResult result = new Planning(1, 5).plan(file);
        return new BookResult(
                result.book(),
                result.bags().stream().map(ResultSheetsTest::filled).toList(),
                result.stock(),
                result.proof(),
                result.messages(),
                result.seed(),
                result.searchS());
    }

    /** Steps change one slot more each from the longest club on; other plans keep one slot as it is today. */
    private static BagResult filled(BagResult bag) {
        List<Integer> today = bag.today().chosen();
        List<Integer> plan = bag.planned().chosen();
        List<SlotOptions> slots = bag.options().slots();
        List<Step> steps = IntStream.rangeClosed(0, slots.size())
                .mapToObj(count -> IntStream.range(0, slots.size())
                        .mapToObj(slot -> slot < count ? plan.get(slot) : today.get(slot))
                        .toList())
                .map(chosen -> BagSearch.state(bag.options(), chosen))
                .map(state -> new Step(bag.changesOf(state), state))
                .toList();
        List<OtherPlan> others = IntStream.range(0, Math.min(3, slots.size()))
                .mapToObj(kept -> new OtherPlan(
                        slots.get(kept).main().name() + " stays as it is today",
                        BagSearch.state(
                                bag.options(),
                                IntStream.range(0, slots.size())
                                        .mapToObj(slot -> slot == kept ? today.get(slot) : plan.get(slot))
                                        .toList())))
                .toList();
        List<Relaxation> relaxations = List.of(
                new Relaxation("Clubs!J4", "the bend limit of the 7 iron", 1.7000000002, 0),
                new Relaxation("Golfers!H3", "the most closed look that the golfer accepts", 0.4, 0));
        return bag.withReasons(new PlanReasons(steps, others, relaxations, List.of()));
    }

    private static List<String> names(Path file) throws IOException {
        try (XSSFWorkbook workbook = open(file)) {
            return IntStream.range(0, workbook.getNumberOfSheets())
                    .mapToObj(workbook::getSheetName)
                    .toList();
        }
    }

    private static XSSFWorkbook open(Path file) throws IOException {
        try (InputStream input = Files.newInputStream(file)) {
            return new XSSFWorkbook(input);
        }
    }

    private static int charts(XSSFWorkbook workbook, String sheet) {
        return workbook.getSheet(sheet).getDrawingPatriarch().getCharts().size();
    }

    private static long chartParts(XSSFWorkbook workbook) throws Exception {
        return workbook.getPackage().getParts().stream()
                .filter(part -> part.getPartName().getName().matches("/xl/charts/chart\\d+.xml"))
                .count();
    }

    @Test
    void team_plannedTwiceInPlaceHasOneOfEachSheet() throws Exception {
        Path file = book(2);
        for (int run = 0; run < 2; run++) {
            Planning.write(new SourceFile(file), planned(file), List.of(), file);
        }
        List<String> expected = new ArrayList<>(OWN);
        expected.addAll(List.of(
                "Plan",
                "Settings",
                "Ladder",
                "Steps",
                "Others",
                "Measure next",
                "Bench card",
                "Golfer card",
                "Team",
                "Messages"));
        assertEquals(expected, names(file));
        try (XSSFWorkbook workbook = open(file)) {
            assertEquals(2, charts(workbook, "Steps"));
            assertEquals(1, charts(workbook, "Team"));
            assertTrue(chartParts(workbook) >= 3);
            new ResultSheets(workbook).remove();
            assertEquals(0, chartParts(workbook));
            assertEquals(OWN.size(), workbook.getNumberOfSheets());
            assertTrue(workbook.getAllNames().isEmpty(), "names of sheets that are gone");
        }
    }

    @Test
    void singleGolfer_hasNoSheetTeamAndLosesAnEarlierOne() throws Exception {
        Path file = book(2);
        Planning.write(new SourceFile(file), planned(file), List.of(), file);
        assertTrue(names(file).contains("Team"));
        try (XSSFWorkbook workbook = open(file)) {
            for (String sheet : List.of("Golfers", "Clubs")) {
                XSSFSheet input = workbook.getSheet(sheet);
                for (int row = input.getLastRowNum(); row > 0; row--) {
                    if (input.getRow(row).getCell(0).getStringCellValue().equals("Golfer 2")) {
                        input.removeRow(input.getRow(row));
                    }
                }
            }
            try (OutputStream output = Files.newOutputStream(file)) {
                workbook.write(output);
            }
        }
        Planning.write(new SourceFile(file), planned(file), List.of(), file);
        assertFalse(names(file).contains("Team"), names(file).toString());
        assertTrue(names(file).contains("Bench card"));
    }

    @Test
    void fittersOwnSheetTeam_isAClash() {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            workbook.createSheet("Team");
            workbook.createSheet("bench Card");
            assertEquals(2, new ResultSheets(workbook).clashes(false).size());
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
    }

    @Test
    void spreadsheet_findsNoErrorAndTheSameTexts() throws Exception {
        Path file = book(2);
        Planning.write(new SourceFile(file), planned(file), List.of(), file);
        Path recalculated = Spreadsheet.recalculated(file, folder.resolve("calc"));
        try (XSSFWorkbook own = open(file);
                XSSFWorkbook other = open(recalculated)) {
            for (Sheet sheet : other) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        CellType type = cell.getCellType() == CellType.FORMULA
                                ? cell.getCachedFormulaResultType()
                                : cell.getCellType();
                        assertNotEquals(CellType.ERROR, type, sheet.getSheetName() + "!" + cell.getAddress());
                    }
                }
            }
            for (String name : List.of("Steps", "Others", "Measure next", "Bench card", "Golfer card", "Team")) {
                assertEquals(Cells.shown(own.getSheet(name)), Cells.shown(other.getSheet(name)), name);
            }
        }
    }

    @Test
    void benchCard_holdsTenClubsOnAPageAGolfer() throws Exception {
        BookResult result = SampleBags.book(List.of(
                SampleBags.bentIrons("Golfer A", 10), SampleBags.golferB(), SampleBags.bentIrons("Golfer C", 4)));
        Path file = folder.resolve("cards.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream output = Files.newOutputStream(file)) {
            XSSFSheet sheet = workbook.createSheet(BenchCardSheet.NAME);
            new BenchCardSheet(new SheetPen(sheet, new BookStyles(workbook)), result).write();
            assertNull(sheet.getRepeatingRows());
            workbook.write(output);
        }
        Path printed = Spreadsheet.converted(file, folder.resolve("print"), "pdf");
        String pdf = Files.readString(printed, StandardCharsets.ISO_8859_1);
        assertEquals(3, PAGE.matcher(pdf).results().count(), "one page a golfer");
    }
}
