package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A document as other programs get it: the number of its format comes first, and no number has more than twelve decimals, so
 * that the rounding errors of the arithmetic are gone.
 *
 * @param document the document of a command
 */
public record PrintedJson(ObjectNode document) {
    /** The format of all documents. It rises when a field goes or changes its meaning, not when one is added. */
    static final int FORMAT = 1;

    private static final int DECIMALS = 12;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** The text to print. */
    public String text() {
        ObjectNode printed = NODES.objectNode();
        printed.put("format", FORMAT);
        document.properties().forEach(field -> printed.set(field.getKey(), rounded(field.getValue())));
        return printed.toPrettyString();
    }

    private static JsonNode rounded(JsonNode node) {
        if (node.isObject()) {
            ObjectNode object = NODES.objectNode();
            node.properties().forEach(field -> object.set(field.getKey(), rounded(field.getValue())));
            return object;
        }
        if (node.isArray()) {
            ArrayNode array = NODES.arrayNode(node.size());
            node.forEach(value -> array.add(rounded(value)));
            return array;
        }
        return node.isDouble() && Double.isFinite(node.doubleValue()) ? rounded(node.doubleValue()) : node;
    }

    private static JsonNode rounded(double value) {
        return DoubleNode.valueOf(BigDecimal.valueOf(value)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .doubleValue());
    }
}
