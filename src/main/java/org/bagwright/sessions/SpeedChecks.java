package org.bagwright.sessions;

import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.club.ClubKind;

/** Whether the speeds of a file can be in their units: by what people reach, by each other, and by the sheet Golfers. */
final class SpeedChecks {
    private static final double LEAST_SMASH_RATIO = 1.0;
    private static final double MOST_SMASH_RATIO = 1.62;
    private static final double LEAST_WEDGE_SMASH_RATIO = 0.64;
    private static final double MOST_WEDGE_SMASH_RATIO = 1.55;
    private static final double LEAST_STATED_RATIO = 0.67;
    private static final double MOST_STATED_RATIO = 1.5;
    private static final double USUAL_SMASH_RATIO = 1.42;
    private static final double MOST_BALL_MPS = 100;
    private static final double MOST_HEAD_MPS = 72;

    private final Book book;
    private final ColumnUnits units;
    private final Collection<ClubShots> groups;
    private final Wrong wrong;

    /** Makes the problem of a column. */
    @FunctionalInterface
    interface Wrong {
        /**
         * A problem that names the column.
         *
         * @param field what the column holds
         * @param why why its numbers cannot be
         * @param value one of them
         */
        SessionFileException column(ShotField field, String why, double value);
    }

    SpeedChecks(Book book, ColumnUnits units, Collection<ClubShots> groups, Wrong wrong) {
        this.book = book;
        this.units = units;
        this.groups = groups;
        this.wrong = wrong;
    }

    /** Speeds that nobody reaches. */
    void checkMost() throws SessionFileException {
        for (ClubShots group : groups) {
            checkMost(group, ShotField.BALL_SPEED, MOST_BALL_MPS);
            checkMost(group, ShotField.HEAD_SPEED, MOST_HEAD_MPS);
        }
    }

    private void checkMost(ClubShots group, ShotField field, double mostMps) throws SessionFileException {
        OptionalDouble medianMps = group.median(field);
        if (medianMps.isPresent() && medianMps.getAsDouble() > mostMps) {
            throw wrong.column(field, "nobody swings that fast", medianMps.getAsDouble());
        }
    }

    /** Ball speed over head speed: below 1 the head was faster than the ball. */
    void checkSmash() throws SessionFileException {
        for (ClubShots group : groups) {
            OptionalDouble ratio = group.median(
                    List.of(ShotField.HEAD_SPEED, ShotField.BALL_SPEED),
                    shot -> shot.number(ShotField.BALL_SPEED).getAsDouble()
                            / shot.number(ShotField.HEAD_SPEED).getAsDouble());
            boolean wedge = group.kind() == ClubKind.WEDGE;
            double least = wedge ? LEAST_WEDGE_SMASH_RATIO : LEAST_SMASH_RATIO;
            double most = wedge ? MOST_WEDGE_SMASH_RATIO : MOST_SMASH_RATIO;
            if (ratio.isPresent() && !(ratio.getAsDouble() >= least && ratio.getAsDouble() <= most)) {
                ShotField suspect = group.vacuumFits() ? ShotField.HEAD_SPEED : ShotField.BALL_SPEED;
                double ballMps = group.median(ShotField.BALL_SPEED).getAsDouble();
                double headMps = group.median(ShotField.HEAD_SPEED).getAsDouble();
                throw wrong.column(
                        suspect,
                        "a ball of " + FileShot.shown(ShotField.BALL_SPEED, ballMps, units)
                                + " does not come from a head of "
                                + FileShot.shown(ShotField.HEAD_SPEED, headMps, units),
                        suspect == ShotField.HEAD_SPEED ? headMps : ballMps);
            }
        }
    }

    /** Speeds of driver and woods, and of irons, against those that the sheet Golfers states. */
    void checkStated() throws SessionFileException {
        for (ClubShots group : groups) {
            OptionalDouble statedMps = stated(group);
            for (ShotField field : List.of(ShotField.HEAD_SPEED, ShotField.BALL_SPEED)) {
                OptionalDouble medianMps = group.median(field);
                if (statedMps.isPresent() && medianMps.isPresent() && !units.isConfirmed(field)) {
                    double usualMps = statedMps.getAsDouble() * (field == ShotField.BALL_SPEED ? USUAL_SMASH_RATIO : 1);
                    double ratio = medianMps.getAsDouble() / usualMps;
                    if (!(ratio >= LEAST_STATED_RATIO && ratio <= MOST_STATED_RATIO)) {
                        throw wrong.column(
                                field,
                                "the head speed on the sheet Golfers is "
                                        + FileShot.shown(field, statedMps.getAsDouble(), units),
                                medianMps.getAsDouble());
                    }
                }
            }
        }
    }

    private OptionalDouble stated(ClubShots group) {
        Golfer golfer = book.golfers().stream()
                .filter(each -> each.name().equalsIgnoreCase(group.golfer()))
                .findFirst()
                .orElseThrow();
        return switch (group.kind()) {
            case DRIVER, WOOD -> golfer.speeds().driverMps();
            case HYBRID, IRON -> golfer.speeds().ironMps();
            default -> OptionalDouble.empty();
        };
    }
}
