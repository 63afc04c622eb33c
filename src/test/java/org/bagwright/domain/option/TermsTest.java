package org.bagwright.domain.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Map;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class TermsTest {
    /** Each term is another power of two, so no other sum of them gives the same. */
    private static Terms powersOfTwo() {
        Terms terms = Terms.NONE;
        for (Measure measure : Measure.values()) {
            terms = terms.plus(Terms.of(measure, 1 << measure.ordinal(), 256L << measure.ordinal()));
        }
        return terms;
    }

    @Test
    void total_isTheSumOfAllTerms() {
        long all = (1L << Measure.values().length) - 1;
        assertEquals(all, powersOfTwo().totalPoints());
        assertEquals(256 * all, powersOfTwo().totalBreaks());
    }

    @Test
    void sum_keepsMeasuresApart() {
        Terms twice = powersOfTwo().plus(powersOfTwo());
        for (Measure measure : Measure.values()) {
            assertEquals(2 << measure.ordinal(), twice.points(measure));
            assertEquals(512L << measure.ordinal(), twice.breaks(measure));
        }
    }

    /** Loft 0.75 off at 0.5: 2.25 points, half a tolerance beyond its must; three items at 0.05; a lie that is no must. */
    @Test
    void deviations_costWhatTheirAimsSay() {
        Aims aims = Aims.defaults().mapped(aim -> aim.withMust(aim.measure() == Measure.LOFT));
        Terms terms = Terms.of(aims, Map.of(Measure.LOFT, -0.75, Measure.LIE, 2.0, Measure.CHANGE, 3.0));
        assertEquals(2.25, terms.points(Measure.LOFT));
        assertEquals(500, terms.breaks(Measure.LOFT));
        assertEquals(2, terms.points(Measure.LIE));
        assertEquals(3 * 0.05, terms.points(Measure.CHANGE), 1e-15);
        assertEquals(0, terms.points(Measure.CARRY));
        assertEquals(List.of(Measure.LOFT), terms.broken());
    }

    /** A must for changes could not be met by doing anything: it limits nothing. */
    @Test
    void items_breakNoMust() {
        Aim aim = new Aim(Measure.CHANGE, 1, 0.05, true);
        assertEquals(Terms.of(Measure.CHANGE, 0.2, 0), Terms.of(aim, 4));
    }

    @Test
    void mustsThatAreNotKept_areBrokenNoMore() {
        Terms kept = powersOfTwo().keepingMusts(measure -> measure == Measure.GAP);
        assertEquals(List.of(Measure.GAP), kept.broken());
        assertEquals(powersOfTwo().breaks(Measure.GAP), kept.totalBreaks());
        assertEquals(powersOfTwo().totalPoints(), kept.totalPoints());
    }

    @Test
    void terms_areEqualIfPointsAndBreaksAre() {
        assertEquals(powersOfTwo(), powersOfTwo());
        assertEquals(powersOfTwo().hashCode(), powersOfTwo().hashCode());
        assertNotEquals(Terms.of(Measure.LIE, 1, 0), Terms.of(Measure.LIE, 1, 1));
        assertNotEquals(Terms.of(Measure.LIE, 1, 0), Terms.of(Measure.SITS, 1, 0));
    }
}
