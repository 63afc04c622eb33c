package org.bagwright.geometry;

import java.util.Optional;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.HeadForm;

/**
 * The sole on which a head rests, a cap curved two ways, and the centre of gravity over its middle. A head rests steadily
 * only while its centre of gravity is lower than both radii.
 *
 * @param foreAftRadiusMm radius from leading to trailing edge, mm
 * @param heelToeRadiusMm radius from heel to toe, mm
 * @param centreOfGravityHeightMm height of the centre of gravity over the sole, mm
 */
public record SoleForm(double foreAftRadiusMm, double heelToeRadiusMm, double centreOfGravityHeightMm) {
    public SoleForm {
        boolean sound = centreOfGravityHeightMm > 0
                && foreAftRadiusMm > centreOfGravityHeightMm
                && heelToeRadiusMm > centreOfGravityHeightMm
                && Double.isFinite(foreAftRadiusMm + heelToeRadiusMm);
        if (!sound) {
            throw new IllegalArgumentException(topples(foreAftRadiusMm, heelToeRadiusMm, centreOfGravityHeightMm));
        }
    }

    /**
     * What is assumed where nothing is stated, by kind. The driver's figures are those of the model's check table. The
     * others are not measured: round figures in the range seen on a bench, flatter soles and higher centres of gravity
     * on the bigger heads.
     */
    public static SoleForm assumedFor(ClubKind kind) {
        return switch (kind) {
            case DRIVER -> new SoleForm(200, 250, 30);
            case WOOD -> new SoleForm(160, 230, 22);
            case HYBRID -> new SoleForm(110, 220, 20);
            case IRON -> new SoleForm(80, 220, 20);
            case WEDGE -> new SoleForm(60, 200, 19);
            case PUTTER -> new SoleForm(150, 300, 14);
        };
    }

    /**
     * A club's own form, with assumed values where it states none.
     *
     * @throws IllegalArgumentException when {@link #problemOf} finds a problem
     */
    public static SoleForm of(Club club) {
        SoleForm assumed = assumedFor(club.kind());
        HeadForm stated = club.form();
        return new SoleForm(
                stated.soleForeAftRadiusMm().orElse(assumed.foreAftRadiusMm),
                stated.soleHeelToeRadiusMm().orElse(assumed.heelToeRadiusMm),
                stated.centreOfGravityHeightMm().orElse(assumed.centreOfGravityHeightMm));
    }

    /** What is wrong with the form a club states, in words; empty when nothing is. Ask before a geometry is made. */
    public static Optional<String> problemOf(Club club) {
        try {
            of(club);
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }

    /**
     * The gap under the toe of a tilted head: half its length from heel to toe, times the sine of the tilt.
     *
     * @param kind gives the length: driver 120, wood 105, hybrid 95, iron and wedge 80, putter 110 mm, all assumed
     * @param soleTiltDeg how far the toe is up, degrees
     * @return mm; negative is a gap under the heel
     */
    public static double toeGapMm(ClubKind kind, double soleTiltDeg) {
        return assumedLengthMm(kind) / 2 * Math.sin(Math.toRadians(soleTiltDeg));
    }

    private static double assumedLengthMm(ClubKind kind) {
        return switch (kind) {
            case DRIVER -> 120;
            case WOOD -> 105;
            case HYBRID -> 95;
            case IRON, WEDGE -> 80;
            case PUTTER -> 110;
        };
    }

    private static String topples(double foreAftMm, double heelToeMm, double heightMm) {
        return "a head rests on its sole only while its centre of gravity is lower than both sole radii; found a height of "
                + heightMm + " mm over radii of " + foreAftMm + " and " + heelToeMm + " mm";
    }
}
