package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.compare.ComparedBook;
import org.bagwright.domain.compare.Comparison;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;

/** Several books as a machine-readable document. Distances in the unit of the first book. */
public record CompareJson(Comparison comparison) {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    public ObjectNode document() {
        ObjectNode document = NODES.objectNode();
        document.set(
                "units",
                new UnitsJson(comparison
                                .books()
                                .get(0)
                                .result()
                                .book()
                                .settings()
                                .units())
                        .node());
        ArrayNode books = document.putArray("books");
        comparison.books().forEach(book -> books.add(book(book)));
        ArrayNode golfers = document.putArray("golfers");
        comparison.golfers().forEach(golfer -> golfers.add(golfer(golfer)));
        return document;
    }

    private static ObjectNode book(ComparedBook book) {
        ObjectNode node = NODES.objectNode();
        node.put("book", book.name());
        node.put("penalty", book.result().plannedPoints());
        node.put("bound", book.result().boundPoints());
        node.put("proven", book.result().proven());
        node.put("brokenMusts", book.result().plannedBreaks());
        node.set("messages", new MessagesJson(book.result().messages()).array());
        return node;
    }

    private ObjectNode golfer(String golfer) {
        ObjectNode node = NODES.objectNode();
        node.put("golfer", golfer);
        ArrayNode books = node.putArray("books");
        for (ComparedBook book : comparison.books()) {
            book.bagOf(golfer).ifPresent(bag -> {
                ObjectNode one = books.addObject();
                one.put("book", book.name());
                one.set("today", state(bag, bag.today()));
                one.set("planned", state(bag, bag.planned()));
            });
        }
        ArrayNode missing = node.putArray("notIn");
        comparison.without(golfer).forEach(missing::add);
        ArrayNode differences = node.putArray("differences");
        comparison.differences(golfer).forEach(difference -> {
            ObjectNode one = differences.addObject();
            one.put("slot", difference.slot());
            one.put("state", difference.state());
            ArrayNode choices = one.putArray("choices");
            difference.choices().forEach(choices::add);
        });
        new ComparedJson(comparison.golfer(golfer)).addTo(node);
        return node;
    }

    private ObjectNode state(BagResult bag, BagState state) {
        ObjectNode node = NODES.objectNode();
        state.unevennessM()
                .ifPresent(valueM ->
                        node.put("gapUnevenness", comparison.distance().fromM(valueM)));
        bag.worstMiss(state).ifPresent(miss -> {
            ObjectNode worst = node.putObject("worstMiss");
            worst.put("measure", miss.measure().label());
            worst.put("slot", bag.options().slots().get(miss.index()).slot());
            worst.put("tolerances", miss.toleranceRatio());
        });
        node.put("penalty", state.score().penaltyPoints());
        node.put("brokenMusts", state.score().hardBreaks());
        node.put("changes", bag.changesOf(state));
        ObjectNode measures = node.putObject("byMeasure");
        Terms terms = bag.terms(state);
        for (Measure measure : Measure.values()) {
            measures.put(measure.label(), terms.points(measure));
        }
        return node;
    }
}
