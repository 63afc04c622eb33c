package org.bagwright.domain.club;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;
import org.bagwright.domain.units.Swingweight;

/**
 * What a club is built of, except its head, as far as the book states it. An empty length, mass or balance is assumed from
 * kind and loft.
 *
 * @param lengthM club length, metres
 * @param sleeve the sleeve's name; empty for a glued shaft
 * @param kit the kit of weights that fits its head; empty for a head without ports
 * @param shaftMassKg mass of the cut shaft, kilograms
 * @param shaftBalanceM balance point of the cut shaft from its butt end, metres
 * @param gripMassKg mass of the grip, kilograms
 * @param measured the swingweight read on a scale, of the club as it is today
 */
public record ClubParts(
        OptionalDouble lengthM,
        Optional<String> sleeve,
        Optional<String> kit,
        OptionalDouble shaftMassKg,
        OptionalDouble shaftBalanceM,
        OptionalDouble gripMassKg,
        Optional<Swingweight> measured) {

    public ClubParts {
        lengthM.ifPresent(value -> Checks.within(Limit.CLUB_LENGTH_M, value, "length"));
        shaftMassKg.ifPresent(value -> Checks.positive(value, "shaft mass"));
        shaftBalanceM.ifPresent(value -> Checks.positive(value, "shaft balance"));
        gripMassKg.ifPresent(value -> Checks.notNegative(value, "grip mass"));
    }
}
