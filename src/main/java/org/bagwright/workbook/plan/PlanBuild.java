package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.OptionalDouble;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Swingweight;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.SwingweightCell;
import org.bagwright.workbook.settings.SettingsColumn;

/** What a builder does to one slot on the sheet Plan: lengths, masses and swingweight of the live choice. */
final class PlanBuild {
    private final PlanRowPen pen;
    private final PlanFormulas formulas;
    private final Units units;
    private final PlanPlace place;
    private final PlanRow values;

    PlanBuild(PlanRowPen pen) {
        this.pen = pen;
        this.formulas = pen.formulas();
        this.units = pen.units();
        this.place = pen.place();
        this.values = pen.values();
    }

    void write() {
        String length = units.length() == LengthUnit.INCH ? "0.00" : "0";
        looked(PlanColumn.LIVE_LENGTH, length);
        change(PlanColumn.LENGTH_CHANGE, SettingsColumn.LENGTH, "+" + length + ";-" + length + ";0");
        change(PlanColumn.HEAD_MASS_CHANGE, SettingsColumn.HEAD_MASS, "+0.0;-0.0;0");
        looked(PlanColumn.LIVE_TOTAL_MASS, "0");
        looked(PlanColumn.LIVE_POINTS, "0.00");
        text(PlanColumn.TODAY_SWINGWEIGHT, PlanState.TODAY);
        text(PlanColumn.LIVE_SWINGWEIGHT, PlanState.LIVE);
        pen.number(
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

    private void looked(PlanColumn column, String format) {
        SettingsColumn from = column.source().orElseThrow();
        String formula = formulas.looked(PlanState.LIVE, from, place);
        pen.number(column, format, formula, pen.value(PlanState.LIVE, from));
    }

    private void change(PlanColumn column, SettingsColumn of, String format) {
        OptionalDouble live = pen.value(PlanState.LIVE, of);
        OptionalDouble today = pen.value(PlanState.TODAY, of);
        OptionalDouble change = live.isPresent() && today.isPresent()
                ? OptionalDouble.of(live.getAsDouble() - today.getAsDouble())
                : OptionalDouble.empty();
        pen.number(column, format, formulas.change(of, place), change);
    }

    private void text(PlanColumn column, PlanState state) {
        Option option = values.option(state);
        String text = option.isEmpty() ? "" : option.build().swingweight().text();
        pen.text(column, Role.COUNT, formulas.looked(state, SettingsColumn.SWINGWEIGHT_TEXT, place), text);
    }
}
