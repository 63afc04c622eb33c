package org.bagwright.workbook.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiConsumer;
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
        PrintedPdf pdf =
                new PrintedPdf(Files.readAllBytes(Spreadsheet.converted(file, folder.resolve("print"), "pdf")));
        for (String page : pdf.pages()) {
            assertTrue(page.matches("0 0 595[.\\d]* 84[12][.\\d]*"), "A4 upright: " + page);
        }
        assertEquals(golfers, pdf.pages().size(), name + ": pages");
        List<Double> sizes = pdf.lettersPoints().stream().flatMap(List::stream).toList();
        assertTrue(sizes.size() > 20 * golfers, "texts found: " + sizes.size());
        assertTrue(sizes.stream().allMatch(points -> points >= LEAST_POINTS), name + ": " + sizes);
    }
}
