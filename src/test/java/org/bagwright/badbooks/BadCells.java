package org.bagwright.badbooks;

import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A wrong type or an absurd value in each kind of column. */
final class BadCells {
    private BadCells() {}

    static Stream<BadBook> all() {
        return Stream.of(types(), errors(), values(), raw()).flatMap(List::stream);
    }

    private static List<BadBook> types() {
        return List.of(
                put("number in yes or no", "Clubs!L2", 7, "Clubs!L2: pinned must be yes or no, found 7."),
                put(
                        "number in a choice",
                        "Clubs!D2",
                        7,
                        "Clubs!D2: kind must be driver, wood, hybrid, iron, wedge or putter, found 7."),
                put("number in the hand", "Golfers!B2", 1, "Golfers!B2: hand must be R or L, found 1."),
                put(
                        "truth in a name",
                        "Golfers!A2",
                        true,
                        "Golfers!A2: golfer must be text, found TRUE; expected a name or a mark."),
                put("truth in a whole number", "Clubs!B2", true, "Clubs!B2: slot must be a number, found TRUE."),
                put(
                        "truth in a clock",
                        "Sleeves!C2",
                        true,
                        "Sleeves!C2: clock must be an hour from 0 to 12 such as 1.5 or 1:30, found TRUE."),
                put(
                        "truth in a kit",
                        "Weights!A2",
                        true,
                        "Weights!A2: kit must be text, found TRUE; expected a name or a mark."),
                put(
                        "text in a whole number",
                        "Golfers!F2",
                        "a few",
                        "Golfers!F2: most changes must be a number, found \"a few\"."),
                put("text in a count", "Stock!B2", "some", "Stock!B2: count must be a number, found \"some\"."),
                put(
                        "other word after a number",
                        "Golfers!E2",
                        "evne",
                        "Golfers!E2: gap wish must be a number in yd or the word even or today, found \"evne\"."),
                put(
                        "date in a golfer",
                        "Clubs!A2",
                        45383,
                        "yyyy-mm-dd",
                        "Clubs!A2: golfer must be text, found a date or a time of day; format the cell as text and type it again."),
                put(
                        "date in a speed",
                        "Golfers!C2",
                        45383,
                        "d mmm",
                        "Golfers!C2: driver speed must be a number in mph, found a date or a time of day."),
                put(
                        "time of day in a mass",
                        "Weights!D2",
                        0.5,
                        "h:mm",
                        "Weights!D2: mass must be a number in g, found a date or a time of day."),
                put("part of a whole number", "Clubs!B2", 1.5, "Clubs!B2: slot must be a whole number, found 1.5."),
                put(
                        "number of another unit",
                        "Weights!D2",
                        "4 yd",
                        "Weights!D2: mass must be a number in g, found \"4 yd\"."));
    }

    private static List<BadBook> errors() {
        return List.of(
                error(
                        "#REF! in a number",
                        "Clubs!E2",
                        FormulaError.REF,
                        "Clubs!E2: loft must be a number in degrees, found the error #REF!."),
                error(
                        "#DIV/0! in yes or no",
                        "Aims!D2",
                        FormulaError.DIV0,
                        "Aims!D2: \"Must\" must be yes or no, found the error #DIV/0!."),
                error(
                        "#NAME? in a choice",
                        "Clubs!D3",
                        FormulaError.NAME,
                        "Clubs!D3: kind must be driver, wood, hybrid, iron, wedge or putter, found the error #NAME?."),
                error(
                        "#VALUE! in a clock",
                        "Sleeves!C3",
                        FormulaError.VALUE,
                        "Sleeves!C3: clock must be an hour from 0 to 12 such as 1.5 or 1:30, found the error #VALUE!."),
                error(
                        "#N/A in a mark",
                        "Clubs!I2",
                        FormulaError.NA,
                        "Clubs!I2: setting must be text, found the error #N/A; expected a name or a mark."),
                error(
                        "#NUM! in a count",
                        "Stock!B2",
                        FormulaError.NUM,
                        "Stock!B2: count must be a number, found the error #NUM!."),
                error(
                        "#NULL! in a golfer",
                        "Shots!A2",
                        FormulaError.NULL,
                        "Shots!A2: golfer must be text, found the error #NULL!; expected a name or a mark."),
                formula(
                        "circle over two sheets",
                        "Clubs!E2",
                        "Golfers!G2",
                        "Clubs!E2",
                        "Clubs!E2: loft must be a number in degrees, found a formula that refers to its own cell."),
                formula(
                        "formula that is too large",
                        "Clubs!E2",
                        "Golfers!G2",
                        "10^308*100",
                        "Clubs!E2: loft must be a number in degrees, found the error #NUM!."),
                formula(
                        "formula into another file",
                        "Clubs!E2",
                        "Golfers!G2",
                        "[1]Prices!A1",
                        "Clubs!E2: loft must be a number in degrees, found a formula without a saved value that cannot be calculated here, =Golfers!G2."));
    }

