package org.bagwright.geometry;

import java.util.List;

/**
 * A sleeve's rated table read as one ring. Each setting has a ring that meets its loft and lie exactly; a real one-ring
 * sleeve has one bend for all of them.
 *
 * @param rings the exact ring of every rated setting, in the order of the sleeve
 * @param commonBendDeg the one bend nearest to all of them in least squares, degrees
 * @param misfitDeg how far the shaft is then off, root mean square over the settings, degrees
 */
public record RatedFit(List<FittedRing> rings, double commonBendDeg, double misfitDeg) {
    public RatedFit {
        rings = List.copyOf(rings);
    }

    static RatedFit of(List<FittedRing> rings) {
        double meanDeg =
                rings.stream().mapToDouble(FittedRing::bendDeg).average().orElseThrow();
        double meanSquare = rings.stream()
                .mapToDouble(ring -> (ring.bendDeg() - meanDeg) * (ring.bendDeg() - meanDeg))
                .average()
                .orElseThrow();
        return new RatedFit(rings, meanDeg, Math.sqrt(meanSquare));
    }

    /**
     * The ring that meets one rated setting.
     *
     * @param mark the mark of the setting
     * @param clockH the hour toward which the shaft leans; 12 where it does not lean
     * @param bendDeg the angle between shaft and bore, degrees
     */
    public record FittedRing(String mark, double clockH, double bendDeg) {}
}
