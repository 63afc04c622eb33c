package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.zip.ZipFile;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.cli.GaugeBooks.Truth;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code gauge --write} leaves in a book, and what the other commands then make of it. */
@Tag("analytic")
class GaugeWriteTest {
    private static final Truth TRUTH = new Truth(new VectorClub(10.1, 57.2, 0), 1.23, 0.6);
    /** Cells hold hundredths: of a degree, and of an hour, which moves the shaft by 0.0064 degrees. */
    private static final double ROUNDED_DEG = 0.03;

    @TempDir
    Path folder;

    private Path exact(String statedAt) throws Exception {
        BookSketch book = GaugeBooks.clubs().row("Golfer A", 1, "Driver", "driver", 9.5, 58, statedAt, "S", "m0");
        GaugeBooks.readings(GaugeBooks.sleeve(book));
        return GaugeBooks.read(book, "Driver", TRUTH, new Random(1), 0, 0, 2, 3, 5, 7)
                .write(folder.resolve("bag.xlsx"));
    }

    private Path written(Path book) {
        Terminal gauge = Terminal.run("gauge", book, "--write");
        assertEquals(0, gauge.code(), gauge.err());
        return folder.resolve(book.getFileName().toString().replace(".xlsx", "-gauged.xlsx"));
    }

    @Test
    void write_leavesTheBookAndFillsACopy() throws Exception {
        Path book = exact(null);
        byte[] before = Files.readAllBytes(book);
        try (XSSFWorkbook copy = GaugeBooks.open(written(book))) {
            // Two decimals are written.
            assertEquals(10.1, GaugeBooks.number(copy, "Clubs!E2"), 0.0051);
            assertEquals(57.2, GaugeBooks.number(copy, "Clubs!F2"), 0.0051);
            assertEquals(1.23, GaugeBooks.number(copy, "Sleeves!D2"), 0.0051);
            assertEquals(0.6, GaugeBooks.number(copy, "Sleeves!C2"), 0.0051);
            assertEquals(11.1, GaugeBooks.number(copy, "Sleeves!C9"), 0.0051);
            String note = GaugeBooks.note(copy, "Clubs!E2");
            assertTrue(note.startsWith("Gauged by bagwright: 10.1 +- 0.1"), note);
            assertTrue(note.contains("From 5 readings of Driver") && note.contains("Before: 9.5"), note);
            assertTrue(GaugeBooks.note(copy, "Sleeves!D3").contains("Before: 1.5"));
            assertTrue(GaugeBooks.note(copy, "Sleeves!C2").endsWith("Before: 12"));
        }
        assertArrayEquals(before, Files.readAllBytes(book));
    }

    @Test
    void chartOfTheCopy_hasTheTruthAtEverySetting() throws Exception {
        for (String statedAt : new String[] {null, "m2", "m7"}) {
            JsonNode chart =
                    Terminal.run("chart", written(exact(statedAt)), "--json").json();
            for (int mark = 0; mark < 8; mark++) {
                JsonNode option = chart.at("/clubs/0/options/" + mark);
                double[] shaft = TRUTH.shaft(mark);
                assertEquals(
                        TRUTH.head().gaugeLoftDeg(shaft),
                        option.get("gaugeLoftDeg").asDouble(),
                        ROUNDED_DEG);
                assertEquals(
                        TRUTH.head().gaugeLieDeg(shaft),
                        option.get("gaugeLieDeg").asDouble(),
                        ROUNDED_DEG);
            }
        }
    }

    /** The stated loft is the one at the setting named, here hour 3: the bend shows in it as bend / sin(lie). */
    @Test
    void loft_isWrittenAtTheSettingWhereItIsStated() throws Exception {
        try (XSSFWorkbook copy = GaugeBooks.open(written(exact("m2")))) {
            assertEquals(TRUTH.head().gaugeLoftDeg(TRUTH.shaft(2)), GaugeBooks.number(copy, "Clubs!E2"), ROUNDED_DEG);
            assertEquals(TRUTH.head().gaugeLieDeg(TRUTH.shaft(2)), GaugeBooks.number(copy, "Clubs!F2"), ROUNDED_DEG);
        }
    }

