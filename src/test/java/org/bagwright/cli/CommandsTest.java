package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bagwright.BookSketch;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands as a person types them, right and wrong. */
@Tag("regression")
class CommandsTest {
    @TempDir
    Path folder;

    private Path trio() throws Exception {
        return new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Iron speed")
                .row("Golfer A", 95, 80)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Gap wish")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58, 45, "S", "2", 20)
                .row("Golfer A", 2, "5 wood", "wood", 18, 58.5, 42, "S", "1", 22)
                .row("Golfer A", 3, "4 hybrid", "hybrid", 22, 59, 40, "S", "1")
                .sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Turns shaft")
                .row("S", 1, 12, 1.5, "yes")
                .row("S", 2, 3, 1.5, "yes")
                .row("S", 3, 6, 1.5, "yes")
                .row("S", 4, 9, 1.5, "yes")
                .write(folder.resolve("trio.xlsx"));
    }

    private List<Path> files() throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    @Test
    void plan_writesBesideTheBookAndLeavesItUntouched() throws Exception {
        Path book = trio();
        byte[] before = Files.readAllBytes(book);
        Terminal plan = Terminal.run("plan", book);
        assertEquals(0, plan.code(), plan.err());
        assertTrue(Files.exists(folder.resolve("trio-plan.xlsx")));
        assertArrayEquals(before, Files.readAllBytes(book));
        assertTrue(plan.out().contains("proven best"), plan.out());
    }

    @Test
    void plan_keepsABackupOfWhatItReplaces() throws Exception {
        Path book = trio();
        byte[] before = Files.readAllBytes(book);
        assertEquals(0, Terminal.run("plan", book, "--in-place").code());
        List<Path> files = files();
        assertEquals(2, files.size(), files.toString());
        Path backup =
                files.stream().filter(file -> !file.equals(book)).findFirst().orElseThrow();
        assertArrayEquals(before, Files.readAllBytes(backup));
    }

