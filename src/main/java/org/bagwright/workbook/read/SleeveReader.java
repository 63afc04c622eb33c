package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.bagwright.domain.club.RatedChange;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.SleeveColumns;

/** Reads the sheet Sleeves. */
final class SleeveReader {
    /** A sleeve as far as it is known: its marks also from rows with something wrong in them. */
    static final class KnownSleeve {
        private final String name;
        private final NameIndex marks = new NameIndex();
        private final List<SleeveSetting> settings = new ArrayList<>();
        private boolean sound = true;
        private boolean allMarksRead = true;

        private KnownSleeve(String name) {
            this.name = name;
        }

        String name() {
            return name;
        }

        NameIndex marks() {
            return marks;
        }

        /** Whether no mark of it was unreadable, so that a mark not found is really not there. */
        boolean allMarksRead() {
            return allMarksRead;
        }
    }

    private final Map<String, KnownSleeve> byKey = new LinkedHashMap<>();
    private boolean namesRead = true;
    private boolean ringsRead = true;
    private boolean missing;

    static SleeveReader read(InputTable table) {
        SleeveReader reader = new SleeveReader();
        List<Column> needed = new ArrayList<>(List.of(SleeveColumns.SLEEVE, SleeveColumns.SETTING));
        if (!table.has(SleeveColumns.LOFT_CHANGE)) {
            needed.addAll(List.of(SleeveColumns.CLOCK, SleeveColumns.BEND));
        }
        List<InputRow> rows = table.rows();
        if (!rows.isEmpty() && !table.requireColumns(needed)) {
            reader.namesRead = table.has(SleeveColumns.SLEEVE) && table.has(SleeveColumns.SETTING);
            reader.ringsRead = false;
        }
        rows.forEach(reader::readRow);
        table.warnOfCloseHeadings(needed);
        return reader;
    }

    /** No sheet at all: nothing is known of any sleeve. */
    static SleeveReader none() {
        SleeveReader reader = new SleeveReader();
        reader.missing = true;
        reader.namesRead = false;
        return reader;
    }

    boolean isMissing() {
        return missing;
    }

    /** Whether every sleeve's name and marks could be read, so that a name not found is really not there. */
    boolean namesRead() {
        return namesRead;
    }

    Optional<KnownSleeve> find(String name) {
        return Optional.ofNullable(byKey.get(CloseNames.key(name)));
    }

    List<String> names() {
        return byKey.values().stream().map(KnownSleeve::name).toList();
    }

    List<Sleeve> sleeves() {
        return byKey.values().stream()
                .filter(known -> known.sound)
                .map(known -> new Sleeve(known.name, known.settings))
                .toList();
    }

    private void readRow(InputRow row) {
        row.require(SleeveColumns.SLEEVE, SleeveColumns.SETTING);
        Optional<String> name = row.text(SleeveColumns.SLEEVE);
        Optional<String> mark = row.text(SleeveColumns.SETTING);
        namesRead &= name.isPresent();
        Optional<KnownSleeve> sleeve =
                name.map(text -> byKey.computeIfAbsent(CloseNames.key(text), key -> new KnownSleeve(text)));
        sleeve.ifPresent(known -> addMark(row, known, mark));
        if (!ringsRead) {
            row.spoil();
            sleeve.ifPresent(known -> known.sound = false);
            return;
        }
        List<Ring> rings = rings(row);
        Optional<RatedChange> rated = rated(row);
        boolean turns = row.yesNo(SleeveColumns.TURNS_SHAFT).orElse(true);
        requireEither(row);
        if (row.isSpoilt()) {
            sleeve.ifPresent(known -> known.sound = false);
        } else {
            sleeve.orElseThrow().settings.add(new SleeveSetting(mark.orElseThrow(), rings, turns, rated));
        }
    }

    private static void addMark(InputRow row, KnownSleeve known, Optional<String> mark) {
        if (mark.isEmpty()) {
            known.allMarksRead = false;
            return;
        }
        known.marks
                .add(mark.get(), row.cell(SleeveColumns.SETTING))
                .ifPresent(first -> row.problem(
                        SleeveColumns.SETTING,
                        "setting must be unique within a sleeve, found \"" + mark.get() + "\" of \"" + known.name
                                + "\" again, first in " + first + "."));
    }

