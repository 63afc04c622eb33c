package org.bagwright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.option.PoseNumbers;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every fitter should see in the numbers, by closed forms and limits. */
@Tag("analytic")
class PoseTruthsTest {
    private static final Bench DRIVER = Bench.driver(9.5, 58);

    /** At hour 3 the shaft is {@code (sin bend, cos bend cos L0, cos bend sin L0)}: tan(change) = tan(bend) / sin(L0). */
    @ParameterizedTest
    @CsvSource({"54, 1.7", "58, 1", "58, 1.7", "64, 2"})
    void hour_three_adds_more_loft_than_its_bend(double lieDeg, double bendDeg) {
        double expected =
                Math.toDegrees(Math.atan(Math.tan(Math.toRadians(bendDeg)) / Math.sin(Math.toRadians(lieDeg))));
        PoseNumbers pose = Bench.driver(9.5, lieDeg).ring(3, bendDeg);
        assertEquals(9.5 + expected, pose.gaugeLoftDeg(), 1e-10);
        assertEquals(bendDeg / Math.sin(Math.toRadians(lieDeg)), pose.gaugeLoftDeg() - 9.5, 5e-4);
    }

    /** A 1.70 degree bend in a 58 degree head gives 2.00 degrees of loft, not 1.70. */
    @Test
    void two_degrees_of_loft_come_from_a_bend_of_one_point_seven() {
        assertEquals(2.00, DRIVER.ring(3, 1.7).gaugeLoftDeg() - 9.5, 0.005);
        assertEquals(-2.00, DRIVER.ring(9, 1.7).gaugeLoftDeg() - 9.5, 0.005);
    }

    @ParameterizedTest
    @ValueSource(doubles = {3, 9})
    void hours_three_and_nine_leave_the_lie(double clockH) {
        double bendRad = Math.toRadians(1.7);
        double secondOrderDeg = Math.toDegrees(bendRad * bendRad / 2 / Math.tan(Math.toRadians(58)));
        // The next term is of the third order.
        assertEquals(58 + secondOrderDeg, DRIVER.ring(clockH, 1.7).gaugeLieDeg(), 1e-5);
    }

    @ParameterizedTest
    @CsvSource({"12, 1", "6, -1"})
    void hours_twelve_and_six_change_lie_by_the_bend_and_no_loft(double clockH, double sign) {
        PoseNumbers pose = DRIVER.ring(clockH, 1.7);
        assertEquals(58 + sign * 1.7, pose.gaugeLieDeg(), 1e-10);
        assertEquals(9.5, pose.gaugeLoftDeg(), 1e-10);
    }

    /** Two degrees of loft left un-squared are about 3.2 degrees of face: 2 / cot(58). */
    @Test
    void loft_left_unsquared_shows_as_face() {
        PoseNumbers pose = DRIVER.ring(3, 1.7);
        double loftAdded = pose.gaugeLoftDeg() - 9.5;
        assertEquals(loftAdded * Math.tan(Math.toRadians(58)), pose.sitsClosedDeg(), 0.005);
        assertEquals(3.2, pose.sitsClosedDeg(), 0.005);
    }

    /** Within 0.1 degree at every quarter hour, while the gauge loft swings by 4 degrees. */
    @Test
    void loft_as_it_sits_is_nearly_the_design_loft_at_every_hour() {
        for (double clockH = 0; clockH < 12; clockH += 0.25) {
            assertEquals(9.5, DRIVER.ring(clockH, 1.7).resting().loftDeg(), 0.1, "hour " + clockH);
        }
    }

    @Test
    void lofting_up_sits_closed_and_touches_further_back() {
        PoseNumbers up = DRIVER.ring(3, 1.7);
        PoseNumbers down = DRIVER.ring(9, 1.7);
        assertTrue(up.sitsClosedDeg() > 3 && up.address().contactShiftMm() < -6.5);
        assertTrue(down.sitsClosedDeg() < -3 && down.address().contactShiftMm() > 6.5);
    }

    /** Toe up by a tilt d: the cap of radius 250 mm touches about 250 sin(d) nearer the heel. */
    @Test
    void upright_setting_lifts_the_toe_and_touches_at_the_heel() {
        PoseNumbers pose = DRIVER.ring(12, 1.7);
        assertEquals(1.7, pose.address().soleTiltDeg(), 1e-10);
        assertEquals(-250 * Math.sin(Math.toRadians(1.7)), pose.address().contactShiftToToeMm(), 0.02);
        assertEquals(
                60 * Math.sin(Math.toRadians(1.7)),
                SoleForm.toeGapMm(ClubKind.DRIVER, pose.address().soleTiltDeg()),
                1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-2, 0, 1.5})
    void no_bend_gives_the_design_values(double faceDeg) {
        ClubGeometry geometry = Bench.driver(9.5, 58, faceDeg).glued();
        HeadDesign design = geometry.design();
        PoseNumbers pose = Bench.driver(9.5, 58, faceDeg)
                .heldAt(design.lieDeg(), 0)
                .glued()
                .pose(new Choice(Optional.empty(), Bend.NONE));
        assertEquals(9.5, pose.gaugeLoftDeg(), 1e-10);
        assertEquals(58, pose.gaugeLieDeg(), 1e-10);
        assertEquals(design.loftDeg(), pose.resting().loftDeg(), 1e-8);
        assertEquals(faceDeg, pose.sitsClosedDeg(), 1e-8);
    }

