package org.bagwright.balance;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.BuildNumbers;

/**
 * The figures of a build that the governing bodies' published equipment rules limit, beside their limits. They are worked
 * out, not measured: reasons to check, never an approval.
 */
public final class HeadLimits {
    private static final double KG_M2_PER_G_CM2 = 1e-7;
    private static final double WOOD_INERTIA_KG_M2 = 5900 * KG_M2_PER_G_CM2;
    private static final double WOOD_INERTIA_TOLERANCE_KG_M2 = 100 * KG_M2_PER_G_CM2;
    private static final double SHORTEST_M = 18 * 0.0254;

    /** A figure that is equal to its limit but for rounding is not over it. */
    private static final double ROUNDING_M = 1e-6;

    private static final double ROUNDING_KG_M2 = 1e-10;

    private HeadLimits() {}

    /**
     * A head's inertia about the vertical axis beside its limit. The rule takes it at a lie of 60 degrees, the book as the
     * head is soled as designed; for lies from 56 to 64 degrees they differ by about 0.5 % at most.
     *
     * @param figureKgM2 the head with its pieces, kg m2
     * @param limitKgM2 the limit, kg m2
     * @param toleranceKgM2 what a measurement may exceed it by, kg m2
     */
    public record InertiaCheck(double figureKgM2, double limitKgM2, double toleranceKgM2) {

        /** Whether the figure is above the limit, inside the tolerance or not. */
        public boolean overLimit() {
            return !(figureKgM2 <= limitKgM2 + ROUNDING_KG_M2);
        }

        /** Whether the figure is above the limit and its tolerance together. */
        public boolean overTolerance() {
            return !(figureKgM2 <= limitKgM2 + toleranceKgM2 + ROUNDING_KG_M2);
        }
    }

    /**
     * A club's length beside its limits.
     *
     * @param figureM the club length, metres
     * @param shortestM the least length, metres
     * @param longestM the greatest length, metres; empty where there is none
     */
    public record LengthCheck(double figureM, double shortestM, OptionalDouble longestM) {

        public boolean tooShort() {
            return !(figureM >= shortestM - ROUNDING_M);
        }

        public boolean tooLong() {
            return longestM.isPresent() && !(figureM <= longestM.getAsDouble() + ROUNDING_M);
        }
    }

    /** The head's inertia beside its limit of 5900 g cm2 + 100; empty for kinds that have no such limit. */
    public static Optional<InertiaCheck> inertia(ClubKind kind, BuildNumbers build) {
        return switch (kind) {
            case DRIVER, WOOD, HYBRID ->
                Optional.of(
                        new InertiaCheck(build.headInertiaKgM2(), WOOD_INERTIA_KG_M2, WOOD_INERTIA_TOLERANCE_KG_M2));
            case IRON, WEDGE, PUTTER -> Optional.empty();
        };
    }

    /**
     * The club's length beside 18 in and the longest that the book checks against; putters have no longest.
     *
     * @param longestM the greatest length that the book checks against, metres
     */
    public static LengthCheck length(ClubKind kind, BuildNumbers build, double longestM) {
        OptionalDouble most = kind == ClubKind.PUTTER ? OptionalDouble.empty() : OptionalDouble.of(longestM);
        return new LengthCheck(build.lengthM(), SHORTEST_M, most);
    }
}
