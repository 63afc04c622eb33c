package org.bagwright.domain.option;

import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.text.Numbers;

/**
 * What the geometry gives for one option in one golfer's hands. Angles in degrees.
 *
 * @param gauge what a loft and lie gauge reads
 * @param address the golfer's own pose
 * @param resting how the head sits by itself
 * @param shaftTurnDeg how far the shaft is turned from today's setting, degrees, in (-180, 180]
 */
public record PoseNumbers(Gauge gauge, Address address, Resting resting, double shaftTurnDeg) {

    /**
     * What a loft and lie gauge reads.
     *
     * @param loftDeg loft, degrees
     * @param lieDeg lie, degrees
     */
    public record Gauge(double loftDeg, double lieDeg) {}

    /**
     * The club at the golfer's lie and lean with a square leading edge.
     *
     * @param loftDeg loft, degrees
     * @param faceHeadingDeg heading of the face, degrees, closed positive
     * @param soleTiltDeg how far the toe is up, degrees; negative is heel up
     * @param toeGapMm the gap between ground and sole at the toe, mm; negative is a gap under the heel
     * @param contactShiftMm how far the contact point on the sole moved forward from the design pose, mm; negative is back
     * @param contactShiftToToeMm how far it moved toward the toe, mm; negative is toward the heel
     */
    public record Address(
            double loftDeg,
            double faceHeadingDeg,
            double soleTiltDeg,
            double toeGapMm,
            double contactShiftMm,
            double contactShiftToToeMm) {}

    /**
     * The head as it sits by itself, the shaft held at the golfer's lie and lean.
     *
     * @param closedDeg heading of the leading edge, degrees, closed positive
     * @param loftDeg loft, degrees
     */
    public record Resting(double closedDeg, double loftDeg) {}

    /** The gauge loft, degrees. */
    public double gaugeLoftDeg() {
        return gauge.loftDeg();
    }

    /** The gauge lie, degrees. */
    public double gaugeLieDeg() {
        return gauge.lieDeg();
    }

    /** Heading of the leading edge when the head sits by itself, degrees, closed positive. */
    public double sitsClosedDeg() {
        return resting.closedDeg();
    }

    /** How the head sits by itself, such as {@code 1.2 closed}, {@code 0.4 open} or {@code square}. */
    public String sitsText() {
        String size = Numbers.fixed(Math.abs(sitsClosedDeg()), 1);
        if (size.equals("0.0")) {
            return "square";
        }
        return size + (sitsClosedDeg() > 0 ? " closed" : " open");
    }

    /** The loft that reaches the ball, degrees: squared by the golfer, or as the head sits. */
    public double presentedLoftDeg(Golfer golfer) {
        return golfer.address().squaresFace() ? address.loftDeg() : resting.loftDeg();
    }

    /** The heading of the face at the ball, degrees, closed positive: squared by the golfer, or as the head sits. */
    public double presentedFaceDeg(Golfer golfer) {
        return golfer.address().squaresFace() ? address.faceHeadingDeg() : resting.closedDeg();
    }
}
