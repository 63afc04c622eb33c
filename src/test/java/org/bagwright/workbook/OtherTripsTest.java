package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.bagwright.workbook.pen.RichBook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The fitter's full book through the commands that change cells of his, with macros, and with sheets renamed or copied. */
@Tag("regression")
class OtherTripsTest {
    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void fill() throws Exception {
        book = RichBook.plain(folder.resolve("bag.xlsx"));
        RoundTripTest.done("plan", book, "--in-place");
        RichBook.fill(book);
    }

    private static void change(Path file, Consumer<XSSFWorkbook> person) throws Exception {
        try (XSSFWorkbook workbook = ResultCells.open(file)) {
            person.accept(workbook);
            try (OutputStream output = Files.newOutputStream(file)) {
                workbook.write(output);
            }
        }
    }

    /** What of a sheet differs: lines gone and lines new. */
    private static List<String> changed(Path before, Path after, String sheet) throws Exception {
        BookPackage old = BookPackage.of(before);
        BookPackage now = BookPackage.of(after);
        List<String> gone = new ArrayList<>(SameXml.lines(old.xml(old.sheet(sheet))));
        List<String> fresh = new ArrayList<>(SameXml.lines(now.xml(now.sheet(sheet))));
        List<String> both = new ArrayList<>(gone);
        fresh.forEach(gone::remove);
        both.forEach(fresh::remove);
        gone.addAll(fresh);
        return gone;
    }

    @Test
    void fromLive_changesItsCellAndNothingElse() throws Exception {
        change(book, workbook -> ResultCells.set(workbook, 0, "Live setting", "C"));
        Path two = folder.resolve("two.xlsx");
        RoundTripTest.done("plan", book, "--from-live", "-o", two);
        BookPackage before = BookPackage.of(book);
        List<String> touched = List.of(before.sheet("Clubs"), before.sheet(RichBook.SUMS));
        int kept = RoundTripTest.compare(before, BookPackage.of(two), touched, new TreeSet<>());
        assertTrue(kept > 25, "only " + kept);
        try (XSSFWorkbook was = ResultCells.open(book);
                XSSFWorkbook is = ResultCells.open(two)) {
            sameLook(was, is, "I2");
            assertEquals("C", cell(is, "I2").getStringCellValue());
            assertEquals(
                    "asked for", cell(is, "I2").getCellComment().getString().getString());
        }
        changed(book, two, "Clubs").forEach(line -> assertTrue(line.matches("/worksheet/sheetData/row/c.*"), line));
        changed(book, two, RichBook.SUMS)
                .forEach(line -> assertTrue(line.startsWith("/worksheet/sheetData/row/c/v says"), line));
        assertEquals(List.of(), PackageCheck.problems(two));
    }

    /** The formula of the loft is shared with the row below, where it must still stand when the first cell is written. */
    @Test
    void gauge_writesItsCellsAndTellsOfTheFormula() throws Exception {
        Path gauged = folder.resolve("bag-gauged.xlsx");
        Terminal gauge = RoundTripTest.done("gauge", book, "--write");
        assertTrue(gauge.out().contains("=33-A2*0.075 giving 10.5"), gauge.out() + gauge.err());
        BookPackage before = BookPackage.of(book);
        List<String> touched = new ArrayList<>(List.of(before.sheet("Clubs"), before.sheet("Sleeves")));
        touched.addAll(before.relations(before.sheet("Clubs")).values());
        int kept = RoundTripTest.compare(before, BookPackage.of(gauged), touched, new TreeSet<>());
        assertTrue(kept > 20, "only " + kept);
        try (XSSFWorkbook was = ResultCells.open(book);
                XSSFWorkbook is = ResultCells.open(gauged)) {
            sameLook(was, is, "B2");
            sameLook(was, is, "E2");
            assertEquals(CellType.NUMERIC, cell(is, "B2").getCellType());
            assertEquals("33-A3*0.075", cell(is, "B3").getCellFormula());
            assertEquals(18, cell(is, "B3").getNumericCellValue(), 1e-9);
            assertEquals(
                    "asked for", cell(is, "I2").getCellComment().getString().getString());
            assertTrue(cell(is, "B2").getCellComment().getString().getString().contains("Before: =33-A2*0.075"));
        }
        assertEquals(List.of(), PackageCheck.problems(gauged));
    }

