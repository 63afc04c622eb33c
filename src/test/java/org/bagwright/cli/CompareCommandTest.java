package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.DemoBooks;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.bagwright.workbook.Cells;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code compare}: its figures are those of the single plans, worked out again from their gaps. */
@Tag("analytic")
class CompareCommandTest {
    private static final double M_PER_YD = 0.9144;

    @TempDir
    Path folder;

    private Path may() throws Exception {
        return ChoiceBook.sketch().write(folder.resolve("may.xlsx"));
    }

    private Path june() throws Exception {
        return ChoiceBook.sketch().put("Clubs", 1, "Setting", 3).write(folder.resolve("june.xlsx"));
    }

    private JsonNode plan(Path book) throws Exception {
        return Terminal.run("plan", book, "--json", "-o", folder.resolve("x.xlsx"))
                .json();
    }

    private static double uneven(JsonNode gaps) {
        double sum = 0;
        for (JsonNode gap : gaps) {
            double off = gap.get("gap").asDouble() - gap.get("wish").asDouble();
            sum += off * off;
        }
        return Math.sqrt(sum / gaps.size());
    }

    private static double sum(JsonNode byMeasure) {
        double sum = 0;
        for (JsonNode points : byMeasure) {
            sum += points.asDouble();
        }
        return sum;
    }

    @Test
    void figures_areThoseOfTheSinglePlans() throws Exception {
        List<Path> books = List.of(may(), june());
        Terminal run = Terminal.run("compare", books.get(0), books.get(1), "--json");
        assertEquals(0, run.code(), run.err());
        JsonNode golfer = run.json().at("/golfers/0");
        assertEquals("Golfer A", golfer.get("golfer").asText());
        for (int index = 0; index < 2; index++) {
            JsonNode single = plan(books.get(index)).at("/golfers/0");
            JsonNode compared = golfer.get("books").get(index);
            assertEquals(
                    books.get(index).getFileName().toString(),
                    compared.get("book").asText());
            assertEquals(
                    single.get("penalty").asDouble(),
                    compared.at("/planned/penalty").asDouble(),
                    1e-9);
            assertEquals(
                    single.at("/today/penalty").asDouble(),
                    compared.at("/today/penalty").asDouble(),
                    1e-9);
            for (String state : List.of("today", "planned")) {
                JsonNode gaps = state.equals("today") ? single.at("/today/gaps") : single.get("gaps");
                JsonNode figures = compared.get(state);
                assertEquals(uneven(gaps), figures.get("gapUnevenness").asDouble(), 1e-9);
                assertEquals(figures.get("penalty").asDouble(), sum(figures.get("byMeasure")), 1e-9);
            }
        }
        assertTrue(run.json().at("/books/0/proven").asBoolean());
    }

    @Test
    void differences_areTheSlotsSetOtherwise() throws Exception {
        JsonNode differences =
                Terminal.run("compare", may(), june(), "--json").json().at("/golfers/0/differences");
        JsonNode today = differences.get(0);
        assertEquals(1, today.get("slot").asInt());
        assertEquals("today", today.get("state").asText());
        assertEquals("Driver, setting 2, weighting heel", today.at("/choices/0").asText());
        assertEquals("Driver, setting 3, weighting heel", today.at("/choices/1").asText());
        for (JsonNode difference : differences) {
            assertFalse(
                    difference.get("slot").asInt() == 3
                            && difference.get("state").asText().equals("today"),
                    "the iron is the same");
        }
    }

