package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.TypeConversionException;

@Tag("regression")
class FileNameTest {
    @Test
    void name_isTakenAsItIs() {
        assertEquals(Path.of("bag.xlsx"), new FileName().convert("bag.xlsx"));
    }

    /** Java puts U+FFFD in the place of a letter that the language of the system does not know. */
    @Test
    void nameWhoseLettersAreLost_saysWhatToSet() {
        String said = assertThrows(TypeConversionException.class, () -> new FileName().convert("B\ufffdcher\0"))
                .getMessage();
        assertTrue(said.endsWith("Try again after: export LC_ALL=C.UTF-8"), said);
    }
}
