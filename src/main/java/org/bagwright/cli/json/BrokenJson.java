package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.plan.Broken;

/** What a state breaks, as a part of a machine-readable document. Figures are in the book's units. */
record BrokenJson(List<Broken> broken) {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    ArrayNode array() {
        ArrayNode array = NODES.arrayNode();
        broken.forEach(rule -> array.add(rule(rule)));
        return array;
    }

    private static ObjectNode rule(Broken rule) {
        ObjectNode node = NODES.objectNode();
        node.put("golfer", rule.place().golfer());
        if (rule.place().slot().isPresent()) {
            node.put("slot", rule.place().slot().getAsInt());
        }
        node.put("club", rule.place().club());
        node.put("kind", rule.kind().label());
        node.put("what", rule.what());
        number(node, "figure", rule.figureMeasureUnits());
        number(node, "limit", rule.limitMeasureUnits());
        node.put("cell", rule.cell());
        node.put("text", rule.words());
        return node;
    }

    private static void number(ObjectNode node, String name, OptionalDouble value) {
        value.ifPresent(number -> node.put(name, number));
    }
}
