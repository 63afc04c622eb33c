package org.bagwright.workbook.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.InflaterInputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.DemoBooks;
import org.bagwright.Spreadsheet;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.planning.Planning;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.SheetPen;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cards of the demo books as they are printed: a page of A4 for each golfer, in letters of 9 points or more. */
@Tag("regression")
class PrintedCardsTest {
    private static final double LEAST_POINTS = 9;
    private static final Pattern PAGE =
            Pattern.compile("/Type\\s*/Page[^s].*?/MediaBox\\s*\\[([^\\]]*)\\]", Pattern.DOTALL);
    private static final Pattern STREAM = Pattern.compile("/FlateDecode[^>]*>>\\s*stream\\r?\\n");
    private static final Pattern FONT_SIZE = Pattern.compile("/F\\d+ ([\\d.]+) Tf");

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"trio, 1", "full, 1", "team, 12"})
    void cards_areAPageAGolferInLettersThatCanBeRead(String demo, int golfers) throws Exception {
        BookResult result = new Planning(1, 60).plan(DemoBooks.kept(demo));
        check(BenchCardSheet.NAME, (pen, book) -> new BenchCardSheet(pen, book).write(), result, golfers);
        check(GolferCardSheet.NAME, (pen, book) -> new GolferCardSheet(pen, book).write(), result, golfers);
    }

    private void check(String name, BiConsumer<SheetPen, BookResult> writer, BookResult result, int golfers)
            throws Exception {
        Path file = folder.resolve(name.replace(' ', '-') + ".xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream output = Files.newOutputStream(file)) {
            writer.accept(new SheetPen(workbook.createSheet(name), new BookStyles(workbook)), result);
            workbook.write(output);
        }
        byte[] pdf = Files.readAllBytes(Spreadsheet.converted(file, folder.resolve("print"), "pdf"));
        Matcher page = PAGE.matcher(new String(pdf, StandardCharsets.ISO_8859_1));
        int pages = 0;
        while (page.find()) {
            assertTrue(page.group(1).matches("0 0 595[.\\d]* 84[12][.\\d]*"), "A4 upright: " + page.group(1));
            pages++;
        }
        assertEquals(golfers, pages, name + ": pages");
        List<Double> sizes = fontSizesPoints(pdf);
        assertTrue(sizes.size() > 20 * golfers, "texts found: " + sizes.size());
        assertTrue(sizes.stream().allMatch(points -> points >= LEAST_POINTS), name + ": " + sizes);
    }

    /** The size of every text as it is on the paper: the page's scale is in it. */
    private static List<Double> fontSizesPoints(byte[] pdf) throws IOException {
        List<Double> sizes = new ArrayList<>();
        Matcher stream = STREAM.matcher(new String(pdf, StandardCharsets.ISO_8859_1));
        while (stream.find()) {
            int start = stream.end();
            Matcher size = FONT_SIZE.matcher(inflated(pdf, start));
            while (size.find()) {
                sizes.add(Double.parseDouble(size.group(1)));
            }
        }
        return sizes;
    }

    private static String inflated(byte[] pdf, int start) throws IOException {
        try (InflaterInputStream content =
                new InflaterInputStream(new ByteArrayInputStream(pdf, start, pdf.length - start))) {
            return new String(content.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }
}
