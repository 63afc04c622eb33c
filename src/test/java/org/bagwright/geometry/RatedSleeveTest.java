package org.bagwright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.RatedChange;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.option.PoseNumbers;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A sleeve told by its own table: the table is the truth, the geometry is fitted to it. */
@Tag("analytic")
class RatedSleeveTest {
    private static final Sleeve TABLE = Bench.sleeve(
            Bench.rated("N", 0, 0, 0),
            Bench.rated("up", 1.5, 0.2, 2),
            Bench.rated("both", 1, -0.5, 1.5, new Ring(3, 1)),
            Bench.ringed("ring", true, new Ring(3, 1)));
    private static final Bench CLOSED = Bench.driver(10, 58, 1);
    private static final ClubGeometry GEOMETRY = CLOSED.with(TABLE);

    @Test
    void rated_loft_and_lie_read_on_the_gauge_exactly() {
        PoseNumbers up = GEOMETRY.pose(Bench.at("up"));
        assertEquals(11.5, up.gaugeLoftDeg(), 1e-10);
        assertEquals(58.2, up.gaugeLieDeg(), 1e-10);
    }

    @Test
    void rated_face_change_adds_to_how_the_head_sits_on_the_bore() {
        double bareDeg = GEOMETRY.pose(new Choice(Optional.empty(), Bend.NONE)).sitsClosedDeg();
        PoseNumbers up = GEOMETRY.pose(Bench.at("up"));
        assertEquals(bareDeg + 2, up.sitsClosedDeg(), 1e-9);
        assertEquals(bareDeg, GEOMETRY.pose(Bench.at("N")).sitsClosedDeg(), 1e-9);
    }

    /** The fitted geometry of 1.5 degrees more loft sits about 1.5 tan(58) = 2.4 degrees more closed; rated are 2. */
    @Test
    void face_misfit_is_rated_less_fitted() {
        assertEquals(
                2 - 1.5 * Math.tan(Math.toRadians(58)),
                GEOMETRY.ratedFaceMisfitDeg("up").orElseThrow(),
                0.03);
        assertTrue(GEOMETRY.ratedFaceMisfitDeg("ring").isEmpty());
    }

    /** Turned about the shaft by the misfit, which trades loft for face at cot(lie). */
    @Test
    void loft_as_it_sits_follows_the_rated_face() {
        double misfitDeg = GEOMETRY.ratedFaceMisfitDeg("up").orElseThrow();
        Sleeve honest = Bench.sleeve(Bench.rated("up", 1.5, 0.2, 2 - misfitDeg));
        double fittedDeg = CLOSED.with(honest).pose(Bench.at("up")).resting().loftDeg();
        double expectedDeg = fittedDeg - misfitDeg / Math.tan(Math.toRadians(58));
        assertEquals(expectedDeg, GEOMETRY.pose(Bench.at("up")).resting().loftDeg(), 0.002);
    }

    @Test
    void table_beats_rings_and_the_misfits_tell_by_how_much() {
        PoseNumbers both = GEOMETRY.pose(Bench.at("both"));
        PoseNumbers ring = GEOMETRY.pose(Bench.at("ring"));
        assertEquals(11, both.gaugeLoftDeg(), 1e-10);
        assertEquals(57.5, both.gaugeLieDeg(), 1e-10);
        assertEquals(
                11 - ring.gaugeLoftDeg(), GEOMETRY.ratedLoftMisfitDeg("both").orElseThrow(), 1e-10);
        assertEquals(
                57.5 - ring.gaugeLieDeg(), GEOMETRY.ratedLieMisfitDeg("both").orElseThrow(), 1e-10);
        assertTrue(GEOMETRY.ratedLoftMisfitDeg("up").isEmpty());
        assertTrue(GEOMETRY.ratedLieMisfitDeg("ring").isEmpty());
    }

    @Test
    void bend_moves_a_rated_club_on_from_its_rated_look() {
        Sleeve sleeve = Bench.sleeve(Bench.rated("up", 1, 0, 1));
        ClubGeometry iron = Bench.iron(30, 62).with(sleeve);
        PoseNumbers unbent = iron.pose(Bench.at("up"));
        PoseNumbers bent = iron.pose(new Choice(Optional.of("up"), new Bend(1, 0)));
        assertEquals(unbent.gaugeLoftDeg() + 1, bent.gaugeLoftDeg(), 1e-10);
        // The tangent of the lie is the slope for small bends; this one is a degree.
        assertEquals(Math.tan(Math.toRadians(62)), bent.sitsClosedDeg() - unbent.sitsClosedDeg(), 0.03);
    }

    @Test
    void head_stated_at_a_rated_setting_is_solved_through_the_table() {
        PoseNumbers up = Bench.driver(10.5, 58.5, 1).statedAt("up").with(TABLE).pose(Bench.at("up"));
        assertEquals(10.5, up.gaugeLoftDeg(), 1e-10);
        assertEquals(58.5, up.gaugeLieDeg(), 1e-10);
        PoseNumbers bare =
                Bench.driver(10.5, 58.5, 1).statedAt("up").with(TABLE).pose(new Choice(Optional.empty(), Bend.NONE));
        assertEquals(9, bare.gaugeLoftDeg(), 1e-10);
        assertEquals(58.3, bare.gaugeLieDeg(), 1e-10);
    }