    @Test
    void addShots_keepsEveryPartOfTheFitters() throws Exception {
        Path session = Files.writeString(folder.resolve("may.csv"), "Club,Carry,Date\nDriver,221,2026-05-14\n");
        Path added = folder.resolve("bag-shots.xlsx");
        Terminal run = RoundTripTest.done("add-shots", book, session, "--golfer", "Golfer A");
        assertTrue(run.out().contains("1 shot added."), run.out());
        BookPackage before = BookPackage.of(book);
        int kept = RoundTripTest.compare(before, BookPackage.of(added), List.of(), new TreeSet<>());
        assertTrue(kept > 20, "only " + kept);
        assertEquals(List.of(), PackageCheck.problems(added));
    }

    private static XSSFCell cell(XSSFWorkbook book, String cell) {
        var place = new org.apache.poi.ss.util.CellReference(cell);
        return book.getSheet("Clubs").getRow(place.getRow()).getCell(place.getCol());
    }

    private static void sameLook(XSSFWorkbook was, XSSFWorkbook is, String cell) {
        assertEquals(
                cell(was, cell).getCTCell().getS(), cell(is, cell).getCTCell().getS(), cell);
        assertEquals(
                was.getSheet("Clubs").getDataValidations().size(),
                is.getSheet("Clubs").getDataValidations().size());
    }

    @Test
    void macros_areKeptToTheByte() throws Exception {
        Path macros = Files.copy(book, folder.resolve("club.xlsm"));
        RichParts.addMacros(macros);
        RoundTripTest.done("plan", macros);
        Path planned = folder.resolve("club-plan.xlsm");
        RoundTripTest.done("plan", planned, "--in-place");
        BookPackage before = BookPackage.of(macros);
        BookPackage after = BookPackage.of(planned);
        for (String part : List.of(RichParts.MACROS, RichParts.SIGNATURE)) {
            assertArrayEquals(before.parts().get(part), after.parts().get(part), part);
            assertEquals(before.contentType(part), after.contentType(part), part);
        }
        assertTrue(after.contentType("xl/workbook.xml").contains("macroEnabled"));
        assertEquals(List.of(), PackageCheck.problems(planned));
    }

    @Test
    void nameThatDeniesOrClaimsMacros_isToldWithTheRightOne() throws Exception {
        Path claims = Files.copy(book, folder.resolve("plain.xlsm"));
        Path denies = Files.copy(book, folder.resolve("macros.xlsx"));
        RichParts.addMacros(denies);
        Terminal binary = Terminal.run("plan", Files.copy(book, folder.resolve("plain.xlsb")));
        assertEquals(3, binary.code());
        assertTrue(binary.err().contains("Rename it plain.xlsx"), binary.err());
        Terminal one = Terminal.run("plan", claims);
        Terminal other = Terminal.run("plan", denies);
        assertEquals(3, one.code());
        assertTrue(one.err().contains("without macros") && one.err().contains("Rename it plain.xlsx"), one.err());
        assertEquals(3, other.code());
        assertTrue(other.err().contains("with macros") && other.err().contains("Rename it macros.xlsm"), other.err());
    }

    @Test
    void renamedOrCopiedResult_staysTheFitters() throws Exception {
        change(book, workbook -> {
            workbook.setSheetName(workbook.getSheetIndex("Steps"), "Steps in May");
            XSSFSheet copy = workbook.cloneSheet(workbook.getSheetIndex("Others"), "Others (2)");
            copy.getRow(0).getCell(0).setCellValue("mine now");
            workbook.setSheetOrder("Plan", 0);
        });
        Path two = folder.resolve("two.xlsx");
        RoundTripTest.done("plan", book, "-o", two);
        assertEquals(List.of(), changed(book, two, "Steps in May"));
        assertEquals(List.of(), changed(book, two, "Others (2)"));
        try (XSSFWorkbook is = ResultCells.open(two)) {
            assertEquals(is.getSheetIndex("Ladder") + 1, is.getSheetIndex("Steps"), "a new one where it belongs");
            assertEquals(is.getNumberOfSheets() - 1, is.getSheetIndex("Others (2)"), "a copy where it was");
            assertEquals(
                    List.of("Plan", "Notes first"),
                    List.of(is.getSheetName(0), is.getSheetName(1)),
                    "where he put them");
        }
        assertEquals(List.of(), PackageCheck.problems(two));
        RoundTripTest.done("plan", two, "--in-place");
        assertEquals(List.of(), changed(book, two, "Steps in May"));
        assertEquals(List.of(), PackageCheck.problems(two));
    }
}
