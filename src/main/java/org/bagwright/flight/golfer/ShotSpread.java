package org.bagwright.flight.golfer;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Shot;

/**
 * How far the carries of one club's shots scatter, without the shots that are far from the others.
 *
 * @param carries how many shots give a carry
 * @param carryM their standard deviation, m; empty where fewer than {@link #ENOUGH} give one
 */
public record ShotSpread(int carries, OptionalDouble carryM) {
    /** The fewest shots from which a spread is taken. */
    public static final int ENOUGH = 5;

    /** The spread of shots that were all hit with one club. */
    public static ShotSpread of(List<Shot> shots) {
        double[] carriesM = new ClubShots(shots)
                .withoutStray().stream()
                        .flatMapToDouble(shot -> shot.measured().carryM().stream())
                        .toArray();
        return new ShotSpread(
                carriesM.length,
                carriesM.length < ENOUGH ? OptionalDouble.empty() : OptionalDouble.of(spread(carriesM)));
    }

    private static double spread(double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        double squares = Arrays.stream(values)
                .map(value -> (value - mean) * (value - mean))
                .sum();
        return Math.sqrt(squares / (values.length - 1));
    }
}
