package org.bagwright.workbook.cells;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bagwright.domain.book.Message;

/** Everything found while a book is read, problems first; of several problems in one cell the first is kept. */
public final class Findings {
    /** More than anybody reads: a column of another kind under a heading that is known, over a whole sheet. */
    private static final int MOST_PROBLEMS = 10_000;

    private boolean more;
    private final Map<String, Message> problems = new LinkedHashMap<>();
    private final List<Message> others = new ArrayList<>();

    public void problem(String cell, String text) {
        if (problems.size() < MOST_PROBLEMS) {
            problems.putIfAbsent(cell, Message.problem(cell, text));
        } else {
            more = true;
        }
    }

    public void warning(String cell, String text) {
        add(Message.warning(cell, text));
    }

    /** A message that is no problem. */
    public void add(Message other) {
        others.add(other);
    }

    public void missing(String cell, String text) {
        others.add(new Message(cell, Message.Severity.MISSING, text));
    }

    public void assumed(String cell, String text) {
        others.add(Message.assumed(cell, text));
    }

    public boolean anyProblem() {
        return !problems.isEmpty();
    }

    public List<Message> messages() {
        List<Message> all = new ArrayList<>(problems.values());
        if (more) {
            all.add(Message.problem(
                    "The book",
                    "there are more problems than these " + MOST_PROBLEMS + "; fix them, then check again."));
        }
        all.addAll(others);
        return all;
    }
}
