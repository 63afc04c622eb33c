package org.bagwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bagwright.domain.Message;

/** Messages as a terminal shows them. */
final class MessageText {
    private MessageText() {}

    /** Every problem with its cell, then what else was noticed. */
    static List<String> problems(List<Message> messages) {
        List<String> lines = new ArrayList<>();
        messages.stream()
                .filter(message -> message.severity() == Message.Severity.PROBLEM)
                .forEach(message -> lines.add(line(message)));
        int count = lines.size();
        lines.addAll(notes(messages));
        lines.add(count == 0 ? "No problems found." : count + (count == 1 ? " problem" : " problems") + " to mend.");
        return lines;
    }

    /** What was noticed besides problems. */
    static List<String> notes(List<Message> messages) {
        return messages.stream()
                .filter(message -> message.severity() != Message.Severity.PROBLEM)
                .map(message -> line(message) + " [" + message.severity().name().toLowerCase(Locale.ROOT) + "]")
                .toList();
    }

    private static String line(Message message) {
        return message.cell() + ": " + message.text();
    }
}
