package org.bagwright.flight.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.flight.BallStart;
import org.bagwright.flight.Launch;
import org.bagwright.flight.golfer.TestBags;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The quadratic surface against flights, as far from its centre as a golfer is known after some shots. */
@Tag("analytic")
class CarrySurfaceTest {
    private static final double[][] CENTRES = {
        {Math.log(62), 12, Math.log(2800), 0, 0},
        {Math.log(56), 13, Math.log(3600), 0.05, -0.03},
        {Math.log(47), 18, Math.log(5500), -0.05, 0.03},
        {Math.log(38), 27, Math.log(8500), 0, 0}
    };

    /** About the centre: 1.5 % of ball speed, 0.7 degrees, 5 % of spin, 4 % of drag and lift. */
    private static final double[] NEAR = {0.015, 0.7, 0.05, 0.04, 0.04};

    private static double flownM(BallModelKind kind, double[] at) {
        return ModelSketch.AIR
                .with(0, Math.exp(at[3]), Math.exp(at[4]))
                .flyAs(kind, BallStart.of(new Launch(Math.exp(at[0]), at[1], Math.exp(at[2]))))
                .carryM();
    }

    @Test
    void surface_isTheFlightNearItsCentre() {
        Random random = new Random(12);
        double[] missYd = new double[800];
        int count = 0;
        for (double[] centre : CENTRES) {
            for (BallModelKind kind : BallModelKind.values()) {
                CarrySurface surface = new CarrySurface(ModelSketch.AIR, kind, centre);
                for (int i = 0; i < 100; i++) {
                    double[] at = centre.clone();
                    for (int j = 0; j < at.length; j++) {
                        at[j] += NEAR[j] * random.nextGaussian();
                    }
                    missYd[count++] = Math.abs(surface.carryM(at) - flownM(kind, at)) / TestBags.M_PER_YD;
                }
            }
        }
        assertEquals(missYd.length, count);
        Arrays.sort(missYd);
        String found = "median " + missYd[400] + ", 99 % " + missYd[791] + " yd";
        assertTrue(missYd[400] <= 0.05 && missYd[791] <= 0.35, found);
    }

    @Test
    void centre_isFlown() {
        for (double[] centre : CENTRES) {
            for (BallModelKind kind : BallModelKind.values()) {
                assertEquals(
                        flownM(kind, centre), new CarrySurface(ModelSketch.AIR, kind, centre).carryM(centre), 1e-9);
            }
        }
    }
}
