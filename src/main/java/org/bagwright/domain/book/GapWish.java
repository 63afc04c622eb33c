package org.bagwright.domain.book;

import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;

/**
 * The gap a golfer wants between neighbouring clubs.
 *
 * @param kind how it is given
 * @param fixedM the same gap everywhere, metres; only where it is given as a number
 */
public record GapWish(Kind kind, OptionalDouble fixedM) {
    /** Today's carries of the first and the last club shared out over all gaps. */
    public static final GapWish EVEN = new GapWish(Kind.EVEN, OptionalDouble.empty());

    /** Each gap as it is today. */
    public static final GapWish TODAY = new GapWish(Kind.TODAY, OptionalDouble.empty());

    /** How a gap wish is given. */
    public enum Kind {
        FIXED,
        EVEN,
        TODAY
    }

    public GapWish {
        Checks.that(fixedM.isPresent() == (kind == Kind.FIXED), "only a fixed gap wish has a number");
        fixedM.ifPresent(value -> Checks.positive(value, "gap wish"));
    }

    /** The same gap everywhere, metres. */
    public static GapWish ofM(double fixedM) {
        return new GapWish(Kind.FIXED, OptionalDouble.of(fixedM));
    }
}
