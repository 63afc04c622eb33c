package org.bagwright.sessions;

import java.util.Map;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.text.Numbers;

/**
 * A row of a file with a club that is known, before its numbers are checked.
 *
 * @param place the file and the line
 * @param club the club
 * @param setup how it was set up
 * @param series the day, and how many shots it averages
 * @param numbers what was measured, in the domain's units
 */
record FileShot(String place, Club club, Shot.Setup setup, Shot.Series series, Map<ShotField, Double> numbers) {
    /** A number at the very edge of its limit may leave it when it is rounded in another unit. */
    private static final double ROUNDING_RATIO = 1e-5;

    /** Whether a number that was measured is inside what it can be. */
    boolean holds(ShotField field) {
        Double value = numbers.get(field);
        boolean neverZero = field == ShotField.SPIN;
        return value == null
                || (field.limit().holds(value)
                        && field.limit().holds(value * (1 + ROUNDING_RATIO))
                        && (!neverZero || value > 0));
    }

    /** The shot, with every number inside its limit. */
    Shot shot(ColumnUnits units) throws BadRowException {
        for (ShotField field : numbers.keySet()) {
            if (!holds(field)) {
                throw new BadRowException(field.column() + " must be " + limit(field, units) + ", found "
                        + shown(field, numbers.get(field), units) + ".");
            }
        }
        if (ShotField.MEASURED.stream().noneMatch(numbers::containsKey)) {
            throw new BadRowException(
                    "nothing was measured; expected at least one of Ball speed, Launch, Spin, Carry.");
        }
        return new Shot(club.golfer(), club.name(), measured(), setup, series, place);
    }

    private static String limit(ShotField field, ColumnUnits units) {
        return field == ShotField.SPIN
                ? "above 0 and at most 16000 rpm"
                : "from " + shown(field, field.limit().leastMeasureUnits(), units) + " to "
                        + shown(field, field.limit().mostMeasureUnits(), units);
    }

    /** A number in the unit of its column. */
    static String shown(ShotField field, double value, ColumnUnits units) {
        FileUnit unit = units.of(field).unit();
        return Numbers.trimmed(unit.fromSi(value), 1) + " " + unit.label();
    }

    private Shot.Measured measured() {
        return new Shot.Measured(
                number(ShotField.HEAD_SPEED),
                number(ShotField.BALL_SPEED),
                number(ShotField.LAUNCH),
                number(ShotField.SPIN),
                number(ShotField.ATTACK),
                number(ShotField.CARRY),
                number(ShotField.SIDE),
                number(ShotField.LANDING));
    }

    OptionalDouble number(ShotField field) {
        Double value = numbers.get(field);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
