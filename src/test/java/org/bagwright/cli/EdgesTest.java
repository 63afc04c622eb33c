package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Just what is allowed and just what is not: pieces in stock, bends, musts; and what an even gap is. */
@Tag("analytic")
class EdgesTest {
    @TempDir
    Path folder;

    private Terminal plan(BookSketch book) throws Exception {
        return Terminal.run("plan", book.write(folder.resolve("bag.xlsx")), "--json", "-o", result());
    }

    private Path result() {
        return folder.resolve("plan.xlsx");
    }

    private static List<String> chosen(JsonNode plan, int part) {
        List<String> chosen = new ArrayList<>();
        plan.at("/golfers/0/choices")
                .forEach(choice -> chosen.add(choice.get("option").asText().split("\\|")[part]));
        return chosen;
    }

    /** Two woods that both want the heavy piece, with so many of them on the bench. */
    private static BookSketch woods(int heavy) {
        return new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed")
                .row("Golfer A", 95)
                .sheet(
                        "Clubs",
                        "Golfer, Slot, Club, Kind, Loft, Lie, Length, Kit, Weighting, Swingweight,"
                                + " Swingweight target")
                .row("Golfer A", 1, "3 wood", "wood", 15, 58, 43, "K", "Even", "D0", "D4")
                .row("Golfer A", 2, "5 wood", "wood", 18, 58, 42, "K", "Even", "D0", "D4")
                .weights()
                .row("K", "Even", "heel", 4, 0, 30, -8)
                .row("K", "Heavy", "heel", 12, 0, 30, -8)
                .stock()
                .row("K: 12 g", heavy);
    }

    @Test
    void asManyPiecesAsInStock_mayBeTakenAndNotOneMore() throws Exception {
        for (int heavy = 0; heavy <= 2; heavy++) {
            Terminal run = plan(woods(heavy));
            assertEquals(0, run.code(), run.err());
            long taken = chosen(run.json(), 4).stream().filter("Heavy"::equals).count();
            assertEquals(heavy, taken, run.json().at("/golfers/0/choices").toString());
        }
    }

    /** The sheet Plan counts what the live choices take: all pieces are in order, one more is not. */
    @Test
    void asManyPiecesAsInStock_areNotShortOnTheSheetAndOneMoreIs() throws Exception {
        for (int heavy = 1; heavy <= 2; heavy++) {
            plan(woods(heavy));
            try (XSSFWorkbook book = ResultCells.open(result())) {
                ResultCells.set(book, 0, "Live weighting", "Heavy");
                ResultCells.set(book, 1, "Live weighting", "Heavy");
                String fit = ResultCells.live(book, 0, "Live fit").getStringValue();
                assertEquals(heavy < 2, fit.equals("not in stock"), fit + " with " + heavy);
            }
        }
    }

    /** Both pinned with the heavy piece: only where one is missing does the plan say so, and how many there are. */
    @Test
    void pinnedPieces_areToldAsTooManyFromTheFirstThatIsMissing() throws Exception {
        for (int heavy = 1; heavy <= 2; heavy++) {
            plan(woods(heavy));
            ChoiceBook.edited(result(), book -> {
                for (int slot = 0; slot < 2; slot++) {
                    ResultCells.set(book, slot, "Live weighting", "Heavy");
                    ResultCells.set(book, slot, "Pin", "yes");
                }
            });
            Terminal again = Terminal.run("plan", result(), "--json", "-o", folder.resolve("again.xlsx"));
            assertEquals(heavy < 2 ? 4 : 0, again.code(), again.err());
            String told = again.json().get("messages").toString();
            assertEquals(
                    heavy < 2, told.contains("the plan uses 2 of 12 g pieces of kit K, but there are only 1"), told);
            assertEquals(
                    heavy < 2,
                    again.json().get("broken").toString().contains("2 of 12 g pieces of kit K taken, only 1 there"));
        }
    }