    @Test
    void equal_rings_at_opposite_hours_cancel() {
        for (double clockH = 0; clockH <= 6; clockH += 0.5) {
            PoseNumbers pose = DRIVER.rings(new Ring(clockH, 1.3), new Ring(clockH + 6, 1.3));
            assertEquals(9.5, pose.gaugeLoftDeg(), 1e-10);
            assertEquals(58, pose.gaugeLieDeg(), 1e-10);
            assertEquals(0, pose.sitsClosedDeg(), 1e-8);
        }
    }

    @Test
    void equal_rings_at_one_hour_add_up() {
        PoseNumbers two = DRIVER.rings(new Ring(3, 0.8), new Ring(3, 0.9));
        assertEquals(DRIVER.ring(3, 1.7).gaugeLoftDeg(), two.gaugeLoftDeg(), 1e-10);
    }

    /** Forward lean takes loft off: with a matched lie the head is turned back about the scorelines by the lean. */
    @Test
    void forward_lean_takes_its_angle_off_the_loft() {
        PoseNumbers pose = Bench.iron(34, 62).heldAt(62, 5).glued().pose(Bench.bent(0, 0));
        assertEquals(29, pose.address().loftDeg(), 0.01);
        assertEquals(34, pose.gaugeLoftDeg(), 1e-10);
    }

    @ParameterizedTest
    @CsvSource({"2, 0", "0, -1.5", "-1, 2"})
    void hosel_bend_reads_on_the_gauge_as_bent(double loftDeg, double lieDeg) {
        PoseNumbers pose = Bench.iron(34, 62).glued().pose(Bench.bent(loftDeg, lieDeg));
        assertEquals(34 + loftDeg, pose.gaugeLoftDeg(), 1e-10);
        assertEquals(62 + lieDeg, pose.gaugeLieDeg(), 1e-10);
    }

    @Test
    void hosel_bend_in_a_sleeve_adds_to_the_setting() {
        Sleeve sleeve = Bench.sleeve(new Ring(4.5, 1.5));
        ClubGeometry geometry = Bench.iron(34, 62).with(sleeve);
        PoseNumbers set = geometry.pose(Bench.at(Bench.MARK));
        PoseNumbers bent = geometry.pose(new Choice(Optional.of(Bench.MARK), new Bend(1, -0.5)));
        assertEquals(set.gaugeLoftDeg() + 1, bent.gaugeLoftDeg(), 1e-10);
        assertEquals(set.gaugeLieDeg() - 0.5, bent.gaugeLieDeg(), 1e-10);
    }

    /** A weaker bend moves the shaft as a sleeve at hour 3 would, so the head sits closed. */
    @Test
    void weaker_hosel_sits_closed() {
        assertEquals(
                Math.tan(Math.toRadians(62)),
                Bench.iron(34, 62).glued().pose(Bench.bent(1, 0)).sitsClosedDeg(),
                0.005);
    }

    @ParameterizedTest
    @CsvSource({"12, 0", "1.5, 45", "6, 180", "7.5, -135", "9, -90", "0, 0"})
    void fixed_sleeve_turns_the_shaft_by_the_change_of_hour(double clockH, double turnDeg) {
        assertEquals(turnDeg, DRIVER.ring(clockH, 1.7).shaftTurnDeg(), 0);
    }

    @Test
    void shaft_turn_counts_the_first_ring_and_straight_clocks_and_no_loose_ring() {
        Sleeve sleeve = Bench.sleeve(
                Bench.ringed("today", true, new Ring(9, 0)),
                Bench.ringed("two", true, new Ring(3, 1), new Ring(6, 1)),
                Bench.ringed("loose", false, new Ring(3, 1)));
        ClubGeometry geometry = DRIVER.with(sleeve);
        assertEquals(180, geometry.pose(Bench.at("two")).shaftTurnDeg(), 0);
        assertEquals(0, geometry.pose(Bench.at("loose")).shaftTurnDeg(), 0);
        assertEquals(0, geometry.pose(Bench.at("today")).shaftTurnDeg(), 0);
    }

    @Test
    void centre_of_gravity_over_the_radius_is_refused_in_words() {
        Bench topHeavy = Bench.driver(9.5, 58).soled(25, 250, 30);
        String problem = SoleForm.problemOf(topHeavy.club(Optional.empty())).orElseThrow();
        assertTrue(problem.contains("25") && problem.contains("30"), problem);
        assertEquals(Optional.empty(), SoleForm.problemOf(DRIVER.club(Optional.empty())));
    }

    @Test
    void every_kind_has_a_sole_that_rests() {
        for (ClubKind kind : List.of(ClubKind.values())) {
            SoleForm form = SoleForm.assumedFor(kind);
            assertTrue(form.foreAftRadiusMm() > 2 * form.centreOfGravityHeightMm(), kind.label());
        }
    }
}
