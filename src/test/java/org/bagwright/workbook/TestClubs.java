package org.bagwright.workbook;

import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;

/** Builds books with rows of clubs in the template's order of columns. */
public final class TestClubs {
    private static final Object[] HEADINGS =
            ClubColumn.SHEET.columns().stream().map(Column::header).toArray();

    private TestClubs() {}

    public static TestBook clubs(Object[]... rows) {
        TestBook book = TestBook.sound()
                .without("Shots")
                .without("Clubs")
                .sheet("Clubs")
                .row(HEADINGS);
        for (Object[] row : rows) {
            book.row(row);
        }
        return book;
    }

    public static Object[] row(Object... values) {
        return values;
    }

    /** The sound driver row with one more cell under a heading. */
    public static TestBook driverWith(String header, Object value) {
        return clubs(row("Ann", 1, "Driver", "driver", 10.5, 58, 1, "N", 45.5, "Two degree", "N"))
                .set("Clubs!" + column(header) + "2", value);
    }

    /** A sound 7 iron row with more cells under headings. */
    public static TestBook ironWith(Object... headersAndValues) {
        TestBook book = clubs(row("Ann", 1, "7 iron", "iron", 31, 62.5));
        for (int index = 0; index < headersAndValues.length; index += 2) {
            book.set("Clubs!" + column((String) headersAndValues[index]) + "2", headersAndValues[index + 1]);
        }
        return book;
    }

    public static String column(String header) {
        int index =
                ClubColumn.SHEET.columns().stream().map(Column::header).toList().indexOf(header);
        return org.apache.poi.ss.util.CellReference.convertNumToColString(index);
    }
}
