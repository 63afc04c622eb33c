package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.bagwright.sessions.SessionBook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code add-shots}: files of shots into the sheet Shots, from the command line to the book. */
@Tag("analytic")
class AddShotsCommandTest {
    private static final String MAY =
            "Player,Date,Club,Carry (m)\nGolfer A,2026-05-14,Driver,203.5\nGolfer A,2026-05-14,7i,135.3\n";

    @TempDir
    Path folder;

    private Path book;
    private Path may;

    @BeforeEach
    void write() throws Exception {
        book = SessionBook.sketch().write(folder.resolve("bag.xlsx"));
        may = Files.writeString(folder.resolve("may.csv"), MAY);
    }

    private static Terminal done(Object... args) {
        Terminal run = Terminal.run(args);
        assertEquals(0, run.code(), run.err());
        return run;
    }

    private static List<List<String>> shots(Path file) throws Exception {
        try (XSSFWorkbook workbook = ResultCells.open(file)) {
            DataFormatter formatter = new DataFormatter();
            XSSFSheet sheet = workbook.getSheet("Shots");
            return Stream.iterate(0, row -> row <= sheet.getLastRowNum(), row -> row + 1)
                    .map(sheet::getRow)
                    .map(row -> Stream.iterate(0, column -> column < row.getLastCellNum(), column -> column + 1)
                            .map(column -> formatter.formatCellValue(row.getCell(column)))
                            .toList())
                    .toList();
        }
    }

    @Test
    void rows_carryDateAndSetup_nextToTheBook() throws Exception {
        Terminal run = done("add-shots", book, may);
        assertTrue(run.out().contains("Carry (m) -> Carry, m (heading)"), run.out());
        assertTrue(run.out().contains("2 shots added."), run.out());
        List<List<String>> rows = shots(folder.resolve("bag-shots.xlsx"));
        assertEquals(
                List.of("Club", "Golfer", "Date", "Setting", "Weighting", "Length", "Carry", "Loft bend", "Lie bend"),
                rows.get(0));
        assertEquals(
                List.of("Driver", "Golfer A", "2026-05-14", "2", "heel", "45", "222.5503"),
                rows.get(1).subList(0, 7));
        assertEquals(List.of("7 iron", "Golfer A", "2026-05-14", "", "", "37", "147.9659", "0.5", "0"), rows.get(2));
        Terminal check = done("check", folder.resolve("bag-shots.xlsx"));
        assertTrue(check.out().contains("No problems found."), check.out());
    }

    @Test
    void sameFileTwice_addsNothing_andLeavesTheBookAsItIs() throws Exception {
        done("add-shots", book, may, "--in-place");
        byte[] before = Files.readAllBytes(book);
        Terminal again = done("add-shots", book, may, may, "--in-place");
        assertTrue(again.out().contains("0 shots added, 4 already in the book."), again.out());
        assertTrue(again.out().contains("Nothing is written: nothing is new."), again.out());
        assertArrayEquals(before, Files.readAllBytes(book));
    }

    @Test
    void sameFileGivenTwice_isAddedOnce() throws Exception {
        assertTrue(done("add-shots", book, may, may).out().contains("2 shots added, 2 already in the book."));
    }

    @Test
    void rowSetAside_isNotAddedAgain() throws Exception {
        done("add-shots", book, may, "--in-place");
        ChoiceBook.edited(book, workbook -> {
            Row headings = workbook.getSheet("Shots").getRow(0);
            headings.createCell(headings.getLastCellNum()).setCellValue("Use");
            workbook.getSheet("Shots")
                    .getRow(1)
                    .createCell(headings.getLastCellNum() - 1)
                    .setCellValue("no");
        });
        assertTrue(done("add-shots", book, may).out().contains("0 shots added, 2 already in the book."));
    }

