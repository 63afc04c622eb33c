package org.bagwright.domain.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.bagwright.ClubSketch;
import org.bagwright.GolferSketch;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.Limits;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("analytic")
class WantedRangeTest {
    private static double outsideDeg(Limits sits, double looksDeg) {
        ClubWishes wishes =
                ClubWishes.of(new ClubSketch("Golfer A", 1, "Driver", ClubKind.DRIVER, "Clubs!C2").made(), sits);
        return wishes.of(Measure.SITS).orElseThrow().deviationMeasureUnits(looksDeg);
    }

    @ParameterizedTest
    @CsvSource({"-3, -1", "-2, 0", "0, 0", "1, 0", "1.5, 0.5"})
    void lookOutsideTheRange_isHowFarBeyondTheNearerEnd(double looksDeg, double outsideDeg) {
        Limits range = new GolferSketch("Golfer A").sits(-2, 1).golfer().limits();
        assertEquals(outsideDeg, outsideDeg(range, looksDeg), 0);
    }

    @Test
    void withoutLimits_noLookIsOutside() {
        assertEquals(0, outsideDeg(Limits.NONE, -40), 0);
        assertEquals(0, outsideDeg(Limits.NONE, 40), 0);
    }

    @Test
    void oneValue_isMissedByTheDifference() {
        assertEquals(-0.5, WantedRange.exactly(10).deviationMeasureUnits(9.5), 0);
        assertEquals(2, WantedRange.exactly(10).deviationMeasureUnits(12), 0);
        assertEquals(0, WantedRange.exactly(10).deviationMeasureUnits(10), 0);
    }

    @Test
    void rangeTheWrongWayRound_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new WantedRange(1, 0));
    }
}
