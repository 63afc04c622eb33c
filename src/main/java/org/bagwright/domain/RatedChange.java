package org.bagwright.domain;

/**
 * What a sleeve's own table says a setting does to a club on the bore.
 *
 * @param loftDeg change of gauge loft, degrees
 * @param lieDeg change of gauge lie, degrees
 * @param faceDeg change of the face as it sits, degrees, closed positive
 */
public record RatedChange(double loftDeg, double lieDeg, double faceDeg) {
    public RatedChange {
        Checks.finite(loftDeg, "loft change");
        Checks.finite(lieDeg, "lie change");
        Checks.finite(faceDeg, "face change");
    }
}
