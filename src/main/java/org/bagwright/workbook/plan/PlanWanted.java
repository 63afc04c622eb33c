package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.OptionalDouble;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.pen.SwingweightCell;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.GolferColumn;
import org.bagwright.workbook.settings.SettingsColumn;
import org.bagwright.workbook.text.PlanMemory;

/**
 * What is wanted of one slot on the sheet Plan: cells that a person may fill, or where several clubs may fill the slot what
 * the book wants of the live one.
 */
final class PlanWanted {
    private final PlanRowPen pen;
    private final PlanFormulas formulas;
    private final PlanPlace place;
    private final PlanRow values;
    private final PlanMemory memory = new PlanMemory();

    PlanWanted(PlanRowPen pen) {
        this.pen = pen;
        this.formulas = pen.formulas();
        this.place = pen.place();
        this.values = pen.values();
    }

    void write() {
        target(PlanColumn.LOFT_TARGET, ClubColumn.LOFT_TARGET);
        target(PlanColumn.LIE_TARGET, ClubColumn.LIE_TARGET);
        ifPossible(PlanColumn.CARRY_TARGET, ClubColumn.CARRY_TARGET, values.mayCarry());
        look(PlanColumn.MOST_OPEN, GolferColumn.MOST_OPEN, LimitKind.MOST_OPEN);
        look(PlanColumn.MOST_CLOSED, GolferColumn.MOST_CLOSED, LimitKind.MOST_CLOSED);
        ifPossible(PlanColumn.GAP_LEAST, ClubColumn.GAP_LEAST, values.mayHaveGap());
        ifPossible(PlanColumn.GAP_MOST, ClubColumn.GAP_MOST, values.mayHaveGap());
        ifPossible(PlanColumn.CARRY_LEAST, ClubColumn.CARRY_LEAST, values.mayCarry());
        ifPossible(PlanColumn.CARRY_MOST, ClubColumn.CARRY_MOST, values.mayCarry());
        ifPossible(PlanColumn.LANDING_LEAST, ClubColumn.LANDING_LEAST, values.mayCarry());
        gapWish();
        swingweight();
        pen.text(PlanColumn.FILLED, Role.FAINT, memory.text());
    }

    /** A number that a person may change, and what it was. */
    private void input(PlanColumn column, Column input, String format, OptionalDouble value) {
        pen.input(column, format, value);
        memory.put(input.header(), value);
    }

    private void target(PlanColumn column, Column input) {
        SettingsColumn from = column.source().orElseThrow();
        OptionalDouble value = pen.value(PlanState.LIVE, from);
        if (place.fixed()) {
            input(column, input, "0.0##", value);
        } else {
            pen.number(column, "0.0##", formulas.looked(PlanState.LIVE, from, place), value);
        }
    }

    /**
     * What holds for all clubs of a golfer, to change in his first row, which the others follow. A look on the side of its
     * column is a number, one on the other side is written in words.
     */
    private void look(PlanColumn column, Column input, LimitKind kind) {
        OptionalDouble look = values.golfer().limits().valueMeasureUnits(kind);
        boolean open = kind == LimitKind.MOST_OPEN;
        boolean isWorded = look.isPresent() && (open ? look.getAsDouble() > 0 : look.getAsDouble() < 0);
        String words = isWorded ? Numbers.trimmed(Math.abs(look.getAsDouble())) + (open ? " closed" : " open") : "";
        if (place.row() > place.firstRow()) {
            follow(column, isWorded, words, look);
        } else {
            input(column, input, "0.0##", look);
            if (isWorded) {
                pen.text(column, Role.INPUT, words);
            }
        }
    }

    private void follow(PlanColumn column, boolean isWorded, String words, OptionalDouble look) {
        String first = column.at(place.firstRow());
        String formula = "IF(" + first + "=\"\",\"\"," + first + ")";
        if (isWorded) {
            pen.text(column, Role.COUNT, formula, words);
        } else {
            pen.number(column, "0.0##", formula, look);
        }
    }

    private void ifPossible(PlanColumn column, Column input, boolean possible) {
        if (possible) {
            target(column, input);
        } else {
            pen.blank(column, Role.NUMBER);
        }
    }

    private void gapWish() {
        OptionalDouble wish = pen.distance(values.wishM(PlanState.LIVE));
        if (!values.mayHaveGap()) {
            pen.blank(PlanColumn.GAP_WISH, Role.NUMBER);
        } else if (place.fixed()) {
            input(PlanColumn.GAP_WISH, ClubColumn.GAP_WISH, "0.0", wish);
        } else {
            String looked = formulas.looked(PlanState.LIVE, SettingsColumn.GAP_WISH, place);
            pen.number(PlanColumn.GAP_WISH, "0.0", looked, wish);
        }
    }

    private void swingweight() {
        OptionalDouble points = pen.value(PlanState.LIVE, SettingsColumn.SWINGWEIGHT_TARGET);
        if (place.fixed()) {
            pen.swingweight(PlanColumn.SWINGWEIGHT_TARGET, points);
            memory.put(ClubColumn.SWINGWEIGHT_TARGET.header(), points);
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
