package org.bagwright.workbook.result;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.CellChange;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.OldSetups;
import org.bagwright.domain.plan.TodayChange;
import org.bagwright.files.SourceFile;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.BookFile;
import org.bagwright.workbook.cells.CellContents;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.FormulaValues;
import org.bagwright.workbook.cells.ResultSheets;
import org.bagwright.workbook.cells.SheetOrder;
import org.bagwright.workbook.cells.SheetTraits;
import org.bagwright.workbook.cells.UserCells;
import org.bagwright.workbook.edits.PlanEdits;
import org.bagwright.workbook.ladder.LadderSheet;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.plan.PlanSheet;
import org.bagwright.workbook.schema.ResultSheet;
import org.bagwright.workbook.settings.SettingsSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTBookView;

/**
 * A copy of the fitter's book with fresh result sheets; everything else in it stays.
 *
 * @param source the fitter's book, only read
 * @param result what the plan found
 */
public record ResultBook(SourceFile source, BookResult result) {
    /**
     * Above this the rows of the largest sheets are never kept, or a large team would not fit into memory. The saved values
     * of the fitter's formulas that refer to them are then left to the spreadsheet program.
     */
    private static final int MOST_OPTIONS_KEPT = 20_000;

    /**
     * Writes the copy.
     *
     * @throws IOException if the source cannot be read or the target not written
     */
    public void write(OutputStream target) throws IOException {
        write(List.of(), target);
    }

    /**
     * Writes the copy, with what is in the bag today in its sheet Clubs.
     *
     * @param changes the clubs whose set-up is not the one that the sheet says
     * @throws IOException if the source cannot be read or the target not written
     */
    public WrittenCells write(List<TodayChange> changes, OutputStream target) throws IOException {
        try (XSSFWorkbook workbook = BookFile.openForNewResult(source)) {
            boolean lookedAt = new UserCells(workbook).lookAtResults();
            boolean large = options() > MOST_OPTIONS_KEPT;
            PlanEdits edits = edits(workbook);
            Optional<FormulaValues> values = changes.isEmpty() && edits.isEmpty() && (large || !lookedAt)
                    ? Optional.empty()
                    : Optional.of(FormulaValues.of(workbook));
            List<CellChange> wishes = edits.write();
            WrittenCells written = today(workbook, changes).withWishes(wishes);
            Map<String, SheetTraits> traits = SheetTraits.of(workbook, ResultSheet.NAMES);
            SheetOrder order = SheetOrder.of(workbook);
            new ResultSheets(workbook).remove();
            try (ResultRows rows = ResultRows.of(workbook, large || !lookedAt)) {
                addSheets(workbook, rows, order);
                giveTraits(workbook, traits);
                values.filter(known -> !(large && lookedAt)).ifPresent(FormulaValues::refresh);
                new UserCells(workbook).keepFormats();
                rows.write(target);
            }
            return written;
        }
    }

    private WrittenCells today(XSSFWorkbook workbook, List<TodayChange> changes) {
        OldSetups before = new OldSetups(changes, result.book().clubs());
        OldSetupCells shots = new OldSetupCells(workbook, result.book()).write(before);
        return new TodayCells(workbook).write(changes).with(shots);
    }

    /** What was changed on the sheet Plan of an earlier run; what was wrong with it is known since the book was read. */
    private PlanEdits edits(XSSFWorkbook workbook) {
        return PlanEdits.of(
                workbook,
                new BookContext(
                        new CellContents(workbook), result.book().settings().units(), new Findings()));
    }

    private long options() {
        return result.bags().stream()
                .flatMap(bag -> bag.options().slots().stream())
                .mapToLong(slot -> slot.options().size())
                .sum();
    }

    private void addSheets(XSSFWorkbook workbook, ResultRows rows, SheetOrder order) {
        workbook.setCellFormulaValidation(false);
        List<String> names = ResultSheet.namesFor(result.bags().size(), hasSessions());
        names.forEach(rows::create);
        order.restore(workbook, names);
        writeSheets(names, rows, new BookStyles(workbook));
        new ResultSheets(workbook).mark(names);
        workbook.setSheetVisibility(workbook.getSheetIndex(SettingsSheet.NAME), SheetVisibility.HIDDEN);
        workbook.setForceFormulaRecalculation(true);
        show(workbook);
        new BookTitle(result.book().settings().title(), source.path()).giveTo(workbook.getProperties());
    }

    private static void giveTraits(XSSFWorkbook workbook, Map<String, SheetTraits> traits) {
        traits.keySet().removeIf(name -> workbook.getSheet(name) == null);
        traits.forEach((name, kept) -> kept.giveTo(workbook.getSheet(name), name.equals(PlanSheet.NAME)));
    }

    private boolean hasSessions() {
        return result.bags().stream().anyMatch(bag -> !bag.sessions().isEmpty());
    }

    /** Writes the sheet Settings first: the others look its numbers up. */
    private void writeSheets(List<String> names, ResultRows rows, BookStyles styles) {
        SettingsSheet settings = SettingsSheet.write(rows.pen(SettingsSheet.NAME, styles), result);
        for (String name : names) {
            SheetPen pen = rows.pen(name, styles);
            write(name, pen, settings);
            pen.protect();
        }
    }

    private void write(String name, SheetPen pen, SettingsSheet settings) {
        switch (name) {
            case PlanSheet.NAME -> PlanSheet.write(pen, result, settings);
            case LadderSheet.NAME -> new LadderSheet(pen, result, settings).write();
            case StepsSheet.NAME -> new StepsSheet(pen, result).write();
            case OthersSheet.NAME -> new OthersSheet(pen, result).write();
            case MeasureNextSheet.NAME -> new MeasureNextSheet(pen, result).write();
            case SessionsSheet.NAME -> new SessionsSheet(pen, result).write();
            case BenchCardSheet.NAME -> new BenchCardSheet(pen, result).write();
            case GolferCardSheet.NAME -> new GolferCardSheet(pen, result).write();
            case TeamSheet.NAME -> new TeamSheet(pen, result).write();
            case MessagesSheet.NAME -> new MessagesSheet(pen, result).write();
            default -> {}
        }
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