    private static List<BadBook> values() {
        return List.of(
                put("below zero", "Clubs!G2", -45, "Clubs!G2: length must be 15.8 to 55.1 in, found -45. Maybe 45?"),
                put("huge", "Shots!F2", 1.7e308, "Shots!F2: spin must be 0 to 16000 rpm, found 1.7E+308."),
                put("huge slot", "Clubs!B2", 1e18, "Clubs!B2: slot must be 1 to 20, found 1E+18."),
                put(
                        "almost zero",
                        "Golfers!C2",
                        4.9e-324,
                        "Golfers!C2: driver speed must be 17.9 to 178.9 mph, found 4.9407E-324."),
                put(
                        "below zero of tolerance",
                        "Aims!B2",
                        -3,
                        "Aims!B2: tolerance must be 0 to 1093.6 yd, found -3. Maybe 3?"),
                put(
                        "tolerance of all but nothing",
                        "Aims!B2",
                        4.9e-324,
                        "Aims!B2: tolerance must be a millionth of the usual one or more, found 4.9407E-324."),
                put(
                        "changes below zero",
                        "Golfers!F2",
                        -1,
                        "Golfers!F2: most changes must be 0 to 1000, found -1. Maybe 1?"),
                put(
                        "count in thousands",
                        "Stock!B2",
                        "1,000",
                        "Stock!B2: count must be a number, found \"1,000\", which can be read two ways; write it without a thousands separator."),
                put(
                        "name of 300 characters",
                        "Clubs!C2",
                        "x".repeat(300),
                        "Clubs!C2: club must have at most 50 characters, found 300; expected a shorter name."),
                put(
                        "text of 32,767 characters",
                        "Clubs!E2",
                        "9".repeat(32767),
                        "Clubs!E2: loft must be 0 to 75 degrees, found \"999999999999999999999999999999999999999999999999999999999999...\"."));
    }

    private static List<BadBook> raw() {
        return List.of(
                saved(
                        "number beyond every number",
                        "1e999",
                        "Clubs!E2: loft must be a number in degrees, found a number that is too large."),
                saved(
                        "number that is none",
                        "NaN",
                        "Clubs!E2: loft must be a number in degrees, found a damaged number."),
                saved(
                        "number as a program writes it",
                        "10.5d",
                        "Clubs!E2: loft must be a number in degrees, found a damaged number."),
                saved(
                        "number in the digits of a program",
                        "0x1p3",
                        "Clubs!E2: loft must be a number in degrees, found a damaged number."),
                saved(
                        "number of letters",
                        "abc",
                        "Clubs!E2: loft must be a number in degrees, found a damaged number."),
                BadBook.part(
                        "error that is younger than the library",
                        "Clubs!E2: loft must be a number in degrees, found the error #SPILL!.",
                        BadBook.partName(2),
                        text -> text.replace("t=\"n\" s=\"0\"><v>10.5<", "t=\"e\" s=\"0\"><v>#SPILL!<")),
                BadBook.part(
                        "text beyond the list of texts",
                        "Clubs!H2: sleeve must be text, found a text that is missing from the file; expected a name or a mark.",
                        BadBook.partName(2),
                        text -> text.replaceFirst("(?<=r=\"H2\" t=\"s\" s=\"0\"><v>)\\d+", "99999")),
                BadBook.part(
                        "shared formula whose first cell is missing",
                        "Clubs!E2: loft must be a number in degrees, found a formula without a saved value that cannot be calculated here.",
                        BadBook.partName(2),
                        text -> text.replace("<v>10.5</v>", "<f t=\"shared\" si=\"7\"/>")),
                BadBook.part(
                        "formula in too many brackets",
                        "Clubs!E2: loft must be a number in degrees, found a formula without a saved value that cannot be calculated here, ="
                                + "(".repeat(60) + "....",
                        BadBook.partName(2),
                        text -> text.replace(
                                "<v>10.5</v>", "<f>" + "(".repeat(50_000) + "10.5" + ")".repeat(50_000) + "</f>")),
                BadBook.part(
                        "formula that is none",
                        "Clubs!E2: loft must be a number in degrees, found a formula without a saved value that cannot be calculated here, =(((.",
                        BadBook.partName(2),
                        text -> text.replace("<v>10.5</v>", "<f>(((</f>")),
                BadBook.part(
                        "cell of an unknown type",
                        "Clubs!C2: club must be text, found a damaged cell; expected a name or a mark.",
                        BadBook.partName(2),
                        text -> text.replaceFirst("r=\"C2\" t=\"s\"", "r=\"C2\" t=\"zz\"")));
    }

    private static BadBook saved(String name, String value, String says) {
        return BadBook.of(
                name, says, book -> BadBook.cell(book, "Clubs!E2").getCTCell().setV(value));
    }

    private static BadBook put(String name, String address, Object value, String says) {
        return BadBook.of(name, says, book -> value(BadBook.cell(book, address), value));
    }

    private static BadBook put(String name, String address, double value, String format, String says) {
        return BadBook.of(name, says, book -> {
            XSSFCell cell = BadBook.cell(book, address);
            cell.setCellValue(value);
            cell.setCellStyle(shownAs(book, format));
        });
    }

    private static CellStyle shownAs(XSSFWorkbook book, String format) {
        CellStyle style = book.createCellStyle();
        style.setDataFormat(book.createDataFormat().getFormat(format));
        return style;
    }

    private static void value(XSSFCell cell, Object value) {
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof Boolean truth) {
            cell.setCellValue(truth);
        } else {
            cell.setCellValue((String) value);
        }
    }

    private static BadBook error(String name, String address, FormulaError error, String says) {
        return BadBook.of(name, says, book -> BadBook.cell(book, address).setCellErrorValue(error));
    }

    private static BadBook formula(String name, String address, String helper, String formula, String says) {
        return BadBook.of(name, says, book -> {
            book.setCellFormulaValidation(false);
            BadBook.cell(book, address).setBlank();
            BadBook.cell(book, address).setCellFormula(helper);
            BadBook.cell(book, helper).setCellFormula(formula);
        });
    }
}
