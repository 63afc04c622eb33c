package org.bagwright.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.BookResult;
import org.bagwright.domain.CellChange;
import org.bagwright.domain.Message;
import org.bagwright.domain.TodayChange;

/** Adds the result sheets to a copy of the fitter's book. */
public final class ResultBook {
    /** The sheets with most cells: their rows go to the file as they are written, or a large team would not fit. */
    private static final Set<String> STREAMED = Set.of(PlanSheet.NAME, SettingsSheet.NAME);

    private static final int ROWS_KEPT = 100;

    private ResultBook() {}

    /**
     * Writes a copy of a book with fresh result sheets; everything else in it stays.
     *
     * @param source the fitter's book, only read
     * @param result what the plan found
     * @param target where the copy goes
     * @throws IOException if the source cannot be read or the target not written
     */
    public static void write(Path source, BookResult result, OutputStream target) throws IOException {
        write(source, result, List.of(), target);
    }

    /**
     * What was written into the sheet Clubs.
     *
     * @param changes every cell
     * @param notWritten what could not be written, and why
     */
    public record Adopted(List<CellChange> changes, List<Message> notWritten) {
        public Adopted {
            changes = List.copyOf(changes);
            notWritten = List.copyOf(notWritten);
        }
    }

    /**
     * As {@link #write(Path, BookResult, OutputStream)}, with what is in the bag today written into the sheet Clubs.
     *
     * @param changes the clubs that are set up otherwise than that sheet says
     * @throws IOException if the source cannot be read or the target not written
     */
    public static Adopted write(Path source, BookResult result, List<TodayChange> changes, OutputStream target)
            throws IOException {
        try (InputStream input = Files.newInputStream(source);
                XSSFWorkbook workbook = new XSSFWorkbook(input)) {
            Adopted adopted = TodayCells.write(workbook, changes);
            workbook.setCellFormulaValidation(false);
            ResultSheets.remove(workbook);
            try (SXSSFWorkbook streamed = new SXSSFWorkbook(workbook, ROWS_KEPT, true)) {
                add(streamed, result);
                streamed.write(target);
            }
            return adopted;
        }
    }

    private static void add(SXSSFWorkbook streamed, BookResult result) throws IOException {
        XSSFWorkbook workbook = streamed.getXSSFWorkbook();
        List<String> names = ResultSheets.namesFor(result);
        names.forEach(name -> create(streamed, name));
        BookStyles styles = new BookStyles(workbook);
        SettingsSheet settings = SettingsSheet.write(streamed, styles, result);
        PlanSheet.write(streamed, styles, result, settings);
        LadderSheet.write(workbook, styles, result, settings);
        StepsSheet.write(workbook, styles, result);
        OthersSheet.write(workbook, styles, result);
        BenchCardSheet.write(workbook, styles, result);
        if (names.contains(TeamSheet.NAME)) {
            TeamSheet.write(workbook, styles, result);
        }
        MessagesSheet.write(workbook, styles, result);
        ResultSheets.mark(workbook, names);
        names.forEach(name -> ResultSheets.protect(workbook.getSheet(name)));
        workbook.setForceFormulaRecalculation(true);
        show(workbook);
    }

    private static void create(SXSSFWorkbook streamed, String name) {
        if (STREAMED.contains(name)) {
            streamed.createSheet(name);
        } else {
            streamed.getXSSFWorkbook().createSheet(name);
        }
    }

    private static void show(XSSFWorkbook workbook) {
        int plan = workbook.getSheetIndex(PlanSheet.NAME);
        for (int index = 0; index < workbook.getNumberOfSheets(); index++) {
            workbook.getSheetAt(index).setSelected(index == plan);
        }
        workbook.setActiveSheet(plan);
    }
}
