package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.bagwright.domain.book.Message;

/** Messages as a terminal shows them. */
public record MessageText(List<Message> messages) {
    private static final int MOST_DECISIVE = 3;
    private static final int MOST_LINES = 2;

    /** Every problem with its cell, then what else was noticed. */
    public List<String> problems() {
        return problems(AnsiStyle.NONE);
    }

    public List<String> problems(AnsiStyle style) {
        List<String> lines = new ArrayList<>();
        List<Message> toFix = toFix();
        toFix.forEach(message -> lines.add(style.bold(message.cell()) + ": " + message.text()));
        int count = lines.size();
        Set<Message> listed = Set.copyOf(toFix);
        messages.stream()
                .filter(message -> !listed.contains(message))
                .filter(MessageText::isNote)
                .map(MessageText::noteLine)
                .forEach(lines::add);
        lines.add(
                count == 0
                        ? "No problems found."
                        : style.red(count + (count == 1 ? " problem" : " problems") + " to fix."));
        return lines;
    }

    /** The problems and, where there are any, what is missing: a person who fixes the book needs both. */
    public List<Message> toFix() {
        boolean wrong = messages.stream().anyMatch(message -> message.severity() == Message.Severity.PROBLEM);
        return messages.stream()
                .filter(message -> wrong)
                .filter(message -> message.severity() == Message.Severity.PROBLEM
                        || message.severity() == Message.Severity.MISSING)
                .toList();
    }

    /** Everything that is not a problem. */
    public List<String> notes() {
        return messages.stream()
                .filter(MessageText::isNote)
                .map(MessageText::noteLine)
                .toList();
    }

    private static boolean isNote(Message message) {
        return message.severity() != Message.Severity.PROBLEM;
    }

    /**
     * The first few messages that may decide something, cut where they are long, and how many more there are.
     *
     * @param where where all of them are
     */
    public List<String> decisive(String where) {
        List<Message> deciding = messages.stream()
                .filter(message ->
                        message.severity() == Message.Severity.WARNING || message.severity() == Message.Severity.CHECK)
                .limit(MOST_DECISIVE)
                .toList();
        List<String> lines = new ArrayList<>();
        deciding.forEach(message -> lines.addAll(new WrappedText(noteLine(message), 2).lines(MOST_LINES)));
        int more = messages.size() - deciding.size();
        if (more > 0) {
            lines.add(more + (more == 1 ? " more message: " : " more messages: ") + where);
        }
        return lines;
    }

    /** As {@link #notes}, with the assumed values only counted. */
    public List<String> briefNotes() {
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
        return message.where() + ": " + message.text();
    }
}
