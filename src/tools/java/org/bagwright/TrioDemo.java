package org.bagwright;

import java.io.IOException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The smallest demo: a driver, a fairway wood and a hybrid with sleeves, to be set so that their gaps are even. */
final class TrioDemo {
    private TrioDemo() {}

    static XSSFWorkbook book() throws IOException {
        XSSFWorkbook book = BookFiller.blank();
        DemoBooks.introduce(book, "Three clubs with sleeves", "Shows how few cells a quick gapping needs.");
        new BookFiller(book, "Golfers")
                .under("Golfer, Driver speed, Most open, Most closed, Gap wish")
                .row("Golfer A", 96, -3, 3, "even");
        BookFiller sleeves = new BookFiller(book, "Sleeves");
        DemoBooks.eightMarks(sleeves, "Sleeve P", 1.5);
        DemoBooks.fourMarks(sleeves, "Sleeve Q", 1.0);
        new BookFiller(book, "Clubs")
                .under("Slot, Club, Kind, Loft, Lie, Stated at, Length, Sleeve, Setting")
                .row(1, "Driver", "driver", 10.5, 58, 1, 45.25, "Sleeve P", 7)
                .row(2, "5 wood", "wood", 18.5, 58, 1, 42.25, "Sleeve P", 3)
                .row(3, "4 hybrid", "hybrid", 22, 59, "A", 40, "Sleeve Q", "D");
        new BookFiller(book, "Shots")
                .under("Club, Head speed, Ball speed, Launch, Spin, Carry, Shots")
                .row("Driver", 96.3, 140.9, 9.0, 2150, 221, 6)
                .row("Driver", 95.6, 139.8, 9.6, 2290, 219, 6)
                .row("5 wood", 88.4, 126.6, 14.6, 4300, 196, 10)
                .row("4 hybrid", 84.1, 118.3, 13.9, 4350, 180, 10);
        return book;
    }
}
