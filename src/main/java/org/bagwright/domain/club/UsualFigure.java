package org.bagwright.domain.club;

import java.util.List;
import org.bagwright.domain.units.Limit;

/**
 * What clubs of a kind have. A figure outside is possible but more likely mistyped. All ranges are assumed: common practice
 * with room to either side, from junior clubs to heavy putters, without a source; the length of a driver is that of the
 * equipment rules.
 */
public enum UsualFigure {
    LOFT("degrees", 4, 18, 10, 32, 13, 38, 14, 56, 40, 66, 0, 9),
    LIE("degrees", 48, 66, 48, 66, 50, 68, 52, 71, 56, 71, 62, 80),
    FACE("degrees", -5, 5, -5, 5, -4, 4, -3, 3, -3, 3, -3, 3),
    LENGTH("m", 0.75, 1.22, 0.7, 1.17, 0.65, 1.12, 0.6, 1.07, 0.6, 0.99, 0.5, 1.4),
    HEAD_MASS("kg", 0.16, 0.225, 0.18, 0.25, 0.195, 0.28, 0.21, 0.325, 0.25, 0.345, 0.26, 0.55),
    CG_HEIGHT("mm", 20, 42, 12, 32, 11, 30, 12, 31, 12, 32, 5, 32),
    CG_DEPTH("mm", 18, 60, 12, 50, 8, 42, 1, 22, 1, 18, 1, 70),
    HEAD_INERTIA("kg m2", 2.6e-4, 6.2e-4, 1.3e-4, 4.2e-4, 1.2e-4, 4e-4, 1.4e-4, 4e-4, 1.4e-4, 4e-4, 2e-4, 2e-3),
    SOLE_RADIUS("mm", 80, 1000, 60, 1000, 40, 1000, 20, 600, 15, 400, 30, 5000),
    SHAFT_MASS("kg", 0.03, 0.135, 0.03, 0.14, 0.035, 0.14, 0.04, 0.145, 0.045, 0.15, 0.045, 0.25),
    GRIP_MASS("kg", 0.018, 0.09, 0.018, 0.09, 0.018, 0.09, 0.018, 0.09, 0.018, 0.09, 0.03, 0.2);

    @SuppressWarnings("ImmutableEnumChecker") // List.of gives a list that cannot change
    private final List<Limit> byKind;

    /** From least to most for driver, wood, hybrid, iron, wedge and putter. */
    UsualFigure(String unit, double... leastAndMostMeasureUnits) {
        byKind = List.of(ClubKind.values()).stream()
                .map(kind -> new Limit(
                        leastAndMostMeasureUnits[2 * kind.ordinal()],
                        leastAndMostMeasureUnits[2 * kind.ordinal() + 1],
                        unit))
                .toList();
    }

    /** The values that are usual of a kind. */
    public Limit of(ClubKind kind) {
        return byKind.get(kind.ordinal());
    }
}
