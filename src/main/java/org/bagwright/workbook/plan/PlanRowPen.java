package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.OptionalDouble;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.SwingweightCell;
import org.bagwright.workbook.settings.SettingsColumn;
import org.bagwright.workbook.settings.SheetColumn;

/**
 * Writes cells of one slot's row on the sheet Plan.
 *
 * @param pen the pen of the sheet
 * @param formulas the formulas that look numbers up
 * @param units the units of the book
 * @param place where the slot is
 * @param values the program's own values of the row
 */
record PlanRowPen(SheetPen pen, PlanFormulas formulas, Units units, PlanPlace place, PlanRow values) {

    void blank(SheetColumn column, Role role) {
        pen.blank(place.row(), column.index(), role);
    }

    void text(SheetColumn column, Role role, String text) {
        pen.text(place.row(), column.index(), role, text);
    }

    void number(SheetColumn column, double value) {
        pen.number(place.row(), column.index(), Role.NUMBER, "0.##", value);
    }

    /** A formula that gives a text. */
    void text(SheetColumn column, Role role, String formula, String cached) {
        pen.formula(place.row(), column.index(), role, formula, cached);
    }

    /** A formula that gives a number or a blank text. */
    void number(SheetColumn column, String format, String formula, OptionalDouble cached) {
        pen.formula(place.row(), column.index(), Role.NUMBER, format, formula, cached);
    }

    void number(SheetColumn column, String format, String formula, double cached) {
        number(column, format, formula, OptionalDouble.of(cached));
    }

    /** A number that a person may change; a blank cell where there is none. */
    void input(SheetColumn column, String format, OptionalDouble value) {
        if (value.isPresent()) {
            pen.number(place.row(), column.index(), Role.INPUT, format, value.getAsDouble());
        } else {
            blank(column, Role.INPUT);
        }
    }

    /** A swingweight that a person may change; a blank cell where there is none. */
    void swingweight(SheetColumn column, OptionalDouble points) {
        blank(column, Role.CHOICE);
        points.ifPresent(number -> new SwingweightCell(number).write(pen, place.row(), column.index(), Role.CHOICE));
    }

    /** A number of a state's option; a blank cell where the only club of the slot never has it. */
    void looked(PlanState state, PlanColumn column, String format) {
        SettingsColumn from = column.source().orElseThrow();
        OptionalDouble cached = value(state, from);
        if (cached.isPresent() || !place.fixed()) {
            number(column, format, formulas.looked(state, from, place), cached);
        } else {
            blank(column, Role.NUMBER);
        }
    }

    /** The program's own number of a state's option. */
    OptionalDouble value(PlanState state, SettingsColumn column) {
        return column.number.of(values.option(state), units);
    }

    /** A distance in the unit of the book. */
    OptionalDouble distance(OptionalDouble valueM) {
        return valueM.isPresent() ? OptionalDouble.of(units.distance().fromM(valueM.getAsDouble())) : valueM;
    }
}
