package org.bagwright.domain.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("analytic")
class SitsRangeTest {
    @ParameterizedTest
    @CsvSource({"-3, -1", "-2, 0", "0, 0", "1, 0", "1.5, 0.5"})
    void outside_isHowFarBeyondTheNearerEnd(double looksDeg, double outsideDeg) {
        SitsRange range = new SitsRange(OptionalDouble.of(-2), OptionalDouble.of(1));
        assertEquals(outsideDeg, range.outsideDeg(looksDeg), 0);
    }

    @Test
    void withoutLimits_nothingIsOutside() {
        assertEquals(0, SitsRange.ANY.outsideDeg(-40), 0);
        assertEquals(0, SitsRange.ANY.outsideDeg(40), 0);
    }

    @Test
    void rangeTheWrongWayRound_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new SitsRange(OptionalDouble.of(1), OptionalDouble.of(-1)));
    }
}