    @Test
    void planWarnsBeforeAndSaysAsGaugedAfter() throws Exception {
        Path book = exact(null);
        String before =
                Terminal.run("plan", book, "--json").json().get("messages").toString();
        assertTrue(
                before.contains("Driver (gauged loft 10.1 +- 0.1 against the stated 9.5; gauged lie 57.2 +- 0.1 against"
                        + " the stated 58"),
                before);
        assertTrue(before.contains("run gauge --write"), before);
        Path copy = written(book);
        for (String command : new String[] {"plan", "chart"}) {
            Terminal after = Terminal.run(command, copy, "--json");
            assertEquals(0, after.code(), after.err());
            String said = after.json().get("messages").toString();
            assertTrue(said.contains("Driver: loft and lie as gauged"), said);
            assertFalse(said.contains("run gauge --write"), said);
            assertFalse(said.contains("as stated for the clubs without readings"), said);
        }
    }

    @Test
    void numberChangedByHandAfterwards_isNoLongerCalledGauged() throws Exception {
        Path copy = written(exact(null));
        try (XSSFWorkbook workbook = GaugeBooks.open(copy)) {
            GaugeBooks.cell(workbook, "Clubs!E2").setCellValue(11);
            GaugeBooks.cell(workbook, "Clubs!F2").setCellValue(60);
            GaugeBooks.save(workbook, copy);
        }
        String said =
                Terminal.run("chart", copy, "--json").json().get("messages").toString();
        assertFalse(said.contains("as gauged"), said);
        assertTrue(said.contains("run gauge --write"), said);
    }

    @Test
    void readingsThatAgree_areSaidToAgree() throws Exception {
        Truth stated = new Truth(new VectorClub(9.5, 58, 0), 1.5, 0);
        BookSketch book = GaugeBooks.readings(
                GaugeBooks.sleeve(GaugeBooks.driver().row("Golfer A", 2, "7 iron", "iron", 32, 62)));
        Path file = GaugeBooks.read(book, "Driver", stated, new Random(1), 0, 0, 2, 4, 6)
                .write(folder.resolve("agree.xlsx"));
        String said =
                Terminal.run("chart", file, "--json").json().get("messages").toString();
        assertTrue(said.contains("Driver: loft and lie as stated; the readings agree on loft and lie"), said);
        assertTrue(said.contains("loft and lie as stated for the clubs without readings"), said);
    }

    /** Written twice the numbers stay, the note is not doubled, and what stood there first is kept. */
    @Test
    void writingAgain_keepsTheNumbersAndTheFirstStatedOnes() throws Exception {
        Path once = written(exact(null));
        Terminal again = Terminal.run("gauge", once, "--write", "--in-place");
        assertEquals(0, again.code(), again.err());
        assertTrue(again.out().contains("Kept the previous file: "), again.out());
        try (XSSFWorkbook copy = GaugeBooks.open(once)) {
            assertEquals(10.1, GaugeBooks.number(copy, "Clubs!E2"), 0.0101);
            String note = GaugeBooks.note(copy, "Clubs!E2");
            assertEquals(0, note.indexOf("Gauged by bagwright: "));
            assertEquals(0, note.lastIndexOf("Gauged by bagwright: "));
            assertTrue(note.contains("Before: 10.1") && note.contains("At first: 9.5"), note);
        }
    }

