package org.bagwright.badbooks;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Files that are hostile or damaged inside, in addition to those of {@code BadFileTest}. */
final class BadFiles {
    private static final String DAMAGED =
            "bag.xlsx: the file is damaged or incomplete, or is not an .xlsx workbook; use"
                    + " an earlier copy, or repair it in a spreadsheet program.";
    private static final String TYPE = "has a document type, which no spreadsheet program writes";
    private static final String VALUE = "has a value that is not possible there";
    private static final String LAUGHS = "<!DOCTYPE x [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">"
            + "<!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;\"><!ENTITY d \"&c;&c;&c;&c;&c;&c;&c;&c;\">"
            + "<!ENTITY e \"&d;&d;&d;&d;&d;&d;&d;&d;\"><!ENTITY f \"&e;&e;&e;&e;&e;&e;&e;&e;\">]>";
    private static final String OUTSIDE = "<!DOCTYPE x [<!ENTITY f SYSTEM \"file:///etc/hostname\">]>";
    private static final long BOMB_BYTES = 300L << 20;

    private BadFiles() {}

    static List<BadBook> all() {
        return List.of(
                new BadBook("zip bomb in a sheet", DAMAGED, () -> bomb("xl/worksheets/sheet2.xml")),
                OtherFirstSheets.macroSheet(),
                new BadBook("zip bomb next to the book", DAMAGED, () -> bomb("xl/media/image1.png")),
                new BadBook(
                        "digit of a loft that flipped on the disk",
                        part(BadBook.partName(2), "is not as it was written: its checksum differs"),
                        BadFiles::flipped),
                BadBook.part(
                        "properties of the document that are empty",
                        part("docProps/core.xml", "is not sound XML, line 1 character 1"),
                        "docProps/core.xml",
                        text -> ""),
                BadBook.part(
                        "properties of the document that are cut short",
                        part("docProps/core.xml", "is not sound XML, line 1 character 104"),
                        "docProps/core.xml",
                        text -> text.substring(0, text.indexOf("?>") + 50)),
                BadBook.part(
                        "properties of the document that are missing",
                        part("docProps/core.xml", "is missing"),
                        "docProps/core.xml",
                        text -> null),
                BadBook.part(
                        "properties of the document with a document type",
                        part("docProps/core.xml", TYPE),
                        "docProps/core.xml",
                        text -> typed(text, "<!DOCTYPE x>")),
                BadBook.part(
                        "properties nested too deeply",
                        part("docProps/app.xml", "has more than 256 elements one inside another"),
                        "docProps/app.xml",
                        text -> text.replace(
                                "</Properties>", "<a>".repeat(3000) + "</a>".repeat(3000) + "</Properties>")),
                BadBook.part(
                        "state of a sheet that does not exist",
                        part("xl/workbook.xml", VALUE),
                        "xl/workbook.xml",
                        text -> text.replaceFirst("<sheet ", "<sheet state=\"zz\" ")),
                BadBook.part(
                        "number of a sheet that is none",
                        part("xl/workbook.xml", VALUE),
                        "xl/workbook.xml",
                        text -> text.replaceFirst("sheetId=\"\\d+\"", "sheetId=\"x\"")),
                BadBook.part(
                        "font of a format that is no number",
                        part("xl/styles.xml", VALUE),
                        "xl/styles.xml",
                        text -> text.replaceFirst("(<cellXfs.*?fontId=)\"\\d+\"", "$1\"x\"")),
                BadBook.part(
                        "no fonts",
                        part("xl/styles.xml", "has gaps"),
                        "xl/styles.xml",
                        text -> text.replaceFirst("(?s)<fonts.*</fonts>", "")),
                BadBook.part(
                        "format of a cell that is no number",
                        damaged("the damaged cell E2"),
                        BadBook.partName(2),
                        text -> text.replaceFirst("(r=\"E2\"[^>]*) s=\"\\d+\"", "$1 s=\"x\"")),
                BadBook.part(
                        "entry without a text in the list of texts",
                        "Clubs!A2: golfer must be text, found a text that is missing from the file; expected a name or a mark.",
                        "xl/sharedStrings.xml",
                        text -> text.replaceFirst("<si><t>Golfer A</t></si>", "<si/>")),
                entity("document type", "<!DOCTYPE x>", ""),
                entity("billion laughs", LAUGHS, "&f;"),
                entity("entity from another file", OUTSIDE, "&f;"),
                BadBook.part(
                        "document type in the texts",
                        part("xl/sharedStrings.xml", TYPE),
                        "xl/sharedStrings.xml",
                        text -> typed(text, "<!DOCTYPE x>")),
                BadBook.part(
                        "document type in the book",
                        part("xl/workbook.xml", TYPE),
                        "xl/workbook.xml",
                        text -> typed(text, LAUGHS)),
                BadBook.part(
                        "no texts",
                        "bag.xlsx: the file is damaged: the texts of its cells are missing; use an earlier copy.",
                        "xl/sharedStrings.xml",
                        text -> null),
                BadBook.part(
                        "two sheets of one content",
                        "bag.xlsx: the file is damaged: its sheets \"Golfers\" and \"Clubs\" share the same content;"
                                + " use an earlier copy.",
                        "xl/workbook.xml",
                        text -> text.replace("r:id=\"rId4\"", "r:id=\"rId3\"")),
                BadBook.part(
                        "no formats in the list of formats",
                        part("xl/styles.xml", "has gaps"),
                        "xl/styles.xml",
                        text -> "<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"/>"),
                BadBook.part(
                        "properties that are no XML",
                        part("docProps/app.xml", "is not sound XML, line 1 character 1"),
                        "docProps/app.xml",
                        text -> "none"),
                BadBook.part(
                        "document of another kind",
                        "bag.xlsx: this is a file of another kind, not an .xlsx workbook. Open it in a spreadsheet"
                                + " program and save it as an .xlsx workbook.",
                        "[Content_Types].xml",
                        text -> text.replace("spreadsheetml.sheet.main", "spreadsheetml.other.main")),
                BadBook.part(
                        "no list of parts",
                        "bag.xlsx: the file is damaged: the content of its sheet \"Golfers\" is missing; use an earlier"
                                + " copy.",
                        "xl/_rels/workbook.xml.rels",
                        text -> null),
                BadBook.part(
                        "sheet that is not listed",
                        part("xl/worksheets/sheet2.xml", "is missing from the list of sheets"),
                        "xl/workbook.xml",
                        text -> text.replaceFirst("<sheet [^>]*name=\"Clubs\"[^>]*/>", "")),
                BadBook.part("no book", DAMAGED, "xl/workbook.xml", text -> null),
                BadBook.part(
                        "column beyond the last",
                        damaged("a column outside the limits of a sheet"),
                        BadBook.partName(2),
                        text -> text.replace("r=\"L2\"", "r=\"XFE2\"")),
                BadBook.part(
                        "cell whose address has no column",
                        damaged("a column outside the limits of a sheet"),
                        BadBook.partName(2),
                        text -> text.replace("r=\"L2\"", "r=\"true\"")),
                BadBook.part(
                        "row twice",
                        damaged("a row twice"),
                        BadBook.partName(2),
                        text -> text.replace("<row r=\"4\"", "<row r=\"3\"")),
                BadBook.part(
                        "cell twice",
                        damaged("a cell twice in row 3"),
                        BadBook.partName(2),
                        text -> text.replace("r=\"F3\"", "r=\"E3\"")),
                BadBook.part(
                        "row beyond the last",
                        damaged("a row outside the limits of a sheet"),
                        BadBook.partName(2),
                        text -> text.replace("<row r=\"5\"", "<row r=\"1048577\"")),
                BadBook.part(
                        "row without a sensible number",
                        damaged("a row outside the limits of a sheet"),
                        BadBook.partName(2),
                        text -> text.replace("<row r=\"5\"", "<row r=\"-5\"")),
                BadBook.part(
                        "cell without a sensible address",
                        DAMAGED,
                        BadBook.partName(2),
                        text -> text.replace("r=\"C2\"", "r=\"2C\"")),
                BadBook.part(
                        "style that is not there",
                        damaged("the damaged cell E2"),
                        BadBook.partName(2),
                        text -> text.replaceFirst("(r=\"E2\"[^>]*) s=\"\\d+\"", "$1 s=\"9999\"")));
    }

    private static String damaged(String has) {
        return "bag.xlsx: the file is damaged: its sheet \"Clubs\" has " + has + "; use an earlier copy.";
    }

    private static String part(String part, String wrong) {
        return "bag.xlsx: the file is damaged: its part " + part + " " + wrong
                + "; use an earlier copy, or repair it in a spreadsheet program.";
    }

    /** A loft of 10.5 becomes 70.5 in a part that is stored as it is, with the checksum of before. */
    private static byte[] flipped() throws IOException {
        byte[] stored = BadBook.stored(BadBook.bytes(BadBook.sound()));
        String text = new String(stored, StandardCharsets.ISO_8859_1);
        stored[text.indexOf("<v>10.5</v>") + 3] = '7';
        return stored;
    }

    private static BadBook entity(String name, String type, String use) {
        return BadBook.part(
                name,
                part(BadBook.partName(2), TYPE),
                BadBook.partName(2),
                text -> typed(text.replaceFirst("<v>10.5</v>", "<v>10.5" + use + "</v>"), type));
    }

    private static String typed(String text, String type) {
        int root = text.indexOf("?>") + 2;
        return text.startsWith("<?xml") ? text.substring(0, root) + type + text.substring(root) : type + text;
    }

    /** A sound book with one part of nothing but blanks, a thousand times larger than its compressed size. */
    private static byte[] bomb(String part) throws IOException {
        byte[] without = BadBook.withPart(BadBook.bytes(BadBook.sound()), part, text -> null);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (var in = new java.util.zip.ZipInputStream(new java.io.ByteArrayInputStream(without));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                in.transferTo(out);
            }
            out.putNextEntry(new ZipEntry(part));
            byte[] blanks = " ".repeat(1 << 20).getBytes(StandardCharsets.US_ASCII);
            for (long written = 0; written < BOMB_BYTES; written += blanks.length) {
                out.write(blanks);
            }
        }
        return bytes.toByteArray();
    }
}
