package org.bagwright.domain.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("analytic")
class CloseNamesTest {
    /** Textbook pairs for the optimal string alignment distance; the last differs from the unrestricted one (2). */
    @ParameterizedTest
    @CsvSource({"kitten,sitting,3", "flaw,lawn,2", "loft,lotf,1", "'',lie,3", "same,same,0", "ca,abc,3"})
    void distance_isTheTextbookOne(String a, String b, int expected) {
        assertEquals(expected, CloseNames.distance(a, b));
        assertEquals(expected, CloseNames.distance(b, a));
    }

    @ParameterizedTest
    @CsvSource({"Two degre,Two degree", "tow degree,Two degree", "TWODEGREE,Two degree", "Two,Two degree", "A1,A-1"})
    void closeName_isFound(String found, String meant) {
        assertEquals(Optional.of(meant), CloseNames.closest(found, List.of("Other", "Two degree", "A-1")));
    }

    @ParameterizedTest
    @CsvSource({"B", "2", "Three", "xyz", "''"})
    void farName_isNotGuessed(String found) {
        assertEquals(Optional.empty(), CloseNames.closest(found, List.of("Two degree", "A", "1", "N")));
    }

    @Test
    void key_takesOutCaseAndSpace() {
        assertEquals("head speed", CloseNames.key("  Head \u00a0 SPEED\n"));
    }
}
