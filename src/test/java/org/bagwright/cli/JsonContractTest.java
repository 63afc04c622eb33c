package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.StreamSupport;
import org.bagwright.BookSketch;
import org.bagwright.DemoBooks;
import org.bagwright.cli.json.JsonContract;
import org.bagwright.cli.json.PrintedJson;
import org.bagwright.cli.text.Terminal;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.gauge.Repeatability;
import org.bagwright.domain.option.CarryOrigin;
import org.bagwright.domain.plan.Broken;
import org.bagwright.domain.plan.LoftAdvice;
import org.bagwright.domain.plan.MeasureNext;
import org.bagwright.domain.units.SpeedUnit;
import org.bagwright.sessions.SessionBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas in {@code src/docs/json}. {@link Terminal} holds every document that a test prints against them. */
@Tag("analytic")
class JsonContractTest {
    @TempDir
    Path folder;

    private JsonNode sample(String command) throws Exception {
        Path trio = Files.copy(DemoBooks.kept("trio"), folder.resolve("trio.xlsx"));
        Terminal run =
                switch (command) {
                    case "compare" -> Terminal.run("compare", trio, DemoBooks.kept("full"), "--json");
                    case "gauge" -> Terminal.run("gauge", gauged(), "--json");
                    case "add-shots" -> Terminal.run("add-shots", bag(), shots(), "--json");
                    case "plan" -> Terminal.run("plan", withSessions(), "--json");
                    default -> Terminal.run(command, trio, "--json");
                };
        assertEquals(0, run.code(), run.err());
        return run.json();
    }

    private Path bag() throws Exception {
        return SessionBook.sketch().write(folder.resolve("bag.xlsx"));
    }

    private Path shots() throws Exception {
        return Files.writeString(
                folder.resolve("may.csv"),
                "Player,Date,Club,Carry (m),Setting,Colour\nGolfer A,2026-05-14,Driver,203.5,,red\nnobody,,,,,\n");
    }

    private Path withSessions() throws Exception {
        Terminal added = Terminal.run("add-shots", bag(), shots(), "-o", folder.resolve("sessions.xlsx"));
        assertEquals(0, added.code(), added.err());
        return folder.resolve("sessions.xlsx");
    }

