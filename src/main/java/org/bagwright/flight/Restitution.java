package org.bagwright.flight;

import org.bagwright.domain.club.ClubKind;

/** How much of the closing speed along the face normal comes back, as a function of that speed. */
public interface Restitution {
    /** A blow that loses nothing: no head can give more ball speed. */
    Restitution PERFECT = normalMps -> 1;

    /** Penner 2003: a driver gives back less, the harder it hits. */
    Restitution PENNER_DRIVER = normalMps -> Math.max(0, 0.86 - 0.0029 * normalMps);

    /**
     * The coefficient of restitution.
     *
     * @param normalMps closing speed along the face normal, m/s
     */
    double ratio(double normalMps);

    /**
     * The default of a kind of club. All but the driver's are assumed: chosen so that an even strike gives the ball speeds
     * commonly seen, about 1.44 times head speed for woods, 1.42 for hybrids, 1.36 falling to 1.2 over the irons.
     */
    static Restitution of(ClubKind kind) {
        return switch (kind) {
            case DRIVER -> PENNER_DRIVER;
            case WOOD, HYBRID -> normalMps -> 0.81;
            case IRON -> normalMps -> 0.80;
            case WEDGE, PUTTER -> normalMps -> 0.78;
        };
    }
}
