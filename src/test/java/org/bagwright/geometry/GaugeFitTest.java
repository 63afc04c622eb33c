package org.bagwright.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.bagwright.ClubSketch;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.StatedHead;
import org.bagwright.domain.gauge.GaugedClub;
import org.bagwright.domain.gauge.GaugedNumber;
import org.bagwright.domain.gauge.GaugedReading;
import org.bagwright.domain.gauge.Repeatability;
import org.bagwright.domain.option.PoseNumbers;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings without noise are told exactly, and what they cannot tell is said. */
@Tag("analytic")
class GaugeFitTest {
    private static final Gauge TRUTH = new Gauge(10.1, 57.2, 1.23, 0.6);

    private static GaugedClub fit(List<Reading> readings) {
        return fit(Gauge.club(), Optional.of(Gauge.STATED), readings);
    }

    private static GaugedClub fit(Club club, Optional<Sleeve> sleeve, List<Reading> readings) {
        return GaugeFit.fit(club, sleeve, readings, Repeatability.USUAL_DEG);
    }

    private static List<Reading> exact(Gauge truth, int... marks) {
        return truth.readings(new Random(1), 0, marks);
    }

    private static void assertFound(double expected, GaugedNumber found) {
        assertFalse(found.held());
        assertEquals(expected, found.valueMeasureUnits(), 1e-6);
    }

