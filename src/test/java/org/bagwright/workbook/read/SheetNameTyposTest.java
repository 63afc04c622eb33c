package org.bagwright.workbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.bagwright.BookSketch;
import org.bagwright.domain.book.Message;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets whose names are slips of those that are read. */
@Tag("regression")
class SheetNameTyposTest {
    @TempDir
    Path folder;

    private List<String> warnings(String sheet) throws Exception {
        Path book = new BookSketch()
                .sheet("Golfers", "Golfer")
                .row("Golfer A")
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie")
                .row("Golfer A", 1, "5 iron", "iron", 27, 62)
                .sheet(sheet, "Some heading")
                .write(folder.resolve("bag.xlsx"));
        return BookReader.read(book).messages().stream()
                .filter(message -> message.severity() == Message.Severity.WARNING)
                .filter(message -> message.cell().equals(sheet))
                .map(Message::text)
                .toList();
    }

    @Test
    void sheetThatIsPassedOverForASlip_isNamedWithWhatWasMeant() throws Exception {
        assertTrue(warnings("Strat").get(0).contains("Maybe \"Start\""));
        assertTrue(warnings("Stok").get(0).contains("Maybe \"Stock\""));
        assertTrue(warnings("Reading").get(0).contains("Maybe \"Readings\""));
        assertTrue(warnings("Shot").get(0).contains("Maybe \"Shots\""));
        assertTrue(warnings("Wieghts").get(0).contains("Maybe \"Weights\""));
        assertTrue(warnings("Aim").get(0).contains("Maybe \"Aims\""));
    }

    @Test
    void fittersOwnSheet_isNoSlip() throws Exception {
        assertEquals(List.of(), warnings("Diary"));
        assertEquals(List.of(), warnings("Prices"));
    }
}
