package org.bagwright.sessions;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.Book;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.Launch;

/**
 * Whether the numbers of a file can be in the units that the file, the person or the book tells. What they contradict is a
 * problem that names the column: nothing is converted on a guess. The bounds are our own. They leave room for what people do
 * and none for a unit: the closest two are yards and metres, 1.09, whose bounds are those of the checks of a plan.
 */
final class UnitChecks {
    private static final double LEAST_SPIN_RPM = 300;

    private final Book book;
    private final Headings headings;
    private final ColumnUnits units;
    private Collection<ClubShots> groups = List.of();

    UnitChecks(Book book, Headings headings, ColumnUnits units) {
        this.book = book;
        this.headings = headings;
        this.units = units;
    }

    /**
     * Checks all columns.
     *
     * @throws SessionFileException if the numbers contradict a unit
     */
    void check(List<FileShot> shots) throws SessionFileException {
        Map<String, ClubShots> byClub = new LinkedHashMap<>();
        for (FileShot shot : shots) {
            if (shot.club().kind().carries()) {
                byClub.computeIfAbsent(
                                shot.club().cell(),
                                cell -> new ClubShots(
                                        shot.club().golfer(), shot.club().kind(), new ArrayList<>()))
                        .shots()
                        .add(shot);
            }
        }
        groups = byClub.values();
        checkLimits(shots);
        SpeedChecks speeds = new SpeedChecks(book, units, groups, this::wrong);
        speeds.checkMost();
        checkSpin();
        speeds.checkSmash();
        checkCarry();
        speeds.checkStated();
    }

    private void checkLimits(List<FileShot> shots) throws SessionFileException {
        for (ShotField field : headings.named().keySet()) {
            if (!field.units().isEmpty()) {
                long given = shots.stream()
                        .filter(shot -> shot.numbers().containsKey(field))
                        .count();
                long outside = shots.stream().filter(shot -> !shot.holds(field)).count();
                if (2 * outside > given && outside > 1) {
                    throw wrong(
                            field,
                            "most of its numbers cannot be",
                            shots.stream()
                                    .filter(shot -> !shot.holds(field))
                                    .mapToDouble(shot -> shot.number(field).getAsDouble())
                                    .findFirst()
                                    .getAsDouble());
                }
            }
        }
    }

    private void checkSpin() throws SessionFileException {
        for (ClubShots group : groups) {
            OptionalDouble medianRpm = group.median(ShotField.SPIN);
            if (medianRpm.isPresent()
                    && medianRpm.getAsDouble() < LEAST_SPIN_RPM
                    && group.shots().size() > 1) {
                throw wrong(ShotField.SPIN, "no club spins a ball so little", medianRpm.getAsDouble());
            }
        }
    }

    private void checkCarry() throws SessionFileException {
        for (ClubShots group : groups) {
            if (!group.vacuumFits()) {
                double ballMps = group.median(ShotField.BALL_SPEED).getAsDouble();
                double carryM = group.median(ShotField.CARRY).getAsDouble();
                ShotField suspect = units.isConfirmed(ShotField.BALL_SPEED) ? ShotField.CARRY : ShotField.BALL_SPEED;
                throw wrong(
                        suspect,
                        "a ball of " + FileShot.shown(ShotField.BALL_SPEED, ballMps, units) + " does not carry "
                                + FileShot.shown(ShotField.CARRY, carryM, units),
                        suspect == ShotField.CARRY ? carryM : ballMps);
            }
        }
        if (headings.has(ShotField.CARRY)) {
            checkFlight();
        }
    }

    /** Carries against the flight of the published ball, with the bounds of yards and metres unless an option confirms it. */
    private void checkFlight() throws SessionFileException {
        BallFlight flights = new BallFlight(book.settings().air(), BallModelKind.BEARMAN_HARVEY);
        CarryRatios ratios = new CarryRatios();
        for (ClubShots group : groups) {
            OptionalDouble ballMps = group.median(ShotField.BALL_SPEED);
            OptionalDouble launchDeg = group.median(ShotField.LAUNCH);
            OptionalDouble spinRpm = group.median(ShotField.SPIN);
            OptionalDouble carryM = group.median(ShotField.CARRY);
            if (ballMps.isPresent()
                    && launchDeg.isPresent()
                    && launchDeg.getAsDouble() > 0
                    && spinRpm.isPresent()
                    && carryM.isPresent()) {
                double flownM = flights.fly(
                                new Launch(ballMps.getAsDouble(), launchDeg.getAsDouble(), spinRpm.getAsDouble()), 1)
                        .carryM();
                ratios.add(carryM.getAsDouble(), flownM);
            }
        }
        boolean confirmed = units.isConfirmed(ShotField.CARRY);
        Optional<String> contradiction = ratios.contradiction(confirmed);
        if (contradiction.isPresent()) {
            throw wrong(
                    ShotField.CARRY,
                    contradiction.get(),
                    groups.stream()
                            .flatMapToDouble(group -> group.median(ShotField.CARRY).stream())
                            .findFirst()
                            .orElseThrow());
        }
    }

    private SessionFileException wrong(ShotField field, String why, double value) {
        ColumnUnits.Told told = units.of(field);
        String option = field.units() == FileUnit.SPEEDS
                ? " If it is another unit, give --speed."
                : field.units() == FileUnit.DISTANCES ? " If it is another unit, give --distance." : "";
        boolean byFile =
                told.from().equals(ColumnUnits.BY_HEADING) || told.from().equals(ColumnUnits.BY_ROW);
        String way = byFile
                ? " If it is another unit, give --column \""
                        + headings.named().get(field).heading().text() + "=" + field.column() + " (UNIT)\"."
                : option;
        return headings.wrong(field.column() + " cannot be in " + told.unit().label() + " (told by: " + told.from()
                + "): " + why + ", found " + FileShot.shown(field, value, units) + "." + way);
    }
}
