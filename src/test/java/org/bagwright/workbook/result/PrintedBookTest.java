package org.bagwright.workbook.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.InflaterInputStream;
import org.bagwright.Spreadsheet;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The whole books of the demos as they are printed: how many pages of A4, and how small their letters are. */
@Tag("regression")
class PrintedBookTest {
    private static final double LEAST_POINTS = 8;
    private static final Pattern PAGE =
            Pattern.compile("/Type\\s*/Page[^s].*?/MediaBox\\s*\\[([^\\]]*)\\]", Pattern.DOTALL);
    private static final Pattern STREAM = Pattern.compile("/FlateDecode[^>]*>>\\s*stream\\r?\\n");
    private static final Pattern FONT_SIZE = Pattern.compile("/F\\d+ ([\\d.]+) Tf");

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"trio, 10", "full, 18", "team, 60"})
    void book_hasFewPagesAndLettersThatCanBeRead(String demo, int mostPages) throws Exception {
        Path result = folder.resolve(demo + "-plan.xlsx");
        Terminal run = Terminal.run("plan", Path.of("demo-data", demo + ".xlsx"), "-o", result);
        assertTrue(run.code() == 0 || run.code() == 4, run.err());
        byte[] pdf = Files.readAllBytes(Spreadsheet.converted(result, folder.resolve("print"), "pdf"));
        Matcher page = PAGE.matcher(new String(pdf, StandardCharsets.ISO_8859_1));
        int pages = 0;
        while (page.find()) {
            pages++;
            assertTrue(page.group(1).matches("0 0 (595|841|842)[.\\d]* (595|841|842)[.\\d]*"), "A4: " + page.group(1));
        }
        assertTrue(pages > 4 && pages <= mostPages, "pages: " + pages);
        checkLetters(pdf, pages);
    }

    /** The size of a text on the paper: the scale of its page is in it. */
    private static void checkLetters(byte[] pdf, int pages) throws IOException {
        Matcher stream = STREAM.matcher(new String(pdf, StandardCharsets.ISO_8859_1));
        int written = 0;
        while (stream.find()) {
            Matcher size = FONT_SIZE.matcher(inflated(pdf, stream.end()));
            boolean found = false;
            while (size.find()) {
                found = true;
                double points = Double.parseDouble(size.group(1));
                assertTrue(points >= LEAST_POINTS, "page " + (written + 1) + ": letters of " + points);
            }
            written += found ? 1 : 0;
        }
        assertEquals(pages, written, "pages with texts");
    }

    private static String inflated(byte[] pdf, int start) throws IOException {
        try (InflaterInputStream content =
                new InflaterInputStream(new ByteArrayInputStream(pdf, start, pdf.length - start))) {
            return new String(content.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }
}
