package org.bagwright.workbook.cells;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Drawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.cli.text.Terminal;
import org.bagwright.workbook.schema.ResultSheet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a fitter put into his book is still there after it was planned, and planned again. */
@Tag("regression")
class OwnSheetsTest {
    @TempDir
    Path folder;

    private Path book() throws Exception {
        BookSketch sketch = new BookSketch()
                .sheet("My notes", "Date, Note, Sum")
                .row("May", 3, null)
                .sheet("Golfers", "Golfer, Driver speed, My column")
                .row("Golfer A", 95, "left alone")
                .sheet("Clubs", "Club, Kind, Loft, Lie, Slot, Golfer")
                .row("Driver", "driver", 10.5, 58, 1, "Golfer A")
                .row("7 iron", "iron", 32, 62.5, 2, "Golfer A");
        XSSFSheet notes = sketch.workbook().getSheet("My notes");
        notes.getRow(1).createCell(2).setCellFormula("B2*2+COUNTA(Golfers!A:A)");
        notes.createFreezePane(1, 1);
        notes.setColumnHidden(5, true);
        Drawing<?> drawing = notes.createDrawingPatriarch();
        ClientAnchor anchor = sketch.workbook().getCreationHelper().createClientAnchor();
        anchor.setRow2(3);
        anchor.setCol2(2);
        var comment = drawing.createCellComment(anchor);
        comment.setString(sketch.workbook().getCreationHelper().createRichTextString("a note of mine"));
        notes.getRow(1).getCell(0).setCellComment(comment);
        var name = sketch.workbook().createName();
        name.setNameName("my_range");
        name.setRefersToFormula("'My notes'!$A$1:$B$2");
        return sketch.write(folder.resolve("mine.xlsx"));
    }

    /** The parts of a package that hold the fitter's sheets, with the bytes of each. */
    private static Map<String, byte[]> parts(Path file, List<String> kinds) throws Exception {
        Map<String, byte[]> parts = new TreeMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                if (kinds.stream().anyMatch(entry.getName()::contains)) {
                    try (InputStream input = zip.getInputStream(entry)) {
                        parts.put(entry.getName(), withoutSelection(input.readAllBytes()));
                    }
                }
            }
        }
        return parts;
    }

    /** The same book loaded and saved and nothing else: as much as the library can keep. */
    private Path savedByPoi(Path file) throws Exception {
        Path saved = folder.resolve("saved.xlsx");
        try (InputStream input = Files.newInputStream(file);
                XSSFWorkbook workbook = new XSSFWorkbook(input);
                OutputStream output = Files.newOutputStream(saved)) {
            workbook.write(output);
        }
        return saved;
    }

    /** Which sheet is shown first changes, since a result opens on Plan; two selected sheets would be edited as one. */
    private static byte[] withoutSelection(byte[] part) {
        String text = new String(part, StandardCharsets.ISO_8859_1);
        return text.replaceFirst(" tabSelected=\"[a-z01]*\"", "").getBytes(StandardCharsets.ISO_8859_1);
    }

    @Test
    void planTwice_keepsOwnSheetsByteForByteAndDoublesNothing() throws Exception {
        Path file = book();
        List<String> kinds = List.of(
                "worksheets/sheet1.xml", "worksheets/sheet2.xml", "worksheets/sheet3.xml", "comments", "vmlDrawing");
        Map<String, byte[]> before = parts(savedByPoi(file), kinds);
        assertTrue(before.size() >= 5, before.keySet().toString());
        List<Integer> partCounts = new ArrayList<>();
        for (int run = 0; run < 3; run++) {
            Terminal plan = Terminal.run("plan", file, "--in-place");
            assertEquals(0, plan.code(), plan.err());
            partCounts.add(parts(file, List.of("")).size());
        }
        assertEquals(1, Set.copyOf(partCounts).size(), "parts of earlier runs stay in the file: " + partCounts);
        Map<String, byte[]> after = parts(file, kinds);
        before.forEach((part, bytes) -> assertArrayEquals(bytes, after.get(part), part));
        try (InputStream input = Files.newInputStream(file);
                XSSFWorkbook workbook = new XSSFWorkbook(input)) {
            assertEquals(3 + ResultSheet.NAMES.size() - 2, workbook.getNumberOfSheets(), "all but Sessions and Team");
            assertEquals(1, workbook.getNames("my_range").size());
            assertEquals(1, workbook.getNames("BW_gap_tolerance").size());
        }
    }

    @Test
    void plan_refusesToTouchASheetOfTheFittersOwnNamedPlan() throws Exception {
        Path file = book();
        try (InputStream input = Files.newInputStream(file);
                XSSFWorkbook workbook = new XSSFWorkbook(input)) {
            workbook.createSheet("Plan").createRow(0).createCell(0).setCellValue("my own plan");
            try (OutputStream output = Files.newOutputStream(folder.resolve("clash.xlsx"))) {
                workbook.write(output);
            }
        }
        Terminal plan = Terminal.run("plan", folder.resolve("clash.xlsx"));
        assertEquals(3, plan.code());
        assertTrue(plan.err().contains("Plan: this sheet is your own"), plan.err());
    }
}
