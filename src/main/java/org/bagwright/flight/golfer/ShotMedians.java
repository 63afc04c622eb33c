package org.bagwright.flight.golfer;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Shot.Measured;

/**
 * The median of each quantity over the shots of one club; empty where no shot gives it.
 *
 * @param headSpeedMps head speed, m/s
 * @param ballSpeedMps ball speed, m/s
 * @param launchDeg launch, degrees
 * @param spinRpm spin, rpm
 * @param attackDeg attack, degrees
 * @param carryM carry, m
 */
record ShotMedians(
        OptionalDouble headSpeedMps,
        OptionalDouble ballSpeedMps,
        OptionalDouble launchDeg,
        OptionalDouble spinRpm,
        OptionalDouble attackDeg,
        OptionalDouble carryM) {
    static ShotMedians of(List<Shot> shots) {
        return new ShotMedians(
                median(shots, Measured::headSpeedMps),
                median(shots, Measured::ballSpeedMps),
                median(shots, Measured::launchDeg),
                median(shots, Measured::spinRpm),
                median(shots, Measured::attackDeg),
                median(shots, Measured::carryM));
    }

    boolean fullLaunch() {
        return ballSpeedMps.isPresent() && launchDeg.isPresent() && spinRpm.isPresent();
    }

    /** The middle value, of an even number the mean of the middle two. */
    static OptionalDouble median(List<Shot> shots, Function<Measured, OptionalDouble> quantity) {
        return median(shots.stream()
                .map(Shot::measured)
                .map(quantity)
                .flatMapToDouble(OptionalDouble::stream)
                .toArray());
    }

    static OptionalDouble median(double[] values) {
        if (values.length == 0) {
            return OptionalDouble.empty();
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return OptionalDouble.of(sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2);
    }
}
