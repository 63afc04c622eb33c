package org.bagwright.domain.club;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Swingweight;

/**
 * What the book states of a club's balance beside its head; what is empty is assumed from kind and length.
 *
 * @param shaftMassKg mass of the cut shaft, kilograms
 * @param shaftBalanceM balance point of the cut shaft from its butt end, metres
 * @param gripMassKg mass of the grip, kilograms
 * @param measured the swingweight read on a scale, of the club as it is today
 */
public record ClubParts(
        OptionalDouble shaftMassKg,
        OptionalDouble shaftBalanceM,
        OptionalDouble gripMassKg,
        Optional<Swingweight> measured) {

    public static final ClubParts ASSUMED =
            new ClubParts(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());

    public ClubParts {
        shaftMassKg.ifPresent(value -> Checks.positive(value, "shaft mass"));
        shaftBalanceM.ifPresent(value -> Checks.positive(value, "shaft balance"));
        gripMassKg.ifPresent(value -> Checks.notNegative(value, "grip mass"));
    }
}
