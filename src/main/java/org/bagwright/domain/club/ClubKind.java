package org.bagwright.domain.club;

import java.util.Locale;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

/**
 * The kinds of club a book knows, with what is usual for a club about which a book states nothing. Irons follow a generic
 * set from a handbook; the rest is common practice, without a source.
 */
public enum ClubKind {
    DRIVER,
    WOOD,
    HYBRID,
    IRON,
    WEDGE,
    PUTTER;

    private static final double M_PER_IN = 0.0254;
    private static final double DRIVER_IN = 45;
    private static final double WEDGE_IN = 35.25;
    private static final double PUTTER_IN = 34;
    private static final double[] IRON_LOFT_DEG = {20, 23, 26, 30, 34.5, 39, 44};
    private static final double[] IRON_IN = {38.5, 38, 37.5, 37, 36.5, 36, 35.5};
    private static final double LEAST_GYRATION_M = 0.005;
    private static final double MOST_HEEL_TOE_M = 0.127;
    private static final double MOST_PUTTER_HEEL_TOE_M = 0.1778;

    /** The kind as it is written in a book. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether the hosel of this kind may be bent on a bench, where its maker allows it. */
    public boolean bendable() {
        return this == IRON || this == WEDGE;
    }

    /** Whether the club takes part in carries and gaps. */
    public boolean carries() {
        return this != PUTTER;
    }

    /** The usual length of a club of this loft, metres. */
    public double usualLengthM(double loftDeg) {
        return M_PER_IN
                * switch (this) {
                    case DRIVER -> DRIVER_IN;
                    case WOOD -> within(40.5, 43.5, 43 - 0.25 * (loftDeg - 15));
                    case HYBRID -> within(38, 41, 40.25 - 0.25 * (loftDeg - 20));
                    case IRON -> usualIronIn(loftDeg);
                    case WEDGE -> WEDGE_IN;
                    case PUTTER -> PUTTER_IN;
                };
    }

    /** The usual head mass of a club of this length, kilograms: the shorter the heavier, so that all swing alike. */
    public double usualHeadMassKg(double lengthM) {
        double lengthIn = lengthM / M_PER_IN;
        return switch (this) {
            case DRIVER -> 0.200;
            case WOOD, HYBRID -> 0.200 + 0.008 * within(0, 8, 45 - lengthIn);
            case IRON, WEDGE -> within(0.230, 0.310, 0.270 + 0.014 * (37 - lengthIn));
            case PUTTER -> 0.350;
        };
    }

    /**
     * How far a head may reach from heel to toe, mm: 127 for a head other than a putter's (equipment rules [read]), 177.8
     * for a putter's (equipment rules [memory]).
     */
    public double mostHeelToeMm() {
        return 1000 * mostHeelToeM();
    }

    /**
     * The inertias about the vertical axis that a head can have, kg m2. Its radius of gyration is at most half its length
     * from heel to toe, and at least 5 mm, which is below any head that can be built.
     *
     * @param massKg mass of the head, kg, above 0
     */
    public Limit headInertiaLimitKgM2(double massKg) {
        Checks.positive(massKg, "head mass");
        double mostGyrationM = mostHeelToeM() / 2;
        return new Limit(massKg * LEAST_GYRATION_M * LEAST_GYRATION_M, massKg * mostGyrationM * mostGyrationM, "kg m2");
    }

    private double mostHeelToeM() {
        return this == PUTTER ? MOST_PUTTER_HEEL_TOE_M : MOST_HEEL_TOE_M;
    }

    private static double usualIronIn(double loftDeg) {
        int last = IRON_LOFT_DEG.length - 1;
        int i = 0;
        while (i < last - 1 && loftDeg > IRON_LOFT_DEG[i + 1]) {
            i++;
        }
        double share = (loftDeg - IRON_LOFT_DEG[i]) / (IRON_LOFT_DEG[i + 1] - IRON_LOFT_DEG[i]);
        return within(WEDGE_IN, 39.5, IRON_IN[i] + share * (IRON_IN[i + 1] - IRON_IN[i]));
    }

    private static double within(double least, double most, double value) {
        return Math.max(least, Math.min(most, value));
    }
}
