package org.bagwright.domain.club;

import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;

/**
 * What a sleeve's own table says a setting does to a club on the bore. What the table leaves open is not 0: it follows
 * from the geometry.
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

    /** Whether the table says where the shaft points: the changes of loft and lie. */
    public boolean placesShaft() {
        return loftDeg.isPresent();
    }
}
