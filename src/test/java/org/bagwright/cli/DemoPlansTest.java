package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookFiller;
import org.bagwright.DemoBooks;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The plans of the demo books. Their penalties are our own output and only guard against change; the rest must hold
 * whatever the figures are, and is counted from the choices by hand.
 */
@Tag("regression")
class DemoPlansTest {
    @TempDir
    static Path folder;

    private static final Map<String, JsonNode> PLANS = new HashMap<>();

    @BeforeAll
    static void plan() throws Exception {
        for (String demo : List.of("trio", "full", "team")) {
            Terminal plan = Terminal.run(
                    "plan", DemoBooks.kept(demo), "--json", "-o", folder.resolve(demo + ".xlsx"), "--seconds", 120);
            assertEquals(0, plan.code(), plan.err());
            PLANS.put(demo, plan.json());
        }
    }

    @ParameterizedTest
    @CsvSource({"trio, 5.8847044043672305", "full, 84.88583269981561", "team, 2071.6185747688155"})
    void penalty_isAsItWas(String demo, double points) {
        assertEquals(points, PLANS.get(demo).get("penalty").asDouble(), 1e-6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void plan_isProvenAndMeetsEveryMust(String demo) {
        JsonNode plan = PLANS.get(demo);
        assertTrue(plan.get("proven").asBoolean());
        assertEquals(plan.get("bound").asDouble(), plan.get("penalty").asDouble(), 1e-6);
        assertEquals(0, plan.get("brokenMusts").asInt());
        assertTrue(plan.get("penaltyMiss").asDouble()
                < 0.5 * plan.at("/today/penaltyMiss").asDouble());
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void carry_fallsFromEachClubToTheNext(String demo) {
        for (JsonNode golfer : PLANS.get(demo).get("golfers")) {
            assertTrue(golfer.get("gaps").size() >= 2);
            for (JsonNode gap : golfer.get("gaps")) {
                assertTrue(gap.get("gap").asDouble() > 0, gap.toString());
            }
        }
    }

    @Test
    void fullBuild_takesAnotherClubAndBends() {
        List<String[]> options = options("full");
        assertEquals(14, options.size());
        List<String> others = List.of("Driver deep", "3 wood short", "3 hybrid", "4 iron", "5 iron hollow", "60 wedge");
        assertTrue(options.stream().anyMatch(option -> others.contains(option[2])));
        assertTrue(options.stream()
                        .filter(option -> option.length > 3)
                        .filter(option -> !option[5].equals("0") || !option[6].equals("0"))
                        .count()
                >= 6);
    }

    /** The bench has one 12 g piece of either kit, and none is in a club today. */
    @Test
    void fullBuild_takesNoMorePiecesThanTheBenchHas() {
        long heavy = options("full").stream()
                .filter(option ->
                        option.length > 3 && List.of("Back", "Front", "Heavy").contains(option[4]))
                .count();
        assertTrue(heavy <= 1, heavy + " pieces of 12 g");
    }

    /** The bench has two 12 g pieces and none is in a club today; every weighting called Back takes one. */
    @Test
    void team_takesBothHeavyPiecesAndNoMore() {
        assertEquals(2, weightings("team", "Back"));
    }

    /** With more of them on the bench more golfers would have one, and the plan would be better: the stock runs short. */
    @Test
    void team_wouldTakeMoreHeavyPiecesWereThereMore() throws Exception {
        Path rich = folder.resolve("rich.xlsx");
        try (XSSFWorkbook book = DemoBooks.made("team");
                OutputStream output = Files.newOutputStream(rich)) {
            new BookFiller(book, "Stock").change("Kit D: 12 g", "Count", 20);
            book.write(output);
        }
        Terminal plan = Terminal.run("plan", rich, "--json", "-o", folder.resolve("rich-plan.xlsx"), "--seconds", 120);
        assertEquals(0, plan.code(), plan.err());
        PLANS.put("rich", plan.json());
        assertTrue(weightings("rich", "Back") > 2);
        assertTrue(PLANS.get("rich").get("penalty").asDouble()
                < PLANS.get("team").get("penalty").asDouble() - 1);
    }

    /** Two drivers have two 6 g pieces each today and three lie on the bench. */
    @Test
    void team_takesNoMoreMiddlePiecesThanThereAre() {
        assertTrue(2 * weightings("team", "Even") <= 2 * 2 + 3);
    }

    private static long weightings(String demo, String weighting) {
        return options(demo).stream()
                .filter(option -> option.length > 3 && option[4].equals(weighting))
                .count();
    }

    /** The parts of each chosen option's name: golfer, slot, club, setting, weighting, loft bend, lie bend. */
    private static List<String[]> options(String demo) {
        List<String[]> options = new ArrayList<>();
        for (JsonNode golfer : PLANS.get(demo).get("golfers")) {
            StreamSupport.stream(golfer.get("choices").spliterator(), false)
                    .map(choice -> choice.get("option").asText().split("\\|"))
                    .forEach(options::add);
        }
        assertNotEquals(0, options.size());
        return options;
    }
}
