package org.bagwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.bagwright.domain.Message;

/** Messages as a terminal shows them. */
final class MessageText {
    private MessageText() {}

    /** Every problem with its cell, then what else was noticed. */
    static List<String> problems(List<Message> messages) {
        return problems(messages, Ink.NONE);
    }

    static List<String> problems(List<Message> messages, Ink ink) {
        List<String> lines = new ArrayList<>();
        List<Message> toMend = toMend(messages);
        toMend.forEach(message -> lines.add(ink.bold(message.cell()) + ": " + message.text()));
        int count = lines.size();
        Set<Message> told = Set.copyOf(toMend);
        lines.addAll(notes(
                messages.stream().filter(message -> !told.contains(message)).toList()));
        lines.add(
                count == 0
                        ? "No problems found."
                        : ink.red(count + (count == 1 ? " problem" : " problems") + " to fix."));
        return lines;
    }

    /** The problems; and beside them what is missing, since a person who mends the book will want to know. */
    static List<Message> toMend(List<Message> messages) {
        boolean wrong = messages.stream().anyMatch(message -> message.severity() == Message.Severity.PROBLEM);
        return messages.stream()
                .filter(message -> wrong)
                .filter(message -> message.severity() == Message.Severity.PROBLEM
                        || message.severity() == Message.Severity.MISSING)
                .toList();
    }

    /** What was noticed besides problems. */
    static List<String> notes(List<Message> messages) {
        return messages.stream()
                .filter(message -> message.severity() != Message.Severity.PROBLEM)
                .map(MessageText::noteLine)
                .toList();
    }

    /** As {@link #notes}, with the assumed values only counted. */
    static List<String> briefNotes(List<Message> messages) {
        List<String> lines = new ArrayList<>();
        messages.stream()
                .filter(message ->
                        message.severity() == Message.Severity.WARNING || message.severity() == Message.Severity.CHECK)
                .forEach(message -> lines.add(noteLine(message)));
        long assumed = messages.stream()
                .filter(message -> message.severity() == Message.Severity.ASSUMED
                        || message.severity() == Message.Severity.MISSING)
                .count();
        long bench = messages.stream()
                .filter(message -> message.severity() == Message.Severity.NOTE)
                .count();
        if (bench > 0) {
            lines.add(bench + (bench == 1 ? " note" : " notes") + " for the bench: see the sheet Messages.");
        }
        if (assumed > 0) {
            lines.add(assumed + (assumed == 1 ? " note says" : " notes say")
                    + " what was assumed: run bagwright check, or see the sheet Messages of a result.");
        }
        return lines;
    }

    private static String noteLine(Message message) {
        return line(message) + " [" + message.severity().name().toLowerCase(Locale.ROOT) + "]";
    }

    private static String line(Message message) {
        return message.cell() + ": " + message.text();
    }
}
