package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.SheetPen;

/** Writes one slot of the sheet Plan. */
final class PlanRowWriter {
    private static final String BEND = "+0.0##;-0.0##;0";

    private final SheetPen pen;
    private final SettingsSheet settings;
    private final PlanFormulas formulas;
    private final PlanTermFormulas terms;
    private final Units units;
    private final Aims aims;
    private final Book book;
    private final PlanPlace place;
    private final PlanRow values;

    PlanRowWriter(
            SheetPen pen,
            SettingsSheet settings,
            PlanFormulas formulas,
            BookResult result,
            PlanPlace place,
            PlanRow values) {
        this.pen = pen;
        this.settings = settings;
        this.formulas = formulas;
        this.terms = new PlanTermFormulas(formulas);
        this.units = result.book().settings().units();
        this.book = result.book();
        this.aims = book.aims();
        this.place = place;
        this.values = values;
    }

    void write() {
        pen.text(
                place.row(),
                PlanColumn.GOLFER.ordinal(),
                Role.TEXT,
                values.golfer().name());
        pen.number(
                place.row(),
                PlanColumn.SLOT.ordinal(),
                Role.NUMBER,
                "0",
                values.slot().slot());
        new PlanWanted(pen, formulas, units, place, values).write();
        if (!place.fixed()) {
            int own = 1 + clubPlace();
            number(PlanColumn.LIVE_LIST, "0", formulas.liveList(place), OptionalDouble.of(own));
        }
        for (PlanState state : PlanState.values()) {
            choice(state);
            int found = settings.lookupRow(values.option(state));
            number(PlanColumn.of(state, "ROW"), "0", formulas.lookupRow(state, place), OptionalDouble.of(found));
            looked(state, "LOFT", SettingsColumn.LOFT, "0.0");
            carryAndGap(state);
            match(state);
            looked(state, "CHANGES", SettingsColumn.CHANGES, "0");
            terms(state);
        }
        pin();
        live();
        new PlanBuild(pen, formulas, units, place, values).write();
    }

    /** Where the live club stands among those that may fill the slot, counted from 0. */
    private int clubPlace() {
        Option live = values.option(PlanState.LIVE);
        return live.isEmpty()
                ? values.slot().clubs().size()
                : values.slot().clubs().indexOf(live.club());
    }

    private void choice(PlanState state) {
        Option option = values.option(state);
        pen.mark(place.row(), PlanColumn.of(state, "CLUB").ordinal(), clubRole(state), option.clubText());
        Optional<Choice> choice = option.setup().map(ClubSetup::choice);
        mark(state, "SETTING", SettingsColumn.SETTING, choice.map(Choice::settingText));
        mark(state, "WEIGHTING", SettingsColumn.WEIGHTING, choice.map(Choice::weightingText));
        bend(state, "LOFT_BEND", SettingsColumn.LOFT_BEND, choice.map(made -> made.bend()
                .loftDeg()));
        bend(state, "LIE_BEND", SettingsColumn.LIE_BEND, choice.map(made -> made.bend()
                .lieDeg()));
        if (state == PlanState.LIVE && !place.fixed()) {
            dropDown(PlanColumn.LIVE_CLUB, settings.lists().clubs(values.slot()));
        }
    }

    private Role clubRole(PlanState state) {
        return state == PlanState.LIVE && !place.fixed() ? Role.CHOICE : Role.TEXT;
    }

    private void mark(PlanState state, String what, SettingsColumn list, Optional<String> mark) {
        int column = PlanColumn.of(state, what).ordinal();
        mark.ifPresentOrElse(
                text -> pen.mark(place.row(), column, role(state, list), text),
                () -> pen.blank(place.row(), column, role(state, list)));
        dropDown(state, what, list);
    }

    private void bend(PlanState state, String what, SettingsColumn list, Optional<Double> bendDeg) {
        int column = PlanColumn.of(state, what).ordinal();
        var cell = pen.number(place.row(), column, role(state, list), BEND, bendDeg.orElse(0.0));
        if (bendDeg.isEmpty()) {
            cell.setBlank();
        }
        dropDown(state, what, list);
    }

    private Role role(PlanState state, SettingsColumn list) {
        boolean choice = state == PlanState.LIVE && settings.lists().isChoice(values.slot(), list);
        return choice ? Role.CHOICE : Role.COUNT;
    }

    /** Whether the next plan keeps the choice of this row. */
    private void pin() {
        int column = PlanColumn.PIN.ordinal();
        if (values.pinned(book)) {
            pen.text(place.row(), column, Role.CHOICE, "yes");
        } else {
            pen.blank(place.row(), column, Role.CHOICE);
        }
    }

    private void dropDown(PlanState state, String what, SettingsColumn list) {
        if (state == PlanState.LIVE && settings.lists().isChoice(values.slot(), list)) {
            String choices = settings.lists().list(values.slot(), list, place.at(PlanColumn.LIVE_LIST));
            dropDown(PlanColumn.of(state, what), choices);
        }
    }

