package org.bagwright.domain.club;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;
import org.bagwright.domain.units.Swingweight;

/**
 * What one club should have; an empty item is no target.
 *
 * @param loftDeg gauge loft, degrees
 * @param lieDeg gauge lie, degrees
 * @param carryM carry, metres
 * @param gapWishM gap to the next club, metres
 * @param swingweight the swingweight
 * @param golferLieDeg the lie at which the golfer holds the shaft with this club, degrees
 */
public record Targets(
        OptionalDouble loftDeg,
        OptionalDouble lieDeg,
        OptionalDouble carryM,
        OptionalDouble gapWishM,
        Optional<Swingweight> swingweight,
        OptionalDouble golferLieDeg) {
    public Targets {
        loftDeg.ifPresent(value -> Checks.within(Limit.LOFT_DEG, value, "loft target"));
        lieDeg.ifPresent(value -> Checks.within(Limit.LIE_DEG, value, "lie target"));
        carryM.ifPresent(value -> Checks.within(Limit.CARRY_M, value, "carry target"));
        gapWishM.ifPresent(value -> Checks.positive(value, "gap wish"));
        golferLieDeg.ifPresent(value -> Checks.within(Limit.LIE_DEG, value, "golfer lie"));
    }
}
