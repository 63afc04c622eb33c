package org.bagwright.domain.club;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;

/**
 * One setting of a sleeve.
 *
 * @param mark the mark on the sleeve
 * @param rings one ring, or two for a sleeve with two rings; empty when only the rated change is known
 * @param turnsShaft whether the shaft turns with the sleeve
 * @param rated the sleeve's own table for this setting; what it gives counts, not the rings
 */
public record SleeveSetting(String mark, List<Ring> rings, boolean turnsShaft, Optional<RatedChange> rated) {
    public SleeveSetting {
        Checks.named(mark, "setting");
        rings = List.copyOf(rings);
        Checks.that(rings.size() <= 2, "a sleeve has one or two rings");
        Checks.that(
                !rings.isEmpty() || rated.filter(RatedChange::placesShaft).isPresent(),
                "a setting needs a clock and a bend, or a rated change of loft and lie");
    }

    /** The rated changes of loft and lie, which decide where the shaft points; empty where the rings do. */
    public Optional<RatedChange> ratedShaft() {
        return rated.filter(RatedChange::placesShaft);
    }

    /** The rated change of the face as it sits, degrees, closed positive; empty where it follows from the geometry. */
    public OptionalDouble ratedFaceDeg() {
        return rated.map(RatedChange::faceDeg).orElseGet(OptionalDouble::empty);
    }
}
