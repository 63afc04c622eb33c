package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.book.CellChange;
import org.bagwright.planning.Planning;

/** What was taken from the sheet Plan of an earlier run and written into the input sheets. */
public record LiveText(Planning.Written written) {

    /** What is wanted differently there; nothing where nothing was changed. */
    public List<String> wishes() {
        List<String> lines = new ArrayList<>();
        if (!written.wishes().isEmpty()) {
            lines.add("Changed on the sheet Plan, so taken into this plan and written in the result:");
            written.wishes().forEach(change -> lines.add(line(change)));
        }
        return lines;
    }

    private static String line(CellChange change) {
        return "  " + change.cell() + " " + change.what() + ": " + change.before() + " -> " + change.after();
    }

    /** What taking the live choices as today's set-up has written. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (written.changes().isEmpty() && written.notWritten().isEmpty()) {
            lines.add("The live choices are already today's set-up: the sheet Clubs does not change.");
            return lines;
        }
        lines.add("The live choices are now today's set-up. Written in the result:");
        written.changes().forEach(change -> lines.add(line(change)));
        if (written.shotRows() > 0) {
            lines.add("Rows of the sheet Shots that now say with which set-up they were hit: " + written.shotRows()
                    + ".");
        }
        lines.add("Swingweights read on a scale count only if they were taken with this set-up. Take them again where a"
                + " club was set differently.");
        return lines;
    }
}
