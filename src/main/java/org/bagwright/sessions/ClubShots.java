package org.bagwright.sessions;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.BallFlight;

/**
 * The shots of a file with one club.
 *
 * @param golfer who hit them
 * @param kind of the club
 * @param shots the shots
 */
record ClubShots(String golfer, ClubKind kind, List<FileShot> shots) {
    private static final double LEAST_VACUUM_RATIO = 0.27;
    private static final double MOST_VACUUM_RATIO = 1.0;

    OptionalDouble median(ShotField field) {
        return median(shots.stream()
                .flatMapToDouble(shot -> shot.number(field).stream())
                .toArray());
    }

    /** The median over the shots that have all of these. */
    OptionalDouble median(List<ShotField> fields, ToDoubleFunction<FileShot> value) {
        return median(shots.stream()
                .filter(shot -> fields.stream().allMatch(shot.numbers()::containsKey))
                .mapToDouble(value)
                .toArray());
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

    /** Whether the ball can carry as far: carry over that of a throw without air at the best angle. */
    boolean vacuumFits() {
        OptionalDouble ratio = median(List.of(ShotField.BALL_SPEED, ShotField.CARRY), shot -> {
            double ballMps = shot.number(ShotField.BALL_SPEED).getAsDouble();
            return shot.number(ShotField.CARRY).getAsDouble() * BallFlight.GRAVITY_MPS2 / (ballMps * ballMps);
        });
        return ratio.isEmpty()
                || (ratio.getAsDouble() >= LEAST_VACUUM_RATIO && ratio.getAsDouble() <= MOST_VACUUM_RATIO);
    }
}
