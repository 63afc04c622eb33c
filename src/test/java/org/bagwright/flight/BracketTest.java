package org.bagwright.flight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class BracketTest {
    @Test
    void rootBetweenTheEnds_isFound() {
        assertEquals(2, new Bracket(0, 5).root(x -> x * x * x - 8).orElseThrow(), 1e-11);
    }

    @Test
    void rootAtAnEnd_isThatEndExactly() {
        assertEquals(OptionalDouble.of(3), new Bracket(3, 4).root(x -> x - 3));
        assertEquals(OptionalDouble.of(4), new Bracket(3, 4).root(x -> x - 4));
    }

    @Test
    void rootOutside_isNone() {
        assertEquals(OptionalDouble.empty(), new Bracket(0, 1).root(x -> x + 0.5));
        assertEquals(OptionalDouble.empty(), new Bracket(0, 1).root(x -> x - 1.5));
        assertEquals(OptionalDouble.empty(), new Bracket(0, 1).root(x -> 0.5 - x), "falling");
        assertEquals(OptionalDouble.empty(), new Bracket(0, 1).root(x -> Double.NaN));
    }
}
