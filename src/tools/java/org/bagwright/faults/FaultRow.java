package org.bagwright.faults;

import java.util.ArrayList;
import java.util.List;

/** One kind of fault: how often it was tried, what came of it, what was lost. */
final class FaultRow {
    private final String fault;
    private final List<String> outcomes = new ArrayList<>();
    private final List<String> losses = new ArrayList<>();
    private String note = "";

    FaultRow(String fault) {
        this.fault = fault;
    }

    /** Counts one try. */
    void tried(String outcome, List<String> lost) {
        outcomes.add(outcome);
        if (!lost.isEmpty()) {
            losses.add(outcome + ": " + String.join("; ", lost));
        }
    }

    FaultRow note(String text) {
        note = text;
        return this;
    }

    int tries() {
        return outcomes.size();
    }

    List<String> outcomes() {
        return List.copyOf(outcomes);
    }

    /** Each try that lost something, with what. */
    List<String> losses() {
        return List.copyOf(losses);
    }

    String line() {
        List<String> counted = outcomes.stream()
                .distinct()
                .map(outcome -> outcomes.stream().filter(outcome::equals).count() + " " + outcome)
                .toList();
        String came = tries() == 0 ? note : String.join(", ", counted) + (note.isEmpty() ? "" : "; " + note);
        return "| " + fault + " | " + tries() + " | " + came + " | " + losses.size() + " |";
    }
}