    @Test
    void fittersNoteFormulaAndOwnCells_areKept() throws Exception {
        Path book = exact(null);
        try (XSSFWorkbook workbook = GaugeBooks.open(book)) {
            XSSFCell loft = GaugeBooks.cell(workbook, "Clubs!E2");
            loft.setCellFormula("4+5.5");
            workbook.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(loft);
            addNote(workbook, loft);
            var sums = workbook.createSheet("My sums").createRow(0);
            sums.createCell(0).setCellFormula("Clubs!E2*2");
            sums.createCell(1).setCellValue("mine");
            workbook.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(sums.getCell(0));
            GaugeBooks.save(workbook, book);
        }
        Path copy = written(book);
        try (XSSFWorkbook workbook = GaugeBooks.open(copy)) {
            XSSFCell loft = GaugeBooks.cell(workbook, "Clubs!E2");
            assertEquals(CellType.NUMERIC, loft.getCellType());
            String note = GaugeBooks.note(workbook, "Clubs!E2");
            assertTrue(note.startsWith("measured in May\n\nGauged by bagwright: "), note);
            assertTrue(note.contains("Before: =4+5.5 giving 9.5"), note);
            XSSFRichTextString text = loft.getCellComment().getString();
            assertTrue(text.getFontOfFormattingRun(0).getBold(), "the fitter's own bold type");
            double loftDeg = loft.getNumericCellValue();
            XSSFCell sum = GaugeBooks.cell(workbook, "'My sums'!A1");
            assertEquals("Clubs!E2*2", sum.getCellFormula());
            assertEquals(2 * loftDeg, sum.getNumericCellValue(), 1e-9, "the saved value follows");
            assertEquals("mine", GaugeBooks.cell(workbook, "'My sums'!B1").getStringCellValue());
        }
        assertEquals(0, Terminal.run("gauge", copy, "--write", "--in-place").code());
        try (XSSFWorkbook workbook = GaugeBooks.open(copy)) {
            String note = GaugeBooks.note(workbook, "Clubs!E2");
            assertTrue(note.startsWith("measured in May\n\nGauged by bagwright: "), note);
            assertTrue(note.endsWith("At first: =4+5.5 giving 9.5"), note);
        }
    }

    /** Clubs and Sleeves are the second and third sheet; the two others stay as they are to the last byte. */
    @Test
    void sheetsWithoutACorrection_stayByteForByte() throws Exception {
        Path book = exact(null);
        Path copy = written(book);
        for (int sheet : new int[] {1, 4}) {
            String part = "xl/worksheets/sheet" + sheet + ".xml";
            assertArrayEquals(part(book, part), part(copy, part), part);
        }
    }

    private static byte[] part(Path file, String name) throws Exception {
        try (ZipFile zip = new ZipFile(file.toFile());
                InputStream input = zip.getInputStream(zip.getEntry(name))) {
            return input.readAllBytes();
        }
    }

    private static void addNote(XSSFWorkbook workbook, XSSFCell cell) {
        ClientAnchor frame = workbook.getCreationHelper().createClientAnchor();
        frame.setCol1(cell.getColumnIndex());
        frame.setRow1(cell.getRowIndex());
        XSSFComment note = cell.getSheet().createDrawingPatriarch().createCellComment(frame);
        XSSFRichTextString text = new XSSFRichTextString("measured in May");
        var bold = workbook.createFont();
        bold.setBold(true);
        text.applyFont(0, 8, bold);
        note.setString(text);
        cell.setCellComment(note);
    }

    @Test
    void heldNumbers_areNotWritten() throws Exception {
        BookSketch book = GaugeBooks.readings(GaugeBooks.sleeve(GaugeBooks.driver()));
        Path file =
                GaugeBooks.read(book, "Driver", TRUTH, new Random(1), 0, 2, 2).write(folder.resolve("hour.xlsx"));
        try (XSSFWorkbook copy = GaugeBooks.open(written(file))) {
            assertTrue(GaugeBooks.note(copy, "Clubs!E2").contains("2 readings"));
            assertEquals(1.5, GaugeBooks.number(copy, "Sleeves!D2"));
            assertEquals(3, GaugeBooks.number(copy, "Sleeves!C4"));
            assertNull(GaugeBooks.cell(copy, "Sleeves!D2").getCellComment());
            assertNull(GaugeBooks.cell(copy, "Sleeves!C4").getCellComment());
        }
    }

