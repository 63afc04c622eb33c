package org.bagwright.badbooks;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every command refuses every bad book in the same words, with its cell, and writes nothing; but gauge makes no result
 * sheets and so does not mind whose they are. What is wrong with each book is common practice of files and tables; the words
 * are our own.
 */
@Tag("regression")
class BadBooksTest {
    @TempDir
    Path folder;

    @TempDir
    Path elsewhere;

    static Stream<BadBook> books() {
        return Stream.of(BadCells.all(), BadTables.all().stream(), BadFiles.all().stream(), OtherKinds.all().stream())
                .flatMap(books -> books);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("books")
    void badBook_isRefusedByEveryCommandInTheSameWords(BadBook bad) throws Exception {
        Path file = Files.write(folder.resolve(bad.fileName()), bad.file().bytes());
        byte[] before = Files.readAllBytes(file);
        Terminal check = Terminal.run("check", file);
        assertTrue(check.out().lines().anyMatch(bad.says()::equals), bad + "\n" + check.out() + check.err());
        assertEquals(3, check.code());
        for (String command : List.of("plan", "chart", "gauge")) {
            Terminal refused = Terminal.run(command, file);
            assertEquals(3, refused.code(), refused.err());
            boolean own = command.equals("gauge") && bad.says().contains("the plan needs its name");
            assertTrue(
                    own || refused.err().lines().anyMatch(bad.says()::equals),
                    command + " " + bad.says() + "\n" + refused.err());
            assertFalse(refused.err().contains("\tat "), refused.err());
            assertEquals("", refused.out());
        }
        assertAddsNoShots(bad, file);
        Path copy = Files.copy(file, folder.resolve("copy.xlsx"));
        Terminal compare = Terminal.run("compare", file, copy);
        Files.delete(copy);
        assertEquals(3, compare.code(), compare.err());
        assertTrue(
                compare.err().lines().map(String::strip).anyMatch(bad.says()::equals),
                "compare " + bad.says() + "\n" + compare.err());
        assertArrayEquals(before, Files.readAllBytes(file));
        assertEquals(List.of(bad.fileName()), List.of(folder.toFile().list()));
    }

    /** Shots need no name of a result sheet either. */
    private void assertAddsNoShots(BadBook bad, Path file) throws Exception {
        Path shots = Files.writeString(elsewhere.resolve("may.csv"), "Club,Carry (yd)\nDriver,222\n");
        Terminal add = Terminal.run("add-shots", file, shots, "--golfer", "Golfer A", "--dry-run");
        boolean own = bad.says().contains("the plan needs its name");
        assertTrue(own || add.err().lines().anyMatch(bad.says()::equals), "add-shots " + bad.says() + "\n" + add.err());
        assertEquals(own ? 0 : 3, add.code(), add.err());
    }
}