    @Test
    void equalBooks_haveNoDifference() throws Exception {
        Terminal run = Terminal.run("compare", may(), ChoiceBook.sketch().write(folder.resolve("copy.xlsx")));
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("The same clubs in the same set-up"), run.out());
    }

    @Test
    void otherUnit_isShownInTheUnitOfTheFirstBook() throws Exception {
        Path metres = ChoiceBook.sketch("m")
                .put("Clubs", 1, "Gap wish", 25 * M_PER_YD)
                .put("Clubs", 2, "Gap wish", 40 * M_PER_YD)
                .put("Clubs", 3, "Gap wish", 35 * M_PER_YD)
                .write(folder.resolve("metres.xlsx"));
        JsonNode compared = Terminal.run("compare", may(), metres, "--json").json();
        assertEquals("yd", compared.at("/units/distance").asText());
        JsonNode books = compared.at("/golfers/0/books");
        assertEquals(
                books.at("/0/today/gapUnevenness").asDouble(),
                books.at("/1/today/gapUnevenness").asDouble(),
                1e-6);
        JsonNode other = Terminal.run("compare", metres, may(), "--json").json();
        assertEquals("m", other.at("/units/distance").asText());
        assertEquals(
                books.at("/0/today/gapUnevenness").asDouble() * M_PER_YD,
                other.at("/golfers/0/books/0/today/gapUnevenness").asDouble(),
                1e-6);
    }

    @Test
    void golferOfOneBookOnly_isListedAsSuch() throws Exception {
        Path other = ChoiceBook.sketch()
                .put("Golfers", 1, "Golfer", "Golfer B")
                .put("Clubs", 1, "Golfer", "Golfer B")
                .put("Clubs", 2, "Golfer", "Golfer B")
                .put("Clubs", 3, "Golfer", "Golfer B")
                .put("Clubs", 4, "Golfer", "Golfer B")
                .write(folder.resolve("other.xlsx"));
        Terminal run = Terminal.run("compare", may(), other);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("other.xlsx has no bag for Golfer A."), run.out());
        assertTrue(run.out().contains("may.xlsx has no bag for Golfer B."), run.out());
        JsonNode golfers =
                Terminal.run("compare", may(), other, "--json").json().get("golfers");
        assertEquals("other.xlsx", golfers.at("/0/notIn/0").asText());
        assertEquals("may.xlsx", golfers.at("/1/notIn/0").asText());
    }

    @Test
    void plannedBookAndItsSource_compareAlike() throws Exception {
        Path may = may();
        Path planned = ChoiceBook.planned(may, folder.resolve("planned.xlsx"), workbook -> {});
        JsonNode golfer = Terminal.run("compare", may, planned, "--json").json().at("/golfers/0");
        assertEquals(0, golfer.get("differences").size());
        assertEquals(golfer.at("/books/0/planned"), golfer.at("/books/1/planned"));
    }

    @Test
    void resultBook_holdsTheFigures() throws Exception {
        Path out = folder.resolve("all.xlsx");
        Terminal run = Terminal.run("compare", may(), june(), "-o", out);
        assertEquals(0, run.code(), run.err());
        JsonNode json = Terminal.run("compare", may(), june(), "--json").json();
        try (XSSFWorkbook book = ResultCells.open(out)) {
            XSSFSheet sheet = book.getSheet("Compare");
            assertTrue(sheet.getProtect());
            int penalty = column(sheet, "Penalty [points]");
            int uneven = column(sheet, "Gap unevenness [yd]");
            String[] states = {"/0/today", "/0/planned", "/1/today", "/1/planned"};
            for (int row = 0; row < states.length; row++) {
                JsonNode figures = json.at("/golfers/0/books" + states[row]);
                Row cells = sheet.getRow(5 + row);
                assertEquals(
                        figures.get("penalty").asDouble(),
                        cells.getCell(penalty).getNumericCellValue(),
                        1e-9);
                assertEquals(
                        figures.get("gapUnevenness").asDouble(),
                        cells.getCell(uneven).getNumericCellValue(),
                        1e-9);
            }
            String text = Cells.shown(sheet).toString();
            for (JsonNode choice : json.at("/golfers/0/differences/0/choices")) {
                assertTrue(text.contains(choice.asText()), choice + " in " + text);
            }
        }
        assertEquals(0, Terminal.run("compare", may(), june(), "-o", out).code());
        try (var files = Files.list(folder)) {
            assertEquals(
                    1,
                    files.filter(file -> file.getFileName().toString().startsWith("all.backup"))
                            .count(),
                    "what stood there is kept");
        }
    }

    /** The sheet has what the books say of the golfer and of each club, also where nothing differs. */
    @Test
    void sideBySide_hasWishesSetUpsAndPointsOfBothStates() throws Exception {
        Path out = folder.resolve("all.xlsx");
        assertEquals(0, Terminal.run("compare", may(), june(), "-o", out).code());
        JsonNode golfer =
                Terminal.run("compare", may(), june(), "--json").json().at("/golfers/0");
        Set<String> states = new TreeSet<>();
        int inAll = 0;
        try (XSSFWorkbook book = ResultCells.open(out)) {
            XSSFSheet sheet = book.getSheet("Side by side");
            for (int index = 4; index <= sheet.getLastRowNum(); index++) {
                Row row = sheet.getRow(index);
                String state = row.getCell(2).getStringCellValue();
                boolean ofClub = !row.getCell(1).getStringCellValue().isEmpty();
                states.add((ofClub ? "club: " : "") + state);
                if (row.getCell(3).getStringCellValue().equals("in all")) {
                    inAll++;
                    for (int compared = 0; compared < 2; compared++) {
                        double points = golfer.at(
                                        "/books/" + compared + "/" + state.replace("points ", "") + "/penalty")
                                .asDouble();
                        assertEquals(points, row.getCell(6 + compared).getNumericCellValue(), 0.005 + 1e-9, state);
                    }
                }
            }
        }
        assertEquals(2, inAll);
        assertEquals(
                Set.of(
                        "wishes",
                        "golfer",
                        "points today",
                        "points planned",
                        "club: set-up",
                        "club: today",
                        "club: planned"),
                states);
    }

    private static int column(XSSFSheet sheet, String heading) {
        for (Cell cell : sheet.getRow(3)) {
            if (cell.getStringCellValue().equals(heading)) {
                return cell.getColumnIndex();
            }
        }
        throw new AssertionError("no heading " + heading);
    }

    @Test
    void wrongUse_saysTwoAndWritesNothing() throws Exception {
        Path may = may();
        Path june = june();
        byte[] before = Files.readAllBytes(june);
        for (List<Object> args : List.<List<Object>>of(
                List.of("compare"),
                List.of("compare", may),
                List.of("compare", may, may),
                List.of("compare", may, june, "-o", june),
                List.of("compare", may, june, "-o", folder.resolve("all.txt")),
                List.of("compare", may, june, "-o", folder.resolve("nowhere").resolve("all.xlsx")),
                List.of("compare", may, june, "--seconds", "0"))) {
            Terminal wrong = Terminal.run(args.toArray());
            assertEquals(2, wrong.code(), args + ": " + wrong.err());
            assertFalse(wrong.err().isBlank());
        }
        assertArrayEquals(before, Files.readAllBytes(june));
    }

    @Test
    void wrongBooks_areAllNamedWithTheirCells() throws Exception {
        Path bad = ChoiceBook.sketch().put("Clubs", 1, "Loft", "ten").write(folder.resolve("bad.xlsx"));
        Terminal wrong = Terminal.run("compare", may(), bad, folder.resolve("nothing.xlsx"));
        assertEquals(3, wrong.code());
        assertTrue(wrong.err().contains("bad.xlsx") && wrong.err().contains("Clubs!E2"), wrong.err());
        assertTrue(wrong.err().contains("nothing.xlsx"), wrong.err());
    }

    @Test
    void mustThatCannotBeMet_saysFour() throws Exception {
        BookSketch must = ChoiceBook.sketch()
                .sheet("Aims", "Measure, Tolerance, Importance, Must")
                .row("gap", 0.001, 2, "yes");
        Terminal run = Terminal.run("compare", may(), must.write(folder.resolve("must.xlsx")));
        assertEquals(4, run.code(), run.err());
        assertTrue(run.out().contains("misses a must (gap)"), run.out());
    }

    private Path changed(String name, BookSketch sketch) throws Exception {
        return sketch.write(folder.resolve(name));
    }

    @Test
    void inchOfLength_isSaidWithTheClub() throws Exception {
        Path shorter = changed("shorter.xlsx", ChoiceBook.sketch().put("Clubs", 1, "Length", 44));
        Terminal run = Terminal.run("compare", may(), shorter);
        assertTrue(run.out().contains("    Driver: length 45 -> 44 in"), run.out());
        assertFalse(run.out().contains("Wishes differ"), run.out());
        assertFalse(run.out().contains("The same clubs"), run.out());
        JsonNode golfer =
                Terminal.run("compare", may(), shorter, "--json").json().at("/golfers/0");
        assertFalse(golfer.get("same").asBoolean());
        assertEquals("length", golfer.at("/clubs/0/setUp/0/what").asText());
        assertEquals(45, golfer.at("/clubs/0/setUp/0/values/0").asDouble());
        assertEquals(44, golfer.at("/clubs/0/setUp/0/values/1").asDouble());
    }

    @Test
    void threePercentMoreSpeed_isSaidAsThat() throws Exception {
        Path faster = changed(
                "faster.xlsx",
                ChoiceBook.sketch().put("Golfers", 1, "Driver speed", 97.85).put("Golfers", 1, "Iron speed", 82.4));
        Terminal run = Terminal.run("compare", may(), faster);
        assertTrue(
                run.out().contains("driver speed 95 -> 97.85 mph (+3.0 %), iron speed 80 -> 82.4 mph (+3.0 %)"),
                run.out());
        assertTrue(run.out().contains("Driver: carry "), run.out());
    }

    @Test
    void otherWish_isSaidWithItsPoints() throws Exception {
        BookSketch wishing = ChoiceBook.sketch()
                .put("Clubs", 1, "Gap wish", 20)
                .sheet("Aims", "Measure, Tolerance, Importance, Must")
                .row("lie", 2, 0.5, "no");
        Terminal run = Terminal.run("compare", may(), changed("wishing.xlsx", wishing));
        assertTrue(
                run.out()
                        .contains(
                                "Wishes differ, so points do not compare one to one: lie tolerance 1 -> 2 deg, Driver gap"),
                run.out());
        assertTrue(run.out().contains("Points today: in all "), run.out());
        assertFalse(run.out().contains("Today:"), "no club is built or set in another way: " + run.out());
    }

    @Test
    void booksInOtherUnits_differInTheUnitAlone() throws Exception {
        BookSketch metres = ChoiceBook.sketch("m")
                .put("Clubs", 1, "Gap wish", 25 * M_PER_YD)
                .put("Clubs", 2, "Gap wish", 40 * M_PER_YD)
                .put("Clubs", 3, "Gap wish", 35 * M_PER_YD);
        Terminal run = Terminal.run("compare", may(), changed("metres.xlsx", metres));
        assertTrue(run.out().contains("  Golfer and conditions: unit of distance yd -> m"), run.out());
        assertFalse(run.out().contains("Today:") || run.out().contains("Wishes differ"), run.out());
    }

    @Test
    void clubOfOneBook_andMovedSlots_areSaid() throws Exception {
        BookSketch other = ChoiceBook.sketch().put("Clubs", 3, "Club", "9 wood").put("Clubs", 4, "Slot", 4);
        Terminal run = Terminal.run("compare", may(), changed("moved.xlsx", other));
        assertTrue(run.out().contains("    7 wood: not in moved.xlsx"), run.out());
        assertTrue(run.out().contains("    9 wood: not in may.xlsx"), run.out());
        assertTrue(run.out().contains("    7 iron: slot 3 -> 4"), run.out());
    }

    /** A kit or a sleeve with the same name and another table is another set-up. */
    @Test
    void otherTableOfASleeve_isNotTheSame() throws Exception {
        Path other = changed("bend.xlsx", ChoiceBook.sketch().put("Sleeves", 4, "Bend", 1.6));
        Terminal run = Terminal.run("compare", may(), other);
        assertTrue(run.out().contains("Driver: table of its sleeve no. 1 -> no. 2"), run.out());
    }

    /** Whatever a fitter enters in another way, the books are not called the same. */
    @ParameterizedTest
    @CsvSource({
        "Golfers, 1, Driver speed, 95.2",
        "Golfers, 1, Iron speed, 80.3",
        "Clubs, 1, Loft, 10.6",
        "Clubs, 1, Lie, 58.2",
        "Clubs, 1, Length, 45.1",
        "Clubs, 1, Setting, 3",
        "Clubs, 1, Weighting, K: toe",
        "Clubs, 1, Gap wish, 25.5",
        "Clubs, 3, Optional, no",
        "Clubs, 3, Loft, 21.1",
        "Clubs, 4, Loft bend, 0.6",
        "Clubs, 4, Lie bend, 0.1",
        "Clubs, 4, Bend limit, 1.5",
        "Clubs, 4, Loft target, 31.5",
        "Sleeves, 2, Clock, 3.1",
        "Sleeves, 2, Bend, 1.51",
        "Sleeves, 2, Turns shaft, no",
        "Weights, 1, Mass, 11",
    })
    void anyOtherEntry_isADifference(String sheet, int row, String heading, String value) throws Exception {
        Object entered = value.matches("[\\d.]+") ? (Object) Double.parseDouble(value) : value;
        Path other = changed("other-entry.xlsx", ChoiceBook.sketch().put(sheet, row, heading, entered));
        Terminal run = Terminal.run("compare", may(), other, "--json");
        assertEquals(0, run.code(), run.err());
        assertFalse(run.json().at("/golfers/0/same").asBoolean());
    }

    /** Every field of a full bag differs in some way; the book has the lines that the terminal leaves out. */
    @Test
    void fullBag_takesUnderThirtyLinesAGolfer() throws Exception {
        Path full = DemoBooks.kept("full");
        Path other = folder.resolve("other.xlsx");
        Files.copy(full, other);
        ChoiceBook.edited(other, workbook -> {
            for (int row = 5; row <= 24; row++) {
                Cell length = workbook.getSheet("Clubs").getRow(row).getCell(8);
                length.setCellValue(length.getNumericCellValue() - 0.5);
                Cell loft = workbook.getSheet("Clubs").getRow(row).getCell(4);
                loft.setCellValue(loft.getNumericCellValue() + 0.3);
            }
        });
        Terminal run = Terminal.run("compare", full, other, "-o", folder.resolve("both.xlsx"));
        assertEquals(0, run.code(), run.err());
        List<String> golfer =
                run.out().lines().takeWhile(line -> !line.isEmpty()).toList();
        assertTrue(golfer.size() < 30, run.out());
        assertTrue(golfer.get(golfer.size() - 1).contains("more lines"), run.out());
        try (XSSFWorkbook book = ResultCells.open(folder.resolve("both.xlsx"))) {
            XSSFSheet sheet = book.getSheet("Side by side");
            int lengths = 0;
            for (Row row : sheet) {
                if (row.getCell(3) != null && row.getCell(3).toString().equals("length")) {
                    assertEquals("yes", row.getCell(5).getStringCellValue());
                    assertEquals(
                            row.getCell(6).getNumericCellValue() - 0.5,
                            row.getCell(7).getNumericCellValue(),
                            1e-9);
                    lengths++;
                }
            }
            assertEquals(20, lengths);
        }
    }
}
