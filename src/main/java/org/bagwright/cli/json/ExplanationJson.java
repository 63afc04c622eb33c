package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.OtherPlan;
import org.bagwright.domain.plan.Relaxation;
import org.bagwright.domain.plan.Step;

/** Steps, other plans, what holds the plans back, and the stock, for programs. */
final class ExplanationJson {
    private final BookResult result;
    private final ChoicesJson choices;

    /** @param choices writes what is chosen in a state of a bag */
    ExplanationJson(BookResult result, ChoicesJson choices) {
        this.result = result;
        this.choices = choices;
    }

    /** Adds to the document of a plan. */
    void put(ObjectNode document) {
        ArrayNode steps = document.putArray("steps");
        ArrayNode others = document.putArray("others");
        ArrayNode relaxations = document.putArray("relaxations");
        ArrayNode unsettled = document.putArray("notSettled");
        for (BagResult bag : result.bags()) {
            bag.reasons().unsettled().forEach(what -> unsettled
                    .addObject()
                    .put("golfer", bag.golfer().name())
                    .put("what", what));
            bag.steps().forEach(step -> steps.add(step(document, bag, step)));
            bag.others().forEach(other -> others.add(other(document, bag, other)));
            bag.relaxations().forEach(relaxation -> relaxations.add(relaxation(document, bag, relaxation)));
        }
        putStock(document.putArray("stock"));
    }

    private ObjectNode step(ObjectNode nodes, BagResult bag, Step step) {
        ObjectNode node = nodes.objectNode();
        node.put("golfer", bag.golfer().name());
        node.put("changes", step.changes());
        score(node, bag, step.state());
        node.set("choices", choices.array(bag, step.state()));
        return node;
    }

    private ObjectNode other(ObjectNode nodes, BagResult bag, OtherPlan other) {
        ObjectNode node = nodes.objectNode();
        node.put("golfer", bag.golfer().name());
        node.put("difference", other.difference());
        score(node, bag, other.state());
        node.put("changes", bag.changesOf(other.state()));
        node.set("choices", choices.array(bag, other.state()));
        return node;
    }

    private void score(ObjectNode node, BagResult bag, BagState state) {
        node.put("penalty", state.score().penaltyPoints());
        node.put("brokenMusts", state.score().hardBreaks());
        node.set("broken", new BrokenJson(bag.broken(state, result.book().settings())).array());
    }

    private static ObjectNode relaxation(ObjectNode nodes, BagResult bag, Relaxation relaxation) {
        ObjectNode node = nodes.objectNode();
        node.put("golfer", bag.golfer().name());
        node.put("cell", relaxation.cell());
        node.put("what", relaxation.what());
        node.put("gain", relaxation.gainPoints());
        node.put("fewerBrokenMusts", relaxation.fewerBreaks());
        return node;
    }

    private void putStock(ArrayNode stock) {
        List<StockLimit> limits = result.stock();
        for (int item = 0; item < limits.size(); item++) {
            ObjectNode node = stock.addObject();
            node.put("item", limits.get(item).item().inWords());
            node.put("available", limits.get(item).available());
            node.put("takenToday", result.taken(item, BagResult::today));
            node.put("takenByPlan", result.taken(item, BagResult::planned));
        }
    }
}
