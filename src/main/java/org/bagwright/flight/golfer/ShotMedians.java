package org.bagwright.flight.golfer;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.bagwright.domain.book.Shot;

/**
 * What the shots of one club say together: the median of each quantity; empty where no shot tells it.
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
                median(shots, Shot::headSpeedMps),
                median(shots, Shot::ballSpeedMps),
                median(shots, Shot::launchDeg),
                median(shots, Shot::spinRpm),
                median(shots, Shot::attackDeg),
                median(shots, Shot::carryM));
    }

    boolean fullLaunch() {
        return ballSpeedMps.isPresent() && launchDeg.isPresent() && spinRpm.isPresent();
    }

    /** The middle value, of an even number the mean of the middle two. */
    static OptionalDouble median(List<Shot> shots, Function<Shot, OptionalDouble> quantity) {
        return median(shots.stream()
                .map(quantity)
                .flatMapToDouble(OptionalDouble::stream)
                .toArray());
    }

    static OptionalDouble median(double[] values) {
        if (values.length == 0) {
            return OptionalDouble.empty();
        }
        double[] sorted = values.clone();
        java.util.Arrays.sort(sorted);
        int half = sorted.length / 2;
        return OptionalDouble.of(sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2);
    }
}
