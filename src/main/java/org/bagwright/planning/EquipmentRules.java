package org.bagwright.planning;

import org.bagwright.domain.ClubSetup;

/**
 * The limits of the published equipment rules that a plan keeps to by itself (club length 18 to 48 in or the book's own limit,
 * putters exempt from the longest; shaft at least 10 degrees from vertical). What a club breaks today stays possible to it only
 * where nothing else is.
 */
final class EquipmentRules {

    static final double SHORTEST_CLUB_M = 18 * 0.0254;
    static final double LEAST_SHAFT_FROM_VERTICAL_DEG = 10;
    private static final double NOISE = 1e-9;

    private final double lengthLimitM;

    EquipmentRules(double lengthLimitM) {
        this.lengthLimitM = lengthLimitM;
    }

    boolean allow(ClubSetup setup) {
        return lengthIsInside(setup) && shaftLeansEnough(setup);
    }

    boolean lengthIsInside(ClubSetup setup) {
        double lengthM = setup.build().lengthM();
        boolean putter = !setup.club().kind().carries();
        return lengthM >= SHORTEST_CLUB_M - NOISE && (putter || lengthM <= lengthLimitM + NOISE);
    }

    boolean shaftLeansEnough(ClubSetup setup) {
        return 90 - setup.pose().gaugeLieDeg() >= LEAST_SHAFT_FROM_VERTICAL_DEG - NOISE;
    }
}
