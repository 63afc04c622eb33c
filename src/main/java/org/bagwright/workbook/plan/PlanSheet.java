package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import org.bagwright.workbook.settings.SheetColumn;
import org.bagwright.workbook.settings.SettingsSheet;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.BookColour;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SheetPen;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;

/** The sheet Plan: each slot today, as planned, and live from choice cells that a person may change. */
public final class PlanSheet {
    public static final String NAME = "Plan";
    static final int HEADING_ROW = 6;
    private static final int VERDICT_ROW = 3;
    public static final int FIRST_ROW = HEADING_ROW + 1;

    /** What a pin does; a message at a cell can have 255 characters. */
    private static final String PIN = "yes: the next plan of this book keeps your choice in this row (club, setting,"
            + " weighting and bends) and plans the rest around it. Blank: the next plan is free to choose.";

    private final SheetPen pen;
    private final BookResult result;
    private final SettingsSheet settings;
    private final PlanLayout layout;

    private PlanSheet(SheetPen pen, BookResult result, SettingsSheet settings) {
        this.pen = pen;
        this.result = result;
        this.settings = settings;
        this.layout = new PlanLayout(result);
    }

    /** Writes the sheet, which comes before Settings but looks its numbers up there. */
    public static void write(SheetPen pen, BookResult result, SettingsSheet settings) {
        new PlanSheet(pen, result, settings).write();
    }

    private void write() {
        new PlanHeadings(pen, result, layout, HEADING_ROW).write();
        int slots = result.bags().stream()
                .mapToInt(bag -> bag.options().slots().size())
                .sum();
        int below = FIRST_ROW + slots + 1;
        int lastAim = new PlanAims(pen, result.book().settings(), layout)
                .write(result.book().aims(), below);
        rows();
        int lastTotal = new PlanTotals(pen, layout, below).write(result.bags(), FIRST_ROW);
        finish(FIRST_ROW + slots - 1, Math.max(lastTotal, lastAim));
    }

    private void rows() {
        PlanFormulas formulas = new PlanFormulas(settings, hasWildcards());
        PlanTermFormulas terms = new PlanTermFormulas(formulas);
        PlanVerdict verdict = new PlanVerdict(result);
        VerdictLine line = verdict(verdict);
        Units units = result.book().settings().units();
        int first = FIRST_ROW;
        for (BagResult bag : result.bags()) {
            int last = first + bag.options().slots().size() - 1;
            for (int index = 0; index <= last - first; index++) {
                SlotOptions slot = bag.options().slots().get(index);
                PlanPlace place = new PlanPlace(first + index, first, last, slot);
                PlanRowPen row = new PlanRowPen(pen, formulas, units, place, new PlanRow(bag, index));
                row(row, terms);
                new PlanRules(row, settings, line, verdict).write();
            }
            first = last + 1;
        }
    }

    /** What the live choices break, over the table and once more over the choices, which are seen without the first columns. */
    private VerdictLine verdict(PlanVerdict verdict) {
        int slots = result.bags().stream()
                .mapToInt(bag -> bag.options().slots().size())
                .sum();
        VerdictLine line = new VerdictLine(FIRST_ROW, FIRST_ROW + slots - 1, VERDICT_ROW, result.stock());
        pen.formula(VERDICT_ROW, 0, Role.PLAIN, line.formula(), verdict.inWords());
        String copy = SheetPen.ref(VERDICT_ROW, 0);
        pen.formula(VERDICT_ROW, layout.shown(PlanColumn.LIVE_CLUB, 0), Role.PLAIN, copy, verdict.inWords());
        for (StockColumn column : StockColumn.all(result.stock())) {
            int missing = Math.max(
                    0,
                    result.taken(column.item(), PlanState.LIVE::of)
                            - column.limit().available());
            pen.formula(VERDICT_ROW, column.index(), Role.NUMBER, "0", line.missing(column), missing);
        }
        return line;
    }

    private boolean hasWildcards() {
        return result.bags().stream()
                .flatMap(bag -> bag.options().slots().stream())
                .flatMap(club -> club.options().stream())
                .anyMatch(option -> option.key().matches(".*[*?~].*"));
    }

    private void row(PlanRowPen row, PlanTermFormulas terms) {
        new PlanWanted(row).write();
        new PlanChoiceCells(row, settings.lists()).write(row.values().pinned(result.book()));
        new PlanRowWriter(row, settings, terms).write();
        new PlanBuild(row).write();
    }

