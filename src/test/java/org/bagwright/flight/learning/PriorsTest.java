package org.bagwright.flight.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.golfer.TestBags;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What is assumed before any shot, and of devices; the golfers of the self-test showed that these figures tell honest chances. */
@Tag("analytic")
class PriorsTest {
    @ParameterizedTest
    @CsvSource({
        "SPEED, 0.015",
        "SPEED_BY_LENGTH, 0.01",
        "STRIKE, 0.025",
        "STRIKE_BY_LOFT, 0.01",
        "LOFT, 2",
        "LOFT_BY_LOFT, 1.5",
        "SPIN, 0.12",
        "SPIN_BY_LOFT, 0.03",
        "DRAG, 0.07",
        "LIFT, 0.05",
        "RESPONSE, 0.15",
        "BALL, 0.4",
        "LENGTH, 0.5",
        "CLUB_SPEED, 0.008",
        "CLUB_STRIKE, 0.012",
        "CLUB_LOFT, 1.2",
        "CLUB_SPIN, 0.035",
        "CLUB_ATTACK, 1.2",
        "CLUB_CARRY, 0.02"
    })
    void unknown_hasItsSpread(Unknown unknown, double standardDeviation) {
        assertEquals(standardDeviation, unknown.standardDeviation());
    }

    @Test
    void day_isOnePercentOfHeadSpeed() {
        assertEquals(0.01, Unknown.DAY);
    }

    /** Clubs are made within 1 degree and gauged within 0.25 [common practice]; a driver's delivery differs most. */
    @Test
    void ofClub_dependsOnKindAndGauge() {
        assertEquals(Math.hypot(1.2, 0.6), Unknown.CLUB_LOFT.standardDeviation(ClubKind.IRON, false), 1e-15);
        assertEquals(Math.hypot(1.2, 0.25), Unknown.CLUB_LOFT.standardDeviation(ClubKind.IRON, true), 1e-15);
        assertEquals(Math.hypot(1.5, 0.6), Unknown.CLUB_LOFT.standardDeviation(ClubKind.DRIVER, false), 1e-15);
        assertEquals(1.2, Unknown.CLUB_ATTACK.standardDeviation(ClubKind.WOOD, false));
        assertEquals(2, Unknown.CLUB_ATTACK.standardDeviation(ClubKind.DRIVER, false));
        assertEquals(0.035, Unknown.CLUB_SPIN.standardDeviation(ClubKind.DRIVER, true));
    }

    @ParameterizedTest
    @CsvSource({"HEAD_SPEED, 0.006", "BALL_SPEED, 0.003", "LAUNCH, 0.25", "SPIN, 0.02", "CARRY, 0.004"})
    void device_isOffByAsMuchHoweverManyTheShots(Quantity quantity, double discrepancy) {
        assertEquals(discrepancy, quantity.discrepancy());
    }

    /** Before any shot: 1.4 % of ball speed, 1.1 degrees, 6 % of spin, 3 % of carry, and the noise of the device. */
    @ParameterizedTest
    @CsvSource({"BALL_SPEED, 0.014", "LAUNCH, 1.1", "SPIN, 0.06", "CARRY, 0.03"})
    void golfer_scattersAsUsual(Quantity quantity, double usual) {
        double variance = Scatter.of(List.of()).variance(quantity);
        assertEquals(usual * usual + quantity.noise() * quantity.noise(), variance, 1e-15);
    }

    /** {@code zl = (length - 39 in) / 4 in}, {@code zf = (loft - 30) / 15}: the arguments of one club for each unknown. */
    @ParameterizedTest
    @EnumSource(
            value = ClubKind.class,
            names = {"DRIVER", "WOOD", "IRON"})
    void arguments_areThoseLinesInTheUnknowns(ClubKind kind) {
        ClubToday club = ClubToday.of(TestBags.club(1, "club", kind, 21, 41), 21);
        Unknowns unknowns = new Unknowns(List.of(Optional.empty()), 2, Map.of());
        double[][] rows = unknowns.design(club, 1, 0.01, false);
        double zl = 2 / 4.0;
        double zf = -9 / 15.0;
        assertRow(rows, Argument.LN_HEAD_SPEED, 0.015, 0.01 * zl, 0.5 * 0.01, 0.008);
        assertRow(rows, Argument.LN_EFFICIENCY, 0.025, 0.01 * zf, 0.012);
        assertRow(rows, Argument.OFFSET_DEG, 2, 1.5 * zf, Unknown.CLUB_LOFT.standardDeviation(kind, false));
        assertRow(rows, Argument.ATTACK_DEG, Unknown.CLUB_ATTACK.standardDeviation(kind, false));
        assertRow(rows, Argument.LN_SPIN, 0.12, 0.03 * zf, 0.035);
        assertRow(rows, Argument.LN_CARRY, 0.02);
        assertRow(rows, Argument.LN_DRAG, 0.07);
        assertRow(rows, Argument.LN_LIFT, 0.05);
        assertRow(rows, Argument.RESPONSE, 0.15);
        assertRow(rows, Argument.BALL, 0.4);
        for (double[] row : rows) {
            for (int i = unknowns.headStart(0); i < unknowns.headStart(1); i++) {
                assertEquals(0, row[i], "the other head");
            }
        }
    }

    private static void assertRow(double[][] rows, Argument argument, double... expected) {
        List<Double> found = new ArrayList<>();
        for (double value : rows[argument.ordinal()]) {
            if (value != 0) {
                found.add(value);
            }
        }
        assertEquals(expected.length, found.size(), argument::name);
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], found.get(i), 1e-12, argument.name());
        }
    }
}
