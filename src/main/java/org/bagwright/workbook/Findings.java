package org.bagwright.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bagwright.domain.Message;

/** Everything found while a book is read, problems first; of several problems in one cell the first is kept. */
final class Findings {
    private final Map<String, Message> problems = new LinkedHashMap<>();
    private final List<Message> others = new ArrayList<>();

    void problem(String cell, String text) {
        problems.putIfAbsent(cell, Message.problem(cell, text));
    }

    void warning(String cell, String text) {
        warning(Message.warning(cell, text));
    }

    void warning(Message warning) {
        others.add(warning);
    }

    void missing(String cell, String text) {
        others.add(new Message(cell, Message.Severity.MISSING, text));
    }

    void assumed(String cell, String text) {
        others.add(Message.assumed(cell, text));
    }

    boolean anyProblem() {
        return !problems.isEmpty();
    }

    List<Message> messages() {
        List<Message> all = new ArrayList<>(problems.values());
        all.addAll(others);
        return all;
    }
}
