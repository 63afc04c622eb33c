package org.bagwright.domain.club;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class LimitsTest {
    private static StatedLimit limit(LimitKind kind, double value) {
        return new StatedLimit(kind, value, "Clubs!A2");
    }

    @Test
    void ownLimits_goBeforeThoseOfTheGolferKindByKind() {
        Limits own = Limits.of(List.of(limit(LimitKind.GAP_LEAST, 8)));
        Limits golfer = Limits.of(List.of(limit(LimitKind.GAP_LEAST, 5), limit(LimitKind.GAP_MOST, 20)));
        Limits both = own.orElse(golfer);
        assertEquals(OptionalDouble.of(8), both.valueMeasureUnits(LimitKind.GAP_LEAST));
        assertEquals(OptionalDouble.of(20), both.valueMeasureUnits(LimitKind.GAP_MOST));
        assertEquals(OptionalDouble.empty(), both.valueMeasureUnits(LimitKind.CARRY_LEAST));
    }

    @Test
    void limits_areBrokenOnTheirOwnSideOnly() {
        assertEquals(2, limit(LimitKind.CARRY_LEAST, 100).beyondMeasureUnits(98));
        assertEquals(0, limit(LimitKind.CARRY_LEAST, 100).beyondMeasureUnits(102));
        assertEquals(2, limit(LimitKind.CARRY_MOST, 100).beyondMeasureUnits(102));
        assertEquals(0, limit(LimitKind.CARRY_MOST, 100).beyondMeasureUnits(98));
        assertEquals(0.5, limit(LimitKind.MOST_OPEN, -1).beyondMeasureUnits(-1.5));
        assertEquals(0, limit(LimitKind.MOST_OPEN, -1).beyondMeasureUnits(3));
    }

    @Test
    void limitsThatNoValueCanKeep_areContradictions() {
        StatedLimit open = limit(LimitKind.MOST_OPEN, 2);
        StatedLimit closed = limit(LimitKind.MOST_CLOSED, 1);
        Limits limits = Limits.of(List.of(open, closed, limit(LimitKind.GAP_LEAST, 9), limit(LimitKind.CARRY_MOST, 5)));
        assertEquals(List.of(List.of(open, closed)), limits.contradictions());
        assertEquals(List.of(), limits.only(limit -> !limit.equals(open)).contradictions());
    }

    @Test
    void limitUnderAnotherKind_isRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Limits(Map.of(LimitKind.GAP_MOST, limit(LimitKind.GAP_LEAST, 1))));
    }
}
