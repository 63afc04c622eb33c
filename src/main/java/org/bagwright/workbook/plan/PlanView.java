package org.bagwright.workbook.plan;

import java.util.List;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.bagwright.workbook.pen.PageFill;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.settings.SheetColumn;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTSelection;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTSheetPr;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;

/** How a person first sees the sheet Plan: what stays on the screen, what is closed or hidden, and where he begins. */
final class PlanView {
    /** What a pin does; a message at a cell can have 255 characters. */
    private static final String PIN = "yes: the next plan of this book keeps your choice in this row (club, setting,"
            + " weighting and bends) and plans the rest around it. Blank: the next plan is free to choose.";

    private static final double BETWEEN_POINTS = 6;

    private final SheetPen pen;
    private final PlanLayout layout;
    private final List<PlanBlock> blocks;

    PlanView(SheetPen pen, PlanLayout layout, List<PlanBlock> blocks) {
        this.pen = pen;
        this.layout = layout;
        this.blocks = blocks;
    }

    /** @param lastRow the last row of the sheet */
    void set(int lastRow) {
        pen.sheet().createFreezePane(PlanColumn.LIVE_CLUB.index() + 1, PlanSheet.FIRST_ROW);
        closeGroups();
        if (blocks.size() > 1) {
            int golfer = PlanColumn.GOLFER.index();
            pen.sheet()
                    .setAutoFilter(new CellRangeAddress(
                            PlanSheet.HEADING_ROW, lastBlock().endRow(), golfer, golfer));
        }
        new MissColours(pen, PlanSheet.FIRST_ROW, lastBlock().lastRow()).write();
        blocks.forEach(this::offerPins);
        select();
        print(lastRow);
    }

    private PlanBlock lastBlock() {
        return blocks.get(blocks.size() - 1);
    }

    /**
     * Each column has an entry of its own since its width was set. The library's own calls for hiding and grouping would split
     * and double them until a book takes minutes to open. The button of a group is at the column before it, which says what
     * is in it.
     */
    private void closeGroups() {
        CTWorksheet sheet = pen.sheet().getCTWorksheet();
        for (CTCol entry : sheet.getColsArray(0).getColList()) {
            SheetColumn column = layout.columns().get((int) entry.getMin() - 1);
            boolean grouped = column instanceof PlanColumn plan && plan.isInGroup();
            if (grouped) {
                entry.setOutlineLevel((short) 1);
            }
            if (grouped || layout.isHidden(column)) {
                entry.setHidden(true);
            }
            if (column == PlanColumn.SHOT || column == PlanColumn.BUILD || column == PlanColumn.MORE) {
                entry.setCollapsed(true);
            }
        }
        sheet.getSheetFormatPr().setOutlineLevelCol((short) 1);
        CTSheetPr properties = sheet.isSetSheetPr() ? sheet.getSheetPr() : sheet.addNewSheetPr();
        (properties.isSetOutlinePr() ? properties.getOutlinePr() : properties.addNewOutlinePr()).setSummaryRight(false);
    }

    private void offerPins(PlanBlock block) {
        DataValidationHelper helper = pen.sheet().getDataValidationHelper();
        int column = PlanColumn.PIN.index();
        DataValidation validation = helper.createValidation(
                helper.createExplicitListConstraint(new String[] {"yes"}),
                new CellRangeAddressList(block.firstRow(), block.lastRow(), column, column));
        validation.setShowPromptBox(true);
        validation.createPromptBox("Pin", PIN);
        validation.setShowErrorBox(true);
        validation.setEmptyCellAllowed(true);
        validation.createErrorBox("Pin", "Write yes, or leave the cell blank.");
        pen.sheet().addValidationData(validation);
    }

    /** The first choice cell, in the pane that scrolls both ways or under the headings. */
    private void select() {
        PlanColumn column = List.of(
                        PlanColumn.LIVE_SETTING,
                        PlanColumn.LIVE_WEIGHTING,
                        PlanColumn.LIVE_LOFT_BEND,
                        PlanColumn.LIVE_LIE_BEND,
                        PlanColumn.PIN)
                .stream()
                .filter(each -> !layout.isHidden(each))
                .findFirst()
                .orElse(PlanColumn.PIN);
        CellAddress first = new CellAddress(blocks.get(0).firstRow(), column.index());
        pen.sheet().setActiveCell(first);
        for (CTSelection selection : pen.sheet()
                .getCTWorksheet()
                .getSheetViews()
                .getSheetViewArray(0)
                .getSelectionArray()) {
            selection.setActiveCell(first.formatAsString());
            selection.setSqref(List.of(first.formatAsString()));
        }
    }

    /**
     * One page wide: everything up to the chart; what is in groups prints only after they are opened. A golfer's rows are on
     * one page.
     */
    private void print(int lastRow) {
        PageSetup setup = PageSetup.landscape(PlanSheet.HEADING_ROW, lastRow, PlanColumn.CHART.index());
        pen.print(setup);
        if (blocks.size() == 1) {
            return;
        }
        PageFill page = setup.fillSmall(pen.sheet(), PlanHeadings.HEADING_POINTS);
        int from = 0;
        for (PlanBlock block : blocks) {
            pen.height(block.endRow(), BETWEEN_POINTS);
            page.keepTogether(from, block.endRow() + 1);
            from = block.endRow() + 1;
        }
        page.keepTogether(from, lastRow + 1);
    }
}
