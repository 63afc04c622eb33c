package org.bagwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.Broken;
import org.bagwright.search.BagSearch;

/** What a page shows of the set-up that it has now, and the same from the program's own evaluator. */
final class ShownNumbers {
    private static final double RELATIVE = 1e-9;
    private static final double HIDDEN_POINTS = 0.005;
    private static final String SCRIPT =
            """
            document.querySelector(".ladder details").open = true;
            document.querySelector(".ladder details").dispatchEvent(new Event("toggle"));
            const all = query => [...document.querySelectorAll(query)];
            return JSON.stringify({
              hash: location.hash,
              points: Number(document.querySelector(".tile.yours strong").dataset.points),
              today: Number(document.querySelector(".tile.today strong").dataset.points),
              plan: Number(document.querySelector(".tile.plan strong").dataset.points),
              breaks: Number(document.querySelector(".tile.yours strong").dataset.breaks),
              measures: Object.fromEntries(all(".points tr[data-measure]").map(row =>
                [row.dataset.measure, Number(row.querySelector("td:last-child").dataset.points)])),
              gaps: all(".ladder tbody tr[data-gap]").map(row => [Number(row.dataset.gap), Number(row.dataset.points)]),
              broken: all(".broken li").map(item => [item.firstChild.data.trim(), item.dataset.cell]),
              taken: all(".stock td.taken").map(cell => Number(cell.textContent)),
            });
            """;

    private final JsonNode said;
    private final BookResult result;
    private final IdentityHashMap<BagResult, BagState> states = new IdentityHashMap<>();

    private ShownNumbers(JsonNode said, BookResult result) {
        this.said = said;
        this.result = result;
    }

    /** What the page shows now. */
    static ShownNumbers of(Browser browser, BookResult result) throws IOException {
        return new ShownNumbers(new ObjectMapper().readTree((String) browser.run(SCRIPT)), result);
    }

    /** The part of the address with this name; empty if it has none. */
    private String part(String name) {
        return Arrays.stream(said.get("hash").asText().replace("#", "").split("&"))
                .filter(part -> part.startsWith(name + "="))
                .map(part -> part.substring(name.length() + 1))
                .findFirst()
                .orElse("");
    }

    int golfer() {
        return part("g").isEmpty() ? 0 : Integer.parseInt(part("g"));
    }

    /** The options that the address says, for each slot of a golfer. */
    List<Integer> chosen(int golfer) {
        String said = part("c" + golfer);
        return said.isEmpty()
                ? result.bags().get(golfer).planned().chosen()
                : Arrays.stream(said.split("\\."))
                        .map(text -> Integer.parseInt(text, 36))
                        .toList();
    }

    double points() {
        return said.get("points").asDouble();
    }

    /** Asserts that everything shown is what the program says of this set-up. */
    void agree() {
        BagResult bag = result.bags().get(golfer());
        BagState state = stateOf(bag);
        same(state.score().penaltyPoints(), points(), "points");
        same(bag.today().score().penaltyPoints(), said.get("today").asDouble(), "today");
        same(bag.planned().score().penaltyPoints(), said.get("plan").asDouble(), "plan");
        assertEquals(state.score().hardBreaks(), said.get("breaks").asLong(), "breaks");
        measures(bag.terms(state));
        gaps(state);
        broken(bag);
        assertEquals(
                IntStream.range(0, result.stock().size())
                        .map(item -> result.taken(item, this::stateOf))
                        .boxed()
                        .toList(),
                numbers(said.get("taken")));
    }

    private BagState stateOf(BagResult bag) {
        return states.computeIfAbsent(
                bag,
                each -> BagSearch.state(each.options(), chosen(result.bags().indexOf(each))));
    }

    private void measures(Terms terms) {
        for (Measure measure : Measure.values()) {
            JsonNode shown = said.get("measures").get(measure.label());
            if (shown == null) {
                assertTrue(terms.points(measure) < HIDDEN_POINTS, measure.label());
            } else {
                same(terms.points(measure), shown.asDouble(), measure.label());
            }
        }
        same(terms.doubtPoints(), said.get("measures").path("of it doubt").asDouble(0), "doubt");
    }

    private void gaps(BagState state) {
        assertEquals(state.gaps().size(), said.get("gaps").size(), "gaps");
        for (int index = 0; index < state.gaps().size(); index++) {
            same(
                    state.gaps().get(index).gapM(),
                    said.get("gaps").get(index).get(0).asDouble(),
                    "gap");
            same(
                    state.gaps().get(index).penaltyPoints(),
                    said.get("gaps").get(index).get(1).asDouble(),
                    "points of a gap");
        }
    }

    private void broken(BagResult bag) {
        List<List<String>> wanted = new ArrayList<>();
        for (Broken rule : result.broken(this::stateOf)) {
            boolean ofOthers = rule.kind() != Broken.Kind.STOCK
                    && !rule.place().golfer().equals(bag.golfer().name());
            if (!ofOthers) {
                wanted.add(List.of(rule.words(), rule.cell()));
            }
        }
        assertEquals(
                wanted,
                StreamSupport.stream(said.get("broken").spliterator(), false)
                        .map(rule -> List.of(rule.get(0).asText(), rule.get(1).asText()))
                        .toList());
    }

    private static List<Integer> numbers(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .map(JsonNode::asInt)
                .toList();
    }

    private static void same(double wanted, double shown, String what) {
        assertEquals(wanted, shown, RELATIVE * Math.max(1, Math.abs(wanted)), what);
    }
}
