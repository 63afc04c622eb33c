package org.bagwright.dist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The launcher for Windows does what the shell launcher does, as far as reading both can tell. */
@Tag("regression")
class LaunchersTest {
    private final String shell = read("bagwright");
    private final String windows = read("bagwright.cmd");

    @Test
    void virtualMachineOptions_areTheSameInBothAndInTheImage() {
        String options = only(shell, "options=\"([^\"]*)\"");
        assertEquals(options, only(windows, "set \"options=([^\"]*)\""));
        assertEquals(
                options + " ${dist.sharing}",
                only(read("src/dist/image.xml"), "name=\"dist.options\"\\s+value=\"([^\"]*)\""));
    }

    @Test
    void mainClassAndTrainingRun_areTheSame() {
        Pattern call = Pattern.compile("org\\.bagwright\\.cli\\.Main( demo trio -o)?");
        assertEquals(all(shell, call), all(windows, call));
        assertEquals(Set.of("org.bagwright.cli.Main", "org.bagwright.cli.Main demo trio -o"), all(shell, call));
    }

    @Test
    void buildCommand_isTheSame() {
        Pattern build = Pattern.compile("mvn -q [^>]*package");
        assertEquals(Set.of("mvn -q -B -Dmaven.test.skip=true package"), all(shell, build));
        assertEquals(all(shell, build), all(windows, build));
    }

    @Test
    void startScriptOfTheImage_findsItsFolderAndSetsTheLanguageAsTheLauncherDoes() {
        String start = read("src/dist/start.sh");
        for (String part : List.of("(?s)self=\\$0.*?done", "(?s)# Without a language.*?esac")) {
            assertEquals(only(shell, part), only(start, part));
        }
    }

    @Test
    void messages_areTheSame() {
        Set<String> said = all(shell, Pattern.compile("\\bsay \"(.*)\"")).stream()
                .map(text ->
                        text.replaceAll("\\$(\\{version:-unknown}|\\w+)", "X").replace("\\\"", "\""))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> echoed = all(windows, Pattern.compile("echo bagwright: (.*)>&2")).stream()
                .map(text -> text.replaceAll("%\\w+%", "X"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(said.size() >= 7, said::toString);
        assertEquals(said, echoed);
    }

    @Test
    void windowsLauncher_endsLinesAndRunsAsThatShellNeeds() throws Exception {
        String raw = Files.readString(Path.of("bagwright.cmd"));
        assertEquals(raw.lines().count(), raw.split("\r\n", -1).length - 1, "every line ends in CR LF");
        assertFalse(windows.contains("EnableDelayedExpansion"), "an exclamation mark in a path would be lost");
        List<String> lines = windows.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            assertFalse(lines.get(i).endsWith("("), "a block: " + lines.get(i));
            if (lines.get(i).endsWith("Main %*")) {
                assertEquals("exit /b %ERRORLEVEL%", lines.get(i + 1));
            }
        }
    }

    @Test
    void windowsLauncher_goesOnlyToLabelsItHas() {
        Set<String> labels = all(windows, Pattern.compile("(?m)^:(\\w+)"));
        assertTrue(labels.size() >= 10, labels::toString);
        assertEquals(labels, all(windows, Pattern.compile("goto (\\w+)")));
    }

    private static String only(String text, String pattern) {
        Set<String> found = all(text, Pattern.compile(pattern));
        assertEquals(1, found.size(), pattern);
        return found.iterator().next();
    }

    private static Set<String> all(String text, Pattern pattern) {
        Set<String> found = new TreeSet<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            boolean inner = matcher.groupCount() > 0 && !pattern.pattern().contains(")?");
            found.add(inner ? matcher.group(1) : matcher.group());
        }
        return found;
    }

    private static String read(String file) {
        try {
            return Files.readString(Path.of(file)).replace("\r\n", "\n");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
