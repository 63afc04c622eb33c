package org.bagwright.domain.club;

import org.bagwright.domain.units.Checks;

/**
 * A limit that a book states: every plan that can keep it keeps it, whatever it costs.
 *
 * @param kind what it bounds, and on which side
 * @param valueMeasureUnits the bound: degrees closed for looks, metres for gaps and carries, degrees for landing
 * @param cell where the book says it
 */
public record StatedLimit(LimitKind kind, double valueMeasureUnits, String cell) {
    public StatedLimit {
        Checks.finite(valueMeasureUnits, kind.label());
        Checks.named(cell, "cell");
    }

    /** How far a value is beyond it, 0 or more. */
    public double beyondMeasureUnits(double foundMeasureUnits) {
        double beyond = kind.isLeast() ? valueMeasureUnits - foundMeasureUnits : foundMeasureUnits - valueMeasureUnits;
        return Math.max(0, beyond);
    }
}
