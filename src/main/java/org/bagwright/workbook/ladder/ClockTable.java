package org.bagwright.workbook.ladder;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.ChartPlace;
import org.bagwright.workbook.pen.ClockChart;
import org.bagwright.workbook.pen.SeriesLook;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.plan.PlanColumn;
import org.bagwright.workbook.plan.PlanQuantity;
import org.bagwright.workbook.plan.PlanSheet;
import org.bagwright.workbook.plan.PlanState;
import org.bagwright.workbook.settings.SettingsColumn;
import org.bagwright.workbook.settings.SettingsSheet;

/** On the sheet Ladder: for one club with a sleeve the settings round the clock, as a table and as a chart. */
final class ClockTable {
    /** Where the first table is: a column that is not printed. */
    private static final int FIRST_COLUMN = GapChart.LAST_COLUMN + 2;

    private static final int COLUMNS = 6;
    private static final double NAME_CHARS = 24;
    private static final double NUMBER_CHARS = 9;

    private final SheetPen pen;
    private final SettingsSheet settings;
    private final BagResult bag;
    private final Sleeved sleeved;
    private final SlotOptions slot;
    private final Club club;
    private int nameColumn;

    /** A club with a sleeve, the position of its slot in the bag and the row of that on the sheet Plan. */
    record Sleeved(Club club, int index, int planRow) {}

    ClockTable(SheetPen pen, SettingsSheet settings, BagResult bag, Sleeved sleeved) {
        this.pen = pen;
        this.settings = settings;
        this.bag = bag;
        this.sleeved = sleeved;
        this.slot = bag.options().slots().get(sleeved.index());
        this.club = sleeved.club();
    }

    /**
     * Writes the table from a row on, whose headings are in the next, and draws the chart; gives the first free row after the
     * table.
     *
     * @param place which of the tables of a golfer it is, from 0
     */
    int write(int row, int place, ChartPlace chart) {
        nameColumn = FIRST_COLUMN + COLUMNS * place;
        List<Option> bySetting =
                slot.optionsOf(club).stream().filter(this::asInTheBook).toList();
        List<Option> open = bySetting.stream().filter(Option::open).toList();
        List<Option> closed =
                bySetting.stream().filter(option -> !option.open()).toList();
        List<Option> listed = Stream.concat(open.stream(), closed.stream()).toList();
        headings(row);
        int first = row + 2;
        int next = points(first, open, "");
        next = points(next, closed, " (not allowed)");
        for (PlanState state : PlanState.values()) {
            state(row + 1, next + state.ordinal(), state);
        }
        SleeveCurve curve =
                SleeveCurve.through(listed.stream().map(Option::pose).toList());
        curve(first, curve, listed);
        chart(chart, first, curve, open, closed);
        return Math.max(next + PlanState.values().length, first + curve.places().size() + 1);
    }

    /** Whether an option differs from what the club has in the book by its setting alone. */
    private boolean asInTheBook(Option option) {
        Choice own = new Choice(
                option.choice().setting(),
                club.today().weighting(),
                club.today().bend());
        return option.choice().itemsThatDiffer(own) == 0;
    }

    private void headings(int row) {
        for (int column = 0; column < COLUMNS - 1; column++) {
            pen.blank(row, nameColumn + column, Role.GROUP);
        }
        pen.text(row, nameColumn, Role.GROUP, "Numbers of the chart of this sleeve");
        pen.heading(row + 1, nameColumn, club.name(), NAME_CHARS);
        List<String> headings =
                List.of("Gauge lie [deg]", "Gauge loft [deg]", "Lie round the sleeve", "Loft round the sleeve");
        for (int index = 0; index < headings.size(); index++) {
            pen.heading(row + 1, lieColumn() + index, headings.get(index), NUMBER_CHARS);
        }
    }

    private int lieColumn() {
        return nameColumn + 1;
    }

    private int curveColumn() {
        return nameColumn + 3;
    }

    private int points(int row, List<Option> options, String remark) {
        int next = row;
        for (Option option : options) {
            String text = "setting " + option.choice().settingText() + remark;
            String found = String.valueOf(settings.lookupRow(option));
            pen.text(next, nameColumn, Role.TEXT, text);
            numbers(next++, column -> looked(column, found), Optional.of(option));
        }
        return next;
    }

    private void state(int headingRow, int row, PlanState state) {
        pen.text(row, nameColumn, Role.TEXT, state.label());
        Option chosen = slot.options().get(state.of(bag).chosen().get(sleeved.index()));
        Optional<Option> here = Optional.of(chosen)
                .filter(option ->
                        option.setup().map(ClubSetup::club).filter(club::equals).isPresent());
        String name = SheetPen.held(headingRow, nameColumn);
        numbers(row, column -> ofState(state, column, name), here);
    }

