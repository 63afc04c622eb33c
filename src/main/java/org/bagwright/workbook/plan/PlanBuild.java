package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.OptionalDouble;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Swingweight;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.SwingweightCell;

/** What a builder does to one slot on the sheet Plan: lengths, masses and swingweight of the live choice. */
final class PlanBuild {
    private final SheetPen pen;
    private final PlanFormulas formulas;
    private final Units units;
    private final PlanPlace place;
    private final PlanRow values;

    PlanBuild(SheetPen pen, PlanFormulas formulas, Units units, PlanPlace place, PlanRow values) {
        this.pen = pen;
        this.formulas = formulas;
        this.units = units;
        this.place = place;
        this.values = values;
    }

    void write() {
        String length = units.length() == LengthUnit.INCH ? "0.00" : "0";
        looked(PlanColumn.LIVE_LENGTH, SettingsColumn.LENGTH, length);
        change(PlanColumn.LENGTH_CHANGE, SettingsColumn.LENGTH, "+" + length + ";-" + length + ";0");
        change(PlanColumn.HEAD_MASS_CHANGE, SettingsColumn.HEAD_MASS, "+0.0;-0.0;0");
        looked(PlanColumn.LIVE_TOTAL_MASS, SettingsColumn.TOTAL_MASS, "0");
        looked(PlanColumn.LIVE_POINTS, SettingsColumn.SWINGWEIGHT, "0.00");
        text(PlanColumn.TODAY_SWINGWEIGHT, PlanState.TODAY);
        text(PlanColumn.LIVE_SWINGWEIGHT, PlanState.LIVE);
        number(
                PlanColumn.HEAD_GRAMS,
                "+0.0;-0.0;0.0",
                SwingweightCell.gramsAtHead(
                        place.at(PlanColumn.TARGET_POINTS),
                        place.at(PlanColumn.LIVE_POINTS),
                        place.at(PlanColumn.LIVE_LENGTH),
                        units.length()),
                gramsAtHead(values.option(PlanState.LIVE)));
    }

    private static OptionalDouble gramsAtHead(Option live) {
        if (live.isEmpty() || live.club().targets().swingweight().isEmpty()) {
            return OptionalDouble.empty();
        }
        Swingweight target = live.club().targets().swingweight().get();
        BuildNumbers build = live.build();
        return OptionalDouble.of(
                new SwingweightCell(target.scalePoints()).gramsAtHead(build.swingweight(), build.lengthM()));
    }

    private void looked(PlanColumn column, SettingsColumn from, String format) {
        number(column, format, formulas.looked(PlanState.LIVE, from, place), value(PlanState.LIVE, from));
    }

    private void change(PlanColumn column, SettingsColumn of, String format) {
        OptionalDouble live = value(PlanState.LIVE, of);
        OptionalDouble today = value(PlanState.TODAY, of);
        OptionalDouble change = live.isPresent() && today.isPresent()
                ? OptionalDouble.of(live.getAsDouble() - today.getAsDouble())
                : OptionalDouble.empty();
        number(column, format, formulas.change(of, place), change);
    }

    private void text(PlanColumn column, PlanState state) {
        Option option = values.option(state);
        String text = option.isEmpty() ? "" : option.build().swingweight().text();
        pen.formula(
                place.row(),
                column.ordinal(),
                Role.COUNT,
                formulas.looked(state, SettingsColumn.SWINGWEIGHT_TEXT, place),
                text);
    }

    private OptionalDouble value(PlanState state, SettingsColumn column) {
        return column.number.of(values.option(state), units);
    }

    private void number(PlanColumn column, String format, String formula, OptionalDouble cached) {
        pen.formula(place.row(), column.ordinal(), Role.NUMBER, format, formula, cached);
    }
}
