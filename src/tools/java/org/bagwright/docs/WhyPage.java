package org.bagwright.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The page src/docs/why.md and its pictures. Numbers stand in the page between {@code <!-- numbers: NAME -->} and
 * {@code <!-- end -->}; what is between is made here, inside a line or as a table of its own lines.
 */
public final class WhyPage {
    static final Path PAGE = Path.of("src", "docs", "why.md");
    static final Path PICTURES = Path.of("src", "docs", "pictures");
    static final Pattern BLOCK = Pattern.compile("(<!-- numbers: ([a-z0-9-]+) -->)(.*?)(<!-- end -->)", Pattern.DOTALL);

    private WhyPage() {}

    /** Draws every picture and fills the numbers of the page, from the top folder of the project. */
    public static void main(String[] args) throws IOException {
        Files.createDirectories(PICTURES);
        for (Map.Entry<String, Supplier<Svg>> picture : Pictures.byFile().entrySet()) {
            Files.writeString(
                    PICTURES.resolve(picture.getKey()), picture.getValue().get().written());
        }
        Files.writeString(PAGE, filled(Files.readString(PAGE)));
    }

    /** The page with what the code makes today in every block. */
    static String filled(String page) {
        return BLOCK.matcher(page)
                .replaceAll(block -> Matcher.quoteReplacement(block.group(1) + made(block.group(2)) + block.group(4)));
    }

    private static String made(String name) {
        Supplier<String> number = WhyNumbers.byName().get(name);
        if (number == null) {
            throw new IllegalArgumentException("no number is called " + name + "; there are "
                    + new TreeSet<>(WhyNumbers.byName().keySet()));
        }
        String text = number.get();
        return text.startsWith("|") ? "\n\n" + text + "\n" : text;
    }
}
