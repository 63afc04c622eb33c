package org.bagwright.flight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BallModelTest {
    private static final double RADIUS_M = 0.021335;
    private static final double VISCOSITY_M2_PER_S = Air.sutherlandViscosityPaS(20) / 1.2041;

    private static double spinRatio(double speedMps, double rpm) {
        return rpm * Math.PI / 30 * RADIUS_M / speedMps;
    }

    private static double reynolds(double speedMps) {
        return 2 * RADIUS_M * speedMps / VISCOSITY_M2_PER_S;
    }

    /** Bearman and Harvey 1976, figures 7 and 8 as digitised [quoted]: every point. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({
        "13.7, 2000, .3624, .1040",
        "21.6, 2000, .2885, .1846",
        "29.9, 2000, .2765, .2460",
        "38.4, 2000, .2529, .1984",
        "46.9, 2000, .2472, .1762",
        "55.2, 2000, .2481, .1538",
        "63.1, 2000, .2467, .1418",
        "71.9, 2000, .2470, .1360",
        "80.2, 2000, .2470, .1280",
        "88.1, 2000, .2470, .1276",
        "13.7, 3000, .4203, .3624",
        "21.6, 3000, .3658, .3362",
        "29.9, 3000, .3169, .3049",
        "38.4, 3000, .2822, .2475",
        "46.9, 3000, .2655, .2073",
        "55.2, 3000, .2578, .1856",
        "63.1, 3000, .2560, .1702",
        "71.9, 3000, .2550, .1584",
        "80.2, 3000, .2538, .1485",
        "88.1, 3000, .2538, .1464",
        "13.7, 4000, .4288, .4005",
        "21.6, 4000, .4003, .3640",
        "29.9, 4000, .3490, .3347",
        "38.4, 4000, .3084, .2862",
        "46.9, 4000, .2852, .2384",
        "55.2, 4000, .2710, .2149",
        "63.1, 4000, .2659, .1977",
        "71.9, 4000, .2630, .1807",
        "80.2, 4000, .2605, .1690",
        "88.1, 4000, .2605, .1582",
        "13.7, 6000, .5180, .4644",
        "21.6, 6000, .4406, .4227",
        "29.9, 6000, .3882, .3724",
        "38.4, 6000, .3517, .3393",
        "46.9, 6000, .3285, .3005",
        "55.2, 6000, .3076, .2662",
        "63.1, 6000, .2877, .2507",
        "71.9, 6000, .2790, .2254",
        "80.2, 6000, .2740, .2100",
        "88.1, 6000, .2740, .2000"
    })
    void bearmanHarvey_passesThroughItsTable(double speedMps, double rpm, double drag, double lift) {
        double s = spinRatio(speedMps, rpm);
        double re = reynolds(speedMps);
        assertEquals(drag, BearmanHarvey.MODEL.drag(s, re), 1e-9);
        assertEquals(lift, BearmanHarvey.MODEL.lift(s, re), 1e-9);
    }

    @Tag("analytic")
    @Test
    void bearmanHarvey_hasNoJumpInValueOrSlopeAnywhere() {
        double[] speedsMps = {8, 13.7, 17, 21.6, 29.9, 33.33, 38.4, 46.9, 55.2, 60, 63.1, 71.9, 80.2, 88.1, 100, 115};
        for (double speedMps : speedsMps) {
            for (double rpm = 50; rpm < 14000; rpm += 50) {
                assertNoJump(BearmanHarvey.MODEL::drag, spinRatio(speedMps, rpm), reynolds(speedMps));
                assertNoJump(BearmanHarvey.MODEL::lift, spinRatio(speedMps, rpm), reynolds(speedMps));
            }
        }
    }

    /** Second differences over a relative step of 1e-5: a slope that jumps by 0.01 (per 100 %) would show as 1e-7. */
    private static void assertNoJump(DoubleBinaryOperator coefficient, double s, double re) {
        double down = 1 - 1e-5;
        double up = 1 + 1e-5;
        double twice = 2 * coefficient.applyAsDouble(s, re);
        double bySpin = coefficient.applyAsDouble(s * down, re) - twice + coefficient.applyAsDouble(s * up, re);
        double bySpeed = coefficient.applyAsDouble(s, re * down) - twice + coefficient.applyAsDouble(s, re * up);
        double byBoth =
                coefficient.applyAsDouble(s / down, re * down) - twice + coefficient.applyAsDouble(s / up, re * up);
        assertEquals(0, bySpin, 1e-7, "spin ratio " + s + ", Reynolds number " + re);
        assertEquals(0, bySpeed, 1e-7, "spin ratio " + s + ", Reynolds number " + re);
        assertEquals(0, byBoth, 1e-7, "spin ratio " + s + ", Reynolds number " + re);
    }

    @Tag("analytic")
    @Test
    void bearmanHarvey_dragAndLiftRiseWithSpinAndStayPositive() {
        for (double speedMps = 25; speedMps < 100; speedMps += 2.5) {
            double dragBefore = 0;
            double liftBefore = 0;
            for (double rpm = 0; rpm < 12000; rpm += 100) {
                double drag = BearmanHarvey.MODEL.drag(spinRatio(speedMps, rpm), reynolds(speedMps));
                double lift = BearmanHarvey.MODEL.lift(spinRatio(speedMps, rpm), reynolds(speedMps));
                assertTrue(drag >= dragBefore && drag > 0.15, speedMps + " m/s " + rpm + " rpm");
                assertTrue(lift >= liftBefore, speedMps + " m/s " + rpm + " rpm");
                dragBefore = drag;
                liftBefore = lift;
            }
        }
    }

    @Tag("analytic")
    @Test
    void noSpin_givesNoLift() {
        assertEquals(0, BearmanHarvey.MODEL.lift(0, 150000));
        assertEquals(0, SmitsSmith.MODEL.lift(0, 150000));
    }

    /**
     * The formula of Smits and Smith 1994 [quoted] by hand at S = 0.1, Re = 190000: CD = 0.24 + 0.018 + 0.06,
     * CL = 0.54 x 0.3981.
     */
    @Tag("published")
    @Test
    void smitsSmith_isTheFormula() {
        assertEquals(0.318, SmitsSmith.MODEL.drag(0.1, 190000), 1e-12);
        assertEquals(0.21498, SmitsSmith.MODEL.lift(0.1, 190000), 5e-6);
    }
}