    private void dropDown(PlanColumn column, String choices) {
        DataValidationHelper helper = pen.sheet().getDataValidationHelper();
        DataValidation validation = helper.createValidation(
                helper.createFormulaListConstraint(choices),
                new CellRangeAddressList(place.row(), place.row(), column.ordinal(), column.ordinal()));
        validation.setShowErrorBox(true);
        validation.setEmptyCellAllowed(true);
        validation.createErrorBox("Not an option", "Choose one of the values in this cell's list.");
        pen.sheet().addValidationData(validation);
    }

    private void number(PlanColumn column, String format, String formula, OptionalDouble cached) {
        pen.formula(place.row(), column.ordinal(), Role.NUMBER, format, formula, cached);
    }

    private void looked(PlanState state, String what, SettingsColumn column, String format) {
        OptionalDouble cached = column.number.of(values.option(state), units);
        if (cached.isPresent() || !place.fixed()) {
            number(PlanColumn.of(state, what), format, formulas.looked(state, column, place), cached);
        } else {
            pen.blank(place.row(), PlanColumn.of(state, what).ordinal(), Role.NUMBER);
        }
    }

    private void carryAndGap(PlanState state) {
        looked(state, "CARRY", SettingsColumn.CARRY, "0.0");
        PlanColumn next = PlanColumn.of(state, "NEXT");
        if (place.row() < place.lastRow()) {
            OptionalDouble nextM = values.next(state).map(Option::carryM).orElseGet(OptionalDouble::empty);
            number(
                    next,
                    "0.0",
                    formulas.next(state, PlanColumn.of(state, "CARRY"), next, place),
                    PlanWanted.converted(nextM, units));
            nextClub(state);
        }
        PlanColumn gap = PlanColumn.of(state, "GAP");
        if (values.mayHaveGap()) {
            OptionalDouble gapM =
                    values.gap(state).map(GapTerm::gapM).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
            number(gap, "0.0", formulas.gap(state, place), PlanWanted.converted(gapM, units));
        } else {
            pen.blank(place.row(), gap.ordinal(), Role.NUMBER);
        }
    }

    /** The sheet Ladder names gaps by it. */
    private void nextClub(PlanState state) {
        PlanColumn column = PlanColumn.LIVE_NEXT_CLUB;
        if (state == PlanState.LIVE) {
            pen.formula(
                    place.row(),
                    column.ordinal(),
                    Role.TEXT,
                    formulas.next(state, PlanColumn.LIVE_CLUB, column, place),
                    values.next(state).map(Option::clubText).orElse(""));
        }
    }

    private void match(PlanState state) {
        looked(state, "MATCH", SettingsColumn.MATCH_VALUE, "0.00");
        Optional<String> group =
                values.option(state).setup().flatMap(ClubSetup::match).map(MatchValue::group);
        int column = PlanColumn.of(state, "GROUP").ordinal();
        if (group.isPresent() || !place.fixed()) {
            pen.formula(
                    place.row(),
                    column,
                    Role.TEXT,
                    formulas.looked(state, SettingsColumn.MATCH_GROUP, place),
                    group.orElse(""));
        } else {
            pen.blank(place.row(), column, Role.TEXT);
        }
    }

    private void terms(PlanState state) {
        for (PlanTerm term : PlanTerm.values()) {
            number(
                    term.column(state),
                    "0.000",
                    terms.term(state, term, place),
                    OptionalDouble.of(values.points(state, term)));
        }
        number(
                PlanColumn.of(state, "PENALTY"),
                "0.00",
                PlanTermFormulas.penalty(state, place),
                OptionalDouble.of(values.penaltyPoints(state)));
    }

    private void live() {
        looked(PlanState.LIVE, "LIE", SettingsColumn.LIE, "0.0");
        looked(PlanState.LIVE, "SITS", SettingsColumn.SITS, "0.0");
        looked(PlanState.LIVE, "START_LINE", SettingsColumn.START, "0.0");
        looked(PlanState.LIVE, "CONTACT", SettingsColumn.CONTACT, "0.0");
        looked(PlanState.LIVE, "SHAFT_TURN", SettingsColumn.SHAFT_TURN, "0");
        looked(PlanState.LIVE, "LAUNCH", SettingsColumn.LAUNCH, "0.0");
        looked(PlanState.LIVE, "SPIN", SettingsColumn.SPIN, "0");
        looked(PlanState.LIVE, "LANDING", SettingsColumn.LANDING, "0.0");
        number(
                PlanColumn.LIVE_WORST,
                "0.00",
                PlanTermFormulas.worst(place),
                OptionalDouble.of(values.worstTolerances(aims)));
        pen.formula(place.row(), PlanColumn.LIVE_FIT.ordinal(), Role.TEXT, formulas.fit(place), values.fitWord(aims));
    }
}
