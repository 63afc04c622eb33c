package org.bagwright.workbook.read;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;

/** Reads what a row of Clubs gives about its sleeve: today's setting, the one its head is stated at, those allowed. */
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

    private final Drafts<SleeveDraft> sleeves;
    private boolean anyNamed;

    ClubSleeves(Drafts<SleeveDraft> sleeves) {
        this.sleeves = sleeves;
    }

    boolean anyNamed() {
        return anyNamed;
    }

    Fitted fitted(InputRow row) {
        Optional<String> name = row.text(ClubColumn.SLEEVE);
        if (name.isEmpty()) {
            if (!row.isGiven(ClubColumn.SLEEVE)) {
                nothingWithoutSleeve(row);
            }
            return Fitted.NOTHING;
        }
        anyNamed = true;
        return sleeves.names()
                .find(row, ClubColumn.SLEEVE, name.get(), "a name on the sheet Sleeves")
                .flatMap(sleeves::find)
                .map(sleeve -> fitted(row, sleeve))
                .orElse(Fitted.NOTHING);
    }

    private static void nothingWithoutSleeve(InputRow row) {
        for (Column column : List.of(ClubColumn.SETTING, ClubColumn.STATED_AT, ClubColumn.ALLOWED)) {
            if (row.isGiven(column)) {
                row.problem(
                        column,
                        column.subject() + " needs a sleeve, found "
                                + row.content(column).shown()
                                + " and no Sleeve; expected a sleeve's name in this row, or nothing here.");
            }
        }
    }

    private static Fitted fitted(InputRow row, SleeveDraft sleeve) {
        Optional<String> setting = sleeve.neededMark(row, ClubColumn.SETTING);
        Optional<String> statedAt =
                row.text(ClubColumn.STATED_AT).flatMap(text -> sleeve.mark(row, ClubColumn.STATED_AT, text));
        List<String> allowed = pieces(row.text(ClubColumn.ALLOWED).orElse(""), sleeve)
                .flatMap(piece -> sleeve.mark(row, ClubColumn.ALLOWED, piece).stream())
                .distinct()
                .toList();
        return new Fitted(Optional.of(sleeve.name()), setting, statedAt, allowed);
    }

    /** The list cut at commas and semicolons, and at spaces where a piece with spaces is no mark; ranges as their marks. */
    private static Stream<String> pieces(String list, SleeveDraft sleeve) {
        return Arrays.stream(list.split("[,;]"))
                .map(String::strip)
                .flatMap(piece -> sleeve.hasMark(piece) || sleeve.isRange(piece)
                        ? Stream.of(piece)
                        : Arrays.stream(piece.split("\\s+")))
                .filter(Predicate.not(String::isBlank))
                .flatMap(piece -> sleeve.marksOf(piece).stream());
    }
}
