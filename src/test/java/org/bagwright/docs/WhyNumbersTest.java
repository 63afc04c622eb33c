package org.bagwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bagwright.docs.PageClubs.ShaftTop;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The relations that the page derives, against figures and formulas from outside the program. */
class WhyNumbersTest {
    /** Loft for a degree of face about the shaft, cot(lie) [own: a separate program], to half its last digit. */
    @Tag("analytic")
    @ParameterizedTest
    @CsvSource({"57, 0.65", "58, 0.62", "60, 0.58"})
    void loft_for_a_degree_of_face_meets_the_separate_program(double lieDeg, double ratio) {
        assertEquals(ratio, WhyNumbers.loftPerFaceRatio(lieDeg), 0.005);
    }

    /** Heading of the face, lie 2 degrees off [own: a separate program], to half its last digit. */
    @Tag("analytic")
    @ParameterizedTest
    @CsvSource({"10, 0.353", "20, 0.728", "30, 1.154", "40, 1.677", "50, 2.382", "60, 3.459"})
    void face_of_a_lie_off_meets_the_separate_program(double loftDeg, double headingDeg) {
        assertEquals(headingDeg, PageClubs.faceHeadingDeg(loftDeg, 2), 0.0005 + 1e-9);
    }

    /** Hour 3 puts the top of a metre of shaft 1000 sin(bend) forward; the rest keeps the lie of the bore. */
    @Tag("analytic")
    @Test
    void top_of_the_shaft_steps_forward_by_the_sine_of_the_bend() {
        ShaftTop top = PageClubs.shaftTop(3);
        double bendRad = Math.toRadians(PageClubs.BEND_DEG);
        double lieRad = Math.toRadians(PageClubs.LIE_DEG);
        assertEquals(1000 * Math.sin(bendRad), top.forwardMm(), 1e-9);
        assertEquals(1000 * Math.cos(bendRad) * Math.cos(lieRad), top.reachMm(), 1e-9);
        assertEquals(1000 * Math.cos(bendRad) * Math.sin(lieRad), top.heightMm(), 1e-9);
    }

    /** A ball of 200 mm with its weight 170 mm under its middle, leant by the loft; the real sole is no ball: 0.05 mm. */
    @Tag("analytic")
    @Test
    void balance_point_moves_ahead_as_in_a_ball_leant_by_the_loft() {
        double leantRad = Math.toRadians(PageClubs.driver(3).address().loftDeg() - PageClubs.LOFT_DEG);
        assertEquals(170 * Math.sin(leantRad), SolePicture.aheadMm(), 0.02);
    }
}
