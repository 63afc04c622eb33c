package org.bagwright.flight.golfer;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Shot.Measured;

/** The shots of one club. */
record ClubShots(List<Shot> shots) {
    private static final int FEWEST_OF_AVERAGE = 3;

    /**
     * What two shots disagree on by more than 8 % in head speed, 7 % in ball speed, 12 % in carry (7 % where each is the average of three or more), 35 % in spin or 6 degrees in launch: with no
     * third, neither can be called a stray. Empty for another number of shots.
     */
    Optional<String> disagreement() {
        if (shots.size() != 2) {
            return Optional.empty();
        }
        return Stream.of(
                        differ("head speed", Measured::headSpeedMps, 0.08, 0),
                        differ("ball speed", Measured::ballSpeedMps, 0.07, 0),
                        differ("carry", Measured::carryM, areAverages() ? 0.07 : 0.12, 0),
                        differ("spin", Measured::spinRpm, 0.35, 0),
                        differ("launch", Measured::launchDeg, 0, 6))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private boolean areAverages() {
        return shots.stream().allMatch(shot -> shot.series().shots() >= FEWEST_OF_AVERAGE);
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
}