    /** Blank while another club, or none, is in the slot. */
    private String ofState(PlanState state, SettingsColumn column, String name) {
        String looked = looked(column, onPlan(state, PlanQuantity.ROW));
        return slot.hasCandidates()
                ? "IF(" + onPlan(state, PlanQuantity.CLUB) + "&\"\"=" + name + "," + looked + ",\"\")"
                : looked;
    }

    private String onPlan(PlanState state, PlanQuantity what) {
        return PlanSheet.NAME + "!" + PlanColumn.of(state, what).at(sleeved.planRow());
    }

    private String looked(SettingsColumn column, String lookupRow) {
        return "IF(" + lookupRow + "=0,\"?\",INDEX(" + settings.lookup(column) + "," + lookupRow + "))";
    }

    /** Lie and loft of an option, by formulas for their columns of the sheet Settings. */
    private void numbers(int row, Function<SettingsColumn, String> formula, Optional<Option> option) {
        number(row, lieColumn(), formula.apply(SettingsColumn.LIE), SettingsColumn.LIE, option);
        number(row, lieColumn() + 1, formula.apply(SettingsColumn.LOFT), SettingsColumn.LOFT, option);
    }

    private void number(int row, int column, String formula, SettingsColumn of, Optional<Option> option) {
        OptionalDouble cached =
                option.map(known -> of.number.of(known, Units.DEFAULT)).orElseGet(OptionalDouble::empty);
        pen.formula(row, column, Role.NUMBER, "0.00", formula, cached);
    }

    /** The points of the closed line through the settings, the first once more at its end. */
    private void curve(int first, SleeveCurve curve, List<Option> listed) {
        if (!curve.exists()) {
            return;
        }
        int row = first;
        for (int place : curve.closed()) {
            PoseNumbers pose = listed.get(place).pose();
            point(row, curveColumn(), first + place, lieColumn(), pose.gaugeLieDeg());
            point(row++, curveColumn() + 1, first + place, lieColumn() + 1, pose.gaugeLoftDeg());
        }
    }

    private void point(int row, int column, int fromRow, int fromColumn, double angleDeg) {
        pen.formula(row, column, Role.NUMBER, "0.00", SheetPen.ref(fromRow, fromColumn), angleDeg);
    }

    /** Some programs draw the first series over the others, some the last: the marks of the states are drawn at both ends. */
    private void chart(ChartPlace place, int first, SleeveCurve curve, List<Option> open, List<Option> closed) {
        ClockChart chart =
                new ClockChart(pen.sheet(), place, club.name() + (closed.isEmpty() ? "" : " (x: not allowed)"));
        window(chart, slot.optionsOf(club).stream().map(Option::pose).toList());
        int states = first + open.size() + closed.size();
        state(chart, "Planned", states, PlanState.PLANNED, SeriesLook.PLANNED);
        state(chart, "Today", states, PlanState.TODAY, SeriesLook.TODAY);
        state(chart, "Live", states, PlanState.LIVE, SeriesLook.LIVE);
        if (curve.exists()) {
            int last = first + curve.places().size();
            chart.curve(
                    "Round the sleeve",
                    new ClockChart.Rows(first, last, curveColumn(), curveColumn() + 1),
                    curve.round());
        }
        add(chart, "Allowed", first, open, SeriesLook.ALLOWED);
        add(chart, "Not allowed", first + open.size(), closed, SeriesLook.CLOSED);
        state(chart, "Live", states, PlanState.LIVE, SeriesLook.LIVE);
        state(chart, "Today", states, PlanState.TODAY, SeriesLook.TODAY);
        state(chart, "Planned", states, PlanState.PLANNED, SeriesLook.PLANNED);
        chart.plot();
    }

    private static void window(ClockChart chart, List<PoseNumbers> poses) {
        chart.window(
                poses.stream().mapToDouble(PoseNumbers::gaugeLieDeg).summaryStatistics(),
                poses.stream().mapToDouble(PoseNumbers::gaugeLoftDeg).summaryStatistics());
    }

    private void state(ClockChart chart, String title, int first, PlanState state, SeriesLook look) {
        int row = first + state.ordinal();
        chart.points(title, rows(row, row), look, List.of());
    }

    private void add(ClockChart chart, String title, int first, List<Option> options, SeriesLook look) {
        if (!options.isEmpty()) {
            List<String> marks = options.stream()
                    .map(option -> option.choice().settingText())
                    .toList();
            chart.points(title, rows(first, first + options.size() - 1), look, marks);
        }
    }

    private ClockChart.Rows rows(int first, int last) {
        return new ClockChart.Rows(first, last, lieColumn(), lieColumn() + 1);
    }
}