    /** The same file by another path and by a link is the same file. */
    @Test
    void plan_neverReplacesItsBookUnlessToldTo() throws Exception {
        Path book = trio();
        byte[] before = Files.readAllBytes(book);
        Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), book);
        Path dotted = folder.resolve(".").resolve(book.getFileName());
        for (Path same : List.of(book, dotted, link)) {
            Terminal refused = Terminal.run("plan", book, "-o", same);
            assertEquals(2, refused.code(), same.toString());
            assertTrue(refused.err().contains("would replace the book itself"), refused.err());
        }
        assertArrayEquals(before, Files.readAllBytes(book));
        assertEquals(2, files().size(), files().toString());
    }

    @Test
    void plan_ofItsOwnResultGivesTheSamePlan() throws Exception {
        Path book = trio();
        JsonNode first = Terminal.run("plan", book, "--json").json();
        JsonNode again = Terminal.run(
                        "plan", folder.resolve("trio-plan.xlsx"), "--json", "-o", folder.resolve("again.xlsx"))
                .json();
        assertEquals(first.get("golfers"), again.get("golfers"));
        assertEquals(first.get("penalty"), again.get("penalty"));
    }

    @Test
    void plan_jsonHasTheFixedFields() throws Exception {
        JsonNode plan = Terminal.run("plan", trio(), "--json").json();
        for (String field : List.of(
                "units",
                "penalty",
                "bound",
                "proven",
                "brokenMusts",
                "today",
                "seed",
                "seconds",
                "golfers",
                "messages")) {
            assertTrue(plan.has(field), field);
        }
        JsonNode golfer = plan.at("/golfers/0");
        assertEquals(3, golfer.get("choices").size());
        assertEquals(2, golfer.get("gaps").size());
        assertEquals(20, golfer.at("/gaps/0/wish").asDouble(), 1e-9);
        assertTrue(plan.get("penalty").asDouble() <= plan.at("/today/penalty").asDouble());
        assertEquals(plan.get("bound").asDouble(), plan.get("penalty").asDouble(), 1e-9);
    }

    @Test
    void plan_withAMustThatCannotBeMetStillWritesAndSaysFour() throws Exception {
        Path book = trio();
        try (var workbook = org.apache.poi.ss.usermodel.WorkbookFactory.create(Files.newInputStream(book));
                var output = Files.newOutputStream(folder.resolve("must.xlsx"))) {
            var aims = workbook.createSheet("Aims");
            String[][] rows = {{"Measure", "Tolerance", "Importance", "Must"}, {"gap", "0.001", "2", "yes"}};
            for (int row = 0; row < rows.length; row++) {
                var made = aims.createRow(row);
                for (int column = 0; column < 4; column++) {
                    made.createCell(column).setCellValue(rows[row][column]);
                }
            }
            workbook.write(output);
        }
        Terminal plan = Terminal.run("plan", folder.resolve("must.xlsx"));
        assertEquals(4, plan.code(), plan.err());
        assertTrue(Files.exists(folder.resolve("must-plan.xlsx")));
        assertTrue(plan.err().contains("must"), plan.err());
        assertTrue(plan.err().contains("can be met (gap)"), plan.err());
    }

    @Test
    void check_ofAWrongBookSaysThreeAndWritesNothing() throws Exception {
        Path book = new BookSketch()
                .sheet("Golfers", "Golfer")
                .row("Golfer A")
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie")
                .row("Golfer A", 1, "Driver", "driver", "ten", 158)
                .write(folder.resolve("wrong.xlsx"));
        byte[] before = Files.readAllBytes(book);
        for (String command : List.of("check", "chart", "plan")) {
            Terminal wrong = Terminal.run(command, book);
            assertEquals(3, wrong.code());
            String said = wrong.out() + wrong.err();
            assertTrue(said.contains("Clubs!E2") && said.contains("Clubs!F2"), said);
        }
        Terminal asJson = Terminal.run("check", book, "--json");
        assertEquals(3, asJson.code());
        JsonNode problems = asJson.json().get("problems");
        assertEquals("Clubs!E2", problems.at("/0/cell").asText());
        assertEquals("Clubs!F2", problems.at("/1/cell").asText());
        assertTrue(problems.findValuesAsText("cell").contains("Start"), "a missing sheet is listed with problems");
        assertEquals(List.of(book), files());
        assertArrayEquals(before, Files.readAllBytes(book));
    }

    @Test
    void new_makesABookAndNeverOverwrites() throws Exception {
        Path file = folder.resolve("bag.xlsx");
        assertEquals(0, Terminal.run("new", file).code());
        byte[] made = Files.readAllBytes(file);
        Terminal again = Terminal.run("new", file);
        assertEquals(2, again.code());
        assertTrue(again.err().contains("exists"), again.err());
        assertArrayEquals(made, Files.readAllBytes(file));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "plann bag.xlsx",
                "plan",
                "plan a.xlsx --seconds 0",
                "plan a.xlsx --seconds many",
                "plan a.xlsx -o b.xlsx --in-place",
                "demo nothing",
                "new bag"
            })
    void wrongArguments_sayTwoAndWhy(String typed) {
        Terminal wrong = Terminal.run((Object[]) (typed.isEmpty() ? new String[0] : typed.split(" ")));
        assertEquals(2, wrong.code(), wrong.err());
        assertFalse(wrong.err().isBlank());
        assertFalse(wrong.err().contains("\tat "), wrong.err());
    }

    @Test
    void missingFile_saysThreeAndNamesIt() {
        Terminal missing = Terminal.run("plan", folder.resolve("nothing.xlsx"));
        assertEquals(3, missing.code());
        assertTrue(missing.err().contains("nothing.xlsx"), missing.err());
    }

    @Test
    void demo_withASlipInItsNameSaysWhichThereAreAndWhichWasMeant() {
        Terminal wrong = Terminal.run("demo", "tream", "-o", folder);
        assertEquals(2, wrong.code());
        assertTrue(wrong.err().contains("Maybe \"team\"?"), wrong.err());
        assertTrue(wrong.err().contains("trio, full, team"), wrong.err());
    }

    @Test
    void demo_plansClearlyBetterThanToday() throws Exception {
        Terminal demo = Terminal.run("demo", "full", "-o", folder);
        assertEquals(0, demo.code(), demo.err());
        JsonNode plan = Terminal.run("plan", folder.resolve("full.xlsx"), "--json", "-o", folder.resolve("x.xlsx"))
                .json();
        double today = plan.at("/today/penaltyMiss").asDouble();
        assertTrue(plan.get("penaltyMiss").asDouble() < 0.5 * today, plan.get("penaltyMiss") + " against " + today);
        assertTrue(plan.get("proven").asBoolean());
        assertEquals(0, plan.get("brokenMusts").asInt());
    }
}