    private static List<Ring> rings(InputRow row) {
        Optional<Ring> first = ring(row, SleeveColumns.CLOCK, SleeveColumns.BEND);
        Optional<Ring> second = ring(row, SleeveColumns.CLOCK_2, SleeveColumns.BEND_2);
        if (row.isGiven(SleeveColumns.BEND_2) && !row.isGiven(SleeveColumns.BEND)) {
            row.problem(
                    SleeveColumns.BEND_2,
                    "bend 2 needs a first ring, found no Bend in this row; expected Clock and Bend as well.");
        }
        return Stream.of(first, second).flatMap(Optional::stream).toList();
    }

    private static Optional<Ring> ring(InputRow row, Column clock, Column bend) {
        OptionalDouble hour = row.clock(clock);
        OptionalDouble bendDeg = row.number(bend);
        if (row.isGiven(clock) && !row.isGiven(bend)) {
            row.problem(
                    bend,
                    bend.subject() + " must be filled in where " + clock.header() + " is, found nothing;"
                            + " expected degrees, 0 for no bend.");
        }
        if (bendDeg.orElse(0) > 0 && !row.isGiven(clock)) {
            row.problem(
                    clock,
                    clock.subject() + " must be filled in where " + bend.header()
                            + " is not 0, found nothing; expected an hour such as 1.5 or 1:30.");
        }
        if (bendDeg.isEmpty() || (row.isGiven(clock) && hour.isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(new Ring(hour.orElse(Ring.STRAIGHT.clockH()), bendDeg.getAsDouble()));
    }

    private static Optional<RatedChange> rated(InputRow row) {
        OptionalDouble loft = row.number(SleeveColumns.LOFT_CHANGE);
        OptionalDouble lie = row.number(SleeveColumns.LIE_CHANGE);
        OptionalDouble face = row.number(SleeveColumns.FACE_CHANGE);
        requireBoth(row, SleeveColumns.LOFT_CHANGE, SleeveColumns.LIE_CHANGE);
        requireBoth(row, SleeveColumns.LIE_CHANGE, SleeveColumns.LOFT_CHANGE);
        boolean nothing = loft.isEmpty() && lie.isEmpty() && face.isEmpty();
        return nothing || row.isSpoilt() ? Optional.empty() : Optional.of(new RatedChange(loft, lie, face));
    }

    /** Half a table would read as no change at all. */
    private static void requireBoth(InputRow row, Column given, Column other) {
        if (row.isGiven(given) && !row.isGiven(other)) {
            row.problem(
                    other,
                    other.subject() + " must be filled in where " + given.header()
                            + " is, found nothing; expected degrees, 0 for no change.");
        }
    }

    private static void requireEither(InputRow row) {
        boolean any = Stream.of(
                        SleeveColumns.CLOCK,
                        SleeveColumns.BEND,
                        SleeveColumns.CLOCK_2,
                        SleeveColumns.BEND_2,
                        SleeveColumns.LOFT_CHANGE,
                        SleeveColumns.LIE_CHANGE,
                        SleeveColumns.FACE_CHANGE)
                .anyMatch(row::isGiven);
        if (!any) {
            row.problem(
                    SleeveColumns.SETTING,
                    "a setting must have Clock and Bend or a rated change, found neither; expected"
                            + " one of them in this row.");
        }
        boolean shaft = Stream.of(SleeveColumns.CLOCK, SleeveColumns.BEND, SleeveColumns.LOFT_CHANGE)
                .anyMatch(row::isGiven);
        if (row.isGiven(SleeveColumns.FACE_CHANGE) && !shaft && !row.isGiven(SleeveColumns.LIE_CHANGE)) {
            row.problem(
                    SleeveColumns.FACE_CHANGE,
                    "a face change alone does not say where the shaft points; expected Clock and Bend,"
                            + " or Loft change and Lie change, in this row as well.");
        }
    }
}
