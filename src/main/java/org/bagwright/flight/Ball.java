package org.bagwright.flight;

/**
 * A golf ball, with the moment of inertia of a uniform sphere.
 *
 * @param massKg mass, kg
 * @param radiusM radius, m
 */
public record Ball(double massKg, double radiusM) {
    /** The heaviest and smallest ball the rules of equipment allow: 45.93 g and 42.67 mm. */
    public static final Ball STANDARD = new Ball(0.04593, 0.021335);

    public Ball {
        if (!(massKg > 0 && radiusM > 0)) {
            throw new IllegalArgumentException("a ball needs a mass and a radius above 0");
        }
    }
}
