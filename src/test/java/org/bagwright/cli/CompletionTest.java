package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script for shells, run by bash. */
@Tag("regression")
class CompletionTest {
    @TempDir
    Path folder;

    /** What bash offers for the last word. Only its own editing of a line knows compopt, so a word without effect takes its place. */
    private List<String> offered(String... words) throws Exception {
        Path script = folder.resolve("completion.sh");
        Terminal printed = Terminal.run("completion");
        assertEquals(0, printed.code(), printed.err());
        Files.writeString(script, printed.out());
        String typed = Arrays.stream(words).map(word -> "'" + word + "'").collect(Collectors.joining(" "));
        return bash("compopt() { :; }; source '" + script + "' && COMP_WORDS=(" + typed + ") && COMP_CWORD="
                + (words.length - 1)
                + " && COMP_LINE=\"${COMP_WORDS[*]}\" && COMP_POINT=${#COMP_LINE}"
                + " && { $(complete -p bagwright | sed 's/.*-F \\([^ ]*\\) .*/\\1/') || true; }"
                + " && printf '%s\\n' \"${COMPREPLY[@]}\"");
    }

    private List<String> bash(String commands) throws IOException, InterruptedException {
        Process bash = new ProcessBuilder("bash", "--norc", "-c", commands)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(bash.waitFor(20, TimeUnit.SECONDS), said);
        assertEquals(0, bash.exitValue(), said);
        return said.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    @Test
    void commands_areCompleted() throws Exception {
        assertEquals(List.of("plan"), offered("bagwright", "pl"));
        assertEquals(List.of("watch"), offered("bagwright", "w"));
        assertTrue(offered("bagwright", "").containsAll(List.of("demo", "check", "compare", "help")));
    }

    @Test
    void options_areCompletedForTheirCommand() throws Exception {
        List<String> options = offered("bagwright", "plan", "--se");
        assertTrue(options.containsAll(List.of("--seconds", "--seed")), options.toString());
        assertEquals(List.of("--write"), offered("bagwright", "gauge", "--wr"));
        assertEquals(List.of(), offered("bagwright", "watch", "--wr"));
    }

    @Test
    void books_areCompleted() throws Exception {
        Files.createFile(folder.resolve("june.xlsx"));
        assertEquals(List.of("june.xlsx"), offered("bagwright", "plan", "ju"));
    }
}
