package org.bagwright.workbook.result;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The title and the author of a result, as a file manager shows them. */
@Tag("regression")
class BookTitleTest {
    private static final BookTitle OF_START = new BookTitle(Optional.of("Spring fitting"), Path.of("golfer-a.xlsx"));
    private static final BookTitle OF_FILE = new BookTitle(Optional.empty(), Path.of("fittings", "golfer-a.xlsx"));

    private static String title(POIXMLProperties properties) {
        return properties.getCoreProperties().getTitle();
    }

    @Test
    void titleOfTheFitter_stays() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            book.getProperties().getCoreProperties().setTitle("My records");
            OF_START.giveTo(book.getProperties());
            assertEquals("My records", title(book.getProperties()));
        }
    }

    @Test
    void titleOfTheBlankBook_givesWayToThatOfStart() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            book.getProperties().getCoreProperties().setTitle(BookTitle.OF_BLANK_BOOK);
            OF_START.giveTo(book.getProperties());
            assertEquals("Spring fitting", title(book.getProperties()));
        }
    }

    @Test
    void withoutAnyTitle_theNameOfTheFileIsGivenAndFollowsLater() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            OF_FILE.giveTo(book.getProperties());
            assertEquals("golfer-a", title(book.getProperties()));
            OF_START.giveTo(book.getProperties());
            assertEquals("Spring fitting", title(book.getProperties()));
            book.getProperties().getCoreProperties().setTitle("My records");
            OF_FILE.giveTo(book.getProperties());
            assertEquals("My records", title(book.getProperties()));
        }
    }

    @Test
    void authorOfTheBlankBook_givesWayToWhoSavedIt() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            var core = book.getProperties().getCoreProperties();
            core.setCreator(BookTitle.TOOL);
            core.setLastModifiedByUser("Fitter B");
            OF_FILE.giveTo(book.getProperties());
            assertEquals("Fitter B", core.getCreator());
            core.setLastModifiedByUser("Someone else");
            OF_FILE.giveTo(book.getProperties());
            assertEquals("Fitter B", core.getCreator());
        }
    }
}
