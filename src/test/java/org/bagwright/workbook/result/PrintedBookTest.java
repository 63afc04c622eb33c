package org.bagwright.workbook.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bagwright.Needed;
import org.bagwright.PlannedDemos;
import org.bagwright.Spreadsheet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The whole books of the demos as they are printed: how many pages of A4, and how small their letters are. */
@Tag("regression")
class PrintedBookTest {
    private static final double LEAST_POINTS = 8;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"trio, 10", "full, 18", "team, 60"})
    void book_hasFewPagesAndLettersThatCanBeRead(String demo, int mostPages) throws Exception {
        Needed.arial();
        Path result = PlannedDemos.file(demo, folder);
        PrintedPdf pdf =
                new PrintedPdf(Files.readAllBytes(Spreadsheet.converted(result, folder.resolve("print"), "pdf")));
        for (String page : pdf.pages()) {
            assertTrue(page.matches("0 0 (595|841|842)[.\\d]* (595|841|842)[.\\d]*"), "A4: " + page);
        }
        int pages = pdf.pages().size();
        assertTrue(pages > 4 && pages <= mostPages, "pages: " + pages);
        checkLetters(pdf.lettersPoints(), pages);
    }

    private static void checkLetters(List<List<Double>> lettersPoints, int pages) {
        for (int page = 0; page < lettersPoints.size(); page++) {
            for (double points : lettersPoints.get(page)) {
                assertTrue(points >= LEAST_POINTS, "page " + (page + 1) + ": letters of " + points);
            }
        }
        assertEquals(pages, lettersPoints.size(), "pages with texts");
    }
}
