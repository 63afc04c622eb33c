package org.bagwright;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Makes the invented books of demo-data from the blank book. Run {@link #main} after the blank book has changed; a test
 * holds the committed books to what this class makes.
 */
public final class DemoBooks {
    private DemoBooks() {}

    public static void main(String[] args) throws IOException {
        Files.createDirectories(Path.of("demo-data"));
        write("trio", TrioDemo.book());
        write("full", FullDemo.book());
        write("team", TeamDemo.book());
    }

    /** The demo of that name, made again. */
    public static XSSFWorkbook made(String name) throws IOException {
        return switch (name) {
            case "trio" -> TrioDemo.book();
            case "full" -> FullDemo.book();
            case "team" -> TeamDemo.book();
            default -> throw new IllegalArgumentException("no demo " + name);
        };
    }

    /** The committed demo of that name. */
    public static Path kept(String name) {
        return Path.of("demo-data", name + ".xlsx");
    }

    private static void write(String name, XSSFWorkbook made) throws IOException {
        try (made;
                OutputStream output = Files.newOutputStream(kept(name))) {
            made.write(output);
        }
    }

    /** Says on the sheet Start what the book is, and that it is invented. */
    static void introduce(XSSFWorkbook book, String title, String shows) {
        BookFiller.start(book, "Title", title);
        book.getProperties().getCoreProperties().setTitle(title);
        XSSFSheet start = book.getSheet("Start");
        start.getRow(0).getCell(0).setCellValue("Demo: " + title);
        start.getRow(1)
                .getCell(0)
                .setCellValue("Invented: these golfers, clubs, shots and pieces do not exist. " + shows);
    }

    /** A sleeve of one ring with eight settings, an hour and a half apart, bonded to the shaft. */
    static void eightMarks(BookFiller sleeves, String name, double bendDeg) {
        sleeves.under("Sleeve, Setting, Clock, Bend, Turns shaft");
        for (int mark = 1; mark <= 8; mark++) {
            sleeves.row(name, mark, mark == 1 ? 12 : (mark - 1) * 1.5, bendDeg, "yes");
        }
    }

    /** A sleeve of one loose ring with four settings, which leaves the shaft as it is. */
    static void fourMarks(BookFiller sleeves, String name, double bendDeg) {
        sleeves.under("Sleeve, Setting, Clock, Bend, Turns shaft")
                .row(name, "A", 12, bendDeg, "no")
                .row(name, "B", 3, bendDeg, "no")
                .row(name, "C", 6, bendDeg, "no")
                .row(name, "D", 9, bendDeg, "no");
    }
}
