package org.bagwright.planning.outlook;

/**
 * One club's carry with what is uncertain about it; spreads are standard deviations, 0 for what is certain.
 *
 * @param carryM predicted average carry, m
 * @param perLoftDegM carry gained by a degree of loft, m
 * @param perSpeedRatioM carry gained by doubling the head speed, as its slope at the present speed, m
 * @param loftDeg spread of the loft as made, set and gauged, degrees
 * @param averageM spread of the average carry for want of shots that tell it, m
 * @param shotM spread of single shots about the average, m
 */
record Uncertain(
        double carryM, double perLoftDegM, double perSpeedRatioM, double loftDeg, double averageM, double shotM) {
    Uncertain {
        if (!(loftDeg >= 0 && averageM >= 0 && shotM >= 0)) {
            throw new IllegalArgumentException("a spread must be 0 or more");
        }
    }
}
