package org.bagwright.badbooks;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Headings, names and sheets that do not fit together. */
final class BadTables {
    private BadTables() {}

    static List<BadBook> all() {
        return List.of(
                text(
                        "heading twice in other letters",
                        "Clubs!M1",
                        " LOFT ",
                        "Clubs!M1: the column Loft appears twice, first in Clubs!E1; expected once."),
                text(
                        "unit that is none",
                        "Clubs!G1",
                        "Length [feet and inches]",
                        "Clubs!G1: the unit of Length must be one of in, mm, cm, m, found \"feet and inches\"."),
                BadBook.of(
                        "headings missing",
                        "Clubs: no headings found in the first 10 rows; expected Golfer, Slot, Club, Kind, Loft, Lie"
                                + " ...",
                        book -> book.getSheet("Clubs")
                                .removeRow(book.getSheet("Clubs").getRow(0))),
                BadBook.of(
                        "headings merged over two columns",
                        "Clubs!A1: the column Lie is missing; expected among the headings of this row.",
                        book -> {
                            BadBook.cell(book, "Clubs!F1").setBlank();
                            book.getSheet("Clubs").addMergedRegion(new CellRangeAddress(0, 0, 4, 5));
                        }),
                BadBook.of(
                        "cells merged over two golfers",
                        "Clubs!A3: golfer must be filled in when the book has several, found nothing; expected \"Golfer A\" or \"Golfer B\".",
                        book -> {
                            BadBook.cell(book, "Clubs!A3").setBlank();
                            book.getSheet("Clubs").addMergedRegion(new CellRangeAddress(1, 2, 0, 0));
                        }),
                text(
                        "golfer twice",
                        "Golfers!A3",
                        "golfer  a",
                        "Golfers!A3: golfer must have one row only, found \"golfer  a\" again, first in Golfers!A2."),
                text(
                        "club of a golfer who is not listed",
                        "Clubs!A5",
                        "Golfer C",
                        "Clubs!A5: golfer must be a name on the sheet Golfers, found \"Golfer C\". Maybe \"Golfer A\"?"),
                text(
                        "shot with a club that is not listed",
                        "Shots!B2",
                        "Drivr",
                        "Shots!B2: club must be one of \"Golfer A\" on the sheet Clubs, found \"Drivr\". Maybe \"Driver\"?"),
                text(
                        "shot of the other golfer's club",
                        "Shots!A2",
                        "Golfer B",
                        "Shots!B2: club must be one of \"Golfer B\" on the sheet Clubs, found \"Driver\"."),
                text(
                        "kit that is not listed",
                        "Clubs!J2",
                        "Rear",
                        "Clubs!J2: kit must be a name on the sheet Weights, found \"Rear\"."),
                text(
                        "stock that is not listed",
                        "Stock!A2",
                        "Rear: 12 g",
                        "Stock!A2: item must be a piece of a kit such as Front: 4 g, a sleeve, or the name of a club, found \"Rear: 12 g\"."),
                text(
                        "measure that is none",
                        "Aims!A2",
                        "gaps and carry",
                        "Aims!A2: measure must be loft, lie, sits, carry, gap, reach, swingweight, spread or change, found \"gaps and carry\". Maybe \"gap\"?"),
                BadBook.of(
                        "no cell at all",
                        "Golfers: no headings found in the first 10 rows; expected Golfer, Hand, Driver speed, Iron"
                                + " speed, Shaft lean, Squares face ...",
                        BadTables::empty),
                BadBook.of(
                        "a column of another kind over a whole sheet",
                        "The book: there are more problems than these 10000; fix them, then check again.",
                        book -> {
                            for (int row = 5; row < 12_000; row++) {
                                book.getSheet("Clubs")
                                        .createRow(row)
                                        .createCell(4)
                                        .setCellValue("x");
                            }
                        }),
                BadBook.of(
                        "own sheet Plan",
                        "Plan: this sheet is your own, but the plan needs its name for a result sheet. Rename it, then plan again",
                        book -> book.createSheet("Plan")),
                BadBook.of(
                        "own sheet bench card",
                        "Bench card: this sheet is your own, but the plan needs its name for a result sheet. Rename it, then plan again",
                        book -> book.createSheet("bench card")),
                BadBook.of(
                        "two sheets of one name but for a blank",
                        "Clubs : the sheet Clubs appears twice (case and spaces are ignored); rename or remove one.",
                        book -> book.createSheet("Clubs ")),
                BadBook.part(
                        "two sheets of one name but for the case",
                        "CLUBS: the sheet Clubs appears twice (case and spaces are ignored); rename or remove one.",
                        "xl/workbook.xml",
                        text -> text.replace("name=\"Aims\"", "name=\"CLUBS\"")));
    }

    private static void empty(XSSFWorkbook book) {
        while (book.getNumberOfSheets() > 1) {
            book.removeSheetAt(1);
        }
        book.getSheetAt(0).removeRow(book.getSheetAt(0).getRow(0));
        book.getSheetAt(0).removeRow(book.getSheetAt(0).getRow(1));
        book.getSheetAt(0).removeRow(book.getSheetAt(0).getRow(2));
    }

    private static BadBook text(String name, String address, String text, String says) {
        return BadBook.of(name, says, book -> BadBook.cell(book, address).setCellValue(text));
    }
}
