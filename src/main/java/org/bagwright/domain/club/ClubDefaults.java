package org.bagwright.domain.club;

/**
 * Length and head mass of clubs about which a book says nothing. Irons follow a generic set from a handbook; the rest is
 * common practice, without a source.
 */
public final class ClubDefaults {
    /** The length of the 7 iron to which a golfer's iron speed belongs, m. */
    public static final double SEVEN_IRON_M = metres(37);

    /** The length of a driver, m. */
    public static final double DRIVER_M = metres(45);

    private static final double WEDGE_IN = 35.25;
    private static final double PUTTER_IN = 34;
    private static final double[] IRON_LOFT_DEG = {20, 23, 26, 30, 34.5, 39, 44};
    private static final double[] IRON_IN = {38.5, 38, 37.5, 37, 36.5, 36, 35.5};

    private ClubDefaults() {}

    /** Length in metres of a club of this kind and loft. */
    public static double lengthM(ClubKind kind, double loftDeg) {
        return switch (kind) {
            case DRIVER -> DRIVER_M;
            case WOOD -> metres(within(40.5, 43.5, 43 - 0.25 * (loftDeg - 15)));
            case HYBRID -> metres(within(38, 41, 40.25 - 0.25 * (loftDeg - 20)));
            case IRON -> metres(ironIn(loftDeg));
            case WEDGE -> metres(WEDGE_IN);
            case PUTTER -> metres(PUTTER_IN);
        };
    }

    /** Head mass in kilograms: the shorter the club the heavier the head, so that all swing alike. */
    public static double headMassKg(ClubKind kind, double lengthM) {
        double lengthIn = lengthM / 0.0254;
        return switch (kind) {
            case DRIVER -> 0.200;
            case WOOD, HYBRID -> 0.200 + 0.008 * within(0, 8, 45 - lengthIn);
            case IRON, WEDGE -> within(0.230, 0.310, 0.270 + 0.014 * (37 - lengthIn));
            case PUTTER -> 0.350;
        };
    }

    private static double ironIn(double loftDeg) {
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

    private static double metres(double inches) {
        return inches * 0.0254;
    }
}
