package org.bagwright.workbook.result;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.workbook.cells.StreamedBook;
import org.bagwright.workbook.pen.BookChart;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.StripChart;

/**
 * Writes a tiny book to nowhere, so that all that the library does the first time is done on another thread while a book is
 * read and planned: in a short run that is most of the writing.
 */
public final class Rehearsal implements Runnable {
    @Override
    public void run() {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                StreamedBook streamed = new StreamedBook(workbook)) {
            BookStyles styles = new BookStyles(workbook);
            SheetPen rows = new SheetPen(workbook.createSheet("Rows"), streamed.createSheet("Streamed"), styles);
            write(rows);
            SheetPen charts = new SheetPen(workbook.createSheet("Charts"), styles);
            write(charts);
            chart(charts);
            streamed.write(OutputStream.nullOutputStream());
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static void write(SheetPen pen) {
        pen.heading(0, 0, "Heading", 10);
        pen.text(1, 0, BookStyles.Role.TEXT, "Text");
        pen.number(1, 1, BookStyles.Role.NUMBER, "0.0", 1);
        pen.formula(1, 2, BookStyles.Role.NUMBER, "0.0", "B2+1", 2);
        pen.merge(2, 2, 0, 1);
        pen.protect();
    }

    private static void chart(SheetPen pen) {
        BookChart lines = new BookChart(pen.sheet(), 4, 1, 4, 8);
        lines.title("Title");
        lines.axes("Across", "Up");
        new StripChart(pen, 3, 1, 1).draw(1, List.of(new StripChart.Marks("Marks", 1, 2, StripChart.Look.LIVE)));
    }
}
