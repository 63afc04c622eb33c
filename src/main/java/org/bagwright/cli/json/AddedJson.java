package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.session.AddedShots;
import org.bagwright.domain.session.SessionShots;

/**
 * What came of adding files of shots, as a machine-readable document.
 *
 * @param result what was found and added
 * @param written the file that was written; empty where none was
 */
public record AddedJson(AddedShots result, Optional<String> written) {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    public ObjectNode document() {
        ObjectNode document = NODES.objectNode();
        document.set("units", new UnitsJson(result.units()).node());
        ArrayNode files = document.putArray("files");
        result.files().forEach(file -> files.add(file(file)));
        document.set("clubs", clubs());
        document.put("added", result.added().size());
        document.put("already", result.already().size());
        document.put("learnt", result.learnt().orElse(null));
        document.put("written", written.orElse(null));
        document.set("messages", new MessagesJson(result.messages()).array());
        return document;
    }

    private static ObjectNode file(SessionShots file) {
        ObjectNode node = NODES.objectNode();
        node.put("file", file.file());
        ArrayNode headings = node.putArray("headings");
        file.headings().forEach(used -> {
            ObjectNode heading = headings.addObject();
            heading.put("heading", used.heading());
            heading.put("column", used.column());
            heading.put("unit", used.unit().orElse(null));
            heading.put("unitFrom", used.unitFrom().isEmpty() ? null : used.unitFrom());
        });
        ArrayNode notUsed = node.putArray("notUsed");
        file.notUsed().forEach(notUsed::add);
        node.put("shots", file.shots().size());
        node.set("leftOut", new MessagesJson(file.left()).array());
        return node;
    }

    private ArrayNode clubs() {
        Map<List<String>, Integer> counts = new LinkedHashMap<>();
        for (Shot shot : result.added()) {
            counts.merge(List.of(shot.golfer(), shot.club()), 1, Integer::sum);
        }
        ArrayNode clubs = NODES.arrayNode();
        counts.forEach((names, count) -> {
            ObjectNode club = clubs.addObject();
            club.put("golfer", names.get(0));
            club.put("club", names.get(1));
            club.put("added", count);
        });
        return clubs;
    }
}
