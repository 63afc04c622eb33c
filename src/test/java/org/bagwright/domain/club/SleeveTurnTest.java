package org.bagwright.domain.club;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Turns counted on a drawn clock. */
@Tag("analytic")
class SleeveTurnTest {
    private static SleeveSetting at(String mark, double... hoursH) {
        List<Ring> rings = java.util.Arrays.stream(hoursH)
                .mapToObj(hourH -> new Ring(hourH, 1))
                .toList();
        return new SleeveSetting(mark, rings, true, Optional.empty());
    }

    private static SleeveSetting straight(String mark) {
        return new SleeveSetting(mark, List.of(Ring.STRAIGHT), true, Optional.empty());
    }

    private static SleeveSetting rated(String mark) {
        RatedChange rated = new RatedChange(OptionalDouble.of(0.5), OptionalDouble.of(0), OptionalDouble.empty());
        return new SleeveSetting(mark, List.of(), true, Optional.of(rated));
    }

    /** Round the clock A 12, B 2, C 4, D 6, E 8, F 10; the book has them in another order. */
    private static final Sleeve SIX =
            new Sleeve("S", List.of(at("A", 12), at("D", 6), at("B", 2), at("F", 10), at("C", 4), at("E", 8)));

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A | B | 1 mark counter-clockwise | B",
                "A | C | 2 marks counter-clockwise | B C",
                "A | E | 2 marks clockwise | F E",
                "E | A | 2 marks counter-clockwise | F A",
                "B | F | 2 marks clockwise | A F",
                "A | D | 3 marks either way | B C D or F E D",
                "a | c | 2 marks counter-clockwise | B C",
                "C | C | stays | ''"
            })
    void oneRing_isTurnedTheShorterWayRoundTheClock(String from, String to, String words, String passed) {
        assertEquals(words, SleeveTurn.inWords(SIX, false, from, to));
        SleeveTurn turn = SleeveTurn.between(SIX, from, to).orElseThrow();
        String other = String.join(" ", turn.passedOtherWay());
        assertEquals(passed, String.join(" ", turn.passed()) + (other.isEmpty() ? "" : " or " + other));
    }

    @Test
    void twelveAndZero_areOneHour() {
        Sleeve sleeve = new Sleeve("S", List.of(at("low", 11), at("top", 0), at("up", 1), at("down", 6)));
        assertEquals("1 mark counter-clockwise", SleeveTurn.inWords(sleeve, false, "low", "top"));
        assertEquals("1 mark counter-clockwise", SleeveTurn.inWords(sleeve, false, "top", "up"));
    }

    /** From the grip end a left-hander has the target on his right, a right-hander on his left: a mirror image. */
    @Test
    void leftHandedSleeve_isTurnedTheOtherWay() {
        assertEquals("2 marks clockwise", SleeveTurn.inWords(SIX, true, "A", "C"));
        assertEquals("2 marks counter-clockwise", SleeveTurn.inWords(SIX, true, "A", "E"));
    }

    /** Nothing says where the marks are: the bench card then gives the mark alone. */
    @Test
    void settingsWithoutHours_giveNoTurn() {
        Sleeve sleeve = new Sleeve("S", List.of(rated("1"), rated("2"), rated("3"), rated("4"), rated("5")));
        assertEquals("", SleeveTurn.inWords(sleeve, false, "1", "3"));
        Sleeve straight = new Sleeve("S", List.of(at("A", 12), straight("std"), at("C", 6)));
        assertEquals("", SleeveTurn.inWords(straight, false, "A", "C"));
        Sleeve sameHour = new Sleeve("S", List.of(at("A", 12), at("B", 12), at("C", 6)));
        assertEquals("", SleeveTurn.inWords(sameHour, false, "A", "C"));
    }

    @Test
    void twoMarks_areOneAwayEitherWay() {
        Sleeve sleeve = new Sleeve("S", List.of(at("up", 12), at("down", 6)));
        assertEquals("1 mark either way", SleeveTurn.inWords(sleeve, false, "up", "down"));
    }

    /** Ring 1 has the hours 3, 6, 9, 12 and ring 2 the hours 2 and 8. */
    @Test
    void twoRings_areTurnedEachByItsOwnPlaces() {
        Sleeve sleeve = new Sleeve("S", List.of(at("A1", 12, 2), at("B1", 3, 2), at("C2", 6, 8), at("D1", 9, 2)));
        assertTrue(SleeveTurn.between(sleeve, "A1", "D1").isEmpty());
        assertEquals("ring 1 by 1 place clockwise, ring 2 stays", SleeveTurn.inWords(sleeve, false, "A1", "D1"));
        assertEquals(
                "ring 1 by 2 places either way, ring 2 by 1 place either way",
                SleeveTurn.inWords(sleeve, false, "A1", "C2"));
    }

    @Test
    void unknownMark_saysNothing() {
        assertTrue(SleeveTurn.between(SIX, "A", "G").isEmpty());
        assertEquals("", SleeveTurn.inWords(SIX, false, "A", "G"));
    }
}
