package org.bagwright.docs;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookFiller;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;

/** Does in a folder what a chapter says, and gives what the chapter should show of the output. */
final class ManualRun {
    private static final Pattern VARIES = Pattern.compile("\\b\\d+\\.\\d s\\b|backup-\\d{8}-\\d{6}");
    private static final String LEFT_OUT = "...";

    private final Path folder;
    private final Function<List<Object>, Terminal> program;

    /** In this process. */
    ManualRun(Path folder) {
        this(folder, arguments -> Terminal.run(arguments.toArray()));
    }

    /** @param program runs a command with its arguments */
    ManualRun(Path folder, Function<List<Object>, Terminal> program) {
        this.folder = folder;
        this.program = program;
    }

    /** Does one thing; for a command the lines to show, else nothing. */
    List<String> output(ManualDeed deed) {
        try {
            if (deed instanceof ManualDeed.Typed typed) {
                return typed(typed);
            }
            if (deed instanceof ManualDeed.Seen seen) {
                return seen(seen);
            }
            if (deed instanceof ManualDeed.Saved saved) {
                Files.writeString(folder.resolve(saved.file()), saved.text());
            } else {
                change(deed);
            }
            return List.of();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private List<String> typed(ManualDeed.Typed typed) throws IOException {
        Set<String> before = files();
        Terminal run = program.apply(arguments(typed.words()));
        String said = typed.words() + " ended with " + run.code() + "\n" + run.out() + run.err();
        if (run.code() != typed.code()) {
            throw new AssertionError(said);
        }
        Set<String> written = files();
        written.removeAll(before);
        if (!written.equals(typed.writes())) {
            throw new AssertionError("new files are " + written + ", not " + typed.writes() + ": " + said);
        }
        String own = folder.toString() + folder.getFileSystem().getSeparator();
        List<String> printed = (run.out() + run.err())
                .replace(own, "")
                .lines()
                .map(String::stripTrailing)
                .toList();
        return shown(typed.shown(), printed);
    }

    private List<Object> arguments(List<String> words) {
        List<Object> arguments = new ArrayList<>();
        String before = "";
        for (String word : words) {
            boolean place = word.matches(".*\\.(xlsx|csv)") || before.equals("-o");
            arguments.add(place ? folder.resolve(word) : word);
            before = word;
        }
        if (words.get(0).equals("demo") && !words.contains("-o")) {
            arguments.add("-o");
            arguments.add(folder.resolve("bagwright-demo"));
        }
        return arguments;
    }

    private void change(ManualDeed deed) throws IOException {
        String name = deed instanceof ManualDeed.Filled filled ? filled.book() : ((ManualDeed.Chosen) deed).book();
        Path file = folder.resolve(name);
        try (XSSFWorkbook book = ResultCells.open(file)) {
            if (deed instanceof ManualDeed.Filled filled) {
                BookFiller filler = new BookFiller(book, filled.sheet());
                filled.rows().forEach(filler::row);
            } else if (deed instanceof ManualDeed.Chosen chosen) {
                // A text inside a cell would stay next to the new one.
                ResultCells.plan(book, chosen.slot() - 1, chosen.heading()).setBlank();
                ResultCells.set(book, chosen.slot() - 1, chosen.heading(), chosen.value());
            }
            try (OutputStream output = Files.newOutputStream(file)) {
                book.write(output);
            }
        }
    }

    /** The rows of a table of a result sheet; one with a single text is a note or a name. */
    private List<String> seen(ManualDeed.Seen seen) throws IOException {
        try (XSSFWorkbook book = ResultCells.open(folder.resolve(seen.book()))) {
            List<List<String>> rows = ResultCells.texts(book.getSheet(seen.sheet()));
            List<String> headings = rows.stream()
                    .filter(row -> row.containsAll(seen.headings()))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no row of " + seen.sheet() + " has " + seen.headings()));
            return rows.subList(rows.indexOf(headings) + 1, rows.size()).stream()
                    .filter(row -> row.stream().filter(text -> !text.isEmpty()).count() > 2)
                    .map(row -> seen.headings().stream()
                            .map(heading -> row.get(headings.indexOf(heading)))
                            .collect(Collectors.joining(" | ", "| ", " |")))
                    .toList();
        }
    }

    private Set<String> files() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /**
     * The shown lines as they were printed: a line after others must follow them at once; after three dots comes the
     * printed line that is most like it. Times and the dates of backups stay as shown.
     */
    static List<String> shown(List<String> shown, List<String> printed) {
        List<String> made = new ArrayList<>();
        int at = 0;
        boolean leap = false;
        for (String line : shown) {
            if (line.equals(LEFT_OUT)) {
                leap = true;
                made.add(line);
            } else if (at < printed.size()) {
                at = leap ? mostLike(line, printed, at) : at;
                made.add(same(line, printed.get(at)) ? line : printed.get(at));
                at++;
                leap = false;
            }
        }
        if (!leap) {
            made.addAll(printed.subList(at, printed.size()));
        }
        return made;
    }

    private static int mostLike(String line, List<String> printed, int from) {
        int best = from;
        for (int index = from; index < printed.size(); index++) {
            if (same(line, printed.get(index))) {
                return index;
            }
            best = likeness(line, printed.get(index)) > likeness(line, printed.get(best)) ? index : best;
        }
        return best;
    }

    private static boolean same(String one, String other) {
        return VARIES.matcher(one).replaceAll("#").equals(VARIES.matcher(other).replaceAll("#"));
    }

    /** How many words stand in both. */
    private static long likeness(String one, String other) {
        List<String> words = List.of(one.split(" +"));
        return Stream.of(other.split(" +")).distinct().filter(words::contains).count();
    }
}
