package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.settings.SettingsLists;

/** What is chosen for one slot on the sheet Plan: today, planned, and live in cells that offer lists. */
final class PlanChoiceCells {
    /** A bend of 0 says nothing where nothing can be bent. */
    private static final String IDLE_BEND = "+0.0##;-0.0##;";

    private static final String BEND = "+0.0##;-0.0##;0";

    private final PlanRowPen row;
    private final SheetPen pen;
    private final SettingsLists lists;
    private final SlotOptions slot;

    PlanChoiceCells(PlanRowPen row, SettingsLists lists) {
        this.row = row;
        this.pen = row.pen();
        this.lists = lists;
        this.slot = row.values().slot();
    }

    /**
     * Writes the choices, and the pin, which is locked where there is nothing to choose.
     *
     * @param pinned whether the next plan keeps the live choice
     */
    void write(boolean pinned) {
        for (PlanState state : PlanState.values()) {
            choice(state);
        }
        Role role = slot.options().size() > 1 || pinned ? Role.CHOICE : Role.COUNT;
        if (pinned) {
            row.text(PlanColumn.PIN, role, "yes");
        } else {
            row.blank(PlanColumn.PIN, role);
        }
    }

    private void choice(PlanState state) {
        Option option = row.values().option(state);
        boolean chooses = state == PlanState.LIVE && !row.place().fixed();
        int club = PlanColumn.of(state, PlanQuantity.CLUB).index();
        pen.mark(row.place().row(), club, chooses ? Role.CHOICE : Role.SHRUNK, option.clubText());
        Optional<Choice> choice = option.setup().map(ClubSetup::choice);
        mark(state, PlanQuantity.SETTING, choice.map(Choice::settingText));
        mark(state, PlanQuantity.WEIGHTING, choice.map(Choice::weightingText));
        bend(state, PlanQuantity.LOFT_BEND, choice.map(Choice::bend).map(Bend::loftDeg));
        bend(state, PlanQuantity.LIE_BEND, choice.map(Choice::bend).map(Bend::lieDeg));
        if (chooses) {
            dropDown(PlanColumn.LIVE_CLUB, lists.clubs(slot));
        }
    }

    private void mark(PlanState state, PlanQuantity what, Optional<String> mark) {
        PlanColumn column = PlanColumn.of(state, what);
        mark.ifPresentOrElse(
                text -> pen.mark(row.place().row(), column.index(), role(state, what), text),
                () -> row.blank(column, role(state, what)));
        dropDown(state, what);
    }

    private void bend(PlanState state, PlanQuantity what, Optional<Double> bendDeg) {
        int column = PlanColumn.of(state, what).index();
        String format = isChoice(state, what) ? BEND : IDLE_BEND;
        Cell cell = pen.number(row.place().row(), column, role(state, what), format, bendDeg.orElse(0.0));
        if (bendDeg.isEmpty()) {
            cell.setBlank();
        }
        dropDown(state, what);
    }

    private Role role(PlanState state, PlanQuantity what) {
        if (isChoice(state, what)) {
            return Role.CHOICE;
        }
        return state == PlanState.LIVE ? Role.IDLE : Role.COUNT;
    }

    private boolean isChoice(PlanState state, PlanQuantity what) {
        return state == PlanState.LIVE && lists.isChoice(slot, what.source().orElseThrow());
    }

    private void dropDown(PlanState state, PlanQuantity what) {
        if (isChoice(state, what)) {
            String listed =
                    lists.list(slot, what.source().orElseThrow(), row.place().at(PlanColumn.LIVE_LIST));
            dropDown(PlanColumn.of(state, what), listed);
        }
    }

    private void dropDown(PlanColumn column, String choices) {
        int rowIndex = row.place().row();
        DataValidationHelper helper = pen.sheet().getDataValidationHelper();
        DataValidation validation = helper.createValidation(
                helper.createFormulaListConstraint(choices),
                new CellRangeAddressList(rowIndex, rowIndex, column.index(), column.index()));
        validation.setShowErrorBox(true);
        validation.setEmptyCellAllowed(true);
        validation.createErrorBox("Not an option", "Choose one of the values in this cell's list.");
        pen.sheet().addValidationData(validation);
    }
}
