package org.bagwright.faults;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A command that writes a book in place, and the demo book it is tried on. */
enum KilledCommand {
    PLAN("plan --in-place", "Plan"),
    ADD_SHOTS("add-shots --in-place", "Shots"),
    GAUGE("gauge --write --in-place", "Readings");

    private static final int HEADINGS_ROW = 3;

    private final String label;
    private final String sheet;

    KilledCommand(String label, String sheet) {
        this.label = label;
        this.sheet = sheet;
    }

    String label() {
        return label;
    }

    /** The demo book trio, with two readings of the driver where they are needed. */
    byte[] demo() throws IOException {
        byte[] trio = Files.readAllBytes(Path.of("demo-data", "trio.xlsx"));
        return this == GAUGE ? withReadings(trio) : trio;
    }

    private static byte[] withReadings(byte[] trio) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(trio))) {
            reading(book, HEADINGS_ROW + 2, "7", 10.4, 57.9);
            reading(book, HEADINGS_ROW + 3, "8", 11.6, 57.6);
            book.write(bytes);
        }
        return bytes.toByteArray();
    }

    private static void reading(XSSFWorkbook book, int row, String setting, double loftDeg, double lieDeg) {
        XSSFSheet readings = book.getSheet("Readings");
        Row made = readings.getRow(row) == null ? readings.createRow(row) : readings.getRow(row);
        for (Cell heading : readings.getRow(HEADINGS_ROW)) {
            Cell cell = made.getCell(heading.getColumnIndex(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
            switch (heading.getStringCellValue()) {
                case "Club" -> cell.setCellValue("Driver");
                case "Setting" -> cell.setCellValue(setting);
                case "Loft" -> cell.setCellValue(loftDeg);
                case "Lie" -> cell.setCellValue(lieDeg);
                default -> cell.setBlank();
            }
        }
    }

    /** A sheet that every result has. */
    String sheet() {
        return sheet;
    }

    /** The arguments; a file of shots is made in a folder of its own. */
    List<String> words(Path book) throws IOException {
        return switch (this) {
            case PLAN -> List.of("plan", book.toString(), "--in-place");
            case GAUGE -> List.of("gauge", book.toString(), "--write", "--in-place");
            case ADD_SHOTS -> List.of("add-shots", book.toString(), shots(book).toString(), "--in-place");
        };
    }

    private static Path shots(Path book) throws IOException {
        Path shots = book.getParent().resolveSibling("shots").resolve("may.csv");
        if (!Files.exists(shots)) {
            Files.createDirectories(shots.getParent());
            Files.writeString(shots, "Date,Club,Carry (yd)\n2026-05-31,Driver,221\n2026-05-31,Driver,224\n");
        }
        return shots;
    }
}
