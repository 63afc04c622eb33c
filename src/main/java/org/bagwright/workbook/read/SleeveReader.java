package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.bagwright.domain.club.RatedChange;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.SleeveColumn;

/** Reads the sheet Sleeves. */
final class SleeveReader {
    private final InputTable table;
    private final List<Column> needed;
    private final Drafts<SleeveDraft> sleeves = Drafts.ofSheet();

    private SleeveReader(InputTable table) {
        this.table = table;
        this.needed = new ArrayList<>(List.of(SleeveColumn.SLEEVE, SleeveColumn.SETTING));
        if (!table.has(SleeveColumn.LOFT_CHANGE)) {
            needed.addAll(List.of(SleeveColumn.CLOCK, SleeveColumn.BEND));
        }
    }

    static Drafts<SleeveDraft> read(InputTable table, Findings findings) {
        SleeveReader reader = new SleeveReader(table);
        table.read(reader.needed, reader::readRow);
        reader.sleeves.all().forEach(sleeve -> sleeve.sayOddSettings(findings));
        return reader.sleeves;
    }

    private void readRow(InputRow row) {
        row.require(SleeveColumn.SLEEVE, SleeveColumn.SETTING);
        Optional<String> name = row.text(SleeveColumn.SLEEVE);
        Optional<String> mark = row.text(SleeveColumn.SETTING);
        if (name.isEmpty() || !table.has(SleeveColumn.SETTING)) {
            sleeves.names().missesOne();
        }
        Optional<SleeveDraft> sleeve = name.map(text -> sleeves.named(
                text, row.cell(SleeveColumn.SLEEVE), made -> new SleeveDraft(made, row.cell(SleeveColumn.SLEEVE))));
        sleeve.ifPresent(known -> known.take(row, mark));
        Optional<SleeveSetting> setting = setting(row, mark);
        sleeve.ifPresent(known -> setting.ifPresentOrElse(
                each -> known.add(each, row.cell(SleeveColumn.CLOCK), row.cell(SleeveColumn.BEND)), known::spoil));
    }

    /** What a setting does; empty when something is wrong in its row, or a needed column is missing. */
    private Optional<SleeveSetting> setting(InputRow row, Optional<String> mark) {
        if (!needed.stream().allMatch(table::has)) {
            return Optional.empty();
        }
        List<Ring> rings = rings(row);
        Optional<RatedChange> rated = rated(row);
        boolean turns = row.yesNo(SleeveColumn.TURNS_SHAFT).orElse(true);
        requireEither(row);
        return row.isSpoilt()
                ? Optional.empty()
                : Optional.of(new SleeveSetting(mark.orElseThrow(), rings, turns, rated));
    }

    private static List<Ring> rings(InputRow row) {
        Optional<Ring> first = ring(row, SleeveColumn.CLOCK, SleeveColumn.BEND);
        Optional<Ring> second = ring(row, SleeveColumn.CLOCK_2, SleeveColumn.BEND_2);
        if (row.isGiven(SleeveColumn.BEND_2) && !row.isGiven(SleeveColumn.BEND)) {
            row.problem(
                    SleeveColumn.BEND_2,
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
        OptionalDouble loft = row.number(SleeveColumn.LOFT_CHANGE);
        OptionalDouble lie = row.number(SleeveColumn.LIE_CHANGE);
        OptionalDouble face = row.number(SleeveColumn.FACE_CHANGE);
        requireBoth(row, SleeveColumn.LOFT_CHANGE, SleeveColumn.LIE_CHANGE);
        requireBoth(row, SleeveColumn.LIE_CHANGE, SleeveColumn.LOFT_CHANGE);
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
                        SleeveColumn.CLOCK,
                        SleeveColumn.BEND,
                        SleeveColumn.CLOCK_2,
                        SleeveColumn.BEND_2,
                        SleeveColumn.LOFT_CHANGE,
                        SleeveColumn.LIE_CHANGE,
                        SleeveColumn.FACE_CHANGE)
                .anyMatch(row::isGiven);
        if (!any) {
            row.problem(
                    SleeveColumn.SETTING,
                    "a setting must have Clock and Bend or a rated change, found neither; expected"
                            + " one of them in this row.");
        }
        requireShaft(row);
    }

    private static void requireShaft(InputRow row) {
        boolean shaft = Stream.of(
                        SleeveColumn.CLOCK, SleeveColumn.BEND, SleeveColumn.LOFT_CHANGE, SleeveColumn.LIE_CHANGE)
                .anyMatch(row::isGiven);
        if (row.isGiven(SleeveColumn.FACE_CHANGE) && !shaft) {
            row.problem(
                    SleeveColumn.FACE_CHANGE,
                    "a face change alone does not say where the shaft points; expected Clock and Bend,"
                            + " or Loft change and Lie change, in this row as well.");
        }
    }
}
