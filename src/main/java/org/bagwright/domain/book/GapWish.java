package org.bagwright.domain.book;

import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;

/**
 * The gap a golfer wants between neighbouring clubs.
 *
 * @param fixedM the same gap everywhere, metres; empty means even: today's carries of the first and the last club shared
 *     out over all gaps
 */
public record GapWish(OptionalDouble fixedM) {
    public static final GapWish EVEN = new GapWish(OptionalDouble.empty());

    public GapWish {
        fixedM.ifPresent(value -> Checks.positive(value, "gap wish"));
    }
}