    private void finish(int lastSlotRow, int lastRow) {
        pen.sheet().createFreezePane(PlanColumn.TODAY_SETTING.index(), FIRST_ROW);
        hideAndGroup();
        colourFit(lastSlotRow);
        offerPins(lastSlotRow);
        print(lastSlotRow, lastRow);
    }

    /** Three parts, each one page wide: today and planned with the totals, your choice and live, the build. */
    private void print(int lastSlotRow, int lastRow) {
        pen.print(PageSetup.landscape(HEADING_ROW, lastRow, PlanColumn.PLANNED_PENALTY.index()));
        XSSFWorkbook workbook = pen.sheet().getWorkbook();
        workbook.setPrintArea(
                workbook.getSheetIndex(pen.sheet()),
                String.join(
                        ",",
                        part(0, lastRow, PlanColumn.GOLFER, PlanColumn.PLANNED_PENALTY),
                        part(HEADING_ROW - 1, lastSlotRow, PlanColumn.LIVE_CLUB, PlanColumn.LIVE_FIT),
                        part(HEADING_ROW - 1, lastSlotRow, PlanColumn.LIVE_LENGTH, PlanColumn.HEAD_GRAMS)));
        pen.sheet()
                .setRepeatingColumns(
                        new CellRangeAddress(-1, -1, PlanColumn.GOLFER.index(), PlanColumn.TODAY_CLUB.index()));
    }

    private static String part(int firstRow, int lastRow, PlanColumn first, PlanColumn last) {
        return new CellRangeAddress(firstRow, lastRow, first.index(), last.index()).formatAsString(null, true);
    }

    /**
     * Each column has an entry of its own since its width was set. The library's own calls for hiding and grouping would split
     * and double them until a book takes minutes to open.
     */
    private void hideAndGroup() {
        CTWorksheet sheet = pen.sheet().getCTWorksheet();
        for (CTCol entry : sheet.getColsArray(0).getColList()) {
            SheetColumn column = layout.columns().get((int) entry.getMin() - 1);
            if (layout.isHidden(column)) {
                entry.setHidden(true);
            }
            if (column.index() >= PlanColumn.TODAY_LOFT_BEND.index()) {
                entry.setOutlineLevel((short) 1);
            }
        }
        sheet.getSheetFormatPr().setOutlineLevelCol((short) 1);
    }

    private void offerPins(int last) {
        DataValidationHelper helper = pen.sheet().getDataValidationHelper();
        int column = PlanColumn.PIN.index();
        DataValidation validation = helper.createValidation(
                helper.createExplicitListConstraint(new String[] {"yes"}),
                new CellRangeAddressList(FIRST_ROW, last, column, column));
        validation.setShowPromptBox(true);
        validation.createPromptBox("Pin", PIN);
        validation.setShowErrorBox(true);
        validation.setEmptyCellAllowed(true);
        validation.createErrorBox("Pin", "Write yes, or leave the cell blank.");
        pen.sheet().addValidationData(validation);
    }

    private void colourFit(int last) {
        XSSFSheetConditionalFormatting formatting = pen.sheet().getSheetConditionalFormatting();
        CellRangeAddress[] area = {
            new CellRangeAddress(FIRST_ROW, last, PlanColumn.LIVE_FIT.index(), PlanColumn.LIVE_FIT.index())
        };
        String cell = "$" + PlanColumn.LIVE_FIT.letters() + (FIRST_ROW + 1);
        colour(formatting, area, cell + "=\"close\"", BookColour.CLOSE);
        String wrong =
                "AND(" + cell + "<>\"close\"," + cell + "<>\"inside\"," + cell + "<>\"" + Option.LEFT_OUT + "\")";
        colour(formatting, area, wrong, BookColour.OFF);
    }

    private void colour(
            XSSFSheetConditionalFormatting formatting, CellRangeAddress[] area, String condition, BookColour fill) {
        int added = formatting.addConditionalFormatting(area, formatting.createConditionalFormattingRule(condition));
        pen.sheet()
                .getCTWorksheet()
                .getConditionalFormattingArray(added)
                .getCfRuleArray(0)
                .setDxfId(pen.ruleFill(fill));
    }
}
