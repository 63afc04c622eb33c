package org.bagwright.workbook.result;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.CellChange;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.TodayChange;
import org.bagwright.workbook.cells.FormulaValues;
import org.bagwright.workbook.cells.OldSettingsRemover;
import org.bagwright.workbook.cells.SheetTraits;
import org.bagwright.workbook.cells.UserCellFormats;
import org.bagwright.workbook.cells.UserReferences;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.plan.PlanSheet;
import org.bagwright.workbook.plan.SettingsSheet;
import org.bagwright.workbook.schema.ResultSheets;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTBookView;

/** Adds the result sheets to a copy of the fitter's book. */
public final class ResultBook {
    /**
     * Above this the rows of the largest sheets are never kept, or a large team would not fit into memory. The saved values
     * of the fitter's formulas that look at them are then left to his spreadsheet program, which is asked to calculate.
     */
    private static final int MOST_OPTIONS_KEPT = 20_000;

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
                XSSFWorkbook workbook = opened(input)) {
            boolean lookedAt = UserReferences.toResults(workbook);
            boolean large = options(result) > MOST_OPTIONS_KEPT;
            Optional<FormulaValues> values = changes.isEmpty() && (large || !lookedAt)
                    ? Optional.empty()
                    : Optional.of(FormulaValues.of(workbook));
            Adopted adopted = TodayCells.write(workbook, changes);
            Map<String, SheetTraits> traits = SheetTraits.of(workbook, ResultSheets.NAMES);
            ResultSheets.remove(workbook);
            try (ResultRows rows = ResultRows.of(workbook, large || !lookedAt)) {
                add(workbook, rows, traits, result);
                values.filter(known -> !(large && lookedAt)).ifPresent(FormulaValues::refresh);
                UserCellFormats.keepFormats(workbook);
                rows.write(target);
            }
            return adopted;
        }
    }

    private static XSSFWorkbook opened(InputStream input) throws IOException {
        try {
            OPCPackage content = OPCPackage.open(input);
            OldSettingsRemover.empty(content);
            return new XSSFWorkbook(content);
        } catch (InvalidFormatException damaged) {
            throw new IOException("the book is damaged", damaged);
        }
    }

    private static long options(BookResult result) {
        return result.bags().stream()
                .flatMap(bag -> bag.options().slots().stream())
                .mapToLong(slot -> slot.options().size())
                .sum();
    }

    private static void add(
            XSSFWorkbook workbook, ResultRows rows, Map<String, SheetTraits> traits, BookResult result) {
        workbook.setCellFormulaValidation(false);
        List<String> names = ResultSheets.namesFor(result);
        names.forEach(rows::create);
        BookStyles styles = new BookStyles(workbook);
        SettingsSheet settings = SettingsSheet.write(rows.pen(SettingsSheet.NAME, styles), result);
        PlanSheet.write(rows.pen(PlanSheet.NAME, styles), result, settings);
        LadderSheet.write(workbook, styles, result, settings);
        StepsSheet.write(workbook, styles, result);
        OthersSheet.write(workbook, styles, result);
        BenchCardSheet.write(workbook, styles, result);
        if (names.contains(TeamSheet.NAME)) {
            TeamSheet.write(workbook, styles, result);
        }
        MessagesSheet.write(workbook, styles, result);
        ResultSheets.mark(workbook, names);
        names.forEach(name -> new SheetPen(workbook.getSheet(name), styles).protect());
        traits.keySet().retainAll(names);
        traits.forEach((name, kept) -> kept.giveTo(workbook.getSheet(name), name.equals(PlanSheet.NAME)));
        workbook.setForceFormulaRecalculation(true);
        show(workbook);
    }

    private static void show(XSSFWorkbook workbook) {
        int plan = workbook.getSheetIndex(PlanSheet.NAME);
        for (int index = 0; index < workbook.getNumberOfSheets(); index++) {
            workbook.getSheetAt(index).setSelected(index == plan);
        }
        workbook.setActiveSheet(plan);
        for (CTBookView view : workbook.getCTWorkbook().getBookViews().getWorkbookViewArray()) {
            view.setActiveTab(plan);
        }
    }
}
