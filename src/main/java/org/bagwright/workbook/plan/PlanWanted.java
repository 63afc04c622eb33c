package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.OptionalDouble;
import org.bagwright.domain.book.SitsRange;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.SwingweightCell;

/**
 * What is wanted of one slot on the sheet Plan: cells that a person may fill, or where several clubs may fill the slot what
 * the book wants of the live one.
 */
final class PlanWanted {
    private final SheetPen pen;
    private final PlanFormulas formulas;
    private final Units units;
    private final PlanPlace place;
    private final PlanRow values;

    PlanWanted(SheetPen pen, PlanFormulas formulas, Units units, PlanPlace place, PlanRow values) {
        this.pen = pen;
        this.formulas = formulas;
        this.units = units;
        this.place = place;
        this.values = values;
    }

    static OptionalDouble converted(OptionalDouble valueM, Units units) {
        return valueM.isPresent() ? OptionalDouble.of(units.distance().fromM(valueM.getAsDouble())) : valueM;
    }

    void write() {
        target(PlanColumn.LOFT_TARGET, SettingsColumn.LOFT_TARGET);
        target(PlanColumn.LIE_TARGET, SettingsColumn.LIE_TARGET);
        target(PlanColumn.CARRY_TARGET, SettingsColumn.CARRY_TARGET);
        SitsRange sits = values.golfer().sitsRange();
        input(PlanColumn.MOST_OPEN, "0.0##", sits.mostOpenDeg());
        input(PlanColumn.MOST_CLOSED, "0.0##", sits.mostClosedDeg());
        gapWish();
        swingweight();
    }

    private void target(PlanColumn column, SettingsColumn from) {
        OptionalDouble value = from.number.of(values.option(PlanState.LIVE), units);
        if (place.fixed()) {
            input(column, "0.0##", value);
        } else {
            formula(column, "0.0##", formulas.looked(PlanState.LIVE, from, place), value);
        }
    }

    private void gapWish() {
        OptionalDouble wish = converted(values.wishM(PlanState.LIVE), units);
        if (!values.mayHaveGap()) {
            pen.blank(place.row(), PlanColumn.GAP_WISH.ordinal(), Role.NUMBER);
        } else if (place.fixed()) {
            input(PlanColumn.GAP_WISH, "0.0", wish);
        } else {
            String looked = formulas.looked(PlanState.LIVE, SettingsColumn.GAP_WISH, place);
            formula(PlanColumn.GAP_WISH, "0.0", looked, wish);
        }
    }

    private void swingweight() {
        Option live = values.option(PlanState.LIVE);
        OptionalDouble points = SettingsColumn.SWINGWEIGHT_TARGET.number.of(live, units);
        int column = PlanColumn.SWINGWEIGHT_TARGET.ordinal();
        if (place.fixed()) {
            pen.blank(place.row(), column, Role.CHOICE);
            points.ifPresent(number -> new SwingweightCell(number).write(pen, place.row(), column, Role.CHOICE));
            String read = SwingweightCell.points(place.at(PlanColumn.SWINGWEIGHT_TARGET));
            formula(PlanColumn.TARGET_POINTS, "0.00", read, points);
            return;
        }
        String looked = formulas.looked(PlanState.LIVE, SettingsColumn.TARGET_TEXT, place);
        if (points.isPresent() && !new SwingweightCell(points.getAsDouble()).hasLetter()) {
            formula(PlanColumn.SWINGWEIGHT_TARGET, "0.0##", looked, points);
        } else {
            String text = points.isPresent() ? new SwingweightCell(points.getAsDouble()).text() : "";
            pen.formula(place.row(), column, Role.COUNT, looked, text);
        }
        formula(
                PlanColumn.TARGET_POINTS,
                "0.00",
                formulas.looked(PlanState.LIVE, SettingsColumn.SWINGWEIGHT_TARGET, place),
                points);
    }

    private void formula(PlanColumn column, String format, String formula, OptionalDouble cached) {
        pen.formula(place.row(), column.ordinal(), Role.NUMBER, format, formula, cached);
    }

    private void input(PlanColumn column, String format, OptionalDouble value) {
        if (value.isPresent()) {
            pen.number(place.row(), column.ordinal(), Role.INPUT, format, value.getAsDouble());
        } else {
            pen.blank(place.row(), column.ordinal(), Role.INPUT);
        }
    }
}
