package org.bagwright.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One chapter of the manual as it is written: commands in fenced blocks marked {@code console}, with {@code code=3} and
 * {@code writes=a.xlsx,b.xlsx} where they apply; a table to fill in after {@code <!-- fill BOOK: SHEET -->}; a cell of the
 * sheet Plan as {@code <!-- choose BOOK: slot N, HEADING = VALUE -->}; a file of text in a fenced block after
 * {@code <!-- save FILE -->}; rows of a result sheet in a table of some of its headings after {@code <!-- see BOOK: SHEET -->}.
 *
 * @param name its file's name
 */
record ManualChapter(String name, String text) {
    static final Path FOLDER = Path.of("src", "docs", "manual");
    private static final String COMMAND = "```console([^\\n]*)\\n\\$ bagwright ([^\\n]+)\\n(.*?)```";
    private static final String FILL = "<!-- fill (\\S+): (\\w+) -->\\s+((?:\\|[^\\n]*\\n)+)";
    private static final String CHOOSE = "<!-- choose (\\S+): slot (\\d+), (.+?) = (.+?) -->";
    private static final String SAVE = "<!-- save (\\S+) -->\\s+```text\\n(.*?)```";
    private static final String SEE = "<!-- see (\\S+): (\\w+) -->\\s+(\\|[^\\n]*)\\n\\|[-|]*\\n((?:\\|[^\\n]*\\n)*)";
    private static final Pattern DEED =
            Pattern.compile(COMMAND + "|" + FILL + "|" + CHOOSE + "|" + SAVE + "|" + SEE, Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("\"[^\"]*\"|\\S+");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    /** Every chapter in order. */
    static List<ManualChapter> all() throws IOException {
        List<ManualChapter> chapters = new ArrayList<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<Path> sorted = files.filter(
                            file -> file.getFileName().toString().matches("\\d+-.*\\.md"))
                    .sorted(Comparator.comparingInt(ManualChapter::number))
                    .toList();
            for (Path file : sorted) {
                String text = Files.readString(file).replace("\r\n", "\n");
                chapters.add(new ManualChapter(file.getFileName().toString(), text));
            }
        }
        return chapters;
    }

    private static int number(Path file) {
        String name = file.getFileName().toString();
        return Integer.parseInt(name.substring(0, name.indexOf('-')));
    }

    List<ManualDeed> deeds() {
        return DEED.matcher(text).results().map(ManualChapter::deed).toList();
    }

    /** The same chapter with the output under each command made again. */
    ManualChapter withOutput(Function<ManualDeed, List<String>> output) {
        String filled = DEED.matcher(text).replaceAll(found -> {
            List<String> lines = output.apply(deed(found));
            String block = found.group();
            if (found.group(2) != null) {
                String head = block.substring(0, found.start(3) - found.start());
                block = head + String.join("\n", lines) + (lines.isEmpty() ? "" : "\n") + "```";
            } else if (found.group(13) != null) {
                String head = block.substring(0, found.start(16) - found.start());
                block = head + String.join("\n", lines) + "\n";
            }
            return Matcher.quoteReplacement(block);
        });
        return new ManualChapter(name, filled);
    }

    private static ManualDeed deed(MatchResult found) {
        if (found.group(2) != null) {
            return command(found);
        }
        if (found.group(4) != null) {
            return new ManualDeed.Filled(found.group(4), found.group(5), rows(found.group(6)));
        }
        if (found.group(11) != null) {
            return new ManualDeed.Saved(found.group(11), found.group(12));
        }
        if (found.group(13) != null) {
            return new ManualDeed.Seen(found.group(13), found.group(14), cells(found.group(15)));
        }
        int slot = Integer.parseInt(found.group(8));
        return new ManualDeed.Chosen(found.group(7), slot, found.group(9), value(found.group(10)));
    }

    private static ManualDeed command(MatchResult found) {
        int code = 0;
        TreeSet<String> writes = new TreeSet<>();
        for (String word : found.group(1).trim().split(" ")) {
            if (word.startsWith("code=")) {
                code = Integer.parseInt(word.substring(5));
            } else if (word.startsWith("writes=")) {
                writes.addAll(Arrays.asList(word.substring(7).split(",")));
            }
        }
        List<String> words = WORD.matcher(found.group(2))
                .results()
                .map(word -> word.group().replace("\"", ""))
                .toList();
        return new ManualDeed.Typed(words, code, writes, found.group(3).lines().toList());
    }

    private static List<Map<String, Object>> rows(String table) {
        List<List<String>> cells = table.lines().map(ManualChapter::cells).toList();
        List<Map<String, Object>> rows = new ArrayList<>();
        for (List<String> line : cells.subList(2, cells.size())) {
            Map<String, Object> row = new LinkedHashMap<>();
            for (int column = 0; column < line.size(); column++) {
                if (!line.get(column).isEmpty()) {
                    row.put(cells.get(0).get(column), value(line.get(column)));
                }
            }
            rows.add(row);
        }
        return rows;
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.substring(1).split("\\|")).map(String::trim).toList();
    }

    private static Object value(String text) {
        if (NUMBER.matcher(text).matches()) {
            return Double.valueOf(text);
        }
        return text;
    }
}
