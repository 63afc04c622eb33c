package org.bagwright.workbook.read;

import java.util.Optional;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.BendRange;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;

/**
 * What a row of Clubs gives about bending.
 *
 * @param today today's bend
 * @param range the bends that may be planned
 */
record ClubBends(Bend today, BendRange range) {
    private static final int MOST_STEPS = 20;

    static ClubBends of(InputRow row, Optional<ClubKind> kind) {
        Bend today = new Bend(bendOf(row, ClubColumn.LOFT_BEND, kind), bendOf(row, ClubColumn.LIE_BEND, kind));
        double limitDeg = bendOf(row, ClubColumn.BEND_LIMIT, kind);
        double stepDeg = row.number(ClubColumn.BEND_STEP).orElse(BendRange.NONE.stepDeg());
        if (limitDeg / stepDeg > MOST_STEPS + 1e-9) {
            row.problem(
                    row.isGiven(ClubColumn.BEND_STEP) ? ClubColumn.BEND_STEP : ClubColumn.BEND_LIMIT,
                    "bend limit must be at most " + MOST_STEPS + " bend steps, found "
                            + Numbers.trimmed(limitDeg / stepDeg, 1)
                            + "; expected a larger step or a smaller limit.");
        }
        return new ClubBends(today, new BendRange(limitDeg, stepDeg));
    }

    /** A bend in degrees, 0 where the cell is blank; reports one of a club that is not bent. */
    static double bendOf(InputRow row, Column column, Optional<ClubKind> kind) {
        double bendDeg = row.number(column).orElse(0);
        if (bendDeg != 0 && kind.isPresent() && !kind.get().bendable()) {
            row.problem(
                    column,
                    column.subject() + " must be 0 or blank for a " + kind.get().label() + ", found "
                            + row.content(column).shown() + "; only irons and wedges are bent.");
            return 0;
        }
        return bendDeg;
    }
}
