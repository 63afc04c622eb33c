package org.bagwright.domain.club;

import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;

/**
 * The form of a head as far as the book states it; what is empty is assumed from the kind of club.
 *
 * @param massKg head mass with empty ports, kilograms
 * @param soleForeAftRadiusMm radius of the sole from leading to trailing edge, millimetres
 * @param soleHeelToeRadiusMm radius of the sole from heel to toe, millimetres
 * @param centreOfGravityHeightMm height of the centre of gravity over the sole, millimetres
 * @param centreOfGravityDepthMm depth of the centre of gravity behind the face, millimetres
 * @param inertiaKgM2 inertia about the vertical axis through the centre of gravity, kg m2
 */
public record HeadForm(
        OptionalDouble massKg,
        OptionalDouble soleForeAftRadiusMm,
        OptionalDouble soleHeelToeRadiusMm,
        OptionalDouble centreOfGravityHeightMm,
        OptionalDouble centreOfGravityDepthMm,
        OptionalDouble inertiaKgM2) {
    public HeadForm {
        massKg.ifPresent(value -> Checks.positive(value, "head mass"));
        soleForeAftRadiusMm.ifPresent(value -> Checks.positive(value, "sole radius"));
        soleHeelToeRadiusMm.ifPresent(value -> Checks.positive(value, "sole radius"));
        centreOfGravityHeightMm.ifPresent(value -> Checks.positive(value, "centre of gravity height"));
        centreOfGravityDepthMm.ifPresent(value -> Checks.positive(value, "centre of gravity depth"));
        inertiaKgM2.ifPresent(value -> Checks.positive(value, "head inertia"));
    }
}
