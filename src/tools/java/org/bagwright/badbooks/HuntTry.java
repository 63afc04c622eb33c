package org.bagwright.badbooks;

import java.util.Locale;
import org.bagwright.domain.book.Message;

/**
 * One number changed, and what became of the plan.
 *
 * @param sheet the sheet of the cell
 * @param column the heading of the cell
 * @param where the cell and its change
 * @param change how it was changed
 * @param before the plan of the book as it was
 * @param after the plan with the change
 * @param row the row of the cell, counted from 1
 */
record HuntTry(String sheet, String column, String where, HuntChange change, HuntPlan before, HuntPlan after, int row) {
    /** What a fitter would see on the course: our own figure. */
    static final double LARGE_YD = 5;

    /** Ten misses of one tolerance each, such as ten gaps 3 yd off: our own figure. */
    static final double LARGE_POINTS = 10;

    private static final double YARD_M = 0.9144;

    /** How a change was told. */
    enum Told {
        REFUSED,
        AT_ITS_ROW,
        ELSEWHERE,
        NOT
    }

    double carryYd() {
        return after.carryMovedM(before) / YARD_M;
    }

    double points() {
        return after.isRefused() ? 0 : after.points() - before.points();
    }

    boolean isLarge() {
        return carryYd() > LARGE_YD || Math.abs(points()) > LARGE_POINTS;
    }

    Told told() {
        if (after.isRefused()) {
            return Told.REFUSED;
        }
        if (after.told(before, sheet, row).isPresent()) {
            return Told.AT_ITS_ROW;
        }
        return after.toldElsewhere(before).isPresent() ? Told.ELSEWHERE : Told.NOT;
    }

    /** A large change that nothing tells. */
    boolean isSilent() {
        return isLarge() && told() == Told.NOT;
    }

    String line() {
        String words = after.told(before, sheet, row)
                .or(() -> after.toldElsewhere(before))
                .map(Message::text)
                .orElse("");
        return String.format(
                Locale.ROOT,
                "%s %s %s: carry %.1f yd, %+.1f points, %d choices, %s %s",
                isSilent() ? "SILENT" : isLarge() ? "large " : "small ",
                where,
                column,
                carryYd(),
                points(),
                after.moved(before),
                told(),
                words);
    }
}
