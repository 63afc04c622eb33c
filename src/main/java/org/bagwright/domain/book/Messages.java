package org.bagwright.domain.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Stream;

/**
 * All messages of a run.
 *
 * @param all the messages, in the order in which they were found
 */
public record Messages(List<Message> all) {
    public Messages {
        all = List.copyOf(all);
    }

    /**
     * One message for each cause, with every cell it holds for: first what decides, then what is assumed, then hints. Of
     * one severity, what was found first comes first. Problems keep a line for each cell, since each must be fixed there.
     */
    public List<Message> inOrder() {
        List<Message> merged = new ArrayList<>();
        all.forEach(message -> add(merged, message));
        merged.sort(Comparator.comparing(Message::severity));
        return merged;
    }

    private static void add(List<Message> merged, Message message) {
        for (int index = 0; index < merged.size(); index++) {
            if (shareCause(merged.get(index), message)) {
                merged.set(index, joined(merged.get(index), message));
                return;
            }
        }
        merged.add(message);
    }

    private static boolean shareCause(Message one, Message other) {
        return one.equals(other)
                || (one.severity() != Message.Severity.PROBLEM
                        && one.severity() == other.severity()
                        && one.heading().equals(other.heading())
                        && one.wording().sharesCauseWith(other.wording()));
    }

    private static Message joined(Message one, Message other) {
        List<String> cells = List.copyOf(new LinkedHashSet<>(
                Stream.concat(one.cells().stream(), other.cells().stream()).toList()));
        return new Message(cells, one.severity(), one.wording().with(other.wording()), one.heading());
    }
}
