package org.bagwright.domain.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bagwright.SampleBags;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is done to a slot, in words. */
@Tag("analytic")
class OptionChangeTest {
    private static OptionChange change(int slot, int from, int to) {
        BagResult bag = SampleBags.golferA();
        var options = bag.options().slots().get(slot).options();
        return new OptionChange(options.get(from), options.get(to));
    }

    @Test
    void sleeveAndWeights_areTwoItems() {
        assertEquals(
                "Driver: setting A -> E, weighting even -> heel heavy",
                change(0, 0, 2).inWords());
    }

    @Test
    void bends_haveSigns() {
        assertEquals(
                "7 iron: loft bend 0 -> +1, lie bend 0 -> -0.5", change(2, 0, 2).inWords());
        assertEquals("7 iron: lie bend -0.5 -> 0", change(2, 2, 1).inWords());
    }

    @Test
    void otherHead_isInPlaceOfTodays() {
        assertEquals("7 wood: in place of 5 wood", change(1, 0, 1).inWords());
    }

    @Test
    void emptySlot_isLeftOutAndFilledAgain() {
        assertEquals("5 wood: leave out", change(1, 0, 2).inWords());
        assertEquals("7 wood: put in", change(1, 2, 1).inWords());
    }

    @Test
    void sameOption_isNoChange() {
        assertTrue(change(1, 2, 2).isNone());
        assertEquals(List.of(), change(0, 1, 1).items());
    }
}
