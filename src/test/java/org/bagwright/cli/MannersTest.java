package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.bagwright.cli.text.AnsiStyle;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** What a person reads who types something wrong, and who asks for help. */
@Tag("regression")
class MannersTest {
    @TempDir
    Path folder;

    private static Terminal run(String typed) {
        return Terminal.run((Object[]) typed.split(" "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plan                              | Give a book, such as bagwright plan bag.xlsx",
                "bag.xlsx                          | Maybe \"bagwright plan bag.xlsx\"?",
                "plna bag.xlsx                     | no command \"plna\". Maybe \"plan\"?",
                "xyzzy                             | There are: demo, new, check",
                "--plan bag.xlsx                   | Maybe \"plan\"?",
                "plan bag.xlsx out.xlsx            | Maybe \"-o out.xlsx\"?",
                "check bag.xlsx out.xlsx           | Unexpected argument \"out.xlsx\".",
                "plan bag.xlsx --second 5          | no option --second. Maybe \"--seconds\"?",
                "plan --jsno                       | Maybe \"--json\"?",
                "plan bag.xlsx --seconds abc       | --seconds takes a number such as 2.5, found \"abc\".",
                "plan bag.xlsx --seconds 1,000     | --seconds takes a number such as 2.5, found \"1,000\".",
                "plan bag.xlsx --seconds           | --seconds needs a number such as 2.5 after it.",
                "plan bag.xlsx --seconds NaN       | --seconds takes a number",
                "plan bag.xlsx --seed 1.5          | --seed takes a whole number, found \"1.5\".",
                "plan bag.xlsx --seed 1 --seed 2   | --seed is given twice.",
                "plan bag.xlsx -o                  | -o needs the name of a file after it.",
                "plan bag.xlsx -o x.xlsx --in-place| Give either -o or --in-place, not both.",
                "compare bag.xlsx                  | Give at least 2 books",
                "gauge bag.xlsx -o x.xlsx          | Nothing is written without --write",
                "chart demo-data/trio.xlsx --club 5wood | Maybe \"5 wood\"?",
                "demo triio                        | Maybe \"trio\"?",
                "help plna                         | no command \"plna\". Maybe \"plan\"?",
                "new bag                           | Maybe \"bag.xlsx\"?"
            })
    void wrongWords_getOneSentenceAndAWayToHelp(String typed, String expected) {
        Terminal wrong = run(typed);
        List<String> lines = wrong.err().lines().toList();
        assertEquals(2, wrong.code(), wrong.err());
        assertTrue(lines.get(0).contains(expected), wrong.err());
        assertEquals(2, lines.size(), wrong.err());
        assertTrue(lines.get(1).matches("Help: bagwright( [a-z]+)? --help"), wrong.err());
        assertEquals("", wrong.out());
    }

    @Test
    void resultIntoAFolder_namesTheFileThatWasMeant() {
        Terminal wrong = Terminal.run("plan", "demo-data/trio.xlsx", "-o", folder);
        assertEquals(2, wrong.code());
        assertTrue(
                wrong.err().contains("is a folder") && wrong.err().contains("\"" + folder.resolve("trio-plan.xlsx")),
                wrong.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"bag", "bga.xlsx", "bag.xls"})
    void missingBook_namesTheOneBesideIt(String typed) throws Exception {
        Files.copy(Path.of("demo-data", "trio.xlsx"), folder.resolve("bag.xlsx"));
        for (String command : List.of("plan", "check", "watch", "gauge", "page")) {
            Terminal missing = Terminal.run(command, folder.resolve(typed));
            assertEquals(3, missing.code(), missing.err());
            String said = missing.out() + missing.err();
            assertTrue(said.contains("Maybe \"" + folder.resolve("bag.xlsx") + "\"?"), said);
        }
    }

    @Test
    void decimalComma_isANumber() throws Exception {
        assertEquals(2.5, new DecimalNumber().convert("2,5"));
        assertEquals(0.25, new DecimalNumber().convert(",25"));
        assertEquals(1000, new DecimalNumber().convert("1000"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"-h", "-?", "--help", "help"})
    void help_isAskedForInManyWays(String typed) {
        Terminal help = run(typed);
        assertEquals(0, help.code());
        assertTrue(help.out().contains("Usage: bagwright") && help.out().contains("watch"), help.out());
        assertEquals("", help.err());
    }

    @Test
    void helpCommand_isTheSameAsTheOption() {
        assertEquals(run("plan --help"), run("help plan"));
        assertEquals(run("plan --help"), run("plan -?"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"-V", "--version", "plan -V"})
    void version_isToldByEveryCommand(String typed) {
        Terminal version = run(typed);
        assertEquals(0, version.code());
        assertTrue(version.out().matches("bagwright \\S.*\\R"), version.out());
    }

    @Test
    void helpOfEveryCommand_hasExamplesThatCanBeTyped() {
        CommandLine main = Main.commandLine();
        assertTrue(main.getSubcommands().size() >= 10);
        main.getSubcommands().values().forEach(MannersTest::requireExamples);
        requireExamples(main);
    }

    private static void requireExamples(CommandLine command) {
        String name = command.getCommandSpec().qualifiedName();
        List<String> examples = Arrays.stream(
                        command.getCommandSpec().usageMessage().footer())
                .filter(line -> line.startsWith("  bagwright ") && !line.contains(" > "))
                .map(line -> line.strip().split(" {2,}")[0])
                .toList();
        for (String line : command.getCommandSpec().usageMessage().footer()) {
            assertTrue(line.length() < 80, "does not fit a terminal: " + line);
        }
        assertTrue(!examples.isEmpty() || name.endsWith("completion"), name);
        for (String example : examples) {
            assertTrue(example.startsWith(name), example);
            String[] words = example.substring("bagwright ".length())
                    .replaceAll("\"[^\"]*\"", "x.xlsx")
                    .split(" ");
            assertAll(() -> Main.commandLine().parseArgs(words));
        }
    }

    @Test
    void colours_areForTerminalsOnlyAndCanBeSwitchedOff() {
        assertTrue(AnsiStyle.isWanted(Map.of("TERM", "xterm"), true));
        assertFalse(AnsiStyle.isWanted(Map.of("TERM", "xterm"), false));
        assertFalse(AnsiStyle.isWanted(Map.of("TERM", "dumb"), true));
        assertFalse(AnsiStyle.isWanted(Map.of("TERM", "xterm", "NO_COLOR", "1"), true));
        assertTrue(AnsiStyle.isWanted(Map.of("TERM", "xterm", "NO_COLOR", ""), true), "set but empty is as if not set");
    }

    @Test
    void colours_changeNoWord() {
        StringWriter plain = new StringWriter();
        StringWriter coloured = new StringWriter();
        String[] typed = {"check", folder.resolve("none.xlsx").toString()};
        int code = Main.run(new PrintWriter(plain), new PrintWriter(plain), AnsiStyle.NONE, typed);
        assertEquals(code, Main.run(new PrintWriter(coloured), new PrintWriter(coloured), new AnsiStyle(true), typed));
        assertNotEquals(plain.toString(), coloured.toString());
        assertFalse(plain.toString().contains("\u001b"));
        assertEquals(plain.toString(), coloured.toString().replaceAll("\u001b\\[[0-9;]*m", ""));
    }
}
