package org.bagwright.domain.club;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.units.Checks;

/** A kit of weights: every weighting that a head with these ports may have, in the order of the book. */
public record Kit(String name, List<Weighting> weightings) {

    public Kit {
        Checks.named(name, "kit");
        weightings = List.copyOf(weightings);
        Checks.that(!weightings.isEmpty(), "a kit needs a weighting");
    }

    /** The weighting with this name, ignoring case. */
    public Optional<Weighting> weighting(String weighting) {
        return weightings.stream()
                .filter(known -> known.name().equalsIgnoreCase(weighting))
                .findFirst();
    }
}
