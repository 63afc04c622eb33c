package org.bagwright.search.score;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How large the points of a search are: no term may cost more than ten million of them. */
@Tag("analytic")
class PenaltyScaleTest {
    @ParameterizedTest
    @CsvSource({"0, 1", "9999999, 1", "1e7, 10", "99999999, 10", "1e8, 100", "1.44e16, 1e10"})
    void scale_isTheFinestOnWhichNothingIsCutOff(double penaltyPoints, double bookPoints) {
        assertEquals(bookPoints, PenaltyScale.of(penaltyPoints).bookPoints(), 0);
    }

    /** A scale ten times too large still tells a plan's points to a hundred thousand million of its units; a larger does not. */
    @ParameterizedTest
    @CsvSource({
        "1, 0, true",
        "1, 9999999, true",
        "1, 1e7, false",
        "10, 1e7, true",
        "10, 9e7, true",
        "10, 1e8, false",
        "10, 5e6, false",
        "100, 1e7, true",
        "1000, 1e7, false"
    })
    void scale_suitsWhereNothingIsCutOffAndNothingIsTooSmallToCount(
            double bookPoints, double penaltyPoints, boolean suits) {
        assertEquals(suits, new PenaltyScale(bookPoints).suits(penaltyPoints));
    }
}
