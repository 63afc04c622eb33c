package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Random;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.cli.GaugeBooks.Truth;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sleeves and cells that {@code gauge --write} must treat with care. */
@Tag("analytic")
class GaugeSleevesTest {
    private static final VectorClub HEAD = new VectorClub(9.9, 58.3, 0);

    @TempDir
    Path folder;

    private XSSFWorkbook written(Path book) throws Exception {
        Path copy = folder.resolve("copy.xlsx");
        Terminal gauge = Terminal.run("gauge", book, "--write", "-o", copy);
        assertEquals(0, gauge.code(), gauge.err());
        return GaugeBooks.open(copy);
    }

    /** The table is the truth, so it stays; the head is stated so that the table on it gives what the fit expects. */
    @Test
    void ratedTable_staysAndTheHeadIsCorrected() throws Exception {
        BookSketch book = GaugeBooks.clubs().row("Golfer A", 1, "Driver", "driver", 9.5, 58, "N", "S", "N");
        book.sheet("Sleeves", "Sleeve, Setting, Loft change, Lie change")
                .row("S", "N", 0, 1.5)
                .row("S", "up", 1.5 / Math.sin(Math.toRadians(58)), 0)
                .row("S", "low", -1.5 / Math.sin(Math.toRadians(58)), 0);
        GaugeBooks.readings(book);
        double[] hours = {12, 3, 9};
        String[] marks = {"N", "up", "low"};
        for (int index = 0; index < 3; index++) {
            double[] shaft = HEAD.shaft(hours[index], 1.5);
            book.row("Golfer A", "Driver", marks[index], HEAD.gaugeLoftDeg(shaft), HEAD.gaugeLieDeg(shaft));
        }
        Path file = book.write(folder.resolve("rated.xlsx"));
        try (XSSFWorkbook copy = written(file)) {
            assertEquals(9.9, GaugeBooks.number(copy, "Clubs!E2"), 1e-6);
            assertEquals(59.8, GaugeBooks.number(copy, "Clubs!F2"), 1e-6);
            assertEquals(1.5, GaugeBooks.number(copy, "Sleeves!D2"));
            assertNull(GaugeBooks.cell(copy, "Sleeves!D2").getCellComment());
        }
        String said = Terminal.run("gauge", file).err();
        assertTrue(said.contains("sleeve S has its own table, which is used"), said);
        assertTrue(said.contains("bends by 1.50 degrees, but the readings give 1.5"), said);
    }

    /** A sleeve that leans just the other way, read at 12 and 6 by lies alone: the bend is told, the clock is not. */
    @Test
    void bendThatLeansTheOtherWay_isNotWrittenWithoutItsClock() throws Exception {
        BookSketch book = GaugeBooks.readings(GaugeBooks.sleeve(GaugeBooks.driver()));
        for (int mark : new int[] {0, 4}) {
            double[] shaft = HEAD.shaft(mark == 0 ? 6 : 12, 1.5);
            book.row("Golfer A", "Driver", "m" + mark, null, HEAD.gaugeLieDeg(shaft));
        }
        Path file = book.write(folder.resolve("turned.xlsx"));
        try (XSSFWorkbook copy = written(file)) {
            assertNull(GaugeBooks.cell(copy, "Sleeves!D2").getCellComment());
            assertEquals(58.3, GaugeBooks.number(copy, "Clubs!F2"), 1e-6);
        }
        String said = Terminal.run("gauge", file).err();
        assertTrue(said.contains("leans the opposite way to the marks of sleeve S"), said);
    }

    /** A clock cell kept as a time of day stays one, and a cell of an array formula is left alone. */
    @Test
    void timesOfDayStayTimes_andArrayFormulasAreLeft() throws Exception {
        Truth truth = new Truth(HEAD, 1.5, 0.5);
        BookSketch book = GaugeBooks.readings(GaugeBooks.sleeve(GaugeBooks.driver()));
        GaugeBooks.read(book, "Driver", truth, new Random(1), 0, 0, 2, 4, 6);
        XSSFWorkbook workbook = book.workbook();
        XSSFCell clock = GaugeBooks.cell(workbook, "Sleeves!C4");
        XSSFCellStyle time = workbook.createCellStyle();
        time.setDataFormat(workbook.createDataFormat().getFormat("h:mm"));
        clock.setCellStyle(time);
        clock.setCellValue(3 / 24.0);
        GaugeBooks.cell(workbook, "Sleeves!D9").getSheet().setArrayFormula("1+0.5", CellRangeAddress.valueOf("D9:D9"));
        workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
        Path file = book.write(folder.resolve("times.xlsx"));
        try (XSSFWorkbook copy = written(file)) {
            assertEquals(3.5 / 24, GaugeBooks.number(copy, "Sleeves!C4"), 1e-9);
            assertTrue(GaugeBooks.cell(copy, "Sleeves!D9").isPartOfArrayFormulaGroup());
        }
        Path copy = folder.resolve("copy.xlsx");
        assertEquals(0, Terminal.run("check", copy).code());
        Terminal again = Terminal.run("gauge", file, "--write", "-o", folder.resolve("other.xlsx"));
        assertTrue(again.err().contains("Sleeves!D9: the gauged bend 1.5 degrees is not written"), again.err());
        double[] shaft = truth.shaft(2);
        double loftDeg = Terminal.run("chart", copy, "--json")
                .json()
                .at("/clubs/0/options/2/gaugeLoftDeg")
                .asDouble();
        assertEquals(HEAD.gaugeLoftDeg(shaft), loftDeg, 1e-6);
    }
}