    private Path gauged() throws Exception {
        BookSketch book = GaugeBooks.readings(GaugeBooks.sleeve(GaugeBooks.driver()));
        GaugeBooks.Truth truth = new GaugeBooks.Truth(new VectorClub(10, 58.5, 0), 1.6, 0.1);
        return GaugeBooks.read(book, "Driver", truth, new Random(3), 0.1, 0, 2, 4, 6)
                .write(folder.resolve("gauged.xlsx"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "chart", "plan", "gauge", "add-shots", "compare"})
    void documents_failWithAFieldMoreOrLess(String command) throws Exception {
        JsonNode document = sample(command);
        JsonContract contract = JsonContract.of(command);
        assertEquals(List.of(), contract.problems(document));
        Set<String> mayMiss = new TreeSet<>();
        for (String place : objects(document)) {
            ObjectNode object = (ObjectNode) document.at(place);
            object.put("unknown", 1);
            assertFalse(contract.problems(document).isEmpty(), "an unknown field passes in " + place);
            object.remove("unknown");
            for (String name : names(object)) {
                ObjectNode whole = object.deepCopy();
                object.remove(name);
                if (contract.problems(document).isEmpty()) {
                    mayMiss.add(name);
                }
                object.removeAll();
                object.setAll(whole);
            }
        }
        assertTrue(
                optional(JsonContract.FOLDER.resolve(command + ".schema.json")).containsAll(mayMiss), "" + mayMiss);
        assertFalse(mayMiss.contains("format") || mayMiss.contains("units") || mayMiss.contains("penalty"));
    }

    /** The first objects of each sort, as pointers. */
    private static List<String> objects(JsonNode document) {
        List<String> places = new ArrayList<>();
        collect(document, "", places);
        return places;
    }

    private static void collect(JsonNode node, String place, List<String> places) {
        if (node.isObject()) {
            places.add(place);
            node.properties().forEach(field -> collect(field.getValue(), place + "/" + field.getKey(), places));
        } else if (node.isArray() && !node.isEmpty()) {
            collect(node.get(0), place + "/0", places);
            collect(node.get(node.size() - 1), place + "/" + (node.size() - 1), places);
        }
    }

    private static List<String> names(ObjectNode object) {
        return object.properties().stream().map(field -> field.getKey()).toList();
    }

    /** Every field that a schema does not require in one of its objects. */
    private static Set<String> optional(Path schema) throws Exception {
        JsonNode root = new ObjectMapper().readTree(schema.toFile());
        Set<String> optional = new TreeSet<>();
        for (String place : objects(root)) {
            JsonNode object = root.at(place);
            if (object.has("required")) {
                Set<String> fields = new TreeSet<>(names((ObjectNode) object.get("properties")));
                object.get("required").forEach(name -> fields.remove(name.asText()));
                optional.addAll(fields);
            }
        }
        return optional;
    }

    @Test
    void exitCodes_sayWhetherThereIsADocument() throws Exception {
        Path book = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed")
                .row("Golfer A", 95)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Loft target")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58, 45, 12)
                .sheet("Aims", "Measure, Tolerance, Must")
                .row("loft", 0.5, "yes")
                .write(folder.resolve("musts.xlsx"));
        Terminal unmet = Terminal.run("plan", book, "--json");
        assertEquals(4, unmet.code(), unmet.err());
        assertEquals("loft", unmet.json().at("/broken/0/what").asText());
        Path wrong = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed")
                .row("Golfer A", "fast")
                .write(folder.resolve("wrong.xlsx"));
        Terminal check = Terminal.run("check", wrong, "--json");
        assertEquals(3, check.code());
        assertEquals("problem", check.json().at("/problems/0/severity").asText());
        for (String command : List.of("plan", "chart", "gauge")) {
            Terminal run = Terminal.run(command, wrong, "--json");
            assertEquals(3, run.code(), command);
            assertEquals("", run.out(), command);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "2.5e-29, 0.0",
        "-1e-13, 0.0",
        "1.7000000000002, 1.7",
        "3001.1234567891234, 3001.123456789123",
        "-0.5, -0.5"
    })
    void numbers_haveTwelveDecimalsAtMost(double value, String printed) {
        ObjectNode document = JsonNodeFactory.instance.objectNode();
        document.putArray("values").addObject().put("value", value);
        String text = new PrintedJson(document).text();
        assertTrue(text.replaceAll("\\s", "").equals("{\"format\":1,\"values\":[{\"value\":" + printed + "}]}"), text);
    }

    @Test
    void words_areThoseOfTheProgram() throws Exception {
        assertEquals(labels(Message.Severity.values(), Enum::name), words("check", "/$defs/message", "severity"));
        assertEquals(labels(ClubKind.values(), ClubKind::label), words("chart", "/properties/clubs/items", "kind"));
        assertEquals(labels(SpeedUnit.values(), SpeedUnit::label), words("plan", "/$defs/units", "speed"));
        assertEquals(labels(Broken.Kind.values(), Broken.Kind::label), words("plan", "/$defs/rule", "kind"));
        assertEquals(labels(CarryOrigin.values(), CarryOrigin::words), words("plan", "/$defs/choice", "carryFrom"));
        String golfer = "/properties/golfers/items/properties/";
        assertEquals(
                labels(LoftAdvice.values(), Enum::name),
                words("plan", golfer + "sensitivity/properties/clubs/items", "loftForCarry"));
        assertEquals(
                labels(MeasureNext.What.values(), MeasureNext.What::words),
                words("plan", golfer + "measureNext/items", "what"));
        assertEquals(
                labels(MeasureNext.Worth.values(), MeasureNext.Worth::words),
                words("plan", golfer + "measureNext/items", "words"));
        assertEquals(labels(Repeatability.Origin.values(), Enum::name), words("gauge", "", "repeatabilityFrom"));
        Measure[] misses =
                Arrays.stream(Measure.values()).filter(Measure::canBeWorstMiss).toArray(Measure[]::new);
        assertEquals(labels(misses, Measure::label), words("compare", "/$defs/state/properties/worstMiss", "measure"));
    }

    private static <T> Set<String> labels(T[] values, Function<T, String> label) {
        Set<String> labels = new TreeSet<>();
        Arrays.stream(values)
                .map(label)
                .map(text -> text.toLowerCase(Locale.ROOT))
                .forEach(labels::add);
        return labels;
    }

    private static Set<String> words(String command, String place, String field) throws Exception {
        JsonNode schema = new ObjectMapper()
                .readTree(JsonContract.FOLDER.resolve(command + ".schema.json").toFile());
        Set<String> words = new TreeSet<>();
        schema.at(place + "/properties/" + field + "/enum").forEach(word -> words.add(word.asText()));
        return words;
    }

    @Test
    void choices_sayWhatTheirOptionGivesAndCosts() throws Exception {
        Path full = Files.copy(DemoBooks.kept("full"), folder.resolve("full.xlsx"));
        JsonNode chart = Terminal.run("chart", full, "--json").json();
        JsonNode golfer = Terminal.run("plan", full, "--json").json().at("/golfers/0");
        double points = 0;
        for (JsonNode choice : golfer.get("choices")) {
            points += choice.get("points").asDouble();
            if (choice.get("club").asText().equals("left out")) {
                assertTrue(choice.get("gaugeLoftDeg").isNull()
                        && choice.get("carry").isNull());
                continue;
            }
            JsonNode option = option(chart, choice.get("option").asText());
            for (String name : List.of("setting", "weighting", "loftBend", "lieBend", "gaugeLoftDeg", "gaugeLieDeg")) {
                assertEquals(option.get(name), choice.get(name), name);
            }
            assertEquals(option.path("carry").asDouble(), choice.get("carry").asDouble());
        }
        for (JsonNode gap : golfer.get("gaps")) {
            points += gap.get("penalty").asDouble();
        }
        assertEquals(golfer.get("penalty").asDouble(), points, 1e-7);
    }

    private static JsonNode option(JsonNode chart, String key) {
        return StreamSupport.stream(chart.get("clubs").spliterator(), false)
                .flatMap(club -> StreamSupport.stream(club.get("options").spliterator(), false))
                .filter(option -> option.get("option").asText().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
