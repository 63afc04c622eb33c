package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.ListText;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.ClubColumns;
import org.bagwright.workbook.schema.Column;

/** Reads what a row of Clubs says of its sleeve: today's setting, the one its head is stated at, those allowed. */
final class ClubSleeves {
    /**
     * What a club has, each in the sleeve's own spelling.
     *
     * @param sleeve the sleeve's name
     * @param setting today's mark
     * @param statedAt the mark at which the head is stated
     * @param allowed the marks allowed; empty is all
     */
    record Fitted(Optional<String> sleeve, Optional<String> setting, Optional<String> statedAt, List<String> allowed) {
        static final Fitted NOTHING = new Fitted(Optional.empty(), Optional.empty(), Optional.empty(), List.of());
    }

    private final SleeveReader sleeves;
    private boolean anyNamed;

    ClubSleeves(SleeveReader sleeves) {
        this.sleeves = sleeves;
    }

    boolean anyNamed() {
        return anyNamed;
    }

    Fitted fitted(InputRow row) {
        Optional<String> name = row.text(ClubColumns.SLEEVE);
        if (name.isEmpty()) {
            if (!row.isGiven(ClubColumns.SLEEVE)) {
                nothingWithoutSleeve(row);
            }
            return Fitted.NOTHING;
        }
        anyNamed = true;
        Optional<SleeveReader.KnownSleeve> sleeve = sleeves.find(name.get());
        if (sleeve.isEmpty()) {
            unknown(row, name.get());
            return Fitted.NOTHING;
        }
        return fitted(row, sleeve.get());
    }

    private void unknown(InputRow row, String name) {
        row.spoil();
        if (sleeves.namesRead()) {
            row.problem(
                    ClubColumns.SLEEVE,
                    "sleeve must be a name on the sheet Sleeves, found \"" + name + "\"."
                            + CloseNames.maybe(name, sleeves.names()));
        }
    }

    private static void nothingWithoutSleeve(InputRow row) {
        for (Column column : List.of(ClubColumns.SETTING, ClubColumns.STATED_AT, ClubColumns.ALLOWED)) {
            if (row.isGiven(column)) {
                row.problem(
                        column,
                        column.subject() + " needs a sleeve, found "
                                + row.content(column).shown()
                                + " and no Sleeve; expected a sleeve's name in this row, or nothing here.");
            }
        }
    }

    private static Fitted fitted(InputRow row, SleeveReader.KnownSleeve sleeve) {
        if (!row.isGiven(ClubColumns.SETTING)) {
            row.problem(
                    ClubColumns.SETTING,
                    "setting must be filled in for a club with a sleeve, found nothing; " + expected(sleeve));
        }
        return new Fitted(
                Optional.of(sleeve.name()),
                mark(row, ClubColumns.SETTING, sleeve),
                mark(row, ClubColumns.STATED_AT, sleeve),
                allowed(row, sleeve));
    }

    private static Optional<String> mark(InputRow row, Column column, SleeveReader.KnownSleeve sleeve) {
        Optional<String> text = row.text(column);
        Optional<String> mark = text.flatMap(sleeve.marks()::find);
        if (text.isPresent() && mark.isEmpty()) {
            notOnSleeve(row, column, sleeve, text.get());
        }
        return mark;
    }

    private static void notOnSleeve(InputRow row, Column column, SleeveReader.KnownSleeve sleeve, String found) {
        row.spoil();
        if (sleeve.allMarksRead()) {
            row.problem(
                    column,
                    column.subject() + " must be a mark of the sleeve \"" + sleeve.name() + "\", found \"" + found
                            + "\"; " + expected(sleeve)
                            + CloseNames.maybe(found, sleeve.marks().names()));
        }
    }

    private static String expected(SleeveReader.KnownSleeve sleeve) {
        return "expected " + ListText.quotedOneOf(sleeve.marks().names()) + ".";
    }

    private static List<String> allowed(InputRow row, SleeveReader.KnownSleeve sleeve) {
        List<String> allowed = new ArrayList<>();
        for (String piece : pieces(row.text(ClubColumns.ALLOWED).orElse(""), sleeve)) {
            Optional<String> mark = sleeve.marks().find(piece);
            if (mark.isEmpty()) {
                notOnSleeve(row, ClubColumns.ALLOWED, sleeve, piece);
            } else if (!allowed.contains(mark.get())) {
                allowed.add(mark.get());
            }
        }
        return allowed;
    }

    /** The list cut at commas and semicolons, and at spaces where what stands between them is no mark. */
    private static List<String> pieces(String list, SleeveReader.KnownSleeve sleeve) {
        return Arrays.stream(list.split("[,;]"))
                .map(String::strip)
                .flatMap(piece -> sleeve.marks().find(piece).isPresent()
                        ? java.util.stream.Stream.of(piece)
                        : Arrays.stream(piece.split("\\s+")))
                .filter(Predicate.not(String::isBlank))
                .toList();
    }
}
