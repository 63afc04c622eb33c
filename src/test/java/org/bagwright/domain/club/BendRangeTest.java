package org.bagwright.domain.club;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Which bends may be planned: both ends of the range, and no step beyond. */
@Tag("analytic")
class BendRangeTest {
    private static List<Double> bendsDeg(double limitDeg, double stepDeg, double todayDeg) {
        return List.copyOf(new BendRange(limitDeg, stepDeg).bendsDeg(todayDeg));
    }

    @Test
    void limitThatIsAWholeNumberOfSteps_isABendOfItsOwnEitherWay() {
        assertEquals(List.of(-1.0, -0.5, 0.0, 0.5, 1.0), bendsDeg(1, 0.5, 0));
        assertEquals(List.of(-0.5, 0.0, 0.5), bendsDeg(0.5, 0.5, 0));
    }

    /** 0.3 / 0.1 is 2.9999999999999996 in this arithmetic. */
    @Test
    void limitThatIsAWholeNumberOfStepsButForTheArithmetic_isABendToo() {
        assertEquals(List.of(-0.3, -0.2, -0.1, 0.0, 0.1, 0.2, 0.3), bendsDeg(0.3, 0.1, 0));
    }

    @Test
    void limitBetweenTwoSteps_isNotReached() {
        assertEquals(List.of(-0.5, 0.0, 0.5), bendsDeg(0.9, 0.5, 0));
        assertEquals(List.of(0.0), bendsDeg(0.4, 0.5, 0));
    }

    @Test
    void todaysBend_isAlwaysOneOfThem() {
        assertEquals(List.of(-1.0, -0.5, 0.0, 0.5, 0.75, 1.0), bendsDeg(1, 0.5, 0.75));
        assertEquals(List.of(-0.5, 0.0, 0.5, 2.0), bendsDeg(0.5, 0.5, 2));
        assertEquals(List.of(0.75), bendsDeg(0, 0.5, 0.75));
    }
}
