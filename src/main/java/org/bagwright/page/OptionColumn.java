package org.bagwright.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One number or text of every option of a slot. Options of a slot share many, so each different one is written once:
 * {@code v} has them, {@code i} the place of each option's own among them. Without {@code i} all options have the only one,
 * or each its own where there are as many as options.
 *
 * @param values one for each option, null for none
 */
record OptionColumn(List<Object> values) {
    /** Whether it says nothing: no value at all, or 0 everywhere where that is nothing, too. */
    boolean isIdle(boolean zeroIsNothing) {
        return values.stream().allMatch(value -> value == null || (zeroIsNothing && value.equals(0.0)));
    }

    ObjectNode node() {
        Map<Object, Integer> places = new LinkedHashMap<>();
        values.forEach(value -> places.putIfAbsent(value, places.size()));
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (places.size() > 1 && places.size() > values.size() / 2) {
            values.forEach(put(node.putArray("v"))::add);
            return node;
        }
        places.keySet().forEach(put(node.putArray("v"))::add);
        if (places.size() > 1) {
            ArrayNode indexes = node.putArray("i");
            values.forEach(value -> indexes.add(places.get(value)));
        }
        return node;
    }

    private interface Put {
        void add(Object value);
    }

    private static Put put(ArrayNode array) {
        return value -> {
            if (value instanceof Double number) {
                addNumber(array, number);
            } else {
                array.add((String) value);
            }
        };
    }

    /** A whole number without the .0 that Java writes. */
    private static void addNumber(ArrayNode array, double number) {
        if (number == Math.rint(number) && Math.abs(number) < 1e15) {
            array.add((long) number);
        } else {
            array.add(number);
        }
    }
}
