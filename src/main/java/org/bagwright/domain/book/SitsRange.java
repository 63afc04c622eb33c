package org.bagwright.domain.book;

import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

/**
 * The looks at address that a golfer accepts, as the club sits by itself, closed positive.
 *
 * @param mostOpenDeg the most open look, degrees closed (so usually negative); empty is no limit
 * @param mostClosedDeg the most closed look, degrees closed; empty is no limit
 */
public record SitsRange(OptionalDouble mostOpenDeg, OptionalDouble mostClosedDeg) {
    public static final SitsRange ANY = new SitsRange(OptionalDouble.empty(), OptionalDouble.empty());

    public SitsRange {
        mostOpenDeg.ifPresent(value -> Checks.within(Limit.SITS_DEG, value, "most open"));
        mostClosedDeg.ifPresent(value -> Checks.within(Limit.SITS_DEG, value, "most closed"));
        Checks.that(
                mostOpenDeg.orElse(Double.NEGATIVE_INFINITY) <= mostClosedDeg.orElse(Double.POSITIVE_INFINITY),
                "most open must not be more closed than most closed");
    }
}
