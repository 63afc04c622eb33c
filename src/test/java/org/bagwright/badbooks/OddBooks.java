package org.bagwright.badbooks;

import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Books that look odd and are valid all the same. */
final class OddBooks {
    /** Names of clubs: some look like formulas, some have marks that formulas and files give a meaning to. */
    private static final List<String> NAMES = List.of(
            "=1+1",
            "+A1",
            "@x",
            "-x",
            "=HYPERLINK(\"x\")",
            "it's \"the\" one, or not",
            "  blanks around  ",
            "two\nlines",
            "50 characters ".repeat(4).substring(0, 50),
            "\ud83c\udfcc\ufe0f",
            "\u05de\u05e7\u05dc",
            "\u0645\u0636\u0631\u0628",
            "\u9ad8\u5c14\u592b\u7403\u6746",
            "e\u0301te\u0301",
            "10 deg",
            "TRUE",
            "1e5",
            "../../x",
            "<b>&amp;");

    private OddBooks() {}

    static Stream<BadBook> all() {
        return Stream.of(NAMES.stream().map(OddBooks::named), looks().stream(), OtherFirstSheets.valid().stream())
                .flatMap(books -> books);
    }

    private static BadBook named(String name) {
        return BadBook.of("a name: " + name.replace('\n', '/'), "", book -> {
            BadBook.cell(book, "Clubs!C2").setCellValue(name);
            BadBook.cell(book, "Shots!B2").setCellValue(name);
            for (String golfer : List.of("Golfers!A2", "Clubs!A2", "Clubs!A3", "Clubs!A4", "Shots!A2")) {
                BadBook.cell(book, golfer).setCellValue(name);
            }
            for (String sleeve : List.of("Clubs!H2", "Clubs!H3", "Sleeves!A2", "Sleeves!A3")) {
                BadBook.cell(book, sleeve).setCellValue(name);
            }
        });
    }

    private static List<BadBook> looks() {
        return List.of(
                BadBook.of("hidden input sheet", "", book -> book.setSheetVisibility(1, SheetVisibility.HIDDEN)),
                BadBook.of(
                        "very hidden input sheet", "", book -> book.setSheetVisibility(2, SheetVisibility.VERY_HIDDEN)),
                BadBook.of("protected input sheet", "", book -> book.getSheet("Clubs")
                        .protectSheet("secret")),
                BadBook.of("book locked against new sheets", "", XSSFWorkbook::lockStructure),
                BadBook.of("book locked by a password", "", book -> {
                    book.lockStructure();
                    book.setWorkbookPassword("secret", null);
                }),
                BadBook.of("60,000 rows of nothing but looks", "", OddBooks::manyRows),
                BadBook.of("text in several looks", "", OddBooks::richText),
                BadBook.of("dates from 1904", "", book -> book.getCTWorkbook()
                        .addNewWorkbookPr()
                        .setDate1904(true)),
                BadBook.of("headings merged with empty cells next to and below them", "", OddBooks::merged),
                BadBook.of("own sheet with a path in its name", "", book -> book.createSheet("..-..-etc (x)")),
                inAnOwnColumn("date of the newer kind", "<c r=\"Z3\" t=\"d\"><v>2026-05-01</v></c>"),
                inAnOwnColumn("error that is younger than the library", "<c r=\"Z3\" t=\"e\"><v>#SPILL!</v></c>"),
                inAnOwnColumn("formula that is none", "<c r=\"Z3\"><f>(((</f></c>"),
                BadBook.part("no styles", "", "xl/styles.xml", text -> null),
                BadBook.part(
                        "text inside its cell",
                        "",
                        BadBook.partName(2),
                        text -> text.replaceFirst(
                                "r=\"C3\" t=\"s\" s=\"0\"><v>\\d+</v>",
                                "r=\"C3\" t=\"inlineStr\"><is><t>4 hybrid</t></is>")),
                BadBook.part(
                        "phonetic text with a text",
                        "",
                        "xl/sharedStrings.xml",
                        text -> text.replace(
                                "<t>4 hybrid</t>", "<t>4 hybrid</t><rPh sb=\"0\" eb=\"1\"><t>four</t></rPh>")));
    }

    private static BadBook inAnOwnColumn(String name, String cell) {
        return BadBook.part(
                name + " in a column of his own",
                "",
                BadBook.partName(2),
                text -> text.replaceFirst("(<row r=\"3\".*?)</row>", "$1" + cell + "</row>"));
    }

    private static void manyRows(XSSFWorkbook book) {
        CellStyle grey = book.createCellStyle();
        grey.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        XSSFSheet clubs = book.getSheet("Clubs");
        for (int row = 5; row < 60_000; row++) {
            clubs.createRow(row).createCell(2).setCellStyle(grey);
        }
    }

    /** A title over the table, and headings over two columns and two rows. */
    private static void merged(XSSFWorkbook book) {
        XSSFSheet golfers = book.getSheet("Golfers");
        golfers.shiftRows(0, golfers.getLastRowNum(), 2);
        golfers.createRow(0).createCell(0).setCellValue("Season");
        golfers.addMergedRegion(new CellRangeAddress(0, 1, 0, 5));
        XSSFSheet clubs = book.getSheet("Clubs");
        clubs.shiftRows(1, clubs.getLastRowNum(), 1);
        for (int column = 0; column < 12; column++) {
            clubs.addMergedRegion(new CellRangeAddress(0, 1, column, column));
        }
        BadBook.cell(book, "Shots!I1").setCellValue("Weather");
        book.getSheet("Shots").addMergedRegion(new CellRangeAddress(0, 0, 8, 10));
    }

    private static void richText(XSSFWorkbook book) {
        XSSFFont bold = book.createFont();
        bold.setBold(true);
        XSSFRichTextString text = new XSSFRichTextString("4 hybrid");
        text.applyFont(0, 1, bold);
        BadBook.cell(book, "Clubs!C3").setCellValue(text);
    }
}