    /** A table written down from a ring of 1.7 degrees gives back that ring, its hours and no misfit. */
    @Test
    void table_of_a_one_ring_sleeve_gives_back_its_ring() {
        Bench driver = Bench.driver(9.5, 58);
        double[] hours = {1.5, 3, 4.5, 9};
        var settings = new org.bagwright.domain.club.SleeveSetting[hours.length];
        for (int i = 0; i < hours.length; i++) {
            PoseNumbers pose = driver.ring(hours[i], 1.7);
            settings[i] =
                    Bench.rated("m" + i, pose.gaugeLoftDeg() - 9.5, pose.gaugeLieDeg() - 58, pose.sitsClosedDeg());
        }
        ClubGeometry geometry = driver.with(Bench.sleeve(settings));
        RatedFit fit = geometry.ratedFit().orElseThrow();
        assertEquals(1.7, fit.commonBendDeg(), 1e-10);
        assertEquals(0, fit.misfitDeg(), 1e-10);
        for (int i = 0; i < hours.length; i++) {
            assertEquals(hours[i], fit.rings().get(i).clockH(), 1e-9);
            assertEquals(0, geometry.ratedFaceMisfitDeg("m" + i).orElseThrow(), 1e-8);
        }
        assertEquals(45, geometry.pose(Bench.at("m1")).shaftTurnDeg(), 1e-8);
    }

    @Test
    void misfit_of_unlike_bends_is_their_spread() {
        Sleeve sleeve = Bench.sleeve(Bench.rated("a", 0, 1, 0), Bench.rated("b", 0, -2, 0));
        RatedFit fit = Bench.driver(9.5, 58).with(sleeve).ratedFit().orElseThrow();
        assertEquals(1.5, fit.commonBendDeg(), 1e-10);
        assertEquals(0.5, fit.misfitDeg(), 1e-10);
        assertEquals(12, fit.rings().get(0).clockH(), 1e-9);
        assertEquals(6, fit.rings().get(1).clockH(), 1e-9);
        assertEquals(Optional.empty(), Bench.driver(9.5, 58).glued().ratedFit());
    }

    /** A blank face change leaves how the head sits to the geometry; with rings alone it turns only the face. */
    @Test
    void table_without_a_face_leaves_how_it_sits_to_the_geometry() {
        SleeveSetting open = new SleeveSetting(
                "open",
                List.of(),
                true,
                Optional.of(new RatedChange(OptionalDouble.of(1.5), OptionalDouble.of(0.2), OptionalDouble.empty())));
        SleeveSetting faceOnly = new SleeveSetting(
                "face",
                List.of(new Ring(3, 1)),
                true,
                Optional.of(new RatedChange(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(0.5))));
        ClubGeometry geometry =
                Bench.driver(9.5, 58).with(Bench.sleeve(open, faceOnly, Bench.ringed("ring", true, new Ring(3, 1))));
        assertTrue(geometry.ratedFaceMisfitDeg("open").isEmpty());
        PoseNumbers sitting = geometry.pose(Bench.at("open"));
        Vector3D shaft = geometry.design().shaftFor(new GaugeReading(sitting.gaugeLoftDeg(), sitting.gaugeLieDeg()));
        assertEquals(Bench.flatSoleSitsDeg(shaft), sitting.sitsClosedDeg(), 0.01);
        PoseNumbers face = geometry.pose(Bench.at("face"));
        PoseNumbers ring = geometry.pose(Bench.at("ring"));
        assertEquals(ring.gaugeLoftDeg(), face.gaugeLoftDeg(), 1e-12);
        assertEquals(ring.gaugeLieDeg(), face.gaugeLieDeg(), 1e-12);
        assertEquals(0.5, face.sitsClosedDeg(), 1e-9);
        assertEquals(
                0.5 - ring.sitsClosedDeg(), geometry.ratedFaceMisfitDeg("face").orElseThrow(), 1e-9);
        assertTrue(geometry.ratedLoftMisfitDeg("face").isEmpty());
    }

    @Test
    void rated_change_needs_both_loft_and_lie_and_a_setting_a_shaft() {
        OptionalDouble none = OptionalDouble.empty();
        assertThrows(IllegalArgumentException.class, () -> new RatedChange(OptionalDouble.of(1), none, none));
        assertThrows(IllegalArgumentException.class, () -> new RatedChange(none, none, none));
        RatedChange faceOnly = new RatedChange(none, none, OptionalDouble.of(1));
        assertThrows(
                IllegalArgumentException.class,
                () -> new SleeveSetting("face", List.of(), true, Optional.of(faceOnly)));
    }

    @Test
    void unknown_mark_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> GEOMETRY.pose(Bench.at("none")));
        assertThrows(
                IllegalArgumentException.class,
                () -> Bench.driver(9.5, 58).statedAt("none").with(TABLE));
    }
}
