package org.bagwright.badbooks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Books whose first sheet has no cells to read, or whose formulas are shown by row and column. */
@Tag("regression")
class OtherFirstSheetsTest {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    @TempDir
    Path folder;

    private static byte[] withFirstSheet(String part, String contentType, String relation, String xml)
            throws IOException {
        byte[] book = BadBook.bytes(BadBook.sound());
        book = BadBook.withPart(
                book,
                "[Content_Types].xml",
                text -> text.replace(
                        "</Types>",
                        "<Override PartName=\"/" + part + "\" ContentType=\"" + contentType + "\"/></Types>"));
        book = BadBook.withPart(
                book,
                "xl/_rels/workbook.xml.rels",
                text -> text.replace(
                        "</Relationships>",
                        "<Relationship Id=\"rId99\" Type=\"" + relation + "\" Target=\"/" + part
                                + "\"/></Relationships>"));
        book = BadBook.withPart(
                book,
                "xl/workbook.xml",
                text -> text.replace("<sheets>", "<sheets><sheet name=\"First\" r:id=\"rId99\" sheetId=\"99\"/>"));
        return withNewPart(book, part, xml);
    }

    private static byte[] withNewPart(byte[] book, String part, String xml) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(book));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                in.transferTo(out);
            }
            out.putNextEntry(new ZipEntry(part));
            out.write(xml.getBytes(StandardCharsets.UTF_8));
        }
        return bytes.toByteArray();
    }

    @Test
    void firstSheetWithoutCells_isPassedOver() throws IOException {
        Map<String, byte[]> books = new LinkedHashMap<>();
        books.put(
                "chart",
                withFirstSheet(
                        "xl/chartsheets/sheet1.xml",
                        "application/vnd.openxmlformats-officedocument.spreadsheetml.chartsheet+xml",
                        "http://schemas.openxmlformats.org/officeDocument/2006/relationships/chartsheet",
                        "<chartsheet xmlns=\"" + MAIN + "\"><sheetViews><sheetView workbookViewId=\"0\"/></sheetViews>"
                                + "</chartsheet>"));
        books.put(
                "formulas by row and column",
                BadBook.withPart(
                        BadBook.bytes(BadBook.sound()),
                        "xl/workbook.xml",
                        text -> text.replace(
                                "</workbook>", "<calcPr calcId=\"191029\" refMode=\"R1C1\"/></workbook>")));
        for (Map.Entry<String, byte[]> book : books.entrySet()) {
            Path file = Files.write(folder.resolve("bag.xlsx"), book.getValue());
            Terminal check = Terminal.run("check", file);
            assertEquals(0, check.code(), book.getKey() + check.out() + check.err());
            Terminal plan = Terminal.run("plan", file, "--seconds", "3");
            assertTrue(List.of(0, 4).contains(plan.code()), book.getKey() + plan.err());
            Terminal again = Terminal.run("check", folder.resolve("bag-plan.xlsx"));
            assertEquals(0, again.code(), book.getKey() + again.out());
        }
    }

    @Test
    void macroSheetOfAnOldKind_isRefusedByItsName() throws IOException {
        Path file = Files.write(
                folder.resolve("bag.xlsx"),
                withFirstSheet(
                        "xl/macrosheets/sheet1.xml",
                        "application/vnd.ms-excel.macrosheet+xml",
                        "http://schemas.microsoft.com/office/2006/relationships/xlMacrosheet",
                        "<xm:macrosheet xmlns:xm=\"http://schemas.microsoft.com/office/excel/2006/main\" xmlns=\""
                                + MAIN + "\"><sheetData/></xm:macrosheet>"));
        for (String command : List.of("check", "plan")) {
            Terminal refused = Terminal.run(command, file);
            assertEquals(3, refused.code(), command);
            assertTrue((refused.out() + refused.err()).contains("its sheet \"First\" is a macro sheet"), command);
        }
    }
}
