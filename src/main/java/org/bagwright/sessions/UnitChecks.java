package org.bagwright.sessions;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.Launch;

/**
 * Whether the numbers of a file can be in the units that the file, the person or the book tells. What they contradict is a
 * problem that names the column: nothing is converted on a guess. The bounds are our own. They leave room for what people do
 * and none for a unit: the closest two are yards and metres, 1.09, whose bounds are those of the checks of a plan.
 */
final class UnitChecks {
    private static final double LEAST_SMASH_RATIO = 1.0;
    private static final double MOST_SMASH_RATIO = 1.62;
    private static final double LEAST_WEDGE_SMASH_RATIO = 0.64;
    private static final double MOST_WEDGE_SMASH_RATIO = 1.55;
    private static final double LEAST_VACUUM_RATIO = 0.27;
    private static final double MOST_VACUUM_RATIO = 1.0;
    private static final double LEAST_STATED_RATIO = 0.67;
    private static final double MOST_STATED_RATIO = 1.5;
    private static final double USUAL_SMASH_RATIO = 1.42;
    private static final double MOST_BALL_MPS = 100;
    private static final double MOST_HEAD_MPS = 72;
    private static final double LEAST_SPIN_RPM = 300;

    private final Book book;
    private final Headings headings;
    private final ColumnUnits units;
    private Collection<Group> groups = List.of();

    UnitChecks(Book book, Headings headings, ColumnUnits units) {
        this.book = book;
        this.headings = headings;
        this.units = units;
    }

    /** The shots of one club. */
    private record Group(String golfer, ClubKind kind, List<FileShot> shots) {
        OptionalDouble median(ShotField field) {
            return UnitChecks.median(shots.stream()
                    .flatMapToDouble(shot -> shot.number(field).stream())
                    .toArray());
        }

        /** The median over the shots that have all of these. */
        OptionalDouble median(List<ShotField> fields, ToDoubleFunction<FileShot> value) {
            return UnitChecks.median(shots.stream()
                    .filter(shot -> fields.stream().allMatch(shot.numbers()::containsKey))
                    .mapToDouble(value)
                    .toArray());
        }
    }

    private static OptionalDouble median(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2);
    }

    /**
     * Checks all columns.
     *
     * @throws SessionFileException if the numbers contradict a unit
     */
    void check(List<FileShot> shots) throws SessionFileException {
        Map<String, Group> byClub = new LinkedHashMap<>();
        for (FileShot shot : shots) {
            if (shot.club().kind().carries()) {
                byClub.computeIfAbsent(
                                shot.club().cell(),
                                cell -> new Group(
                                        shot.club().golfer(), shot.club().kind(), new ArrayList<>()))
                        .shots()
                        .add(shot);
            }
        }
        groups = byClub.values();
        checkLimits(shots);
        checkSpeeds();
        checkSpin();
        checkSmash();
        checkCarry();
        checkStated();
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

    private void checkSpeeds() throws SessionFileException {
        for (Group group : groups) {
            checkMost(group, ShotField.BALL_SPEED, MOST_BALL_MPS);
            checkMost(group, ShotField.HEAD_SPEED, MOST_HEAD_MPS);
        }
    }

    private void checkMost(Group group, ShotField field, double mostMps) throws SessionFileException {
        OptionalDouble medianMps = group.median(field);
        if (medianMps.isPresent() && medianMps.getAsDouble() > mostMps) {
            throw wrong(field, "nobody swings that fast", medianMps.getAsDouble());
        }
    }

    private void checkSpin() throws SessionFileException {
        for (Group group : groups) {
            OptionalDouble medianRpm = group.median(ShotField.SPIN);
            if (medianRpm.isPresent()
                    && medianRpm.getAsDouble() < LEAST_SPIN_RPM
                    && group.shots().size() > 1) {
                throw wrong(ShotField.SPIN, "no club spins a ball so little", medianRpm.getAsDouble());
            }
        }
    }

    /** Ball speed over head speed: below 1 the head was faster than the ball. */
    private void checkSmash() throws SessionFileException {
        for (Group group : groups) {
            OptionalDouble ratio = group.median(
                    List.of(ShotField.HEAD_SPEED, ShotField.BALL_SPEED),
                    shot -> shot.number(ShotField.BALL_SPEED).getAsDouble()
                            / shot.number(ShotField.HEAD_SPEED).getAsDouble());
            boolean wedge = group.kind() == ClubKind.WEDGE;
            double least = wedge ? LEAST_WEDGE_SMASH_RATIO : LEAST_SMASH_RATIO;
            double most = wedge ? MOST_WEDGE_SMASH_RATIO : MOST_SMASH_RATIO;
            if (ratio.isPresent() && !(ratio.getAsDouble() >= least && ratio.getAsDouble() <= most)) {
                ShotField suspect = vacuumFits(group) ? ShotField.HEAD_SPEED : ShotField.BALL_SPEED;
                double ballMps = group.median(ShotField.BALL_SPEED).getAsDouble();
                double headMps = group.median(ShotField.HEAD_SPEED).getAsDouble();
                throw wrong(
                        suspect,
                        "a ball of " + FileShot.shown(ShotField.BALL_SPEED, ballMps, units)
                                + " does not come from a head of "
                                + FileShot.shown(ShotField.HEAD_SPEED, headMps, units),
                        suspect == ShotField.HEAD_SPEED ? headMps : ballMps);
            }
        }
    }

    private boolean vacuumFits(Group group) {
        OptionalDouble ratio = vacuumRatio(group);
        return ratio.isEmpty()
                || (ratio.getAsDouble() >= LEAST_VACUUM_RATIO && ratio.getAsDouble() <= MOST_VACUUM_RATIO);
    }

    private static OptionalDouble vacuumRatio(Group group) {
        return group.median(List.of(ShotField.BALL_SPEED, ShotField.CARRY), shot -> {
            double ballMps = shot.number(ShotField.BALL_SPEED).getAsDouble();
            return shot.number(ShotField.CARRY).getAsDouble() * BallFlight.GRAVITY_MPS2 / (ballMps * ballMps);
        });
    }

    private void checkCarry() throws SessionFileException {
        for (Group group : groups) {
            if (!vacuumFits(group)) {
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
        for (Group group : groups) {
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

    /** Speeds of driver and woods, and of irons, against those that the sheet Golfers states. */
    private void checkStated() throws SessionFileException {
        for (Group group : groups) {
            OptionalDouble statedMps = stated(group);
            for (ShotField field : List.of(ShotField.HEAD_SPEED, ShotField.BALL_SPEED)) {
                OptionalDouble medianMps = group.median(field);
                if (statedMps.isPresent() && medianMps.isPresent() && !units.isConfirmed(field)) {
                    double usualMps = statedMps.getAsDouble() * (field == ShotField.BALL_SPEED ? USUAL_SMASH_RATIO : 1);
                    double ratio = medianMps.getAsDouble() / usualMps;
                    if (!(ratio >= LEAST_STATED_RATIO && ratio <= MOST_STATED_RATIO)) {
                        throw wrong(
                                field,
                                "the head speed on the sheet Golfers is "
                                        + FileShot.shown(field, statedMps.getAsDouble(), units),
                                medianMps.getAsDouble());
                    }
                }
            }
        }
    }

    private OptionalDouble stated(Group group) {
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
