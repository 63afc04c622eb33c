package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

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
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.ResultSheets;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;

/** The sheet Plan: each slot today, as planned, and live from choice cells that a person may change. */
public final class PlanSheet {
    public static final String NAME = "Plan";
    static final int HEADING_ROW = 4;
    public static final int FIRST_ROW = HEADING_ROW + 1;

    private final SheetPen pen;
    private final BookResult result;
    private final SettingsSheet settings;
    private final PlanLayout layout;
    private final PlanFormulas formulas;

    private PlanSheet(SheetPen pen, BookResult result, SettingsSheet settings) {
        this.pen = pen;
        this.result = result;
        this.settings = settings;
        this.layout = new PlanLayout(result);
        this.formulas = new PlanFormulas(settings, hasWildcards(result));
    }

    private static boolean hasWildcards(BookResult result) {
        return result.bags().stream()
                .flatMap(bag -> bag.options().slots().stream())
                .flatMap(club -> club.options().stream())
                .anyMatch(option -> option.key().matches(".*[*?~].*"));
    }

    /** Writes the sheet, which stands before Settings but looks its numbers up there. */
    public static void write(SheetPen pen, BookResult result, SettingsSheet settings) {
        PlanSheet plan = new PlanSheet(pen, result, settings);
        plan.headings();
        int slots = result.bags().stream()
                .mapToInt(bag -> bag.options().slots().size())
                .sum();
        int below = FIRST_ROW + slots + 1;
        int lastAim = PlanAims.write(pen, result.book(), plan.layout, below);
        plan.rows();
        int end = Math.max(PlanTotals.write(pen, result, plan.layout, below), lastAim);
        plan.finish(FIRST_ROW + slots - 1, end);
    }

    private void headings() {
        pen.text(0, 0, Role.TITLE, result.book().settings().title().orElse("The plan"));
        pen.text(1, 0, Role.PLAIN, PlanWords.verdict(result));
        pen.text(2, 0, Role.SUBTITLE, PlanWords.howTo(layout.hasCandidates()) + ResultSheets.MADE_ANEW);
        pen.merge(2, 2, 0, PlanColumn.PLANNED_PENALTY.ordinal());
        pen.height(2, 26);
        String group = "";
        int groupStart = 0;
        for (PlanColumn column : PlanColumn.values()) {
            pen.heading(HEADING_ROW, column.ordinal(), heading(column), column.widthChars);
            if (!column.group.equals(group)) {
                group(group, groupStart, column.ordinal() - 1);
                group = column.group;
                groupStart = column.ordinal();
            }
        }
        group(group, groupStart, PlanColumn.values().length - 1);
        pen.height(HEADING_ROW, 54);
    }

    private String heading(PlanColumn column) {
        Units units = result.book().settings().units();
        String text = column == PlanColumn.TODAY_CLUB && layout.hasCandidates() ? "Club today" : column.heading;
        return text.replace("DIST", units.distance().label())
                .replace("LEN", units.length().label());
    }

    /** The title of a group stands in its first column that is shown, so that a hidden one does not swallow it. */
    private void group(String title, int first, int last) {
        if (!title.isEmpty()) {
            int shown = first;
            while (shown < last && layout.isHidden(PlanColumn.values()[shown])) {
                shown++;
            }
            for (int column = first; column <= last; column++) {
                pen.blank(HEADING_ROW - 1, column, Role.GROUP);
            }
            pen.text(HEADING_ROW - 1, shown, Role.GROUP, title);
        }
    }

    private void rows() {
        int first = FIRST_ROW;
        for (BagResult bag : result.bags()) {
            int last = first + bag.options().slots().size() - 1;
            for (int index = 0; index <= last - first; index++) {
                SlotOptions slot = bag.options().slots().get(index);
                PlanPlace place = new PlanPlace(first + index, first, last, slot);
                new PlanRowWriter(pen, settings, formulas, result, place, new PlanRow(bag, index)).write();
            }
            first = last + 1;
        }
    }

    private void finish(int lastSlotRow, int lastRow) {
        pen.sheet().createFreezePane(PlanColumn.TODAY_SETTING.ordinal(), FIRST_ROW);
        hideAndGroup();
        colourFit(lastSlotRow);
        offerPins(lastSlotRow);
        print(lastSlotRow, lastRow);
    }

    /** Three parts, each one page wide: today and planned with the totals, your choice and live, the build. */
    private void print(int lastSlotRow, int lastRow) {
        pen.print(PageSetup.landscape(HEADING_ROW, lastRow, PlanColumn.PLANNED_PENALTY.ordinal()));
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
                        new CellRangeAddress(-1, -1, PlanColumn.GOLFER.ordinal(), PlanColumn.TODAY_CLUB.ordinal()));
    }

    private static String part(int firstRow, int lastRow, PlanColumn first, PlanColumn last) {
        return new CellRangeAddress(firstRow, lastRow, first.ordinal(), last.ordinal()).formatAsString(null, true);
    }

    /**
     * Each column has an entry of its own since its width was set. The library's own calls for hiding and grouping would split
     * and double them until a book takes minutes to open.
     */
    private void hideAndGroup() {
        CTWorksheet sheet = pen.sheet().getCTWorksheet();
        for (CTCol entry : sheet.getColsArray(0).getColList()) {
            PlanColumn column = PlanColumn.values()[(int) entry.getMin() - 1];
            if (layout.isHidden(column)) {
                entry.setHidden(true);
            }
            if (column.compareTo(PlanColumn.TODAY_LOFT_BEND) >= 0) {
                entry.setOutlineLevel((short) 1);
            }
        }
        sheet.getSheetFormatPr().setOutlineLevelCol((short) 1);
    }

    private void offerPins(int last) {
        DataValidationHelper helper = pen.sheet().getDataValidationHelper();
        int column = PlanColumn.PIN.ordinal();
        DataValidation validation = helper.createValidation(
                helper.createExplicitListConstraint(new String[] {"yes"}),
                new CellRangeAddressList(FIRST_ROW, last, column, column));
        validation.setShowPromptBox(true);
        validation.createPromptBox("Pin", PlanWords.PIN);
        validation.setShowErrorBox(true);
        validation.setEmptyCellAllowed(true);
        validation.createErrorBox("Pin", "Write yes, or leave the cell blank.");
        pen.sheet().addValidationData(validation);
    }

    private void colourFit(int last) {
        XSSFSheetConditionalFormatting formatting = pen.sheet().getSheetConditionalFormatting();
        CellRangeAddress[] area = {
            new CellRangeAddress(FIRST_ROW, last, PlanColumn.LIVE_FIT.ordinal(), PlanColumn.LIVE_FIT.ordinal())
        };
        String cell = "$" + PlanColumn.LIVE_FIT.letters() + (FIRST_ROW + 1);
        colour(formatting, area, cell + "=\"close\"", "F6E3B8");
        String wrong =
                "AND(" + cell + "<>\"close\"," + cell + "<>\"inside\"," + cell + "<>\"" + Option.LEFT_OUT + "\")";
        colour(formatting, area, wrong, "E7B8A2");
    }

    private void colour(
            XSSFSheetConditionalFormatting formatting, CellRangeAddress[] area, String condition, String rgb) {
        int added = formatting.addConditionalFormatting(area, formatting.createConditionalFormattingRule(condition));
        pen.sheet()
                .getCTWorksheet()
                .getConditionalFormattingArray(added)
                .getCfRuleArray(0)
                .setDxfId(pen.ruleFill(rgb));
    }
}
