package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.gauge.GaugedBook;
import org.bagwright.domain.gauge.GaugedClub;
import org.bagwright.domain.gauge.GaugedClub.GaugedSleeve;
import org.bagwright.domain.gauge.GaugedNumber;
import org.bagwright.domain.gauge.GaugedReading;
import org.bagwright.domain.gauge.Repeatability;

/** What gauge readings show, as a machine-readable document. Angles in degrees, clock offsets in hours. */
public record GaugeJson(GaugedBook gauged) {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    public ObjectNode document() {
        ObjectNode document = NODES.objectNode();
        Repeatability repeatability = gauged.repeatability();
        document.put("repeatabilityDeg", repeatability.scatterDeg());
        document.put("repeatabilityFrom", repeatability.origin().name().toLowerCase(Locale.ROOT));
        document.put("repeatabilitySpareNumbers", repeatability.spareNumbers());
        ArrayNode fits = document.putArray("fits");
        gauged.clubs().forEach(club -> fits.add(club(club)));
        document.set("messages", new MessagesJson(gauged.messages()).array());
        return document;
    }

    private static ObjectNode club(GaugedClub gauged) {
        ObjectNode node = NODES.objectNode();
        node.put("golfer", gauged.club().golfer());
        node.put("club", gauged.club().name());
        node.put("sleeve", gauged.club().sleeve().orElse(null));
        node.set("designLoftDeg", number(gauged.design().loft()));
        node.set("designLieDeg", number(gauged.design().lie()));
        node.set("designFaceDeg", number(gauged.design().face()));
        node.put("statedAt", gauged.club().head().statedAt().orElse(null));
        node.set("gaugeLoftDeg", number(gauged.gauge().loft()));
        node.set("gaugeLieDeg", number(gauged.gauge().lie()));
        put(node, "bendDeg", gauged.sleeve().map(GaugedSleeve::bend));
        put(node, "clockOffsetH", gauged.sleeve().map(GaugedSleeve::clockOffset));
        ArrayNode readings = node.putArray("readings");
        gauged.readings().forEach(reading -> readings.add(reading(reading)));
        ArrayNode held = node.putArray("held");
        gauged.held().forEach(held::add);
        ArrayNode notes = node.putArray("notes");
        gauged.notes().forEach(notes::add);
        return node;
    }

    private static void put(ObjectNode node, String field, Optional<GaugedNumber> number) {
        number.ifPresentOrElse(value -> node.set(field, number(value)), () -> node.putNull(field));
    }

    private static ObjectNode number(GaugedNumber number) {
        ObjectNode node = NODES.objectNode();
        node.put("value", number.valueMeasureUnits());
        put(node, "standardError", number.standardErrorMeasureUnits());
        node.put("stated", number.statedMeasureUnits());
        return node;
    }

    private static ObjectNode reading(GaugedReading checked) {
        ObjectNode node = NODES.objectNode();
        node.put("cell", checked.reading().cell());
        node.put("setting", checked.reading().setting().orElse(null));
        put(node, "loftResidualDeg", checked.loftResidualDeg());
        put(node, "lieResidualDeg", checked.lieResidualDeg());
        put(node, "faceResidualDeg", checked.faceResidualDeg());
        node.put("flagged", checked.flagged());
        return node;
    }

    private static void put(ObjectNode node, String field, OptionalDouble value) {
        if (value.isPresent()) {
            node.put(field, value.getAsDouble());
        } else {
            node.putNull(field);
        }
    }
}
