package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.workbook.settings.SettingsColumn;
import org.bagwright.workbook.settings.SettingsSheet;

/** Writes the numbers of one slot of the sheet Plan. */
final class PlanRowWriter {
    /** A look as a number that is read in words. */
    private static final String LOOK = "0.0\" closed\";0.0\" open\";\"square\"";

    private final PlanRowPen pen;
    private final SettingsSheet settings;
    private final PlanFormulas formulas;
    private final PlanTermFormulas terms;
    private final PlanPlace place;
    private final PlanRow values;

    PlanRowWriter(PlanRowPen pen, SettingsSheet settings, PlanTermFormulas terms) {
        this.pen = pen;
        this.settings = settings;
        this.terms = terms;
        this.formulas = pen.formulas();
        this.place = pen.place();
        this.values = pen.values();
    }

    void write() {
        pen.text(PlanColumn.GOLFER, Role.SHRUNK, values.golfer().name());
        pen.pen()
                .number(
                        place.row(),
                        PlanColumn.SLOT.index(),
                        Role.COUNT,
                        "0",
                        values.slot().slot());
        if (!place.fixed()) {
            pen.number(PlanColumn.LIVE_LIST, "0", formulas.liveList(place), 1 + clubPlace());
        }
        longestToday();
        setup(PlanState.TODAY, PlanColumn.TODAY_SETUP);
        setup(PlanState.PLANNED, PlanColumn.PLANNED_SETUP);
        for (PlanState state : PlanState.values()) {
            state(state);
        }
        live();
    }

    private void state(PlanState state) {
        int found = settings.lookupRow(values.option(state));
        pen.number(PlanColumn.of(state, PlanQuantity.ROW), "0", formulas.lookupRow(state, place), found);
        looked(state, PlanQuantity.LOFT, "0.0");
        carryAndGap(state);
        match(state);
        looked(state, PlanQuantity.CHANGES, "0");
        terms(state);
    }

    private void setup(PlanState state, PlanColumn column) {
        pen.text(column, Role.SHRUNK_COUNT, values.setupInShort(state));
    }

    private void longestToday() {
        OptionalDouble longest = pen.distance(values.longestTodayM());
        if (longest.isPresent()) {
            pen.pen().number(place.row(), PlanColumn.LONGEST_TODAY.index(), Role.NUMBER, "0.0", longest.getAsDouble());
        }
    }

    /** The place of the live club among those that may fill the slot, counted from 0. */
    private int clubPlace() {
        Option live = values.option(PlanState.LIVE);
        return live.isEmpty()
                ? values.slot().clubs().size()
                : values.slot().clubs().indexOf(live.club());
    }

    private void looked(PlanState state, PlanQuantity quantity, String format) {
        pen.looked(state, PlanColumn.of(state, quantity), format);
    }

    private void carryAndGap(PlanState state) {
        looked(state, PlanQuantity.CARRY, "0.0");
        looked(state, PlanQuantity.CARRY_SPREAD, "0.0");
        PlanColumn next = PlanColumn.of(state, PlanQuantity.NEXT);
        if (place.row() < place.lastRow()) {
            OptionalDouble nextM = values.next(state).map(Option::carryM).orElseGet(OptionalDouble::empty);
            String formula = formulas.next(state, PlanColumn.of(state, PlanQuantity.CARRY), next, place);
            pen.number(next, "0.0", formula, pen.distance(nextM));
            nextRow(state);
            nextClub(state);
        }
        PlanColumn gap = PlanColumn.of(state, PlanQuantity.GAP);
        if (values.mayHaveGap()) {
            OptionalDouble gapM =
                    values.gap(state).stream().mapToDouble(GapTerm::gapM).findFirst();
            pen.number(gap, "0.0", formulas.gap(state, place), pen.distance(gapM));
            gapDoubt(state);
        } else {
            pen.blank(gap, Role.NUMBER);
            pen.blank(PlanColumn.of(state, PlanQuantity.GAP_SPREAD), Role.NUMBER);
        }
    }

