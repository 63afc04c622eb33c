package org.bagwright.sessions;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bagwright.domain.session.PlainTable;
import org.bagwright.domain.text.ListText;

/** The row of a file that holds the headings, and what each of them means. */
final class Headings {
    private static final int MOST_ROWS_ABOVE = 100;
    private static final int LEAST_KNOWN = 1;

    private final PlainTable table;
    private final LearntHeadings learnt;
    private final int row;
    private final Map<ShotField, NamedHeading> named = new EnumMap<>(ShotField.class);
    private final List<HeadingText> others = new ArrayList<>();

    private Headings(PlainTable table, LearntHeadings learnt, int row) {
        this.table = table;
        this.learnt = learnt;
        this.row = row;
    }

    /** How many fields the best row of headings names. */
    static long known(PlainTable table, LearntHeadings learnt) {
        return known(table, learnt, bestRow(table, learnt));
    }

    private static long known(PlainTable table, LearntHeadings learnt, int row) {
        if (row >= table.rows().size()) {
            return 0;
        }
        PlainTable.Row cells = table.rows().get(row);
        return IntStream.range(0, cells.cells().size())
                .mapToObj(index -> NamedHeading.of(index, new HeadingText(cells.cell(index)), learnt))
                .flatMap(Optional::stream)
                .map(NamedHeading::field)
                .distinct()
                .count();
    }

    private static int bestRow(PlainTable table, LearntHeadings learnt) {
        int best = 0;
        long most = -1;
        for (int row = 0; row < Math.min(MOST_ROWS_ABOVE, table.rows().size()); row++) {
            long count = known(table, learnt, row);
            if (count > most) {
                most = count;
                best = row;
            }
        }
        return best;
    }

    /**
     * The headings of a table.
     *
     * @throws SessionFileException if it has none of a table of shots, or two that mean the same
     */
    static Headings of(PlainTable table, LearntHeadings learnt) throws SessionFileException {
        int row = bestRow(table, learnt);
        if (known(table, learnt, row) < LEAST_KNOWN) {
            throw new SessionFileException(
                    table.name(),
                    "no row with headings of shots was found; expected at least Club and one of " + measured()
                            + ". Other headings can be given with --column \"HEADING=COLUMN\".");
        }
        Headings headings = new Headings(table, learnt, row);
        headings.read();
        headings.requireNeeded();
        return headings;
    }

    private static String measured() {
        return ListText.oneOf(ShotField.MEASURED.stream().map(ShotField::column).toList());
    }

    private void read() throws SessionFileException {
        for (int index = 0; index < cells().cells().size(); index++) {
            HeadingText heading = new HeadingText(cells().cell(index));
            if (heading.text().isEmpty()) {
                continue;
            }
            Optional<NamedHeading> found = NamedHeading.of(index, heading, learnt);
            if (found.isEmpty()) {
                others.add(heading);
            } else {
                checkUnit(found.get());
                take(found.get());
            }
        }
    }

    private void take(NamedHeading found) throws SessionFileException {
        NamedHeading first = named.get(found.field());
        if (first == null || found.rank() < first.rank()) {
            named.put(found.field(), found);
            if (first != null) {
                others.add(first.heading());
            }
        } else if (found.rank() > first.rank()) {
            others.add(found.heading());
        } else {
            String name = found.heading().text();
            throw wrong("two headings mean " + found.field().column() + ": \""
                    + first.heading().text() + "\" and \"" + name + "\"; say which one is left out with --column \""
                    + name
                    + "=none\".");
        }
    }

    private void checkUnit(NamedHeading found) throws SessionFileException {
        for (String text : found.heading().inBrackets()) {
            if (!found.isGiven()
                    && found.field().isNumber()
                    && FileUnit.called(text, found.field().units()).isEmpty()) {
                throw wrong("the unit of \"" + found.heading().text() + "\" must be one of "
                        + found.field().unitLabels()
                        + ", found \"" + text + "\"; say what it is with --column \""
                        + found.heading().text() + "=" + found.field().column() + " (UNIT)\", or leave it out with"
                        + " \"=none\".");
            }
        }
    }

    private void requireNeeded() throws SessionFileException {
        if (!named.containsKey(ShotField.CLUB)) {
            throw wrong(
                    "no heading means Club; found " + all() + ". Say which one does with --column \"HEADING=Club\".");
        }
        if (ShotField.MEASURED.stream().noneMatch(named::containsKey)) {
            throw wrong("no heading means " + measured() + "; found " + all()
                    + ". Say which one does with --column \"HEADING=Carry\" or the like.");
        }
    }

    private String all() {
        return cells().cells().stream()
                .filter(text -> !text.isBlank())
                .map(text -> "\"" + text.strip() + "\"")
                .collect(Collectors.joining(", "));
    }

    /** Something wrong with the headings. */
    SessionFileException wrong(String text) {
        return new SessionFileException(table.name() + " line " + cells().line(), text);
    }

    PlainTable.Row cells() {
        return table.rows().get(row);
    }

    Map<ShotField, NamedHeading> named() {
        return named;
    }

    boolean has(ShotField field) {
        return named.containsKey(field);
    }

    /** The headings that are not used, each with a guess where there is one. */
    List<String> notUsed() {
        return others.stream()
                .map(heading -> "\"" + heading.text() + "\""
                        + ShotField.closest(heading.text())
                                .filter(field -> !named.containsKey(field))
                                .map(field -> " (Maybe " + field.column() + "?)")
                                .orElse(""))
                .toList();
    }

    List<PlainTable.Row> above() {
        return table.rows().subList(0, row);
    }

    List<PlainTable.Row> below() {
        return table.rows().subList(row + 1, table.rows().size());
    }

    /** How many columns have a heading, up to the last one. */
    int width() {
        int last = cells().cells().size();
        while (last > 0 && cells().cell(last - 1).isEmpty()) {
            last--;
        }
        return last;
    }
}
