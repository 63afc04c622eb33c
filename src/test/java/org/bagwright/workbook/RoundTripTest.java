package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.bagwright.Spreadsheet;
import org.bagwright.cli.text.Terminal;
import org.bagwright.workbook.pen.RichBook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book full of what a fitter can put into it comes back from every command with all of it, part by part. */
@Tag("regression")
class RoundTripTest {
    /** Parts that hold something of the tool's too; what of the fitter's is in them is looked at one by one. */
    private static final Set<String> SHARED = Set.of("xl/workbook.xml", "xl/sharedStrings.xml", "xl/styles.xml");
    /** Written again by a spreadsheet program when it opens the book. */
    private static final String CALCULATIONS = "xl/calcChain.xml";

    @TempDir
    static Path folder;

    private static Path filled;
    private static final List<Path> RUNS = new ArrayList<>();

    /** Planned, filled by the fitter, and then planned three times more in place. */
    @BeforeAll
    static void plan() throws Exception {
        Path book = RichBook.plain(folder.resolve("bag.xlsx"));
        done("plan", book, "--in-place");
        RichBook.fill(book);
        filled = Files.copy(book, folder.resolve("filled.xlsx"));
        for (int run = 1; run <= 3; run++) {
            done("plan", book, "--in-place");
            RUNS.add(Files.copy(book, folder.resolve("run-" + run + ".xlsx")));
        }
    }

    static Terminal done(Object... args) {
        Terminal run = Terminal.run(args);
        assertEquals(0, run.code(), run.err());
        return run;
    }

    @Test
    void planTwice_keepsEveryPartOfTheFitters() throws Exception {
        Set<String> rewritten = new TreeSet<>();
        int kept = compare(BookPackage.of(filled), BookPackage.of(RUNS.get(1)), List.of(), rewritten);
        assertTrue(kept > 30, "only " + kept);
        assertEquals(
                Set.of(
                        "xl/externalLinks/externalLink1.xml",
                        "xl/theme/theme1.xml",
                        sheet(RichBook.SUMS),
                        sheet(RichBook.DATA),
                        sheet("Clubs"),
                        sheet("Rough")),
                rewritten,
                "what the library writes in its own way, with the same content");
    }

    private static String sheet(String name) throws IOException {
        return BookPackage.of(filled).sheet(name);
    }

    /** Compares the parts that are the fitter's alone; gives how many there are. */
    static int compare(BookPackage before, BookPackage after, List<String> but, Set<String> rewritten) {
        int compared = 0;
        for (String part : FittersParts.of(before)) {
            if (SHARED.contains(part) || part.equals(CALCULATIONS) || but.contains(part)) {
                continue;
            }
            byte[] now = after.parts().get(part);
            assertTrue(now != null, part + " is gone");
            if (!Arrays.equals(before.parts().get(part), now)) {
                assertTrue(before.isXml(part), part);
                assertEquals(
                        String.join("\n", SameXml.lines(before.xml(part))),
                        String.join("\n", SameXml.lines(after.xml(part))),
                        part);
                rewritten.add(part);
            }
            assertEquals(Map.copyOf(before.relations(part)), Map.copyOf(after.relations(part)), "relations of " + part);
            compared++;
        }
        return compared;
    }

    @Test
    void planTwice_leavesNothingWrongInTheFile() throws Exception {
        assertEquals(List.of(), PackageCheck.problems(filled), "the test's own book");
        assertEquals(List.of(), PackageCheck.problems(RUNS.get(1)));
    }

    @Test
    void runAfterRun_addsNothing() throws Exception {
        BookPackage second = BookPackage.of(RUNS.get(1));
        BookPackage third = BookPackage.of(RUNS.get(2));
        assertEquals(second.parts().keySet().size(), third.parts().keySet().size());
        assertArrayEquals(second.parts().get("xl/styles.xml"), third.parts().get("xl/styles.xml"));
        // But for the seconds that a search took, and how these are packed.
        assertEquals((double) Files.size(RUNS.get(1)), (double) Files.size(RUNS.get(2)), 30);
        for (String part : third.contents()) {
            assertEquals(kind(second, part), kind(third, part), part);
        }
    }

    private static long kind(BookPackage book, String part) {
        String kind = part.replaceAll("[0-9]+", "#");
        return book.contents().stream()
                .filter(one -> one.replaceAll("[0-9]+", "#").equals(kind))
                .count();
    }

    @Test
    void textsAndFormats_keepTheirNumbers() throws Exception {
        BookPackage before = BookPackage.of(filled);
        BookPackage after = BookPackage.of(RUNS.get(1));
        for (String item : List.of("si", "xf", "font", "fill", "border", "dxf")) {
            String part = item.equals("si") ? "xl/sharedStrings.xml" : "xl/styles.xml";
            List<String> old = texts(before, part, item);
            assertEquals(old, texts(after, part, item).subList(0, old.size()), item);
        }
    }

