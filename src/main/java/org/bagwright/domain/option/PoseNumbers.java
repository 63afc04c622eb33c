package org.bagwright.domain.option;

/**
 * What the geometry says of one option in one golfer's hands. Angles in degrees.
 *
 * @param gaugeLoftDeg what a loft gauge reads
 * @param gaugeLieDeg what a lie gauge reads
 * @param addressLoftDeg loft at the golfer's lie and lean with a square leading edge
 * @param faceHeadingDeg heading of the face in that pose, closed positive
 * @param soleTiltDeg how far the toe is up in that pose; negative is heel up
 * @param toeGapMm the gap between ground and sole at the toe in that pose, mm; negative is a gap under the heel
 * @param sitsClosedDeg heading of the leading edge when the head sits as it wants, closed positive
 * @param loftAsItSitsDeg loft in that pose
 * @param contactShiftMm how far the contact point on the sole moved forward from the design pose, mm; negative is back
 * @param contactShiftToToeMm how far it moved toward the toe, mm; negative is toward the heel
 * @param shaftTurnDeg how far the shaft is turned from today's setting, degrees, in (-180, 180]
 */
public record PoseNumbers(
        double gaugeLoftDeg,
        double gaugeLieDeg,
        double addressLoftDeg,
        double faceHeadingDeg,
        double soleTiltDeg,
        double toeGapMm,
        double sitsClosedDeg,
        double loftAsItSitsDeg,
        double contactShiftMm,
        double contactShiftToToeMm,
        double shaftTurnDeg) {}
