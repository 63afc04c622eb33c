package org.bagwright.badbooks;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.function.UnaryOperator;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;

/**
 * A sound book with one thing changed.
 *
 * @param name what is changed
 * @param says what the commands say of it, beginning with the cell or the file; blank where the book is valid
 * @param file the bytes of the file
 */
record BadBook(String name, String says, Source file) {
    /** Makes the bytes of a file. */
    @FunctionalInterface
    interface Source {
        byte[] bytes() throws Exception;
    }

    /** Changes a book. */
    @FunctionalInterface
    interface Change {
        void in(XSSFWorkbook book) throws Exception;
    }

    static BadBook of(String name, String says, Change change) {
        return new BadBook(name, says, () -> {
            try (XSSFWorkbook book = sound()) {
                change.in(book);
                return bytes(book);
            }
        });
    }

    /** A sound book of which the text of one part of the file is changed. */
    static BadBook part(String name, String says, String part, UnaryOperator<String> change) {
        return new BadBook(name, says, () -> withPart(bytes(sound()), part, change));
    }

    /** The name of its file, which its message begins with unless it names a cell. */
    String fileName() {
        return says.startsWith("bag.") ? says.substring(0, says.indexOf(':')) : "bag.xlsx";
    }

    @Override
    public String toString() {
        return name;
    }

    /** Two golfers, a driver with a kit and a hybrid in sleeves, two irons. */
    static XSSFWorkbook sound() {
        return new BookSketch()
                .sheet("Golfers", "Golfer, Hand, Driver speed, Iron speed, Gap wish, Most changes")
                .row("Golfer A", "R", 95, 80, "even", 4)
                .row("Golfer B", "L", 80, 68, 12)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Kit, Weighting, Pinned")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58, 45, "S", "2", "Front", "Light", "no")
                .row("Golfer A", 2, "4 hybrid", "hybrid", 22, 59, 40, "S", "1")
                .row("Golfer A", 3, "7 iron", "iron", 32, 62.5, 37)
                .row("Golfer B", 1, "7 iron", "iron", 33, 62, 36.5)
                .sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Turns shaft")
                .row("S", 1, 12, 1.5, "yes")
                .row("S", 2, "3:00", 1.5, "yes")
                .sheet("Shots", "Golfer, Club, Head speed, Ball speed, Launch, Spin, Attack, Carry")
                .row("Golfer A", "Driver", 95, 139, 12, 2600, 1, 222)
                .weights()
                .row("Front", "Light", "A", 4, 20, 10, -5)
                .row("Front", "Heavy", "A", 12, 20, 10, -5)
                .stock()
                .row("Front: 12 g", 1)
                .sheet("Aims", "Measure, Tolerance, Importance, Must")
                .row("gap", 3, 2, "no")
                .workbook();
    }

    static byte[] bytes(XSSFWorkbook book) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        book.write(bytes);
        return bytes.toByteArray();
    }

    /** A cell named as {@code Clubs!F2}, created if needed. */
    static XSSFCell cell(XSSFWorkbook book, String address) {
        CellReference at = new CellReference(address);
        XSSFSheet sheet = book.getSheet(at.getSheetName());
        XSSFRow row = sheet.getRow(at.getRow()) == null ? sheet.createRow(at.getRow()) : sheet.getRow(at.getRow());
        return row.getCell(at.getCol()) == null ? row.createCell(at.getCol()) : row.getCell(at.getCol());
    }

    static String partName(int sheet) {
        return "xl/worksheets/sheet" + sheet + ".xml";
    }

    /** The zip with the text of a part changed; the part is left out where the change gives null. */
    static byte[] withPart(byte[] whole, String part, UnaryOperator<String> change) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(whole));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                String now = entry.getName().equals(part) ? changed(text, change) : text;
                if (now != null) {
                    out.putNextEntry(new ZipEntry(entry.getName()));
                    out.write(now.getBytes(StandardCharsets.UTF_8));
                }
            }
        }
        return bytes.toByteArray();
    }

    /** The zip with its parts as they are, not packed. */
    static byte[] stored(byte[] whole) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(whole));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                byte[] content = in.readAllBytes();
                CRC32 checksum = new CRC32();
                checksum.update(content);
                ZipEntry stored = new ZipEntry(entry.getName());
                stored.setMethod(ZipEntry.STORED);
                stored.setSize(content.length);
                stored.setCrc(checksum.getValue());
                out.putNextEntry(stored);
                out.write(content);
            }
        }
        return bytes.toByteArray();
    }

    private static String changed(String text, UnaryOperator<String> change) {
        String now = change.apply(text);
        if (text.equals(now)) {
            throw new IllegalStateException("nothing was changed in " + text);
        }
        return now;
    }
}