    /** A putter does not fly; the mean is from the longest to the shortest club that does. */
    @Test
    void evenGap_isTodaysCarriesFromFirstToLastSharedOut() throws Exception {
        BookSketch book = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Iron speed, Gap wish")
                .row("Golfer A", 95, 80, "even")
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Bend limit, Gap wish")
                .row("Golfer A", 1, "6 iron", "iron", 27, 61.5, 37.5)
                .row("Golfer A", 2, "7 iron", "iron", 29, 62, 37, 1)
                .row("Golfer A", 3, "8 iron", "iron", 35, 62.5, 36.5, 1, 11)
                .row("Golfer A", 4, "9 iron", "iron", 42, 63, 36)
                .row("Golfer A", 5, "Putter", "putter", 3, 70, 34);
        JsonNode plan = plan(book).json();
        List<Double> carries = new ArrayList<>();
        for (JsonNode club : Terminal.run("chart", folder.resolve("bag.xlsx"), "--json")
                .json()
                .get("clubs")) {
            club.get("options").forEach(option -> {
                if (option.get("changes").asInt() == 0 && option.hasNonNull("carry")) {
                    carries.add(option.get("carry").asDouble());
                }
            });
        }
        assertEquals(4, carries.size());
        double even = (carries.get(0) - carries.get(3)) / 3;
        List<Double> wishes = new ArrayList<>();
        plan.at("/golfers/0/gaps").forEach(gap -> wishes.add(gap.get("wish").asDouble()));
        assertEquals(even, wishes.get(0), 1e-9 * even);
        assertEquals(even, wishes.get(1), 1e-9 * even);
        assertEquals(11, wishes.get(2), 1e-9, "a club's own wish counts before the golfer's");
        assertTrue(Math.abs(even - (carries.get(1) - carries.get(2))) > 1, "today's gaps are not even");
    }

    /** Only the utmost bend reaches the target. */
    @ParameterizedTest
    @ValueSource(doubles = {-1, 1})
    void bendOfTheLimitItself_isPlannedAndNoneBeyond(double side) throws Exception {
        for (double wanted : new double[] {1, 3}) {
            Terminal run = plan(new BookSketch()
                    .sheet("Golfers", "Golfer, Iron speed")
                    .row("Golfer A", 80)
                    .sheet(
                            "Clubs",
                            "Golfer, Slot, Club, Kind, Loft, Lie, Length, Bend limit, Bend step, Loft target,"
                                    + " Lie target")
                    .row("Golfer A", 1, "7 iron", "iron", 31, 62, 37, 1, 0.5, 31 + side * wanted, 62 + side * wanted));
            assertEquals(0, run.code(), run.err());
            assertEquals(List.of(side < 0 ? "-1" : "1"), chosen(run.json(), 5));
            assertEquals(List.of(side < 0 ? "-1" : "1"), chosen(run.json(), 6));
        }
    }

    /** A loft target that no bend reaches: within the tolerance the must is kept, beyond it the plan is written and ends with 4. */
    @Test
    void mustsThatCannotAllBeMet_endThePlanWith4AndItIsWritten() throws Exception {
        for (double off : new double[] {0.5, 0.51}) {
            Files.deleteIfExists(result());
            Terminal run = plan(new BookSketch()
                    .sheet("Golfers", "Golfer, Iron speed")
                    .row("Golfer A", 80)
                    .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie, Length, Loft target")
                    .row("Golfer A", 1, "7 iron", "iron", 31, 62, 37, 31 + off)
                    .sheet("Aims", "Measure, Tolerance, Must")
                    .row("loft", 0.5, "yes"));
            boolean met = off <= 0.5;
            assertEquals(met ? 0 : 4, run.code(), run.err());
            assertTrue(Files.exists(result()));
            assertEquals(met ? 0 : 20, run.json().get("brokenMusts").asInt(), "thousandths of the tolerance");
            assertEquals(met, run.json().get("broken").isEmpty());
            assertTrue(run.json().get("mustsSettled").asBoolean());
        }
    }
}
