package org.bagwright.flight.learning;

import org.bagwright.domain.club.ClubKind;

/**
 * What is not known of a golfer before his shots, each normal about 0 with the standard deviation given here. Where no source
 * is named the figure is assumed.
 *
 * <p>With {@code zl = (length - 39 in) / 4 in} and {@code zf = (loft - 30 deg) / 15 deg} of the club:
 *
 * <pre>
 * ln head speed = stated  + SPEED + SPEED_BY_LENGTH zl + LENGTH (effect of the length) + day + CLUB_SPEED
 * ln efficiency = usual   + STRIKE + STRIKE_BY_LOFT zf + CLUB_STRIKE
 * loft          = stated  + set-up + usual offset + LOFT + LOFT_BY_LOFT zf + CLUB_LOFT
 * attack        = usual   + CLUB_ATTACK
 * ln spin       = usual   + SPIN + SPIN_BY_LOFT zf + CLUB_SPIN
 * F             = (1 - BALL) F_BearmanHarvey + BALL F_SmitsSmith, drag x exp(DRAG), lift x exp(LIFT)
 * carry         = [F(reference) + (1 + RESPONSE)(F - F(reference))] exp(CLUB_CARRY)
 * </pre>
 */
public enum Unknown {
    /** All head speeds of a golfer whose row states one, as a share. */
    SPEED(0.015, false),
    SPEED_BY_LENGTH(0.01, false),
    /** Ball speed over what is usual, as a share. */
    STRIKE(0.025, false),
    STRIKE_BY_LOFT(0.01, false),
    /** Delivered loft over what is usual, degrees. */
    LOFT(2, false),
    LOFT_BY_LOFT(1.5, false),
    /** Spin over what is usual, as a share. */
    SPIN(0.12, false),
    SPIN_BY_LOFT(0.03, false),
    DRAG(0.07, false),
    LIFT(0.05, false),
    /** How much more than the model says a change of set-up changes the carry, as a share. */
    RESPONSE(0.15, false),
    /** The share of the other published ball. */
    BALL(0.4, false),
    /** How much more than the published effect a change of length has, as a share: half of it. */
    LENGTH(0.5, false),

    CLUB_SPEED(0.008, true),
    CLUB_STRIKE(0.012, true),
    /** Of the golfer with this club alone, degrees; {@link #standardDeviation} adds what the stated loft may be off. */
    CLUB_LOFT(1.2, true),
    CLUB_SPIN(0.035, true),
    CLUB_ATTACK(1.2, true),
    CLUB_CARRY(0.02, true);

    /** One day's head speed against the usual one, as a share. */
    static final double DAY = 0.01;

    /** Of all head speeds where his row states none and they are taken from his shots. */
    public static final double SPEED_BY_SHOTS = 0.04;

    /** Of all head speeds where nothing tells them. */
    public static final double SPEED_UNTOLD = 0.12;

    /** Of the slope of head speed where his row does not state both speeds. */
    public static final double SPEED_BY_LENGTH_UNTOLD = 0.02;

    private static final double DRIVER_LOFT_DEG = 1.5;
    private static final double DRIVER_ATTACK_DEG = 2;

    /** A stated loft: clubs are made within 1 degree [common practice]. */
    private static final double STATED_DEG = 0.6;

    /** A loft that was gauged [common practice]. */
    private static final double GAUGED_DEG = 0.25;

    private final double standardDeviation;
    private final boolean ofClub;

    Unknown(double standardDeviation, boolean ofClub) {
        this.standardDeviation = standardDeviation;
        this.ofClub = ofClub;
    }

    /** Whether each head has its own. */
    boolean ofClub() {
        return ofClub;
    }

    double standardDeviation() {
        return standardDeviation;
    }

    /** The standard deviation for a head of this kind. */
    double standardDeviation(ClubKind kind, boolean gauged) {
        boolean driver = kind == ClubKind.DRIVER;
        return switch (this) {
            case CLUB_LOFT ->
                Math.hypot(driver ? DRIVER_LOFT_DEG : standardDeviation, gauged ? GAUGED_DEG : STATED_DEG);
            case CLUB_ATTACK -> driver ? DRIVER_ATTACK_DEG : standardDeviation;
            default -> standardDeviation;
        };
    }
}
