package org.bagwright.workbook.read;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.club.ClubParts;
import org.bagwright.domain.units.Swingweight;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.ClubColumns;
import org.bagwright.workbook.schema.Column;

/** Reads what a row of Clubs says of its balance beside its head. */
final class ClubPartsReader {
    private ClubPartsReader() {}

    /** The parts of a club with this sleeve and this kit, and of this length, m, where the row states one. */
    static ClubParts parts(InputRow row, OptionalDouble lengthM, Optional<String> sleeve, Optional<String> kit) {
        OptionalDouble balanceM = row.number(ClubColumns.SHAFT_BALANCE);
        if (lengthM.isPresent() && balanceM.orElse(0) >= lengthM.getAsDouble()) {
            row.problem(
                    ClubColumns.SHAFT_BALANCE,
                    "shaft balance must be less than the club's length, found "
                            + row.content(ClubColumns.SHAFT_BALANCE).shown()
                            + "; expected the balance point of the cut shaft from its butt end.");
        }
        return new ClubParts(
                lengthM,
                sleeve,
                kit,
                row.number(ClubColumns.SHAFT_MASS),
                balanceM,
                row.number(ClubColumns.GRIP_MASS),
                swingweight(row, ClubColumns.SWINGWEIGHT));
    }

    static Optional<Swingweight> swingweight(InputRow row, Column column) {
        Optional<String> text = row.text(column);
        Optional<Swingweight> swingweight = text.flatMap(Swingweight::parsed);
        if (text.isPresent() && swingweight.isEmpty()) {
            row.problem(
                    column,
                    column.subject() + " must be a letter A to G and points 0 to 9.9, such as D2 or C9.5, found "
                            + row.content(column).shown() + ".");
        }
        return swingweight;
    }
}
