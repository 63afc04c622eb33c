package org.bagwright.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bagwright.workbook.schema.ColumnTables;

/** The manual in src/docs/manual: the output of its commands and its tables of columns are made by the program's code. */
public final class Manual {
    private static final Pattern TABLE =
            Pattern.compile("(<!-- columns: ([A-Za-z ]+) -->\\n)(.*?)(<!-- end -->)", Pattern.DOTALL);

    private Manual() {}

    /** Makes every output and table of the manual anew, from the top folder of the project. */
    public static void main(String[] args) throws IOException {
        for (ManualChapter chapter : ManualChapter.all()) {
            Path folder = Files.createTempDirectory("manual");
            ManualChapter made = made(chapter, folder);
            Files.writeString(ManualChapter.FOLDER.resolve(made.name()), made.text());
        }
    }

    /** A chapter as the program makes it today; its commands run in the folder. */
    static ManualChapter made(ManualChapter chapter, Path folder) {
        ManualChapter run = chapter.withOutput(new ManualRun(folder)::output);
        return new ManualChapter(chapter.name(), withTables(run.text()));
    }

    private static String withTables(String text) {
        return TABLE.matcher(text)
                .replaceAll(block -> Matcher.quoteReplacement(
                        block.group(1) + "\n" + table(block.group(2)) + "\n" + block.group(4)));
    }

    private static String table(String name) {
        Map<String, Supplier<String>> tables = ColumnTables.byName();
        Supplier<String> table = tables.get(name);
        if (table == null) {
            throw new IllegalArgumentException(
                    "no table is called " + name + "; there are " + new TreeSet<>(tables.keySet()));
        }
        return table.get();
    }
}
