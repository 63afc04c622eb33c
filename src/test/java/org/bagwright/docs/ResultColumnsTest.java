package org.bagwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.bagwright.workbook.pen.BookColour;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The chapter on columns explains each heading that a result book has, and no other. */
@Tag("regression")
class ResultColumnsTest {
    private static final Path CHAPTER = ManualChapter.FOLDER.resolve("5-columns-and-measures.md");
    private static final String SUMS = "How the penalty adds up";
    private static final Pattern UNIT = Pattern.compile(" *\\[[^\\]]*\\]");

    @TempDir
    static Path folder;

    private static XSSFWorkbook planned;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Plan",
                "Settings",
                "Ladder",
                "Steps",
                "Others",
                "Measure next",
                "Bench card",
                "Golfer card",
                "Team",
                "Messages"
            })
    void headingsOfSheet_areExplained(String name) throws IOException {
        assertEquals(headings(book().getSheet(name)), explained("Sheet " + name));
    }

    @Test
    void headingsOfCompare_areExplained() throws IOException {
        Path one = Path.of("demo-data", "trio.xlsx");
        Path same = Files.copy(one, folder.resolve("same.xlsx"));
        Terminal compare = Terminal.run("compare", one, same, "-o", folder.resolve("compare.xlsx"));
        assertEquals(0, compare.code(), compare.err());
        try (XSSFWorkbook book = ResultCells.open(folder.resolve("compare.xlsx"))) {
            assertEquals(headings(book.getSheet("Compare")), explained("Sheet Compare"));
        }
    }

    @Test
    void headingsOfSessions_areExplained() throws IOException {
        Path shots = Files.writeString(
                folder.resolve("shots.csv"),
                """
                Club,Date,Club speed (mph),Ball speed (mph),Launch,Spin,Carry (yd),Side
                Driver,2026-05-14,96,140.5,9.5,2200,221,4 L
                """);
        Path book = folder.resolve("dated.xlsx");
        Terminal added = Terminal.run("add-shots", Path.of("demo-data", "trio.xlsx"), shots, "-o", book);
        assertEquals(0, added.code(), added.err());
        Terminal.run("plan", book, "-o", folder.resolve("dated-plan.xlsx"));
        try (XSSFWorkbook dated = ResultCells.open(folder.resolve("dated-plan.xlsx"))) {
            assertEquals(headings(dated.getSheet("Sessions")), explained("Sheet Sessions"));
        }
    }

    /** The team's plan has every sheet but that of sessions. */
    private static XSSFWorkbook book() throws IOException {
        if (planned == null) {
            Terminal demo = Terminal.run("demo", "team", "-o", folder);
            assertEquals(0, demo.code(), demo.err());
            planned = ResultCells.open(folder.resolve("team-plan.xlsx"));
        }
        return planned;
    }

    private static Set<String> explained(String section) throws IOException {
        String text = Files.readString(CHAPTER).replace("\r\n", "\n");
        String from = text.substring(text.indexOf("\n## " + section + "\n") + 1);
        int end = from.indexOf("\n## ");
        String part = end < 0 ? from : from.substring(0, end);
        return part.lines()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| Heading |"))
                .flatMap(line ->
                        Arrays.stream(line.substring(2, line.indexOf(" |", 2)).split("; ")))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The texts in the colour of headings, without units; names of clubs and golfers over their own numbers left out. */
    static Set<String> headings(XSSFSheet sheet) {
        Set<String> names = names(sheet.getWorkbook());
        Set<String> found = new TreeSet<>();
        int lastColumn = firstOfSums(sheet);
        for (Row row : sheet) {
            row.forEach(cell -> {
                if (cell.getColumnIndex() < lastColumn && isHeading((XSSFCell) cell)) {
                    found.add(plain(cell.getStringCellValue()));
                }
            });
        }
        found.removeIf(text -> text.matches("\\d*") || names.contains(text));
        return found;
    }

    /** Without its unit, its hyphen at the end of a line, the number of another plan, and the item of the stock. */
    private static String plain(String heading) {
        return UNIT.matcher(heading)
                .replaceAll("")
                .replace("wing- weight", "wingweight")
                .replaceAll("^Other \\d+$", "Other 1, 2, ...")
                .replaceAll("^Takes .*", "Takes ...");
    }

    private static boolean isHeading(XSSFCell cell) {
        XSSFColor fill = cell.getCellStyle().getFillForegroundXSSFColor();
        return fill != null && Objects.equals("FF" + BookColour.SLATE.hex(), fill.getARGBHex());
    }

    private static int firstOfSums(XSSFSheet sheet) {
        for (Row row : sheet) {
            for (var cell : row) {
                if (cell.getCellType() == CellType.STRING
                        && cell.getStringCellValue().equals(SUMS)) {
                    return cell.getColumnIndex();
                }
            }
        }
        return Integer.MAX_VALUE;
    }

    private static Set<String> names(XSSFWorkbook book) {
        Set<String> names = new HashSet<>();
        XSSFSheet clubs = book.getSheet("Clubs");
        if (clubs != null) {
            clubs.forEach(row -> {
                if (row.getCell(2) != null) {
                    names.add(row.getCell(2).toString());
                }
            });
            names.remove("Club");
        }
        return names;
    }
}