    private static List<String> texts(BookPackage book, String part, String item) {
        return SameXml.items(book.xml(part), item);
    }

    @Test
    void workbook_keepsNamesSheetsAndLinks() throws Exception {
        try (XSSFWorkbook before = ResultCells.open(filled);
                XSSFWorkbook after = ResultCells.open(RUNS.get(1))) {
            for (String name : List.of("my_plan", "my_club", "BW_mine")) {
                assertEquals(1, after.getNames(name).size(), name);
                assertEquals(
                        before.getName(name).getRefersToFormula(),
                        after.getName(name).getRefersToFormula());
            }
            List<String> own = RichBook.sheets(before);
            assertEquals(own, RichBook.sheets(after).subList(0, own.size()));
            for (String sheet : own) {
                int was = before.getSheetIndex(sheet);
                int is = after.getSheetIndex(sheet);
                assertEquals(before.getSheetVisibility(was), after.getSheetVisibility(is), sheet);
                assertEquals(before.getPrintArea(was), after.getPrintArea(is), sheet);
            }
            assertEquals(1, after.getCTWorkbook().getExternalReferences().sizeOfExternalReferenceArray());
            assertEquals(1, after.getPivotTables().size());
            assertEquals("Plan", after.getSheetName(after.getActiveSheetIndex()));
        }
        List<String> lines = SameXml.lines(BookPackage.of(RUNS.get(1)).xml("xl/workbook.xml"));
        for (String line : SameXml.lines(BookPackage.of(filled).xml("xl/workbook.xml"))) {
            if (line.matches("/workbook/(extLst|pivotCaches|externalReferences).*")) {
                assertTrue(lines.contains(line), line);
            }
        }
    }

    @Test
    void resultSheet_keepsColourAndTheNameMacrosKnow() throws Exception {
        try (XSSFWorkbook after = ResultCells.open(RUNS.get(1))) {
            XSSFSheet steps = after.getSheet("Steps");
            assertEquals("MySteps", steps.getCTWorksheet().getSheetPr().getCodeName());
            assertEquals("FF112233", steps.getTabColor().getARGBHex());
        }
    }

    /** The wish for the carry of the driver and all else that Plan is made from change: so must the sums. */
    @Test
    void formulasOnPlan_areRightAfterTheBookChanged() throws Exception {
        Path book = Files.copy(filled, folder.resolve("faster.xlsx"));
        try (XSSFWorkbook workbook = ResultCells.open(book)) {
            workbook.getSheet("Golfers").getRow(1).getCell(2).setCellValue(101);
            try (var output = Files.newOutputStream(book)) {
                workbook.write(output);
            }
        }
        done("plan", book, "--in-place");
        Path bare;
        try (XSSFWorkbook workbook = ResultCells.open(book);
                XSSFWorkbook before = ResultCells.open(filled)) {
            checkSums(workbook);
            assertFalse(sum(before, 0) == sum(workbook, 0), "another speed changes the carry");
            bare = ResultCells.writeBare(workbook, folder.resolve("bare.xlsx"));
        }
        Path recalculated = Spreadsheet.recalculated(bare, folder.resolve("calc"));
        try (XSSFWorkbook other = ResultCells.open(recalculated)) {
            checkSums(other);
            assertEquals(
                    "My own chart",
                    other.getSheet(RichBook.DATA)
                            .getDrawingPatriarch()
                            .getCharts()
                            .get(1)
                            .getTitleText()
                            .getString());
        }
    }

    private static void checkSums(XSSFWorkbook book) {
        double[] carries = new double[3];
        for (int slot = 0; slot < 3; slot++) {
            carries[slot] = ResultCells.plan(book, slot, "Plan carry [yd]").getNumericCellValue();
        }
        assertEquals(carries[0], sum(book, 0), 1e-9);
        assertEquals(carries[1], sum(book, 1), 1e-9);
        assertEquals(carries[0] + carries[1] + carries[2], sum(book, 2), 1e-9);
        assertEquals(2 * sum(book, 2), sum(book, 4), 1e-9);
        XSSFSheet sums = book.getSheet(RichBook.SUMS);
        assertEquals("Driver!", sums.getRow(5).getCell(0).getStringCellValue());
        assertEquals(CellType.FORMULA, sums.getRow(0).getCell(0).getCellType());
    }

    private static double sum(XSSFWorkbook book, int row) {
        return book.getSheet(RichBook.SUMS).getRow(row).getCell(0).getNumericCellValue();
    }
}
