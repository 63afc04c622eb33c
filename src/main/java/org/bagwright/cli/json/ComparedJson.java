package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.compare.ComparedClub;
import org.bagwright.domain.compare.ComparedField;
import org.bagwright.domain.compare.ComparedGolfer;
import org.bagwright.domain.plan.BagResult;

/**
 * One golfer side by side. Each field has its values in the order of {@code comparedBooks}, null where a book has none.
 *
 * @param golfer the golfer
 */
record ComparedJson(ComparedGolfer golfer) {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** Adds the fields to the golfer's node. */
    void addTo(ObjectNode node) {
        ArrayNode books = node.putArray("comparedBooks");
        golfer.books().forEach(books::add);
        node.put("same", golfer.isSame());
        node.set("wishes", differing(golfer.wishes()));
        node.set("conditions", differing(golfer.conditions()));
        ObjectNode points = node.putObject("points");
        points.set("today", all(golfer.points(BagResult::today)));
        points.set("planned", all(golfer.points(BagResult::planned)));
        ArrayNode clubs = node.putArray("clubs");
        golfer.clubs().forEach(club -> clubs.add(club(club)));
    }

    private static ObjectNode club(ComparedClub club) {
        ObjectNode node = NODES.objectNode();
        node.put("club", club.club());
        ArrayNode missing = node.putArray("notIn");
        club.missingIn().forEach(missing::add);
        node.set("setUp", differing(club.setUp()));
        node.set("today", all(club.today()));
        node.set("planned", all(club.planned()));
        node.set("sessions", all(club.sessions()));
        return node;
    }

    private static ArrayNode differing(List<ComparedField> fields) {
        return all(fields.stream().filter(ComparedField::differs).toList());
    }

    private static ArrayNode all(List<ComparedField> fields) {
        ArrayNode array = NODES.arrayNode();
        for (ComparedField field : fields) {
            ObjectNode node = array.addObject();
            node.put("what", field.what());
            node.put("unit", field.unit());
            node.put("differs", field.differs());
            ArrayNode values = node.putArray("values");
            field.values().forEach(value -> add(values, value));
        }
        return array;
    }

    private static void add(ArrayNode values, String value) {
        OptionalDouble number = ComparedField.number(value);
        if (number.isPresent()) {
            values.add(number.getAsDouble());
        } else if (value.isEmpty()) {
            values.addNull();
        } else {
            values.add(value);
        }
    }
}
