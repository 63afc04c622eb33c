package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.OptionalDouble;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.pen.SwingweightCell;

/**
 * What is wanted of one slot on the sheet Plan: cells that a person may fill, or where several clubs may fill the slot what
 * the book wants of the live one.
 */
final class PlanWanted {
    private final PlanRowPen pen;
    private final PlanFormulas formulas;
    private final PlanPlace place;
    private final PlanRow values;

    PlanWanted(PlanRowPen pen) {
        this.pen = pen;
        this.formulas = pen.formulas();
        this.place = pen.place();
        this.values = pen.values();
    }

    void write() {
        target(PlanColumn.LOFT_TARGET);
        target(PlanColumn.LIE_TARGET);
        target(PlanColumn.CARRY_TARGET);
        look(PlanColumn.MOST_OPEN, LimitKind.MOST_OPEN);
        look(PlanColumn.MOST_CLOSED, LimitKind.MOST_CLOSED);
        limit(PlanColumn.GAP_LEAST, values.mayHaveGap());
        limit(PlanColumn.GAP_MOST, values.mayHaveGap());
        limit(PlanColumn.CARRY_LEAST, values.mayCarry());
        limit(PlanColumn.CARRY_MOST, values.mayCarry());
        limit(PlanColumn.LANDING_LEAST, values.mayCarry());
        gapWish();
        swingweight();
    }

    private void target(PlanColumn column) {
        SettingsColumn from = column.source().orElseThrow();
        OptionalDouble value = pen.value(PlanState.LIVE, from);
        if (place.fixed()) {
            pen.input(column, "0.0##", value);
        } else {
            pen.number(column, "0.0##", formulas.looked(PlanState.LIVE, from, place), value);
        }
    }

    /** A look on the side of its column is a number, one on the other side is written in words. */
    private void look(PlanColumn column, LimitKind kind) {
        OptionalDouble look = values.golfer().limits().valueMeasureUnits(kind);
        boolean open = kind == LimitKind.MOST_OPEN;
        if (look.isPresent() && (open ? look.getAsDouble() > 0 : look.getAsDouble() < 0)) {
            String side = open ? " closed" : " open";
            pen.text(column, Role.INPUT, Numbers.trimmed(Math.abs(look.getAsDouble())) + side);
        } else {
            pen.input(column, "0.0##", look);
        }
    }

    private void limit(PlanColumn column, boolean possible) {
        if (possible) {
            target(column);
        } else {
            pen.blank(column, Role.NUMBER);
        }
    }

    private void gapWish() {
        OptionalDouble wish = pen.distance(values.wishM(PlanState.LIVE));
        if (!values.mayHaveGap()) {
            pen.blank(PlanColumn.GAP_WISH, Role.NUMBER);
        } else if (place.fixed()) {
            pen.input(PlanColumn.GAP_WISH, "0.0", wish);
        } else {
            String looked = formulas.looked(PlanState.LIVE, SettingsColumn.GAP_WISH, place);
            pen.number(PlanColumn.GAP_WISH, "0.0", looked, wish);
        }
    }

    private void swingweight() {
        OptionalDouble points = pen.value(PlanState.LIVE, SettingsColumn.SWINGWEIGHT_TARGET);
        if (place.fixed()) {
            pen.swingweight(PlanColumn.SWINGWEIGHT_TARGET, points);
            String read = SwingweightCell.points(place.at(PlanColumn.SWINGWEIGHT_TARGET));
            pen.number(PlanColumn.TARGET_POINTS, "0.00", read, points);
            return;
        }
        String looked = formulas.looked(PlanState.LIVE, SettingsColumn.TARGET_TEXT, place);
        if (points.isPresent() && !new SwingweightCell(points.getAsDouble()).hasLetter()) {
            pen.number(PlanColumn.SWINGWEIGHT_TARGET, "0.0##", looked, points);
        } else {
            String text = points.isPresent() ? new SwingweightCell(points.getAsDouble()).text() : "";
            pen.text(PlanColumn.SWINGWEIGHT_TARGET, Role.COUNT, looked, text);
        }
        String target = formulas.looked(PlanState.LIVE, SettingsColumn.SWINGWEIGHT_TARGET, place);
        pen.number(PlanColumn.TARGET_POINTS, "0.00", target, points);
    }
}
