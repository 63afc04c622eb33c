package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What README shows is what the program prints. */
@Tag("regression")
class ReadmeTest {
    @TempDir
    Path folder;

    @Test
    void shownOutputOfTheDemo_isReal() throws Exception {
        List<String> readme = Files.readAllLines(Path.of("README.md"));
        int command = readme.indexOf("    $ ./bagwright demo trio");
        assertTrue(command >= 0 && command < 25, "the demo is on the first screen");
        Terminal demo = Terminal.run("demo", "trio", "-o", folder);
        assertEquals(0, demo.code(), demo.err());
        List<String> printed = demo.out().lines().toList();
        int shown = 0;
        for (String line : readme.subList(command + 1, readme.size())) {
            if (!line.startsWith("    ")) {
                break;
            }
            if (!line.equals("    ...")) {
                assertTrue(printed.contains(line.substring(4)), "not printed: " + line);
                shown++;
            }
        }
        assertTrue(shown >= 5, "only " + shown + " lines shown");
    }

    @Test
    void testCommand_isTheOneThatCiRuns() throws Exception {
        assertTrue(Files.readString(Path.of("README.md")).contains("    mvn verify "));
        assertTrue(Files.readString(Path.of(".ci", "run")).contains("\nmvn -B -ntp verify"));
    }
}
