package org.bagwright.badbooks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A few hundred spoilt books in every build; thousands with the command that DEVELOPERS.md names. */
@Tag("analytic")
class FuzzTest {
    private static final int TRIES = 300;

    @Test
    void spoiltBooks_areRefusedOrPlannedAndNeverAFaultOfTheProgram() throws Exception {
        Fuzz fuzz = new Fuzz(7);
        assertEquals(List.of(), fuzz.run(0, TRIES));
        assertTrue(fuzz.sound() > TRIES / 20 && fuzz.sound() < TRIES, "valid books: " + fuzz.sound());
        FuzzCommand.ALL.forEach(
                command -> assertTrue(fuzz.commands().containsKey(command.name()), command + " " + fuzz.commands()));
    }
}
