package org.bagwright;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Makes the invented books of demo-data from the blank book. Run {@link #main} after the blank book has changed; a test
 * holds the committed books to what this class makes.
 */
public final class DemoBooks {
    private static final String INVENTED = "Invented data: Golfer A, his clubs and his shots do not exist.";

    private DemoBooks() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of("demo-data");
        Files.createDirectories(folder);
        try (XSSFWorkbook book = full();
                OutputStream output = Files.newOutputStream(folder.resolve("full.xlsx"))) {
            book.write(output);
        }
    }

    /** A full bag: driver, two fairway woods, two hybrids with sleeves, six irons and three wedges to bend. */
    public static XSSFWorkbook full() throws IOException {
        XSSFWorkbook book = blank();
        Filler.start(book, "Title", "Demo: one full bag (invented)");
        Filler golfers = new Filler(book, "Golfers");
        golfers.row(Map.of(
                "Golfer",
                "Golfer A",
                "Hand",
                "R",
                "Driver speed",
                96,
                "Iron speed",
                80,
                "Squares face",
                "yes",
                "Most open",
                -2,
                "Most closed",
                2.5,
                "Gap wish",
                "even",
                "Note",
                INVENTED));
        sleeves(new Filler(book, "Sleeves"));
        woods(new Filler(book, "Clubs"));
        irons(new Filler(book, "Clubs"));
        shots(new Filler(book, "Shots"));
        return book;
    }

    private static XSSFWorkbook blank() throws IOException {
        try (InputStream input = Files.newInputStream(Path.of("templates", "bag.xlsx"))) {
            return new XSSFWorkbook(input);
        }
    }

    private static void sleeves(Filler sleeves) {
        for (int mark = 1; mark <= 8; mark++) {
            sleeves.row(Map.of(
                    "Sleeve",
                    "Sleeve P",
                    "Setting",
                    mark,
                    "Clock",
                    mark == 1 ? 12 : (mark - 1) * 1.5,
                    "Bend",
                    1.5,
                    "Turns shaft",
                    "yes"));
        }
        for (String[] setting : new String[][] {{"A", "12"}, {"B", "3"}, {"C", "6"}, {"D", "9"}}) {
            sleeves.row(Map.of(
                    "Sleeve",
                    "Sleeve Q",
                    "Setting",
                    setting[0],
                    "Clock",
                    Integer.parseInt(setting[1]),
                    "Bend",
                    1.0,
                    "Turns shaft",
                    "no"));
        }
    }

    private static void woods(Filler clubs) {
        wood(clubs, 1, "Driver", "driver", 10.5, 58, 45.25, "Sleeve P", 1, Map.of("Carry target", 230, "Gap wish", 20));
        wood(clubs, 2, "3 wood", "wood", 15, 57.5, 43, "Sleeve P", 1, Map.of());
        wood(clubs, 3, "5 wood", "wood", 18.5, 58, 42.25, "Sleeve P", 3, Map.of());
        wood(clubs, 4, "3 hybrid", "hybrid", 19.5, 58.5, 40.5, "Sleeve Q", "C", Map.of());
        wood(clubs, 5, "4 hybrid", "hybrid", 23, 59, 39.75, "Sleeve Q", "B", Map.of());
    }

    private static void wood(
            Filler clubs,
            int slot,
            String club,
            String kind,
            double loft,
            double lie,
            double length,
            String sleeve,
            Object setting,
            Map<String, Object> wanted) {
        Map<String, Object> row = new HashMap<>(wanted);
        row.putAll(Map.ofEntries(
                Map.entry("Golfer", "Golfer A"),
                Map.entry("Slot", slot),
                Map.entry("Club", club),
                Map.entry("Kind", kind),
                Map.entry("Loft", loft),
                Map.entry("Lie", lie),
                Map.entry("Stated at", setting),
                Map.entry("Length", length),
                Map.entry("Sleeve", sleeve),
                Map.entry("Setting", setting)));
        clubs.row(row);
    }

    private static void irons(Filler clubs) {
        List<Object[]> rows = List.of(
                new Object[] {6, "5 iron", "iron", 25.0, 61.0, 38.0, 61.5},
                new Object[] {7, "6 iron", "iron", 28.0, 61.5, 37.5, 62.0},
                new Object[] {8, "7 iron", "iron", 32.5, 62.5, 37.0, 62.5},
                new Object[] {9, "8 iron", "iron", 36.0, 63.0, 36.5, 63.5},
                new Object[] {10, "9 iron", "iron", 41.0, 63.5, 36.0, 64.0},
                new Object[] {11, "Pitching wedge", "iron", 45.0, 64.0, 35.5, 64.5},
                new Object[] {12, "50 wedge", "wedge", 50.0, 64.0, 35.5, 64.5},
                new Object[] {13, "54 wedge", "wedge", 55.0, 64.0, 35.25, 64.5},
                new Object[] {14, "58 wedge", "wedge", 58.5, 64.0, 35.0, 64.5});
        for (Object[] row : rows) {
            clubs.row(Map.ofEntries(
                    Map.entry("Golfer", "Golfer A"),
                    Map.entry("Slot", row[0]),
                    Map.entry("Club", row[1]),
                    Map.entry("Kind", row[2]),
                    Map.entry("Loft", row[3]),
                    Map.entry("Lie", row[4]),
                    Map.entry("Length", row[5]),
                    Map.entry("Bend limit", 2),
                    Map.entry("Bend step", 0.5),
                    Map.entry("Lie target", row[6])));
        }
    }

    private static void shots(Filler shots) {
        shot(shots, "Driver", 96.0, 140.5, 12.6, 2850, 229);
        shot(shots, "5 wood", 88.5, 127.0, 13.8, 4050, 199);
        shot(shots, "4 hybrid", 84.0, 117.5, 15.2, 4700, 177);
        shot(shots, "7 iron", 80.0, 107.5, 18.6, 6200, 152);
        shot(shots, "Pitching wedge", 74.0, 90.5, 26.5, 7900, 118);
    }

    private static void shot(
            Filler shots, String club, double headSpeed, double ballSpeed, double launch, double spin, double carry) {
        shots.row(Map.of(
                "Golfer",
                "Golfer A",
                "Club",
                club,
                "Head speed",
                headSpeed,
                "Ball speed",
                ballSpeed,
                "Launch",
                launch,
                "Spin",
                spin,
                "Carry",
                carry));
    }

    /** Fills rows of one sheet under its headings, below the example row. */
    static final class Filler {
        private final XSSFSheet sheet;
        private final Row headings;
        private int next;

        Filler(XSSFWorkbook book, String name) {
            sheet = book.getSheet(name);
            headings = headingRow(sheet);
            next = headings.getRowNum() + 1;
            while (sheet.getRow(next) != null && taken(sheet.getRow(next))) {
                next++;
            }
        }

        private static Row headingRow(XSSFSheet sheet) {
            for (Row row : sheet) {
                if (row.getCell(3) != null && !row.getCell(3).toString().isBlank() && taken(row)) {
                    return row;
                }
            }
            throw new IllegalStateException("no headings on " + sheet.getSheetName());
        }

        private static boolean taken(Row row) {
            return row.getCell(0) != null && !row.getCell(0).toString().isBlank();
        }

        static void start(XSSFWorkbook book, String label, String value) {
            for (Row row : book.getSheet("Start")) {
                for (Cell cell : row) {
                    if (cell.toString().equals(label)) {
                        row.getCell(cell.getColumnIndex() + 1, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK)
                                .setCellValue(value);
                        return;
                    }
                }
            }
            throw new IllegalStateException("no label " + label);
        }

        void row(Map<String, Object> values) {
            Row row = sheet.getRow(next) == null ? sheet.createRow(next) : sheet.getRow(next);
            next++;
            values.forEach((heading, value) -> {
                Cell cell = row.getCell(column(heading), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
                if (value instanceof Number number) {
                    cell.setCellValue(number.doubleValue());
                } else {
                    cell.setCellValue((String) value);
                }
            });
        }

        private int column(String heading) {
            for (Cell cell : headings) {
                if (cell.toString().replaceAll("\\s*\\[.*", "").equals(heading)) {
                    return cell.getColumnIndex();
                }
            }
            throw new IllegalStateException("no heading " + heading + " on " + sheet.getSheetName());
        }
    }
}
