package org.bagwright.workbook.result;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.workbook.cells.StreamedBook;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.plan.PlanSheet;
import org.bagwright.workbook.settings.SettingsSheet;

/** Where the rows of the result sheets go: those of the largest sheets to the file as they are written, if wished. */
final class ResultRows implements Closeable {
    /** The sheets with most cells. */
    private static final Set<String> LARGE = Set.of(PlanSheet.NAME, SettingsSheet.NAME);

    private static final int ALL = -1;

    private final XSSFWorkbook workbook;
    private final Optional<StreamedBook> streamed;

    private ResultRows(XSSFWorkbook workbook, Optional<StreamedBook> streamed) {
        this.workbook = workbook;
        this.streamed = streamed;
    }

    /** @param streamed whether the rows of large sheets are not to be kept */
    static ResultRows of(XSSFWorkbook workbook, boolean streamed) {
        return new ResultRows(workbook, streamed ? Optional.of(new StreamedBook(workbook)) : Optional.empty());
    }

    void create(String name) {
        if (streamed.isPresent() && LARGE.contains(name)) {
            streamed.get().createSheet(name);
        } else {
            workbook.createSheet(name);
        }
    }

    /** A pen for a sheet. Plan is written in no order of rows, Settings row by row. */
    SheetPen pen(String name, BookStyles styles) {
        if (streamed.isEmpty() || !LARGE.contains(name)) {
            return new SheetPen(workbook.getSheet(name), styles);
        }
        SXSSFSheet rows = streamed.get().getSheet(name);
        if (name.equals(PlanSheet.NAME)) {
            rows.setRandomAccessWindowSize(ALL);
        }
        return new SheetPen(workbook.getSheet(name), rows, styles);
    }

    void write(OutputStream target) throws IOException {
        if (streamed.isPresent()) {
            streamed.get().write(target);
        } else {
            workbook.write(target);
        }
    }

    @Override
    public void close() throws IOException {
        if (streamed.isPresent()) {
            streamed.get().close();
        }
    }
}