    private void nextRow(PlanState state) {
        PlanColumn column = PlanColumn.of(state, PlanQuantity.NEXT_ROW);
        OptionalDouble row =
                values.next(state).stream().mapToDouble(settings::lookupRow).findFirst();
        pen.number(column, "0", formulas.next(state, PlanColumn.of(state, PlanQuantity.ROW), column, place), row);
    }

    private void gapDoubt(PlanState state) {
        double perM = pen.units().distance().fromM(1);
        OptionalDouble variance = values.gap(state).stream()
                .mapToDouble(gap -> gap.sdM() * gap.sdM() * perM * perM)
                .findFirst();
        OptionalDouble spread = values.gap(state).stream()
                .mapToDouble(gap -> CarryDoubt.HALF_80_SDS * gap.sdM() * perM)
                .findFirst();
        pen.number(
                PlanColumn.of(state, PlanQuantity.GAP_VARIANCE), "0.00", formulas.gapVariance(state, place), variance);
        pen.number(PlanColumn.of(state, PlanQuantity.GAP_SPREAD), "0.0", PlanFormulas.gapSpread(state, place), spread);
    }

    /** The sheet Ladder names gaps by it. */
    private void nextClub(PlanState state) {
        PlanColumn column = PlanColumn.LIVE_NEXT_CLUB;
        if (state == PlanState.LIVE) {
            pen.text(
                    column,
                    Role.TEXT,
                    formulas.next(state, PlanColumn.LIVE_CLUB, column, place),
                    values.next(state).map(Option::clubText).orElse(""));
        }
    }

    private void match(PlanState state) {
        looked(state, PlanQuantity.MATCH, "0.00");
        Optional<String> group =
                values.option(state).setup().flatMap(ClubSetup::match).map(MatchValue::group);
        PlanColumn column = PlanColumn.of(state, PlanQuantity.GROUP);
        if (group.isPresent() || !place.fixed()) {
            String formula = formulas.looked(state, SettingsColumn.MATCH_GROUP, place);
            pen.text(column, Role.TEXT, formula, group.orElse(""));
        } else {
            pen.blank(column, Role.TEXT);
        }
    }

    private void terms(PlanState state) {
        Terms cost = values.terms(state);
        for (Measure measure : Measure.values()) {
            String formula = terms.term(state, measure, place);
            pen.number(new TermColumn(state, measure), "0.000", formula, cost.points(measure));
        }
        pen.number(PlanColumn.of(state, PlanQuantity.DOUBT), "0.000", terms.doubt(state, place), cost.doubtPoints());
        pen.number(PlanColumn.of(state, PlanQuantity.PENALTY), "0.00", terms.penalty(state, place), cost.totalPoints());
    }

    private void live() {
        changeSpread();
        live(PlanColumn.LIVE_LIE, "0.0");
        live(PlanColumn.LIVE_SITS, LOOK);
        live(PlanColumn.LIVE_START_LINE, "0.0");
        live(PlanColumn.LIVE_CONTACT, "0.0");
        live(PlanColumn.LIVE_SHAFT_TURN, "0");
        live(PlanColumn.LIVE_LAUNCH, "0.0");
        live(PlanColumn.LIVE_SPIN, "0");
        live(PlanColumn.LIVE_LANDING, "0.0");
        for (MissColumn column : MissColumn.all()) {
            pen.number(column, "0.00", terms.miss(column, place), values.missTolerances(column.measure()));
        }
        pen.number(PlanColumn.LIVE_WORST, "0.00", terms.worst(place), values.worstTolerances());
    }

    private void changeSpread() {
        if (values.mayCarry()) {
            String formula = formulas.looked(PlanState.LIVE, SettingsColumn.CHANGE_SPREAD, place);
            pen.number(PlanColumn.LIVE_CHANGE_SPREAD, "0.0", formula, pen.distance(values.changeSpreadM()));
        } else {
            pen.blank(PlanColumn.LIVE_CHANGE_SPREAD, Role.NUMBER);
        }
    }

    private void live(PlanColumn column, String format) {
        pen.looked(PlanState.LIVE, column, format);
    }
}
