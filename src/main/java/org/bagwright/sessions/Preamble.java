package org.bagwright.sessions;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bagwright.domain.session.PlainTable;

/** What the lines above the headings of a file say about all of its shots: {@code Player: A}, or two cells. */
final class Preamble {
    private static final Pattern LABELLED = Pattern.compile("([^:]{1,30}):\\s*(\\S.*)");

    private final Map<ShotField, String> values = new HashMap<>();

    Preamble(List<PlainTable.Row> rows) {
        for (PlainTable.Row row : rows) {
            for (int index = 0; index < row.cells().size(); index++) {
                Matcher labelled = LABELLED.matcher(row.cell(index));
                String label =
                        labelled.matches() ? labelled.group(1) : row.cell(index).replaceAll(":$", "");
                String value = labelled.matches() ? labelled.group(2) : row.cell(index + 1);
                take(ShotField.GOLFER, label, value);
                take(ShotField.DATE, label, value);
            }
        }
    }

    private void take(ShotField field, String label, String value) {
        if (!value.isEmpty() && field.rank(new HeadingText(label).words()).isPresent()) {
            values.putIfAbsent(field, value.strip());
        }
    }

    /** Who hit the shots, empty where they do not say it. */
    String golfer() {
        return values.getOrDefault(ShotField.GOLFER, "");
    }

    /** The day, empty where they do not say it. */
    String day() {
        return values.getOrDefault(ShotField.DATE, "");
    }
}
