package org.bagwright.badbooks;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Books whose first sheet is of another kind, or whose formulas are shown by row and column. */
final class OtherFirstSheets {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    private OtherFirstSheets() {}

    static List<BadBook> valid() {
        return List.of(
                new BadBook("chart sheet first", "", OtherFirstSheets::chart),
                BadBook.part(
                        "formulas by row and column",
                        "",
                        "xl/workbook.xml",
                        text -> text.replace(
                                "</workbook>", "<calcPr calcId=\"191029\" refMode=\"R1C1\"/></workbook>")));
    }

    static BadBook macroSheet() {
        return new BadBook(
                "macro sheet of an old kind first",
                "bag.xlsx: its sheet \"First\" is a macro sheet or a dialog of an old kind, which cannot be kept in a"
                        + " result. Delete it, or move it to another book.",
                OtherFirstSheets::macros);
    }

    private static byte[] chart() throws IOException {
        return withFirstSheet(
                "xl/chartsheets/sheet1.xml",
                "application/vnd.openxmlformats-officedocument.spreadsheetml.chartsheet+xml",
                "http://schemas.openxmlformats.org/officeDocument/2006/relationships/chartsheet",
                "<chartsheet xmlns=\"" + MAIN + "\"><sheetViews><sheetView workbookViewId=\"0\"/></sheetViews>"
                        + "</chartsheet>");
    }

    private static byte[] macros() throws IOException {
        return withFirstSheet(
                "xl/macrosheets/sheet1.xml",
                "application/vnd.ms-excel.macrosheet+xml",
                "http://schemas.microsoft.com/office/2006/relationships/xlMacrosheet",
                "<xm:macrosheet xmlns:xm=\"http://schemas.microsoft.com/office/excel/2006/main\" xmlns=\"" + MAIN
                        + "\"><sheetData/></xm:macrosheet>");
    }

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
}
