package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bagwright.Needed;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The manual page that comes with the image. */
@Tag("analytic")
class ManPageTest {
    private static final String PAGE = ManPage.of("1.2.3", "2026-11-29");

    @TempDir
    Path folder;

    @Test
    void page_namesEveryCommandOptionAndExitCode() {
        String plain = PAGE.replace("\\-", "-");
        for (CommandLine command : Main.commandLine().getSubcommands().values()) {
            assertTrue(plain.contains(".SS \"" + command.getCommandName() + '"'), command.getCommandName());
            for (OptionSpec option : command.getCommandSpec().options()) {
                assertTrue(plain.contains(option.longestName()), option.longestName());
            }
        }
        assertTrue(plain.startsWith(".TH BAGWRIGHT 1 \"2026-11-29\" \"bagwright 1.2.3\""), PAGE);
        assertTrue(plain.contains(".TP\n\\fB130\\fR\n"), "exit codes");
    }

    @Test
    void page_isReadWithoutAWarning() throws Exception {
        Needed.here(Files.isExecutable(Path.of("/usr/bin/groff")), "groff");
        Path file = Files.writeString(folder.resolve("bagwright.1"), PAGE);
        Process groff = new ProcessBuilder("groff", "-man", "-ww", "-Tutf8", file.toString())
                .redirectOutput(folder.resolve("page.txt").toFile())
                .start();
        String warnings = new String(groff.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, groff.waitFor());
        assertEquals("", warnings);
        assertTrue(Files.readString(folder.resolve("page.txt")).contains("--from-live"));
    }
}
