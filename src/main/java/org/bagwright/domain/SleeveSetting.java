package org.bagwright.domain;

import java.util.List;
import java.util.Optional;

/**
 * One setting of a sleeve.
 *
 * @param mark the mark on the sleeve
 * @param rings one ring, or two for a sleeve with two rings; empty when only the rated change is known
 * @param turnsShaft whether the shaft turns with the sleeve
 * @param rated the sleeve's own table for this setting, the truth where given
 */
public record SleeveSetting(String mark, List<Ring> rings, boolean turnsShaft, Optional<RatedChange> rated) {
    public SleeveSetting {
        Checks.named(mark, "setting");
        rings = List.copyOf(rings);
        Checks.that(rings.size() <= 2, "a sleeve has one or two rings");
        Checks.that(!rings.isEmpty() || rated.isPresent(), "a setting needs a clock and a bend, or a rated change");
    }
}
