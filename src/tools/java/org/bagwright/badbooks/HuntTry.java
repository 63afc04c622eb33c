package org.bagwright.badbooks;

import java.util.Locale;
import java.util.Optional;
import org.bagwright.domain.book.Message;

/**
 * One number changed, and what became of the plan.
 *
 * @param place the cell
 * @param number what is in it
 * @param change how it was changed
 * @param before the plan of the book as it was
 * @param after the plan with the change
 */
record HuntTry(HuntBook.Place place, double number, HuntChange change, HuntPlan before, HuntPlan after) {
    /** What a fitter would see on the course: our own figure. */
    static final double LARGE_YD = 5;

    /** One miss of three tolerances, such as a gap 9 yd off: our own figure. */
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

    /** Whether a fitter would set a club differently, or see it on the course. */
    boolean isLarge() {
        return !after.isRefused()
                && (after.moved(before) > 0 || carryYd() > LARGE_YD || Math.abs(points()) > LARGE_POINTS);
    }

    Told told() {
        if (after.isRefused()) {
            return Told.REFUSED;
        }
        if (message(true).isPresent()) {
            return Told.AT_ITS_ROW;
        }
        return message(false).isPresent() ? Told.ELSEWHERE : Told.NOT;
    }

    /** A large change that nothing tells. */
    boolean isSilent() {
        return isLarge() && told() == Told.NOT;
    }

    /** A blank cell counts as told where a new line says what is assumed; a number, where a warning or a check is new. */
    private Optional<Message> message(boolean atItsRow) {
        Message.Severity least = change == HuntChange.BLANK ? Message.Severity.ASSUMED : Message.Severity.WARNING;
        return atItsRow
                ? after.told(before, place, least).or(() -> after.told(before, place, Message.Severity.CHECK)
                        .filter(message -> message.severity() == Message.Severity.CHECK))
                : after.fresh(before)
                        .filter(message -> message.severity().compareTo(least) <= 0)
                        .findFirst();
    }

    String line() {
        String words = message(true)
                .or(() -> message(false))
                .map(message -> message.cell() + " " + message.text())
                .orElse("");
        return String.format(
                Locale.ROOT,
                "%s %s %s %s %s: carry %.1f yd, %+.1f points, %d choices, %s %s",
                isSilent() ? "SILENT " + HuntReason.of(this) : isLarge() ? "large " : "small ",
                place.address(),
                number,
                change.label(),
                place.column(),
                carryYd(),
                points(),
                after.isRefused() ? 0 : after.moved(before),
                told(),
                words);
    }
}
