package org.bagwright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The sole as the lower cap of an ellipsoid: what any book on quadric surfaces says of such a body. */
@Tag("analytic")
class SoleTest {
    /** Half the upright axis of the ellipsoid, as the design of the model fixes it. */
    private static final double UPRIGHT_MM = 40;

    private final SoleForm form = new SoleForm(200, 250, 30);
    private final Sole sole = new Sole(form);

    private static Vector3D tilted(RepetitionInfo info) {
        Random random = new Random(info.getCurrentRepetition());
        return new Vector3D(random.nextGaussian() / 5, random.nextGaussian() / 5, 1).normalize();
    }

    @Test
    void upright_theHeadStandsOnItsLowestPoint() {
        assertEquals(30, sole.heightMm(Vector3D.PLUS_K), 1e-12);
        assertEquals(0, sole.contactMm(Vector3D.PLUS_K).getNorm(), 1e-12);
    }

    /** Axes sqrt(40 R), so that the lowest point has the stated radii; its centre is 40 mm over that point. */
    @RepeatedTest(20)
    void contact_liesOnTheEllipsoid(RepetitionInfo info) {
        Vector3D contact = sole.contactMm(tilted(info));
        double upright = contact.getZ() - UPRIGHT_MM;
        double sum = contact.getX() * contact.getX() / (UPRIGHT_MM * form.foreAftRadiusMm())
                + contact.getY() * contact.getY() / (UPRIGHT_MM * form.heelToeRadiusMm())
                + upright * upright / (UPRIGHT_MM * UPRIGHT_MM);
        assertEquals(1, sum, 1e-12);
    }

    /** The height of the centre of gravity over the ground is its height over the contact point, seen along the vertical. */
    @RepeatedTest(20)
    void height_isThatOverTheContact(RepetitionInfo info) {
        Vector3D up = tilted(info);
        Vector3D centreOfGravity = new Vector3D(0, 0, form.centreOfGravityHeightMm());
        assertEquals(centreOfGravity.subtract(sole.contactMm(up)).dotProduct(up), sole.heightMm(up), 1e-12);
    }

    /** No point of the ellipsoid is lower than the contact. */
    @RepeatedTest(20)
    void contact_isTheLowestPoint(RepetitionInfo info) {
        Vector3D up = tilted(info);
        double lowest = sole.contactMm(up).dotProduct(up);
        Random random = new Random(info.getCurrentRepetition());
        for (int point = 0; point < 200; point++) {
            Vector3D sphere =
                    new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).normalize();
            Vector3D surface = new Vector3D(
                    Math.sqrt(UPRIGHT_MM * form.foreAftRadiusMm()) * sphere.getX(),
                    Math.sqrt(UPRIGHT_MM * form.heelToeRadiusMm()) * sphere.getY(),
                    UPRIGHT_MM + UPRIGHT_MM * sphere.getZ());
            assertTrue(surface.dotProduct(up) >= lowest - 1e-9);
        }
    }
}
