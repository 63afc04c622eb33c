package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.ReachTerm;
import org.bagwright.domain.plan.Verdict;
import org.bagwright.domain.units.Units;

/** A plan as a machine-readable document. Distances and speeds are in the book's units. */
public final class PlanJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final BookResult result;
    private final Units units;
    private final ChoicesJson choices;

    public PlanJson(BookResult result) {
        this.result = result;
        this.units = result.book().settings().units();
        this.choices = new ChoicesJson(units);
    }

    public ObjectNode document() {
        ObjectNode document = NODES.objectNode();
        document.set("units", new UnitsJson(units).node());
        document.put("penalty", result.plannedPoints());
        parts(document, result.plannedPoints(), result.doubtPoints(BagResult::planned));
        document.put("bound", result.boundPoints());
        document.put("proven", result.proven());
        document.put("brokenMusts", result.plannedBreaks());
        document.put("mustsSettled", result.verdict() != Verdict.NOT_SETTLED);
        ObjectNode bounds = document.putObject("bounds");
        bounds.put("hard", result.proof().bounds().hard());
        bounds.put("brokenMusts", result.proof().bounds().mustThousandths());
        bounds.put("penalty", result.proof().bounds().penaltyPoints());
        ObjectNode today = document.putObject("today");
        today.put("penalty", result.todayPoints());
        parts(today, result.todayPoints(), result.doubtPoints(BagResult::today));
        today.put("brokenMusts", result.todayBreaks());
        today.set("broken", new BrokenJson(result.broken(BagResult::today)).array());
        document.set("broken", new BrokenJson(result.broken(BagResult::planned)).array());
        document.put("seed", result.seed());
        document.put("seconds", result.searchS());
        ArrayNode golfers = document.putArray("golfers");
        result.bags().forEach(bag -> golfers.add(golfer(bag)));
        new ExplanationJson(result, choices).put(document);
        document.set("messages", new MessagesJson(result.messages()).array());
        return document;
    }

    /** What of a penalty the best guess misses, and what of it is doubt. */
    private static void parts(ObjectNode node, double penaltyPoints, double doubtPoints) {
        node.put("penaltyMiss", penaltyPoints - doubtPoints);
        node.put("penaltyDoubt", doubtPoints);
    }

    private static void parts(ObjectNode node, BagResult bag, BagState state) {
        parts(node, state.score().penaltyPoints(), bag.terms(state).doubtPoints());
    }

    private ObjectNode golfer(BagResult bag) {
        ObjectNode node = NODES.objectNode();
        node.put("golfer", bag.golfer().name());
        node.put("penalty", bag.planned().score().penaltyPoints());
        parts(node, bag, bag.planned());
        node.put("brokenMusts", bag.planned().score().hardBreaks());
        ObjectNode today = node.putObject("today");
        today.put("penalty", bag.today().score().penaltyPoints());
        parts(today, bag, bag.today());
        today.put("brokenMusts", bag.today().score().hardBreaks());
        today.set("gaps", gaps(bag, bag.today()));
        today.set("reach", reach(bag.today()));
        node.set("choices", choices.array(bag, bag.planned()));
        node.set("gaps", gaps(bag, bag.planned()));
        node.set("reach", reach(bag.planned()));
        new OutlookJson(units).put(node, bag);
        new SessionsJson(units).put(node, bag);
        return node;
    }

    /** How far the longest club flies, and how much less far than today's; null if nothing flies. */
    private JsonNode reach(BagState state) {
        if (state.reach().isEmpty()) {
            return NODES.nullNode();
        }
        ReachTerm reach = state.reach().get();
        ObjectNode node = NODES.objectNode();
        node.put("carry", units.distance().fromM(reach.carryM()));
        node.put("short", units.distance().fromM(reach.shortM()));
        node.put("penalty", reach.terms().points(Measure.REACH));
        return node;
    }

    private ArrayNode gaps(BagResult bag, BagState state) {
        ArrayNode gaps = NODES.arrayNode();
        List<Option> options = bag.optionsOf(state);
        for (GapTerm term : state.gaps()) {
            ObjectNode gap = gaps.addObject();
            gap.put("from", options.get(term.fromIndex()).clubText());
            gap.put("to", options.get(term.toIndex()).clubText());
            gap.put("gap", units.distance().fromM(term.gapM()));
            gap.put("gapSd", units.distance().fromM(term.sdM()));
            gap.put("wish", units.distance().fromM(term.wishM()));
            gap.put("penalty", term.penaltyPoints());
            parts(gap, term.penaltyPoints(), term.terms().doubtPoints());
        }
        return gaps;
    }
}