    /** Clubs that share a sleeve: bend and clock are the means of both, weighted by one over the squared errors. */
    @Test
    void sharedSleeve_getsTheWeightedMean() throws Exception {
        BookSketch book = GaugeBooks.driver().row("Golfer A", 2, "3 wood", "wood", 15, 57.5, null, "S", "m0");
        GaugeBooks.readings(GaugeBooks.sleeve(book));
        Random noise = new Random(8);
        GaugeBooks.read(book, "Driver", TRUTH, noise, 0.2, 0, 1, 2, 3, 4, 5, 6, 7);
        Truth wood = new Truth(new VectorClub(15.4, 57, 0), 1.23, 0.6);
        Path file = GaugeBooks.read(book, "3 wood", wood, noise, 0.2, 0, 2, 4).write(folder.resolve("two.xlsx"));
        JsonNode gauge = Terminal.run("gauge", file, "--json").json();
        try (XSSFWorkbook copy = GaugeBooks.open(written(file))) {
            assertEquals(mean(gauge, "bendDeg"), GaugeBooks.number(copy, "Sleeves!D2"), 0.00501);
            assertEquals(mean(gauge, "clockOffsetH"), GaugeBooks.number(copy, "Sleeves!C2"), 0.00501);
            assertEquals(3 + mean(gauge, "clockOffsetH"), GaugeBooks.number(copy, "Sleeves!C4"), 0.00501);
            assertTrue(GaugeBooks.note(copy, "Sleeves!D2")
                    .contains("Weighted mean from 8 readings of Driver, 3 readings of 3 wood"));
        }
        assertTrue(gauge.get("messages").toString().contains("weighted mean for Driver, 3 wood"));
    }

    private static double mean(JsonNode gauge, String field) {
        double weights = 0;
        double sum = 0;
        for (JsonNode fit : gauge.get("fits")) {
            double error = fit.get(field).get("standardError").asDouble();
            weights += 1 / (error * error);
            sum += fit.get(field).get("value").asDouble() / (error * error);
        }
        return sum / weights;
    }

    /** Two rings keep the proportion of their bends and turn together. */
    @Test
    void twoRings_areScaledAndTurnedTogether() throws Exception {
        BookSketch book = GaugeBooks.clubs().row("Golfer A", 1, "Driver", "driver", 9.5, 58, null, "S", "a");
        book.sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Clock 2, Bend 2")
                .row("S", "a", "3:00", 1, 1, 0.5)
                .row("S", "b", 6, 1, 1, 0.5)
                .row("S", "c", 9, 1, 7, 0.5);
        VectorClub head = new VectorClub(9.2, 58.4, 0);
        double[][] rings = {{3.5, 1.2, 1.5, 0.6}, {6.5, 1.2, 1.5, 0.6}, {9.5, 1.2, 7.5, 0.6}};
        GaugeBooks.readings(book);
        for (int mark = 0; mark < 3; mark++) {
            double[] shaft = head.shaft(rings[mark]);
            book.row("Golfer A", "Driver", "" + "abc".charAt(mark), head.gaugeLoftDeg(shaft), head.gaugeLieDeg(shaft));
        }
        try (XSSFWorkbook copy = GaugeBooks.open(written(book.write(folder.resolve("rings.xlsx"))))) {
            for (int mark = 0; mark < 3; mark++) {
                for (int column = 0; column < 4; column++) {
                    String cell = "Sleeves!" + "CDEF".charAt(column) + (mark + 2);
                    assertEquals(rings[mark][column], GaugeBooks.number(copy, cell), 0.0051, cell);
                }
            }
            assertTrue(GaugeBooks.note(copy, "Sleeves!C2").contains("Before: 3:00"));
        }
    }

    @Test
    void result_neverReplacesTheBookWithoutBeingTold() throws Exception {
        Path book = exact(null);
        assertEquals(2, Terminal.run("gauge", book, "--write", "-o", book).code());
        assertEquals(
                2,
                Terminal.run("gauge", book, "--write", "-o", folder.resolve("x.ods"))
                        .code());
    }
}
