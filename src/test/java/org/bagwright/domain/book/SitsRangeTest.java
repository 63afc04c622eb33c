package org.bagwright.domain.book;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class SitsRangeTest {
    @Test
    void rangeTheWrongWayRound_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new SitsRange(OptionalDouble.of(1), OptionalDouble.of(-1)));
    }
}
