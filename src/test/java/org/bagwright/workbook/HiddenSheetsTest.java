package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Message;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A hidden sheet counts like any other, and a fitter who has forgotten it reads that it does. */
@Tag("analytic")
class HiddenSheetsTest {
    private static final String SAID = ": this sheet is hidden but is still read";

    private static List<String> warned(TestBook book) {
        return book.lines(Message.Severity.WARNING).stream()
                .filter(line -> line.endsWith(SAID))
                .toList();
    }

    @Test
    void hiddenInputSheets_areReadAndSaid() {
        TestBook book = TestBook.sound().sheet("My notes").row("Order grips");
        XSSFWorkbook workbook = book.workbook();
        assertTrue(warned(book).isEmpty());
        workbook.setSheetVisibility(workbook.getSheetIndex("Clubs"), SheetVisibility.VERY_HIDDEN);
        workbook.setSheetVisibility(workbook.getSheetIndex("Golfers"), SheetVisibility.HIDDEN);
        workbook.setSheetVisibility(workbook.getSheetIndex("My notes"), SheetVisibility.HIDDEN);
        assertEquals(
                List.of("Clubs" + SAID, "Golfers" + SAID),
                warned(book).stream().sorted().toList());
        assertTrue(!book.book().clubs().isEmpty());
    }
}
