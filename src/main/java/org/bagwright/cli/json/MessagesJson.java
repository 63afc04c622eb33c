package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import org.bagwright.cli.text.MessageText;
import org.bagwright.domain.book.Message;

/** Messages as a machine-readable document, or as a part of one. */
public record MessagesJson(List<Message> messages) {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** The document of the command check: what must be fixed, and what else there is to know. */
    public ObjectNode document() {
        ObjectNode document = NODES.objectNode();
        ArrayNode problems = document.putArray("problems");
        ArrayNode notes = document.putArray("notes");
        List<Message> toFix = new MessageText(messages).toFix();
        for (Message message : messages) {
            (toFix.contains(message) ? problems : notes).add(message(message));
        }
        return document;
    }

    ArrayNode array() {
        ArrayNode array = NODES.arrayNode();
        messages.forEach(message -> array.add(message(message)));
        return array;
    }

    private static ObjectNode message(Message message) {
        ObjectNode node = NODES.objectNode();
        node.put("cell", message.cell());
        ArrayNode cells = node.putArray("cells");
        message.cells().forEach(cells::add);
        node.put("severity", message.severity().name().toLowerCase(Locale.ROOT));
        node.put("text", message.text());
        return node;
    }
}
