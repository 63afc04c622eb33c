package org.bagwright.geometry;

import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.RatedChange;

/**
 * What a loft-and-lie gauge reads: leading edge square, scorelines level, shaft upright as seen from the front.
 *
 * @param loftDeg gauge loft, degrees
 * @param lieDeg gauge lie, degrees
 */
record GaugeReading(double loftDeg, double lieDeg) {
    GaugeReading plus(Bend bend) {
        return new GaugeReading(loftDeg + bend.loftDeg(), lieDeg + bend.lieDeg());
    }

    /** With a rated change of loft and lie, which must say both. */
    GaugeReading plus(RatedChange change) {
        return new GaugeReading(
                loftDeg + change.loftDeg().orElseThrow(),
                lieDeg + change.lieDeg().orElseThrow());
    }

    GaugeReading minus(RatedChange change) {
        return new GaugeReading(
                loftDeg - change.loftDeg().orElseThrow(),
                lieDeg - change.lieDeg().orElseThrow());
    }
}
