package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bagwright.BookSketch;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans of whole bags through the command: what is told of them must be what another plan of a changed book gives. */
@Tag("analytic")
class WholeBagTest {
    private static final String CLUBS = "Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Kit, Weighting,"
            + " Loft target, Swingweight target, Bend limit, Bend step, Pinned, Optional";
    private static final String SMALL = CLUBS.replaceAll("\\s*,\\s*", ", ");

    @TempDir
    Path folder;

    private int books;

    private Terminal run(String command, BookSketch book) throws Exception {
        return Terminal.run(command, book.write(folder.resolve("book" + books++ + ".xlsx")), "--json");
    }

    private JsonNode plan(BookSketch book) throws Exception {
        Terminal run = run("plan", book);
        assertTrue(run.code() == 0 || run.code() == 4, run.err());
        return run.json();
    }

    private static BookSketch golfer(Object mostChanges) {
        return new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Gap wish, Most changes")
                .row("Golfer A", 95, 14, mostChanges);
    }

    private static BookSketch clubs(BookSketch book, String pinned) {
        return book.sheet("Clubs", SMALL)
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58, 45, "S", "1", "K", "Even", null, "D2", null, null)
                .row("Golfer A", 1, "Other driver", "driver", 9, 58, 45.5, "S", "1", null, null, null, "D2")
                .row("Golfer A", 2, "5 wood", "wood", 18, 58.5, 42, "S", "2", null, null, 17, null, null, null, pinned)
                .row(
                        "Golfer A",
                        3,
                        "4 hybrid",
                        "hybrid",
                        22,
                        59,
                        40,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        "yes")
                .row("Golfer A", 4, "6 iron", "iron", 28, 61.5, 37.5, null, null, null, null, null, "D1", 1, 1)
                .row("Golfer A", 5, "8 iron", "iron", 36, 63, 36.5, null, null, null, null, null, "D1", 1, 1);
    }

    private static BookSketch parts(BookSketch book, int heavy) {
        return book.sheet("Sleeves", "Sleeve, Setting, Clock, Bend")
                .row("S", "1", 3, 1.5)
                .row("S", "2", 6, 1.5)
                .row("S", "3", 9, 1.5)
                .row("S", "4", 12, 1.5)
                .weights()
                .row("K", "Even", "heel", 4, 0, 30, -8)
                .row("K", "Even", "toe", 4, 0, -30, -8)
                .row("K", "Heavy", "heel", 12, 0, 30, -8)
                .row("K", "Heavy", "toe", 4, 0, -30, -8)
                .stock()
                .row("K: 12 g", heavy);
    }

    private static double penalty(JsonNode plan) {
        return plan.get("penalty").asDouble();
    }

    private static List<JsonNode> named(JsonNode array, String field, String text) {
        List<JsonNode> found = new ArrayList<>();
        array.forEach(node -> {
            if (node.get(field).asText().contains(text)) {
                found.add(node);
            }
        });
        return found;
    }

    @Test
    void relaxation_gainsWhatTheRelaxedBookGains() throws Exception {
        JsonNode held = plan(parts(clubs(golfer(1), "yes"), 0));
        JsonNode unpinned = plan(parts(clubs(golfer(1), null), 0));
        JsonNode oneMore = plan(parts(clubs(golfer(1), "yes"), 1));
        JsonNode anyChanges = plan(parts(clubs(golfer(null), "yes"), 0));
        assertGain(held, "unpin 5 wood", penalty(held) - penalty(unpinned));
        assertGain(held, "one more of 12 g", penalty(held) - penalty(oneMore));
        assertGain(held, "more than 1 change", penalty(held) - penalty(anyChanges));
        assertTrue(penalty(held) - penalty(anyChanges) > 0.1);
        assertMostFirst(held.get("relaxations"));
    }

    /** First what keeps more musts, then what gains more points. */
    private static void assertMostFirst(JsonNode relaxations) {
        assertTrue(relaxations.size() > 1, relaxations.toString());
        for (int index = 1; index < relaxations.size(); index++) {
            JsonNode more = relaxations.get(index - 1);
            JsonNode less = relaxations.get(index);
            int breaks = Long.compare(
                    more.get("fewerBrokenMusts").asLong(),
                    less.get("fewerBrokenMusts").asLong());
            assertTrue(
                    breaks > 0
                            || (breaks == 0
                                    && more.get("gain").asDouble()
                                            >= less.get("gain").asDouble()),
                    relaxations.toString());
        }
    }

    private static void assertGain(JsonNode plan, String what, double expectedPoints) {
        List<JsonNode> found = named(plan.get("relaxations"), "what", what);
        if (expectedPoints <= 0.005) {
            assertEquals(0, found.size(), what);
        } else {
            assertEquals(1, found.size(), what + " in " + plan.get("relaxations"));
            assertEquals(expectedPoints, found.get(0).get("gain").asDouble(), 1e-9, what);
        }
    }

    @Test
    void steps_areThePlansOfBooksWithThatManyChanges() throws Exception {
        JsonNode free = plan(parts(clubs(golfer(null), null), 1));
        JsonNode steps = free.get("steps");
        assertTrue(steps.size() > 3, steps.toString());
        for (JsonNode step : steps) {
            int changes = step.get("changes").asInt();
            JsonNode limited = plan(parts(clubs(golfer(changes), null), 1));
            assertEquals(penalty(limited), step.get("penalty").asDouble(), 1e-9, changes + " changes");
        }
        assertEquals(penalty(free), steps.get(steps.size() - 1).get("penalty").asDouble(), 1e-9);
        assertEquals(
                free.get("today").get("penalty").asDouble(),
                steps.get(0).get("penalty").asDouble(),
                1e-9);
    }

    @Test
    void otherPlan_withoutBendsIsThePlanOfABookThatForbidsThem() throws Exception {
        JsonNode free = plan(parts(clubs(golfer(null), null), 1));
        BookSketch rigid = parts(clubs(golfer(null), null), 1);
        rigid.put("Clubs", 5, "Bend limit", 0).put("Clubs", 6, "Bend limit", 0);
        List<JsonNode> others = named(free.get("others"), "difference", "nothing bent");
        assertEquals(1, others.size(), free.get("others").toString());
        assertEquals(penalty(plan(rigid)), others.get(0).get("penalty").asDouble(), 1e-9);
    }

    /** Another head in the same setting is set otherwise than the planned one: that costs less here than turning the sleeve. */
    @Test
    void anotherDriverSetting_mayBeThatOfAnotherHead() throws Exception {
        JsonNode others = plan(new BookSketch()
                        .sheet("Golfers", "Golfer, Driver speed")
                        .row("Golfer A", 95)
                        .sheet(
                                "Clubs",
                                "Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, In bag, Loft target")
                        .row("Golfer A", 1, "Driver", "driver", 10.5, 58, 45, "S", "1", "yes", 10.5)
                        .row("Golfer A", 1, "Other driver", "driver", 10.6, 58, 45, "S", "1", "no", 10.5)
                        .sheet("Sleeves", "Sleeve, Setting, Clock, Bend")
                        .row("S", "1", 3, 0)
                        .row("S", "2", 3, 2))
                .get("others");
        JsonNode other = named(others, "difference", "another driver setting").get(0);
        assertEquals("Other driver", other.at("/choices/0/club").asText(), other.toString());
        assertEquals("1", other.at("/choices/0/setting").asText(), other.toString());
    }

    /** A club that is bent today stays so where nothing is bent: straightening it is a bend too. */
    @Test
    void nothingBent_leavesTheBendsOfToday() throws Exception {
        JsonNode others = plan(new BookSketch()
                        .sheet("Golfers", "Golfer, Iron speed")
                        .row("Golfer A", 80)
                        .sheet(
                                "Clubs",
                                "Golfer, Slot, Club, Kind, Loft, Lie, Length, Loft bend, Loft target, Bend limit, Bend step")
                        .row("Golfer A", 1, "7 iron", "iron", 31, 62, 37, 1, 31, 2, 1))
                .get("others");
        JsonNode other = named(others, "difference", "nothing bent").get(0);
        assertEquals(1, other.at("/choices/0/loftBend").asDouble(), other.toString());
    }

    private static BookSketch musts(Object sixIronLoftDeg, String gapMust, String loftMust) {
        return new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Gap wish")
                .row("Golfer A", 95, 15)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Loft target, Bend limit, Bend step")
                .row("Golfer A", 1, "6 iron", "iron", 28, 61.5, 37.5, sixIronLoftDeg, 4, 1)
                .row("Golfer A", 2, "7 iron", "iron", 32, 62, 37, null, 4, 1)
                .row("Golfer A", 3, "8 iron", "iron", 36, 63, 36.5, 36, 4, 1)
                .sheet("Aims", "Measure, Tolerance, Importance, Must")
                .row("gap", 3, 2, gapMust)
                .row("loft", 0.5, 1, loftMust);
    }

    /** The 8 iron at its loft and the gaps conflict whatever the 6 iron does, and either left out frees the rest. */
    @Test
    void mustsThatCannotBeMet_areNamedAsTheSmallestConflict() throws Exception {
        Terminal run = run("plan", musts(28, "yes", "yes"));
        assertEquals(4, run.code(), run.err());
        List<JsonNode> conflicts = named(run.json().get("messages"), "text", "cannot all be met together");
        assertEquals(1, conflicts.size(), run.json().get("messages").toString());
        assertTrue(conflicts.get(0).get("text").asText().endsWith(": loft of 8 iron; the gaps"), conflicts.toString());
        assertTrue(plan(musts(null, "yes", "yes")).get("brokenMusts").asInt() > 0);
        assertEquals(0, plan(musts(28, "no", "yes")).get("brokenMusts").asInt());
        assertEquals(0, plan(musts(28, "yes", "no")).get("brokenMusts").asInt());
    }

    @Test
    void threeGolfersWhoWantTheOnePiece_leaveItToOne() throws Exception {
        BookSketch book = new BookSketch().sheet("Golfers", "Golfer, Driver speed");
        for (String name : List.of("Golfer A", "Golfer B", "Golfer C")) {
            book.row(name, 95);
        }
        book.sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Kit, Weighting, Swingweight target");
        List<String> wanted = List.of("E9", "E5", "E7");
        for (int golfer = 0; golfer < 3; golfer++) {
            book.row(
                    "Golfer " + (char) ('A' + golfer),
                    1,
                    "Driver",
                    "driver",
                    10,
                    58,
                    45,
                    "K",
                    "Even",
                    wanted.get(golfer));
        }
        book.weights()
                .row("K", "Even", "back", 4, -30, 0, -8)
                .row("K", "Heavy", "back", 12, -30, 0, -8)
                .stock()
                .row("K: 12 g", 1);
        JsonNode plan = plan(book);
        JsonNode chart = run("chart", book).json();
        double none = 0;
        double best = Double.POSITIVE_INFINITY;
        for (int golfer = 0; golfer < 3; golfer++) {
            JsonNode options = chart.get("clubs").get(golfer).get("options");
            none += options.get(0).get("ownPenalty").asDouble();
        }
        for (int golfer = 0; golfer < 3; golfer++) {
            JsonNode options = chart.get("clubs").get(golfer).get("options");
            double gain = options.get(0).get("ownPenalty").asDouble()
                    - options.get(1).get("ownPenalty").asDouble();
            assertTrue(gain > 1, "golfer " + golfer + " would like the piece");
            best = Math.min(best, none - gain);
        }
        assertEquals(best, penalty(plan), 1e-9);
        assertTrue(plan.get("proven").asBoolean());
        assertEquals(1, plan.get("stock").get(0).get("takenByPlan").asInt());
        assertTrue(plan.get("golfers")
                .get(0)
                .get("choices")
                .get(0)
                .get("option")
                .asText()
                .contains("Heavy"));
    }

    /** Equipment rules [read], see sources: length 48 in or as the book says, inertia 5900 g cm2 + 100. */
    @Test
    void rules_areToldWithFigureAndLimitAndKeptWhereTheyCan() throws Exception {
        BookSketch book = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed")
                .row("Golfer A", 95)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Kit, Weighting, Head mass, Head inertia")
                .row("Golfer A", 1, "Driver", "driver", 10, 58, 45, "K", "Empty", 190, 5800)
                .row("Golfer A", 2, "3 wood", "wood", 15, 58, 48.5, null, null, 205)
                .weights()
                .row("K", "Empty", "toe", 0, 0, -50, 0)
                .row("K", "Wide", "toe", 14, 0, -50, 0);
        JsonNode messages = run("plan", book).json().get("messages");
        assertEquals(
                1,
                named(messages, "text", "3 wood has a length 48.5 in; the limits are 18 in and 48 in")
                        .size());
        List<JsonNode> inertia = named(messages, "text", "Driver in setting fixed, weighting Wide has a head inertia");
        assertEquals(1, inertia.size(), messages.toString());
        assertTrue(inertia.get(0).get("text").asText().contains("the limit is 5900 with 100"));
        assertEquals(1, named(messages, "text", "Adjustable parts (kit K)").size());
        assertFalse(messages.toString().toLowerCase(java.util.Locale.ROOT).contains("conforming"));
    }

    @Test
    void benchNotes_tellBounceAndGramsThatMatch() throws Exception {
        BookSketch book = golfer(null)
                .sheet(
                        "Clubs",
                        "Golfer, Slot, Club, Kind, Loft, Lie, Length, Loft target, Swingweight target, Bend limit")
                .row("Golfer A", 1, "9 iron", "iron", 40, 63.5, 36, 41, "E5", 2);
        JsonNode messages = run("plan", book).json().get("messages");
        assertEquals(
                1,
                named(messages, "text", "9 iron 1 degree weaker, bounce +1 degree")
                        .size(),
                messages.toString());
        List<JsonNode> match = named(messages, "text", "wanted E5");
        assertEquals(1, match.size(), messages.toString());
        assertTrue(match.get(0).get("text").asText().contains("g more at the head would match it"));
    }
}
