package org.bagwright.domain.club;

import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;

/**
 * How a setting changes a club from the bore, as the sleeve's own table gives it. What the table leaves open is not 0: it
 * follows from the geometry.
 *
 * @param loftDeg change of gauge loft, degrees; present exactly when the change of lie is
 * @param lieDeg change of gauge lie, degrees
 * @param faceDeg change of the face as it sits, degrees, closed positive
 */
public record RatedChange(OptionalDouble loftDeg, OptionalDouble lieDeg, OptionalDouble faceDeg) {
    public RatedChange {
        Checks.that(loftDeg.isPresent() == lieDeg.isPresent(), "a rated loft needs a rated lie, and a lie a loft");
        Checks.that(loftDeg.isPresent() || faceDeg.isPresent(), "a rated change must change something");
        loftDeg.ifPresent(value -> Checks.finite(value, "loft change"));
        lieDeg.ifPresent(value -> Checks.finite(value, "lie change"));
        faceDeg.ifPresent(value -> Checks.finite(value, "face change"));
    }

    /** Whether the table gives the changes of loft and lie, and so where the shaft points. */
    public boolean placesShaft() {
        return loftDeg.isPresent();
    }
}
