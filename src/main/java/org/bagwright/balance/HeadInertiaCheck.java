package org.bagwright.balance;

import java.util.Optional;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.BuildNumbers;

/**
 * A head's inertia about the vertical axis and the limit that the governing bodies' published equipment rules set. The figure
 * is worked out, not measured: a reason to check, never an approval. The rule takes it at a lie of 60 degrees, the book as the
 * head is soled as designed; for lies from 56 to 64 degrees they differ by about 0.5 % at most.
 *
 * @param figureKgM2 the head with its pieces, kg m2
 * @param limitKgM2 the limit, kg m2
 * @param toleranceKgM2 what a measurement may exceed it by, kg m2
 */
public record HeadInertiaCheck(double figureKgM2, double limitKgM2, double toleranceKgM2) {
    private static final double KG_M2_PER_G_CM2 = 1e-7;
    private static final double WOOD_LIMIT_KG_M2 = 5900 * KG_M2_PER_G_CM2;
    private static final double WOOD_TOLERANCE_KG_M2 = 100 * KG_M2_PER_G_CM2;

    /** A figure that equals its limit up to rounding is not over it. */
    private static final double ROUNDING_KG_M2 = 1e-10;

    /** The check of a build; empty for kinds that have no such limit. */
    public static Optional<HeadInertiaCheck> of(ClubKind kind, BuildNumbers build) {
        return switch (kind) {
            case DRIVER, WOOD, HYBRID ->
                Optional.of(new HeadInertiaCheck(build.headInertiaKgM2(), WOOD_LIMIT_KG_M2, WOOD_TOLERANCE_KG_M2));
            case IRON, WEDGE, PUTTER -> Optional.empty();
        };
    }

    /** Whether the figure is above the limit, inside the tolerance or not. */
    public boolean overLimit() {
        return !(figureKgM2 <= limitKgM2 + ROUNDING_KG_M2);
    }

    /** Whether the figure is above the limit and its tolerance together. */
    public boolean overTolerance() {
        return !(figureKgM2 <= limitKgM2 + toleranceKgM2 + ROUNDING_KG_M2);
    }
}
