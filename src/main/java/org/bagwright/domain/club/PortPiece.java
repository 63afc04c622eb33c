package org.bagwright.domain.club;

import org.bagwright.domain.units.Checks;

/**
 * A piece of a kit in one port of a head. Head frame of a right-handed head soled as designed, from the centre of gravity of
 * the head with empty ports: x toward the target, y toward the golfer, z up; a left-handed head is its mirror image, so that
 * y is toward the golfer there too.
 *
 * @param port the port's name
 * @param massKg mass, kilograms; 0 is an empty port
 * @param xMm toward the target, mm
 * @param yMm toward the golfer, mm
 * @param zMm up, mm
 */
public record PortPiece(String port, double massKg, double xMm, double yMm, double zMm) {

    public PortPiece {
        Checks.named(port, "port");
        Checks.notNegative(massKg, "mass of a piece");
        Checks.finite(xMm, "X");
        Checks.finite(yMm, "Y");
        Checks.finite(zMm, "Z");
    }
}
