package org.bagwright.domain.plan;

import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;

/**
 * How one club's planned carry answers to small changes, all else held.
 *
 * @param slot its place in the bag
 * @param club its name
 * @param presentedLoftDeg the loft that the planned setting presents to the ball at address, degrees
 * @param carryM planned carry, metres
 * @param carryPerLoftDegM carry gained by one more degree of presented loft, metres
 * @param carryPerHeadMpsM carry gained by one more m/s of head speed, metres
 * @param best the presented loft of greatest carry
 * @param facePerLieDegRatio degrees by which the face points off the line for one degree of lie error, leading edge
 *     square: {@code atan(tan(loft) sin(1 deg))}
 */
public record Sensitivity(
        int slot,
        String club,
        double presentedLoftDeg,
        double carryM,
        double carryPerLoftDegM,
        double carryPerHeadMpsM,
        LoftOptimum best,
        double facePerLieDegRatio) {
    public Sensitivity {
        Checks.named(club, "club");
        Checks.finite(carryPerLoftDegM, "carry per degree of loft");
        Checks.finite(carryPerHeadMpsM, "carry per head speed");
        Checks.finite(facePerLieDegRatio, "face per degree of lie");
    }

    /**
     * The presented loft of greatest carry at this head speed and path.
     *
     * @param loftDeg that loft, degrees; empty where it is farther away than was looked
     * @param carryM the greatest carry among the lofts that were looked at, metres
     * @param advice in which direction that loft is
     */
    public record LoftOptimum(OptionalDouble loftDeg, double carryM, LoftAdvice advice) {}
}
