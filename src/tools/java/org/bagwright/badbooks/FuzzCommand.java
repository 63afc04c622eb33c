package org.bagwright.badbooks;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A command that is run on spoilt books, and how it may end.
 *
 * @param words what is typed; BOOK, COPY, SHOTS, OUT.xlsx and OUT.html name the files of a try
 * @param soundCodes its exit codes where {@code check} finds nothing
 * @param spoiltCodes its exit codes where {@code check} finds problems
 */
record FuzzCommand(String words, Set<Integer> soundCodes, Set<Integer> spoiltCodes) {
    /** Every command that reads a book; a new one is a line here. */
    static final List<FuzzCommand> ALL = List.of(
            new FuzzCommand("plan BOOK -o OUT.xlsx --seconds 3", Set.of(0, 4), Set.of(3)),
            new FuzzCommand("chart BOOK", Set.of(0), Set.of(3)),
            new FuzzCommand("gauge BOOK --write -o OUT.xlsx", Set.of(0, 3), Set.of(0, 3)),
            new FuzzCommand("compare BOOK COPY --seconds 1", Set.of(0, 4), Set.of(3)),
            new FuzzCommand("page BOOK -o OUT.html --seconds 1", Set.of(0, 4), Set.of(3)),
            new FuzzCommand("add-shots BOOK SHOTS -o OUT.xlsx", Set.of(0, 3), Set.of(0, 3)));

    String name() {
        return words.substring(0, words.indexOf(' '));
    }

    /** Whether the command reads a file of shots too. */
    boolean readsShots() {
        return words.contains("SHOTS");
    }

    /** Whether an exit code is right for a book that {@code check} finds sound or not. */
    boolean mayEnd(int code, boolean sound) {
        return (sound ? soundCodes : spoiltCodes).contains(code);
    }

    /** The words as arguments, with the files of a try. */
    List<String> arguments(TryFiles files) {
        return Stream.of(words.split(" ")).map(files::named).toList();
    }
}
