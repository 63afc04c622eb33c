package org.bagwright.flight.golfer;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Shot.Measured;

/**
 * Shots of one club that do not belong with the others. The rule: among three or more shots that tell a quantity, one is
 * left out when it lies farther from the median than three scaled median deviations (3 x 1.4826 MAD) and also farther than
 * 7 % in ball speed, 12 % in carry, 35 % in spin or 6 degrees in launch. A left-out shot counts for nothing at all.
 */
final class StrayShots {
    private static final double SPREAD_FACTOR = 3 * 1.4826;
    private static final int FEWEST = 3;

    private StrayShots() {}

    static List<Shot> among(List<Shot> shots) {
        return shots.stream()
                .filter(shot -> stray(shot, shots, Measured::ballSpeedMps, 0.07, 0)
                        || stray(shot, shots, Measured::carryM, 0.12, 0)
                        || stray(shot, shots, Measured::spinRpm, 0.35, 0)
                        || stray(shot, shots, Measured::launchDeg, 0, 6))
                .toList();
    }

    private static boolean stray(
            Shot shot, List<Shot> shots, Function<Measured, OptionalDouble> quantity, double share, double least) {
        double[] values = shots.stream()
                .map(Shot::measured)
                .map(quantity)
                .flatMapToDouble(OptionalDouble::stream)
                .toArray();
        if (quantity.apply(shot.measured()).isEmpty() || values.length < FEWEST) {
            return false;
        }
        double middle = ShotMedians.median(values).orElseThrow();
        double[] off =
                Arrays.stream(values).map(value -> Math.abs(value - middle)).toArray();
        double spread = SPREAD_FACTOR * ShotMedians.median(off).orElseThrow();
        double own = Math.abs(quantity.apply(shot.measured()).orElseThrow() - middle);
        return own > Math.max(spread, Math.max(least, share * middle));
    }
}
