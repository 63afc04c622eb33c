package org.bagwright.flight.golfer;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Shot.Measured;

/** The shots of one club. */
record ClubShots(List<Shot> shots) {
    private static final double SPREAD_FACTOR = 3 * 1.4826;
    private static final int FEWEST = 3;

    /**
     * The shots that do not belong with the others. The rule: among three or more shots that give a quantity, one is left
     * out when it is farther from the median than three scaled median deviations (3 x 1.4826 MAD) and also farther than 7 %
     * in ball speed, 12 % in carry, 35 % in spin or 6 degrees in launch. A left-out shot counts for nothing at all.
     */
    List<Shot> stray() {
        return shots.stream()
                .filter(shot -> isStray(shot, Measured::ballSpeedMps, 0.07, 0)
                        || isStray(shot, Measured::carryM, 0.12, 0)
                        || isStray(shot, Measured::spinRpm, 0.35, 0)
                        || isStray(shot, Measured::launchDeg, 0, 6))
                .toList();
    }

    /**
     * What two shots disagree on by more than the limits above: with no third, neither can be called a stray. Empty for
     * another number of shots.
     */
    Optional<String> disagreement() {
        if (shots.size() != 2) {
            return Optional.empty();
        }
        return Stream.of(
                        differ("ball speed", Measured::ballSpeedMps, 0.07, 0),
                        differ("carry", Measured::carryM, 0.12, 0),
                        differ("spin", Measured::spinRpm, 0.35, 0),
                        differ("launch", Measured::launchDeg, 0, 6))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<String> differ(
            String what, Function<Measured, OptionalDouble> quantity, double share, double least) {
        OptionalDouble one = quantity.apply(shots.get(0).measured());
        OptionalDouble other = quantity.apply(shots.get(1).measured());
        if (one.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        double most = Math.max(one.getAsDouble(), other.getAsDouble());
        boolean far = Math.abs(one.getAsDouble() - other.getAsDouble()) > Math.max(least, share * most);
        return far ? Optional.of(what) : Optional.empty();
    }

    /** The shots without the stray ones. */
    List<Shot> withoutStray() {
        List<Shot> stray = stray();
        return shots.stream().filter(shot -> !stray.contains(shot)).toList();
    }

    private boolean isStray(Shot shot, Function<Measured, OptionalDouble> quantity, double share, double least) {
        double[] values = shots.stream()
                .map(Shot::measured)
                .map(quantity)
                .flatMapToDouble(OptionalDouble::stream)
                .toArray();
        OptionalDouble own = quantity.apply(shot.measured());
        if (own.isEmpty() || values.length < FEWEST) {
            return false;
        }
        double middle = ShotMedians.median(values).orElseThrow();
        double[] off =
                Arrays.stream(values).map(value -> Math.abs(value - middle)).toArray();
        double spread = SPREAD_FACTOR * ShotMedians.median(off).orElseThrow();
        return Math.abs(own.getAsDouble() - middle) > Math.max(spread, Math.max(least, share * middle));
    }
}
