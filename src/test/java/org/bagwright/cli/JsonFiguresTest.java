package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.apache.poi.xssf.extractor.XSSFExcelExtractor;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.DemoBooks;
import org.bagwright.ResultCells;
import org.bagwright.cli.json.PlanJson;
import org.bagwright.cli.text.PlanText;
import org.bagwright.cli.text.Terminal;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.PlanBounds;
import org.bagwright.domain.plan.PlanProof;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.Planning;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Figures of {@code plan --json} that a reader can work out from the others. */
@Tag("analytic")
class JsonFiguresTest {
    private static final int FIRST_OF_CHOICE = 3;

    @TempDir
    Path folder;

    private JsonNode plan(Path book) throws Exception {
        Terminal run = Terminal.run("plan", book, "--json", "-o", folder.resolve("plan.xlsx"));
        assertEquals(0, run.code(), run.err());
        return run.json();
    }

    private static List<JsonNode> each(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }

    /** The plan of a demo book as a search would give it that has proven less. */
    private static BookResult lessProven(double belowPoints) throws Exception {
        BookResult result = new Planning(1, 60).plan(DemoBooks.kept("trio"));
        PlanBounds bounds = new PlanBounds(0, 0, result.plannedPoints() - belowPoints);
        return new BookResult(
                result.book(),
                result.bags(),
                result.stock(),
                new PlanProof(bounds, false, result.proof().broken()),
                result.messages(),
                result.seed(),
                result.searchS());
    }

    @Test
    void unprovenPlan_hasABoundBelowItAndSaysHowFar() throws Exception {
        BookResult result = lessProven(1.25);
        JsonNode json = new PlanJson(result).document();
        double penalty = json.get("penalty").asDouble();
        assertFalse(json.get("proven").asBoolean());
        assertEquals(penalty - 1.25, json.get("bound").asDouble(), 1e-12);
        assertEquals(penalty - 1.25, json.at("/bounds/penalty").asDouble(), 1e-12);
        assertTrue(json.at("/today/penalty").asDouble() > penalty + 1, "today and plan are told apart");
        String said = String.join(" ", new PlanText(result).lines()).replaceAll(" +", " ");
        assertTrue(said.contains("(at most 1.25 above the best possible"), said);
        Path file = folder.resolve("plan.xlsx");
        Planning.write(new SourceFile(DemoBooks.kept("trio")), result, List.of(), file);
        try (XSSFWorkbook book = ResultCells.open(file);
                XSSFExcelExtractor text = new XSSFExcelExtractor(book)) {
            assertTrue(text.getText().contains("At most 1.25 points above the best possible"));
        }
    }

    @Test
    void penaltiesOfTheBook_areTheSumsOverItsGolfers() throws Exception {
        Path book = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed")
                .row("Golfer A", 95)
                .row("Golfer B", 90)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Bend limit, Gap wish")
                .row("Golfer A", 1, "7 iron", "iron", 31, 62, 2, 25)
                .row("Golfer A", 2, "9 iron", "iron", 40, 63, 2)
                .row("Golfer B", 1, "7 iron", "iron", 31, 62, 2, 15)
                .row("Golfer B", 2, "9 iron", "iron", 41, 63, 2)
                .write(folder.resolve("two.xlsx"));
        JsonNode plan = plan(book);
        for (String part : List.of("penalty", "penaltyMiss", "penaltyDoubt")) {
            assertSum(plan, "/" + part);
            assertSum(plan, "/today/" + part);
        }
        assertTrue(plan.at("/today/penaltyDoubt").asDouble()
                != plan.get("penaltyDoubt").asDouble());
    }

    private static void assertSum(JsonNode plan, String place) {
        double sumPoints = each(plan.get("golfers")).stream()
                .mapToDouble(golfer -> golfer.at(place).asDouble())
                .sum();
        assertTrue(sumPoints > 0, place);
        assertEquals(sumPoints, plan.at(place).asDouble(), 1e-9 * sumPoints, place);
    }

    /** An iron that is too strong today and is bent back, in one bag of two. */
    @Test
    void brokenMusts_areTodaysWhereTodayIsMeantAndTheSumOverTheGolfers() throws Exception {
        Path book = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed")
                .row("Golfer A", 95)
                .row("Golfer B", 90)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Loft bend, Bend limit, Loft target")
                .row("Golfer A", 1, "7 iron", "iron", 31, 62, 0, 2, 33)
                .row("Golfer B", 1, "7 iron", "iron", 31, 62, 0, 1, 34)
                .sheet("Aims", "Measure, Must, Tolerance")
                .row("loft", "yes", 0.5)
                .write(folder.resolve("musts.xlsx"));
        Terminal run = Terminal.run("plan", book, "--json", "-o", folder.resolve("plan.xlsx"));
        JsonNode plan = run.json();
        JsonNode met = plan.at("/golfers/0");
        JsonNode broken = plan.at("/golfers/1");
        assertEquals(0, met.get("brokenMusts").asLong());
        assertTrue(met.at("/today/brokenMusts").asLong() > 0, met.toString());
        assertTrue(broken.get("brokenMusts").asLong() > 0, broken.toString());
        assertTrue(
                broken.at("/today/brokenMusts").asLong()
                        > broken.get("brokenMusts").asLong(),
                broken.toString());
        assertEquals(broken.get("brokenMusts").asLong(), plan.get("brokenMusts").asLong());
        assertEquals(
                met.at("/today/brokenMusts").asLong()
                        + broken.at("/today/brokenMusts").asLong(),
                plan.at("/today/brokenMusts").asLong());
    }

