package org.bagwright.domain.club;

import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

/**
 * What inertia about the vertical axis a head of some mass can have: its radius of gyration is at most half its length from
 * heel to toe. Limits of that length: 127 mm for a head other than a putter's (equipment rules [read]), 177.8 mm for a
 * putter's (equipment rules [memory]). The least radius of gyration, 5 mm, is below any head that can be built.
 */
public final class HeadInertiaLimit {
    private static final double LEAST_GYRATION_M = 0.005;
    private static final double MOST_HEEL_TOE_M = 0.127;
    private static final double MOST_PUTTER_HEEL_TOE_M = 0.1778;

    private HeadInertiaLimit() {}

    /** How far a head of this kind may reach from heel to toe, mm. */
    public static double mostHeelToeMm(ClubKind kind) {
        return 1000 * mostHeelToeM(kind);
    }

    /**
     * The inertias that a head can have, kg m2.
     *
     * @param kind the kind of club
     * @param massKg mass of the head, kg, above 0
     */
    public static Limit limitKgM2(ClubKind kind, double massKg) {
        Checks.positive(massKg, "head mass");
        double mostGyrationM = mostHeelToeM(kind) / 2;
        return new Limit(massKg * LEAST_GYRATION_M * LEAST_GYRATION_M, massKg * mostGyrationM * mostGyrationM, "kg m2");
    }

    private static double mostHeelToeM(ClubKind kind) {
        return kind == ClubKind.PUTTER ? MOST_PUTTER_HEEL_TOE_M : MOST_HEEL_TOE_M;
    }
}
