package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.units.Units;
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
    private static final int LEAST_ROWS = 18;

    private final SheetPen pen;
    private final SettingsSheet settings;
    private final BagResult bag;
    private final Sleeved sleeved;
    private final SlotOptions slot;
    private final Club club;
    private final Place place;

    /** A club with a sleeve, the position of its slot in the bag and the row of that on the sheet Plan. */
    record Sleeved(Club club, int index, int planRow) {}

    /** Where on the sheet a table and its chart are: columns, counted from 0. */
    record Place(int nameColumn, int chartColumn, int chartColumns) {
        static final Place LEFT = new Place(0, 4, 5);
        static final Place RIGHT = new Place(10, 13, 7);

        int lieColumn() {
            return nameColumn + 1;
        }

        int loftColumn() {
            return nameColumn + 2;
        }
    }

    ClockTable(SheetPen pen, SettingsSheet settings, BagResult bag, Sleeved sleeved, Place place) {
        this.pen = pen;
        this.settings = settings;
        this.bag = bag;
        this.sleeved = sleeved;
        this.slot = bag.options().slots().get(sleeved.index());
        this.club = sleeved.club();
        this.place = place;
    }

    /** Writes from a row on and gives the first free row after it. */
    int write(int row) {
        List<Option> bySetting =
                slot.optionsOf(club).stream().filter(this::asInTheBook).toList();
        List<Option> open = bySetting.stream().filter(Option::open).toList();
        List<Option> closed =
                bySetting.stream().filter(option -> !option.open()).toList();
        headings(row);
        int next = points(row + 1, open, "");
        next = points(next, closed, " (not allowed)");
        for (PlanState state : PlanState.values()) {
            state(row, next + state.ordinal(), state);
        }
        chart(row, open, closed, next);
        return Math.max(next + PlanState.values().length, row + LEAST_ROWS) + 1;
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
        pen.text(row, place.nameColumn(), Role.HEADING, club.name());
        pen.text(row, place.lieColumn(), Role.HEADING, "Gauge lie [deg]");
        pen.text(row, place.loftColumn(), Role.HEADING, "Gauge loft [deg]");
        pen.height(row, 28);
    }

    private int points(int row, List<Option> options, String remark) {
        int next = row;
        for (Option option : options) {
            String text = "setting " + option.choice().settingText() + remark;
            String found = String.valueOf(settings.lookupRow(option));
            pen.text(next, place.nameColumn(), Role.TEXT, text);
            numbers(next++, column -> looked(column, found), Optional.of(option));
        }
        return next;
    }

    private void state(int headingRow, int row, PlanState state) {
        pen.text(row, place.nameColumn(), Role.TEXT, state.label());
        Option chosen = slot.options().get(state.of(bag).chosen().get(sleeved.index()));
        Optional<Option> here = Optional.of(chosen)
                .filter(option ->
                        option.setup().map(ClubSetup::club).filter(club::equals).isPresent());
        String name = SheetPen.held(headingRow, place.nameColumn());
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
        number(row, place.lieColumn(), formula.apply(SettingsColumn.LIE), SettingsColumn.LIE, option);
        number(row, place.loftColumn(), formula.apply(SettingsColumn.LOFT), SettingsColumn.LOFT, option);
    }

    private void number(int row, int column, String formula, SettingsColumn of, Optional<Option> option) {
        OptionalDouble cached =
                option.map(known -> of.number.of(known, Units.DEFAULT)).orElseGet(OptionalDouble::empty);
        pen.formula(row, column, Role.NUMBER, "0.00", formula, cached);
    }

    private void chart(int row, List<Option> open, List<Option> closed, int stateRow) {
        String title = club.name() + ": loft and lie by setting";
        ClockChart chart =
                new ClockChart(pen.sheet(), place.chartColumn(), row, place.chartColumns(), LEAST_ROWS, title);
        window(chart, slot.optionsOf(club).stream().map(Option::pose).toList());
        int first = row + 1;
        add(chart, "Allowed", first, open, SeriesLook.ALLOWED);
        add(chart, "Not allowed", first + open.size(), closed, SeriesLook.CLOSED);
        state(chart, "Today", stateRow, SeriesLook.TODAY_RING);
        state(chart, "Planned", stateRow + 1, SeriesLook.PLANNED);
        state(chart, "Live", stateRow + 2, SeriesLook.LIVE);
        chart.plot();
    }

    private static void window(ClockChart chart, List<PoseNumbers> poses) {
        chart.window(
                poses.stream().mapToDouble(PoseNumbers::gaugeLieDeg).summaryStatistics(),
                poses.stream().mapToDouble(PoseNumbers::gaugeLoftDeg).summaryStatistics());
    }

    private void state(ClockChart chart, String title, int row, SeriesLook look) {
        chart.points(title, row, row, place.lieColumn(), place.loftColumn(), look, List.of());
    }

    private void add(ClockChart chart, String title, int first, List<Option> options, SeriesLook look) {
        if (!options.isEmpty()) {
            List<String> marks = options.stream()
                    .map(option -> option.choice().settingText())
                    .toList();
            chart.points(title, first, first + options.size() - 1, place.lieColumn(), place.loftColumn(), look, marks);
        }
    }
}