    @Test
    void dryRun_writesNothing() throws Exception {
        byte[] before = Files.readAllBytes(book);
        Terminal run = done(
                "add-shots", book, may, "--dry-run", "--in-place", "--column", "Player=none", "--golfer", "Golfer A");
        assertTrue(run.out().contains("Nothing is written: this is a dry run."), run.out());
        assertArrayEquals(before, Files.readAllBytes(book));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(2, files.count());
        }
    }

    @Test
    void headingLearnt_isUsedTheNextTime() throws Exception {
        Path flight = Files.writeString(folder.resolve("a.csv"), "Club,Flight\nDriver,203.5\n");
        assertEquals(
                3,
                Terminal.run("add-shots", book, flight, "--golfer", "Golfer A").code());
        Terminal first =
                done("add-shots", book, flight, "--golfer", "Golfer A", "--column", "Flight=Carry (m)", "--in-place");
        assertTrue(first.out().contains("Remembered on the sheet Start: Flight = Carry (m)"), first.out());
        Path next = Files.writeString(folder.resolve("b.csv"), "Club,Flight\nDriver,205.5\n");
        Terminal second = done("add-shots", book, next, "--golfer", "Golfer A", "--in-place");
        assertTrue(second.out().contains("Flight -> Carry, m (--column)"), second.out());
        assertTrue(second.out().contains("1 shot added."), second.out());
        done("check", book);
    }

    @Test
    void anotherSetting_isWrittenAsGiven() throws Exception {
        done("add-shots", book, may, "--setting", "driver=3");
        assertEquals("3", shots(folder.resolve("bag-shots.xlsx")).get(1).get(3));
    }

    @Test
    void wrongOptions_areWrongArguments() {
        for (List<String> wrong : List.of(
                List.of("--setting", "Driver=9"),
                List.of("--setting", "Diver=1"),
                List.of("--setting", "7 iron=1"),
                List.of("--setting", "Driver"),
                List.of("--column", "Flight=Carry"),
                List.of("--column", "Carry (m)=Karry"),
                List.of("--golfer", "Golfer Z"),
                List.of("--date", "14 May"),
                List.of("--speed", "knots"),
                List.of("--distance", "miles"))) {
            Terminal run = Terminal.run("add-shots", book, may, wrong.get(0), wrong.get(1));
            assertEquals(2, run.code(), wrong + run.err());
            assertFalse(Files.exists(folder.resolve("bag-shots.xlsx")));
        }
    }

    @Test
    void laterChoicesMadeToday_leaveTheRowsTrue() throws Exception {
        Path choices = ChoiceBook.sketch().write(folder.resolve("choices.xlsx"));
        Files.writeString(may, "Club,Carry\nDriver,222\n5w,190\n7i,148\n");
        done("add-shots", choices, may, "--in-place", "--date", "2026-05-14");
        Path planned = ChoiceBook.planned(choices, folder.resolve("one.xlsx"), workbook -> {
            ResultCells.set(workbook, 0, "Live setting", 4);
            ResultCells.set(workbook, 0, "Live weighting", "toe");
            ResultCells.set(workbook, 2, "Live loft bend [deg]", -1);
        });
        List<List<String>> before = shots(planned);
        done("plan", planned, "--from-live", "-o", folder.resolve("two.xlsx"));
        assertEquals(before, shots(folder.resolve("two.xlsx")));
    }

    @Test
    void ownColumnsFormulasAndTable_stay_andTheTableReachesTheNewRows() throws Exception {
        BookSketch sketch = SessionBook.sketch()
                .sheet("Shots", "Golfer, Club, Carry, *mine, Ball speed")
                .row("Golfer A", "Driver", 221, "a", 140)
                .row("Golfer A", "7 iron", 147, "b", 107);
        XSSFSheet sheet = sketch.workbook().getSheet("Shots");
        sheet.createTable(sketch.workbook().getCreationHelper().createAreaReference("A1:E3"))
                .getCTTable()
                .addNewAutoFilter()
                .setRef("A1:E3");
        sketch.sheet("Mine", "Sum").row(1);
        sketch.workbook().getSheet("Mine").createRow(2).createCell(0).setCellFormula("SUM(Shots!C2:C100)");
        sketch.write(book);
        done("add-shots", book, may, "--in-place");
        try (XSSFWorkbook after = ResultCells.open(book)) {
            XSSFSheet shots = after.getSheet("Shots");
            assertEquals("a", shots.getRow(1).getCell(3).getStringCellValue());
            assertEquals("A1:E5", shots.getTables().get(0).getCTTable().getRef());
            assertEquals(
                    CellType.FORMULA,
                    after.getSheet("Mine").getRow(2).getCell(0).getCellType());
            assertEquals(
                    221 + 147 + 222.5503 + 147.9659,
                    after.getSheet("Mine").getRow(2).getCell(0).getNumericCellValue(),
                    1e-9);
            assertTrue(DateUtil.isCellDateFormatted(shots.getRow(3).getCell(5)));
        }
    }

    @Test
    void checksAndColoursOfPreparedRows_reachTheNewOnes() throws Exception {
        BookSketch sketch =
                SessionBook.sketch().sheet("Shots", "Golfer, Club, Carry, Date").row("Golfer A", "Driver", 221);
        XSSFSheet sheet = sketch.workbook().getSheet("Shots");
        DataValidationHelper helper = sheet.getDataValidationHelper();
        for (String range : List.of("A2:A6", "C2:C100", "E1:E1")) {
            sheet.addValidationData(helper.createValidation(
                    helper.createExplicitListConstraint(new String[] {"Golfer A", "Golfer B"}),
                    new CellRangeAddressList(
                            CellRangeAddress.valueOf(range).getFirstRow(),
                            CellRangeAddress.valueOf(range).getLastRow(),
                            CellRangeAddress.valueOf(range).getFirstColumn(),
                            CellRangeAddress.valueOf(range).getLastColumn())));
        }
        sheet.getSheetConditionalFormatting()
                .addConditionalFormatting(
                        new CellRangeAddress[] {CellRangeAddress.valueOf("C2:C6")},
                        sheet.getSheetConditionalFormatting().createConditionalFormattingRule("C2>300"));
        sketch.write(book);
        StringBuilder text = new StringBuilder(MAY);
        for (int row = 0; row < 10; row++) {
            text.append("Golfer A,2026-05-14,Driver,20").append(row).append(".1\n");
        }
        Files.writeString(may, text);
        done("add-shots", book, may, "--in-place");
        try (XSSFWorkbook after = ResultCells.open(book)) {
            XSSFSheet shots = after.getSheet("Shots");
            assertEquals(13, shots.getLastRowNum());
            assertEquals(
                    List.of("[A2:A18]", "[C2:C100]", "[E1]"),
                    shots.getDataValidations().stream()
                            .map(rule -> Stream.of(rule.getRegions().getCellRangeAddresses())
                                    .map(CellRangeAddress::formatAsString)
                                    .toList()
                                    .toString())
                            .toList());
            assertEquals(
                    "C2:C18",
                    shots.getSheetConditionalFormatting()
                            .getConditionalFormattingAt(0)
                            .getFormattingRanges()[0]
                            .formatAsString());
        }
    }

    @Test
    void workbooksOfShots_areReadToo() throws Exception {
        for (Workbook session : List.of(new XSSFWorkbook(), new HSSFWorkbook())) {
            session.createSheet("Cover").createRow(0).createCell(0).setCellValue("Range report");
            Sheet sheet = session.createSheet("Shots of May");
            Row headings = sheet.createRow(2);
            headings.createCell(1).setCellValue("Club");
            headings.createCell(2).setCellValue("Carry (yd)");
            Row row = sheet.createRow(3);
            row.createCell(1).setCellValue("Driver");
            row.createCell(2).setCellValue(220.125);
            sheet.createRow(4).createCell(1).setCellFormula("\"Dri\"&\"ver\"");
            Path file = folder.resolve(session instanceof HSSFWorkbook ? "may.xls" : "may.xlsx");
            try (OutputStream output = Files.newOutputStream(file)) {
                session.write(output);
            }
            session.close();
            Terminal run = done("add-shots", book, file, "--golfer", "Golfer A", "--json", "--dry-run");
            assertEquals(1, run.json().get("added").asInt());
            JsonNode left = run.json().get("files").get(0).get("leftOut");
            assertEquals(1, left.size(), left.toString());
        }
    }

    @Test
    void json_tellsHeadingsClubsAndWhatIsLeftOut() throws Exception {
        Files.writeString(may, MAY + "Golfer A,2026-05-14,9w,100\n");
        JsonNode json = done("add-shots", book, may, "--json").json();
        assertEquals("yd", json.get("units").get("distance").asText());
        assertEquals(2, json.get("added").asInt());
        assertEquals(
                "may.csv line 4",
                json.get("files").get(0).get("leftOut").get(0).get("cell").asText());
        assertEquals(
                "m", json.get("files").get(0).get("headings").get(3).get("unit").asText());
        assertEquals(1, json.get("clubs").get(0).get("added").asInt());
        assertTrue(json.get("written").asText().endsWith("bag-shots.xlsx"));
    }

    @Test
    void hostileFiles_areRefused_andNothingIsWritten() throws Exception {
        Path zip = folder.resolve("zip.csv");
        try (ZipOutputStream output = new ZipOutputStream(Files.newOutputStream(zip))) {
            output.putNextEntry(new ZipEntry("may.csv"));
            output.write(MAY.getBytes(StandardCharsets.UTF_8));
        }
        byte[] noise = new byte[5000];
        new Random(1).nextBytes(noise);
        Path binary = Files.write(folder.resolve("noise.csv"), noise);
        Path large = folder.resolve("large.csv");
        try (RandomAccessFile sparse = new RandomAccessFile(large.toFile(), "rw")) {
            sparse.setLength(1L << 30);
        }
        Path line = Files.writeString(folder.resolve("line.csv"), "a,".repeat(1 << 20));
        Path zero = Files.writeString(folder.resolve("zero.csv"), "Club,Carry\nDriver,2\u000020\n");
        Path empty = Files.writeString(folder.resolve("empty.csv"), "");
        for (Path file : List.of(zip, binary, large, line, zero, empty, folder, folder.resolve("none.csv"))) {
            Terminal run = Terminal.run("add-shots", book, may, file, "--golfer", "Golfer A");
            assertEquals(3, run.code(), file + run.err());
            assertTrue(run.err().endsWith("1 problem to fix.\n"), run.err());
            assertFalse(Files.exists(folder.resolve("bag-shots.xlsx")), file.toString());
        }
    }

    @Test
    void formulaLikeText_isNeverAFormula() throws Exception {
        BookSketch odd = SessionBook.sketch();
        odd.put("Sleeves", 3, "Setting", "=1+1")
                .put("Clubs", 1, "Setting", "=1+1")
                .write(book);
        done("add-shots", book, may, "--column", "Player=Golfer", "--in-place");
        try (XSSFWorkbook after = ResultCells.open(book)) {
            assertEquals(
                    CellType.STRING,
                    after.getSheet("Shots").getRow(1).getCell(3).getCellType());
            assertEquals("=1+1", after.getSheet("Shots").getRow(1).getCell(3).getStringCellValue());
        }
    }

    @Test
    void twentyThousandRows_areAddedAndKnownAgain() throws Exception {
        StringBuilder text = new StringBuilder("Shot,Player,Club,Carry\n");
        Random random = new Random(1);
        for (int row = 0; row < 20_000; row++) {
            text.append(row)
                    .append(",Golfer A,Driver,")
                    .append(200 + random.nextInt(400) / 10.0)
                    .append('\n');
        }
        Files.writeString(may, text);
        assertTrue(done("add-shots", book, may, "--in-place").out().contains("20000 shots added."));
        assertTrue(done("add-shots", book, may, "--dry-run")
                .out()
                .contains("0 shots would be added, 20000 already in the book."));
    }
}
