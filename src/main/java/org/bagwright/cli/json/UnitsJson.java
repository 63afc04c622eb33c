package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.bagwright.domain.units.Units;

/** The units in which a document gives distances, speeds and lengths. */
record UnitsJson(Units units) {
    ObjectNode node() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("distance", units.distance().label());
        node.put("speed", units.speed().label());
        node.put("length", units.length().label());
        return node;
    }
}
