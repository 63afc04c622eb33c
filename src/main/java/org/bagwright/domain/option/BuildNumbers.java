package org.bagwright.domain.option;

import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Swingweight;

/**
 * Mass and balance of a club in one weighting.
 *
 * @param lengthM club length, metres
 * @param headMassKg head with its pieces, kilograms
 * @param totalMassKg the whole club, kilograms
 * @param swingweight the swingweight
 * @param balancePointM balance point from the butt end, metres
 * @param clubInertiaKgM2 inertia of the whole club about the butt end, across the shaft, kg m2
 * @param headInertiaKgM2 inertia of the head with its pieces about the vertical axis through its centre of gravity, kg m2
 */
public record BuildNumbers(
        double lengthM,
        double headMassKg,
        double totalMassKg,
        Swingweight swingweight,
        double balancePointM,
        double clubInertiaKgM2,
        double headInertiaKgM2) {

    public BuildNumbers {
        Checks.positive(lengthM, "length");
        Checks.positive(headMassKg, "head mass");
        Checks.positive(totalMassKg, "total mass");
    }

    /** Inertia of the whole club about the butt end, kg cm2, the unit in which builders match it. */
    public double clubInertiaKgCm2() {
        return clubInertiaKgM2 * 1e4;
    }
}