    /** How well a carry is known is told twice: with the choice, and with the bands of the clubs that fly. */
    @Test
    void choices_tellOfTheirCarriesWhatTheSurenessTells() throws Exception {
        JsonNode golfer = plan(DemoBooks.kept("full")).at("/golfers/0");
        List<JsonNode> flying = each(golfer.get("choices")).stream()
                .filter(choice -> choice.hasNonNull("carry"))
                .toList();
        List<JsonNode> clubs = each(golfer.at("/sureness/clubs"));
        assertEquals(clubs.size(), flying.size());
        for (int club = 0; club < clubs.size(); club++) {
            assertEquals(clubs.get(club).get("club"), flying.get(club).get("club"));
            assertEquals(clubs.get(club).get("carrySd"), flying.get(club).get("carrySd"));
            assertEquals(clubs.get(club).get("changeSd"), flying.get(club).get("changeSd"));
            assertEquals(clubs.get(club).get("origin"), flying.get(club).get("carryFrom"));
            assertEquals(clubs.get(club).get("extended"), flying.get(club).get("extended"));
        }
        assertTrue(clubs.stream().map(club -> club.get("origin")).distinct().count() > 1, "several origins");
    }

    @Test
    void changes_areWhatDiffersFromToday() throws Exception {
        JsonNode json = plan(DemoBooks.kept("full"));
        List<JsonNode> others = each(json.get("others"));
        assertTrue(others.size() > 3, others.size() + " other plans");
        JsonNode today = json.at("/steps/0");
        assertEquals(0, today.get("changes").asInt());
        for (JsonNode plan : others) {
            assertEquals(
                    changes(plan.get("choices"), today.get("choices")),
                    plan.get("changes").asInt(),
                    plan.get("difference").asText());
        }
    }

    /** Setting, weighting and bends that differ; a club that takes the place of another says itself what that changes. */
    private static int changes(JsonNode choices, JsonNode today) {
        return IntStream.range(0, choices.size())
                .map(slot -> {
                    String[] then = choices.get(slot).get("option").asText().split("\\|");
                    String[] now = today.get(slot).get("option").asText().split("\\|");
                    return then[2].equals(now[2])
                            ? (int) IntStream.range(FIRST_OF_CHOICE, then.length)
                                    .filter(part -> !then[part].equals(now[part]))
                                    .count()
                            : choices.get(slot).get("changes").asInt();
                })
                .sum();
    }

    /** What is free and what the clubs have counts as available. Today two clubs have the heavy piece; the plan takes another number of them. */
    @Test
    void stock_isCountedForTodayAndForThePlan() throws Exception {
        Path book = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Most changes")
                .row("Golfer A", 95, null)
                .sheet(
                        "Clubs",
                        "Golfer, Slot, Club, Kind, Loft, Lie, Length, Kit, Weighting, Swingweight, Swingweight target")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58, 45, "K", "Heavy", "D6", "D2")
                .row("Golfer A", 2, "3 wood", "wood", 15, 58, 43, "K", "Heavy", "D6", "D2")
                .row("Golfer A", 3, "5 wood", "wood", 18, 58, 42, "K", "Even", "D0", "D3")
                .weights()
                .row("K", "Even", "heel", 4, 0, 30, -8)
                .row("K", "Heavy", "heel", 12, 0, 30, -8)
                .stock()
                .row("K: 12 g", 4)
                .write(folder.resolve("stock.xlsx"));
        JsonNode json = plan(book);
        JsonNode item = each(json.get("stock")).stream()
                .filter(each -> each.get("item").asText().contains("12 g"))
                .findFirst()
                .orElseThrow();
        assertEquals(4 + 2, item.get("available").asInt());
        assertEquals(2, item.get("takenToday").asInt());
        long planned = each(json.at("/golfers/0/choices")).stream()
                .filter(choice -> choice.get("option").asText().split("\\|")[4].equals("Heavy"))
                .count();
        assertEquals(planned, item.get("takenByPlan").asLong());
        assertTrue(planned != 2, "today and plan must differ to be told apart");
    }
}
