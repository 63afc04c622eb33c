package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.bagwright.KeptResult;
import org.bagwright.workbook.template.BlankBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is written into a book, part by part: cells, formulas, looks, widths, notes, drop-downs, charts and pages are those of
 * the committed books. Whoever changes one of them on purpose makes the books again, looks at them and commits them.
 */
@Tag("regression")
class KeptResultTest {
    @TempDir
    Path folder;

    @Test
    void blankBook_isWrittenAsItIsKept() throws Exception {
        Path made = folder.resolve("bag.xlsx");
        BlankBook.write(made);
        assertEquals(List.of(), XmlParts.of(Path.of("templates", "bag.xlsx")).differences(XmlParts.of(made)));
    }

    @Test
    void plannedBook_isWrittenAsItIsKept() throws Exception {
        XmlParts made = XmlParts.of(KeptResult.planned(folder));
        assertEquals(List.of(), XmlParts.of(KeptResult.KEPT).differences(made));
        List<String> parts = made.names();
        assertTrue(parts.stream().filter(part -> part.contains("/charts/")).count() > 3, parts.toString());
        assertTrue(parts.stream().filter(part -> part.contains("/worksheets/")).count() > 20, parts.toString());
    }

    /** What the comparison must see. */
    @Test
    void otherBook_differs() throws Exception {
        XmlParts kept = XmlParts.of(KeptResult.KEPT);
        List<String> differences = kept.differences(XmlParts.of(Path.of("templates", "bag.xlsx")));
        assertTrue(differences.size() >= 20, differences.toString());
    }
}
