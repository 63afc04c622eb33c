package org.bagwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;

/** Books with gauge readings that were made from a hidden truth, and what a test does with them. */
final class GaugeBooks {
    /** What the marks m0 to m7 say: every hour and a half. */
    static final double HOURS_A_MARK = 1.5;

    static final double STATED_BEND_DEG = 1.5;

    private GaugeBooks() {}

    /**
     * The truth behind a sleeve.
     *
     * @param bendDeg its bend
     * @param offsetH how much later the shaft leans than the marks say
     */
    record Truth(VectorClub head, double bendDeg, double offsetH) {
        double[] shaft(int mark) {
            return head.shaft(mark * HOURS_A_MARK + offsetH, bendDeg);
        }
    }

    /** A golfer with a driver stated as 9.5 and 58 on the bore, in a sleeve stated to bend by 1.5 degrees. */
    static BookSketch driver() {
        return clubs().row("Golfer A", 1, "Driver", "driver", 9.5, 58, null, "S", "m0");
    }

    static BookSketch clubs() {
        return new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Iron speed")
                .row("Golfer A", 95, 80)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Stated at, Sleeve, Setting");
    }

    static BookSketch sleeve(BookSketch book) {
        book.sheet("Sleeves", "Sleeve, Setting, Clock, Bend");
        for (int mark = 0; mark < 8; mark++) {
            book.row("S", "m" + mark, mark == 0 ? 12 : mark * HOURS_A_MARK, STATED_BEND_DEG);
        }
        return book;
    }

    static BookSketch readings(BookSketch book) {
        return book.sheet("Readings", "Golfer, Club, Setting, Loft, Lie, Face");
    }

    /** One reading at each mark, each number with its own noise. */
    static BookSketch read(BookSketch book, String club, Truth truth, Random noise, double noiseDeg, int... marks) {
        for (int mark : marks) {
            double[] shaft = truth.shaft(mark);
            book.row(
                    "Golfer A",
                    club,
                    "m" + mark,
                    truth.head().gaugeLoftDeg(shaft) + noiseDeg * noise.nextGaussian(),
                    truth.head().gaugeLieDeg(shaft) + noiseDeg * noise.nextGaussian());
        }
        return book;
    }

    static XSSFWorkbook open(Path file) throws IOException {
        try (InputStream input = Files.newInputStream(file)) {
            return new XSSFWorkbook(input);
        }
    }

    static void save(XSSFWorkbook workbook, Path file) throws IOException {
        try (OutputStream output = Files.newOutputStream(file)) {
            workbook.write(output);
        }
    }

    /** The cell named as {@code Clubs!E2}. */
    static XSSFCell cell(XSSFWorkbook workbook, String address) {
        CellReference at = new CellReference(address);
        return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
    }

    static double number(XSSFWorkbook workbook, String address) {
        return cell(workbook, address).getNumericCellValue();
    }

    static String note(XSSFWorkbook workbook, String address) {
        return cell(workbook, address).getCellComment().getString().getString();
    }
}