    @Test
    void exact_readings_give_the_truth() {
        GaugedClub found = fit(exact(TRUTH, 0, 2, 3, 5));
        assertFound(10.1, found.design().loft());
        assertFound(57.2, found.design().lie());
        assertFound(1.23, found.sleeve().orElseThrow().bend());
        assertFound(0.6, found.sleeve().orElseThrow().clockOffset());
        assertEquals(10.1, found.design().loft().valueMeasureUnits(), 1e-6);
        assertEquals(List.of(), found.notes());
        found.readings().forEach(reading -> {
            assertEquals(0, reading.loftResidualDeg().orElseThrow(), 1e-6);
            assertEquals(0, reading.lieResidualDeg().orElseThrow(), 1e-6);
            assertFalse(reading.flagged());
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {-5.5, -3, 3, 5.9})
    void marks_far_off_are_found(double offsetH) {
        GaugedClub found = fit(exact(new Gauge(9.5, 58, 1.5, offsetH), 0, 2, 4));
        assertFound(offsetH, found.sleeve().orElseThrow().clockOffset());
    }

    @Test
    void two_settings_are_enough_for_a_ring() {
        GaugedClub found = fit(exact(TRUTH, 1, 5));
        assertFound(1.23, found.sleeve().orElseThrow().bend());
        assertFound(0.6, found.sleeve().orElseThrow().clockOffset());
    }

    /** On a glued club n readings of each give repeatability / sqrt(n). */
    @Test
    void glued_club_gets_the_mean_and_its_standard_error() {
        Club club = Bench.iron(30, 61).club(Optional.empty());
        GaugedClub found = GaugeFit.fit(
                club,
                Optional.empty(),
                List.of(bare(30.2, 61.4), bare(30.4, 61.1), bare(30.3, 61.2), bare(30.3, 61.1)),
                0.2);
        assertFound(30.3, found.design().loft());
        assertFound(61.2, found.design().lie());
        assertEquals(0.1, found.design().loft().standardErrorMeasureUnits().orElseThrow(), 1e-6);
        assertEquals(0.1, found.design().lie().standardErrorMeasureUnits().orElseThrow(), 1e-6);
        assertEquals(Optional.empty(), found.sleeve());
        assertEquals(1, found.held().size(), "the face only");
    }

    /**
     * With marks all round, a bend shows in lie as its cosine and in loft as its sine over sin(lie): its variance is
     * {@code repeatability^2 / (n (1 + 1 / sin(lie)^2) / 2)} to first order in the bend.
     */
    @Test
    void standard_errors_of_a_full_round_are_the_closed_form() {
        GaugedClub found = fit(exact(new Gauge(9.5, 58, 1.5, 0), 0, 1, 2, 3, 4, 5, 6, 7));
        double sinLie = Math.sin(Math.toRadians(58));
        double expectedDeg = 0.25 / Math.sqrt(4 * (1 + 1 / (sinLie * sinLie)));
        GaugedNumber bend = found.sleeve().orElseThrow().bend();
        GaugedNumber clock = found.sleeve().orElseThrow().clockOffset();
        assertEquals(expectedDeg, bend.standardErrorMeasureUnits().orElseThrow(), 0.001 * expectedDeg);
        double expectedH = expectedDeg / 1.5 * 6 / Math.PI;
        assertEquals(expectedH, clock.standardErrorMeasureUnits().orElseThrow(), 0.001 * expectedH);
    }

    /** Four readings where the club is stated give their mean there, whatever the bend is held at. */
    @Test
    void loft_at_the_stated_setting_is_the_mean_read_there() {
        Club club = Gauge.BENCH.statedAt("m2").club(Optional.of(Gauge.STATED));
        List<Reading> readings = exact(TRUTH, 2, 2, 2, 2);
        GaugedClub found = GaugeFit.fit(club, Optional.of(Gauge.STATED), readings, 0.2);
        assertTrue(found.sleeve().orElseThrow().bend().held());
        assertFound(readings.get(0).loftDeg().orElseThrow(), found.gauge().loft());
        assertFound(readings.get(0).lieDeg().orElseThrow(), found.gauge().lie());
        assertEquals(0.1, found.gauge().loft().standardErrorMeasureUnits().orElseThrow(), 1e-6);
        assertEquals(0.1, found.gauge().lie().standardErrorMeasureUnits().orElseThrow(), 1e-6);
    }

    @Test
    void loft_that_is_not_read_is_held_at_the_stated_setting_too() {
        GaugedClub found = fit(exact(TRUTH, 0, 2, 4).stream()
                .map(reading -> only(reading, false))
                .toList());
        assertTrue(found.gauge().loft().held());
        assertFalse(found.gauge().lie().held());
    }

    /** Stated as the fit says and read again with the sleeve as found, the head is the one found. */
    @ParameterizedTest
    @ValueSource(strings = {"", "m0", "m3"})
    void stated_numbers_give_back_the_head_found(String statedAt) {
        Bench bench = statedAt.isEmpty() ? Gauge.BENCH : Gauge.BENCH.statedAt(statedAt);
        Club club = bench.club(Optional.of(Gauge.STATED));
        GaugedClub found = fit(club, Optional.of(Gauge.STATED), exact(TRUTH, 0, 2, 3, 5));
        StatedHead head = GaugeFit.stated(found, Optional.of(Gauge.STATED));
        Bench again = new Bench(bench.kind(), head, bench.golferLieDeg(), 0, bench.hand(), bench.form());
        HeadDesign design = again.with(Gauge.STATED).design();
        assertEquals(10.1, design.loftDeg(), 1e-6);
        assertEquals(57.2, design.lieDeg(), 1e-6);
    }

    @Test
    void readings_at_one_hour_hold_bend_and_clock_and_say_so() {
        GaugedClub found = fit(exact(TRUTH, 2, 2, 2));
        assertTrue(found.sleeve().orElseThrow().bend().held());
        assertEquals(1.5, found.sleeve().orElseThrow().bend().valueMeasureUnits(), 0);
        assertEquals(0, found.sleeve().orElseThrow().clockOffset().valueMeasureUnits(), 0);
        assertFalse(found.design().loft().held());
        assertFalse(found.design().lie().held());
        assertTrue(
                found.held()
                        .contains("C: the readings do not determine the bend (all readings were taken with the shaft "
                                + "leaning one way); it is held at 1.5 degrees"),
                found.held().toString());
        assertTrue(
                found.held().stream().anyMatch(text -> text.contains("clock offset of the marks")),
                found.held().toString());
    }

    @Test
    void lofts_only_hold_the_lie_and_still_find_the_ring() {
        List<Reading> lofts = exact(TRUTH, 0, 2, 4, 6).stream()
                .map(reading -> only(reading, true))
                .toList();
        GaugedClub found = fit(lofts);
        assertTrue(found.design().lie().held());
        assertEquals(58, found.design().lie().valueMeasureUnits(), 1e-12);
        assertTrue(
                found.held().get(0).contains("no reading has one"), found.held().toString());
        assertFalse(found.sleeve().orElseThrow().bend().held());
        // The lie is held 0.8 degrees off the true one, and a bend counts by the sine of the lie.
        assertEquals(1.23, found.sleeve().orElseThrow().bend().valueMeasureUnits(), 0.02);
        assertTrue(found.readings().get(0).lieResidualDeg().isEmpty());
    }

    /** Lies at 12 and 6 tell the bend along the marks but nothing across them. */
    @Test
    void lies_up_and_down_find_the_bend_and_hold_the_clock() {
        List<Reading> lies = exact(new Gauge(9.5, 57.5, 1.2, 0), 0, 4).stream()
                .map(reading -> only(reading, false))
                .toList();
        GaugedClub found = fit(lies);
        assertFound(1.2, found.sleeve().orElseThrow().bend());
        assertFound(57.5, found.design().lie());
        assertTrue(found.sleeve().orElseThrow().clockOffset().held());
        assertTrue(found.design().loft().held());
    }

    /** Where the clock is held a bend may still come out the other way round, and only then is that said. */
    @Test
    void lies_the_wrong_way_round_are_noted() {
        List<Reading> lies = exact(new Gauge(9.5, 57.5, 1.2, 6), 0, 4).stream()
                .map(reading -> only(reading, false))
                .toList();
        GaugedClub found = fit(lies);
        assertTrue(found.sleeve().orElseThrow().clockOffset().held());
        assertEquals(1, found.notes().size(), found.notes()::toString);
        assertTrue(found.notes().get(0).endsWith("the shaft leans opposite to what the marks say"));
        assertFalse(fit(exact(new Gauge(9.5, 57.5, 1.2, 0), 0, 4))
                .notes()
                .toString()
                .contains("the other way"));
        assertFalse(fit(exact(new Gauge(9.5, 57.5, 1.2, 6), 0, 2, 4))
                .notes()
                .toString()
                .contains("the other way"));
    }

    @Test
    void sleeve_without_a_bend_holds_its_clock() {
        GaugedClub found = fit(exact(new Gauge(9.5, 58, 0, 0), 0, 2, 4, 6));
        assertTrue(found.sleeve().orElseThrow().clockOffset().held());
        assertEquals(0, found.sleeve().orElseThrow().bend().valueMeasureUnits(), 1e-6);
        assertTrue(
                found.held().toString().contains("too small to show its direction"),
                found.held().toString());
    }

    @Test
    void face_readings_find_the_design_face() {
        Sleeve sleeve = Gauge.STATED;
        ClubGeometry truth = Bench.driver(9.8, 58.3, 1.4).with(sleeve);
        List<Reading> readings = java.util.stream.IntStream.of(0, 2, 5)
                .mapToObj(mark -> {
                    PoseNumbers pose = truth.pose(Bench.at("m" + mark));
                    return new Reading(
                            "G",
                            "C",
                            Optional.of("m" + mark),
                            OptionalDouble.of(pose.gaugeLoftDeg()),
                            OptionalDouble.of(pose.gaugeLieDeg()),
                            OptionalDouble.of(1.4),
                            "Readings!A2");
                })
                .toList();
        GaugedClub found = fit(readings);
        assertFound(1.4, found.design().face());
        assertFound(truth.design().loftDeg(), found.design().loft());
        assertFound(truth.design().lieDeg(), found.design().lie());
        assertFound(1.5, found.sleeve().orElseThrow().bend());
    }

    @Test
    void todays_hosel_bend_is_taken_off_the_readings() {
        Club plain = Bench.iron(30, 61).club(Optional.empty());
        Club bent = ClubSketch.like(plain).bent(new Bend(1, -0.5)).made();
        GaugedClub found = fit(bent, Optional.empty(), List.of(bare(31, 60.5)));
        assertFound(30, found.design().loft());
        assertFound(61, found.design().lie());
    }

    /** Two rings keep the proportion of their stated bends; both are turned by one clock offset. */
    @Test
    void two_ring_sleeve_is_scaled_as_a_whole() {
        Sleeve stated = twoRings(0, 1);
        ClubGeometry truth = Bench.driver(9.2, 58.4).with(twoRings(0.5, 1.2));
        List<Reading> readings = List.of("a", "b", "c").stream()
                .map(mark -> {
                    PoseNumbers pose = truth.pose(Bench.at(mark));
                    return Gauge.reading(mark, pose.gaugeLoftDeg(), pose.gaugeLieDeg(), 0);
                })
                .toList();
        GaugedClub found = fit(Bench.driver(9.5, 58).club(Optional.of(stated)), Optional.of(stated), readings);
        assertFound(9.2, found.design().loft());
        assertFound(1.2, found.sleeve().orElseThrow().bend());
        assertFound(0.5, found.sleeve().orElseThrow().clockOffset());
    }

    private static Sleeve twoRings(double offsetH, double bendDeg) {
        return Bench.sleeve(
                Bench.ringed("a", true, new Ring(3 + offsetH, bendDeg), new Ring(1 + offsetH, bendDeg / 2)),
                Bench.ringed("b", true, new Ring(6 + offsetH, bendDeg), new Ring(1 + offsetH, bendDeg / 2)),
                Bench.ringed("c", true, new Ring(9 + offsetH, bendDeg), new Ring(7 + offsetH, bendDeg / 2)));
    }

    @Test
    void rated_sleeve_is_fitted_through_the_rings_of_its_table() {
        Sleeve rated =
                Bench.sleeve(Bench.rated("N", 0, 0, 0), Bench.rated("up", 1.5, 0, 2), Bench.rated("down", -1.5, 0, -2));
        ClubGeometry truth = Bench.driver(9.9, 58.2).with(rated);
        List<Reading> readings = List.of("N", "up", "down").stream()
                .map(mark -> {
                    PoseNumbers pose = truth.pose(Bench.at(mark));
                    return Gauge.reading(mark, pose.gaugeLoftDeg(), pose.gaugeLieDeg(), 0);
                })
                .toList();
        GaugedClub found = fit(Bench.driver(9.5, 58).club(Optional.of(rated)), Optional.of(rated), readings);
        assertEquals(9.9, found.design().loft().valueMeasureUnits(), 1e-6);
        // The fit ends once the sum of the squares is next to nothing.
        assertEquals(58.2, found.design().lie().valueMeasureUnits(), 1e-4);
        assertEquals(0, found.sleeve().orElseThrow().clockOffset().valueMeasureUnits(), 1e-6);
    }

    @Test
    void conflict_of_two_readings_blames_neither() {
        Club club = Bench.iron(30, 61).club(Optional.empty());
        GaugedClub found = fit(club, Optional.empty(), List.of(bare(30, 61), bare(32, 61)));
        assertTrue(found.readings().stream().noneMatch(GaugedReading::flagged));
        assertTrue(
                found.notes().get(0).contains("too few to say which is off"),
                found.notes().toString());
    }

    /**
     * Every number 0.6 degree off, up and down by turns, which no head or sleeve can follow: each is 2.4 deviations off,
     * or 2.8 with its leverage, so no one is to blame; the sum of squares is 92 on 12 spare numbers.
     */
    @Test
    void readings_rougher_than_the_gauge_are_noted() {
        List<Reading> rough = new ArrayList<>(exact(new Gauge(9.5, 58, 1.5, 0), 0, 1, 2, 3, 4, 5, 6, 7));
        for (int i = 0; i < rough.size(); i++) {
            double offDeg = i % 2 == 0 ? 0.6 : -0.6;
            rough.set(
                    i,
                    Gauge.blundered(Gauge.blundered(rough, i, true, offDeg), i, false, offDeg)
                            .get(i));
        }
        GaugedClub found = fit(rough);
        assertTrue(found.readings().stream().noneMatch(GaugedReading::flagged));
        assertTrue(
                found.notes().toString().contains("scatter more"), found.notes().toString());
    }

    /** The optimiser ends silently on numbers that are none; the fit does not. */
    @Test
    void fit_that_ends_in_no_number_is_an_error() {
        GaugeModel model = new GaugeModel(Gauge.club(), Optional.of(Gauge.STATED));
        List<GaugeModel.Value> values = List.of(new GaugeModel.Value(0, Unknown.LOFT, Double.NaN, List.of()));
        GaugeSolution stated = GaugeSolution.stated(model, values, EnumSet.of(Unknown.LOFT), 0.25);
        assertThrows(IllegalStateException.class, stated::fitted);
    }

    /** The optimiser ends silently on readings that cannot tell; the standard errors do not. */
    @Test
    void unknowns_that_readings_cannot_tell_have_very_great_errors() {
        GaugeModel model = new GaugeModel(Gauge.club(), Optional.of(Gauge.STATED));
        List<GaugeModel.Value> values = model.values(exact(TRUTH, 2, 2, 2));
        EnumSet<Unknown> free = EnumSet.of(Unknown.LOFT, Unknown.LIE, Unknown.BEND, Unknown.CLOCK);
        GaugeSolution fitted = GaugeSolution.stated(model, values, free, 0.25).fitted();
        assertTrue(fitted.standardError(Unknown.BEND, 1) > 100);
        assertTrue(fitted.standardError(Unknown.CLOCK, 1) > 100);
    }

    @Test
    void fit_needs_readings_of_settings_that_are_there() {
        assertThrows(IllegalArgumentException.class, () -> fit(List.of()));
        assertThrows(IllegalArgumentException.class, () -> fit(List.of(Gauge.reading("none", 10, 58, 0))));
        assertThrows(
                IllegalArgumentException.class,
                () -> GaugeFit.fit(Gauge.club(), Optional.of(Gauge.STATED), exact(TRUTH, 0), Double.NaN));
    }

    private static Reading bare(double loftDeg, double lieDeg) {
        return new Reading(
                "G",
                "C",
                Optional.empty(),
                OptionalDouble.of(loftDeg),
                OptionalDouble.of(lieDeg),
                OptionalDouble.empty(),
                "Readings!A2");
    }

    private static Reading only(Reading reading, boolean loft) {
        return new Reading(
                reading.golfer(),
                reading.club(),
                reading.setting(),
                loft ? reading.loftDeg() : OptionalDouble.empty(),
                loft ? OptionalDouble.empty() : reading.lieDeg(),
                OptionalDouble.empty(),
                reading.cell());
    }
}
