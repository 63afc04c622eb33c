package org.bagwright.workbook;

import static org.bagwright.workbook.BookStyles.Role;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.bagwright.domain.BagResult;
import org.bagwright.domain.Option;
import org.bagwright.domain.SlotOptions;

/** On the sheet Ladder: for one club with a sleeve the settings round the clock, as a table and as a chart. */
final class ClockTable {
    private static final int LEAST_ROWS = 18;

    private final SheetPen pen;
    private final SettingsSheet settings;
    private final BagResult bag;
    private final int index;
    private final int planRow;
    private final Place place;

    /** Where on the sheet a table and its chart stand: columns, counted from 0. */
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

    /** @param planRow where the club stands on the sheet Plan */
    ClockTable(SheetPen pen, SettingsSheet settings, BagResult bag, int index, int planRow, Place place) {
        this.pen = pen;
        this.settings = settings;
        this.bag = bag;
        this.index = index;
        this.planRow = planRow;
        this.place = place;
    }

    /** Writes from a row on and gives the first free row after it. */
    int write(int row) {
        SlotOptions club = bag.options().slots().get(index);
        List<Option> shown = club.options().stream()
                .filter(option ->
                        option.choice().bend().equals(club.today().choice().bend()))
                .toList();
        List<Option> open = shown.stream().filter(Option::open).toList();
        List<Option> closed = shown.stream().filter(option -> !option.open()).toList();
        headings(row, club.main().name());
        int next = points(row + 1, open, "");
        next = points(next, closed, " (not allowed)");
        state(next, "today", PlanColumn.TODAY_ROW, bag.today().chosen());
        state(next + 1, "planned", PlanColumn.PLANNED_ROW, bag.planned().chosen());
        state(next + 2, "live", PlanColumn.LIVE_ROW, bag.planned().chosen());
        chart(row, club, open, closed, next);
        return Math.max(next + 3, row + LEAST_ROWS) + 1;
    }

    private void headings(int row, String club) {
        pen.text(row, place.nameColumn(), Role.HEADING, club);
        pen.text(row, place.lieColumn(), Role.HEADING, "Gauge lie [deg]");
        pen.text(row, place.loftColumn(), Role.HEADING, "Gauge loft [deg]");
        pen.height(row, 28);
    }

    private int points(int row, List<Option> options, String remark) {
        int next = row;
        for (Option option : options) {
            pen.text(
                    next,
                    place.nameColumn(),
                    Role.TEXT,
                    "setting " + option.choice().settingText() + remark);
            looked(
                    next,
                    place.lieColumn(),
                    SettingsSheet.Column.LIE,
                    String.valueOf(settings.lookupRow(option)),
                    option.pose().gaugeLieDeg());
            looked(
                    next,
                    place.loftColumn(),
                    SettingsSheet.Column.LOFT,
                    String.valueOf(settings.lookupRow(option)),
                    option.pose().gaugeLoftDeg());
            next++;
        }
        return next;
    }

    private void state(int row, String name, PlanColumn lookupRow, List<Integer> chosen) {
        Option option = bag.options().slots().get(index).options().get(chosen.get(index));
        String found = PlanSheet.NAME + "!" + lookupRow.at(planRow);
        pen.text(row, place.nameColumn(), Role.TEXT, name);
        looked(
                row,
                place.lieColumn(),
                SettingsSheet.Column.LIE,
                found,
                option.pose().gaugeLieDeg());
        looked(
                row,
                place.loftColumn(),
                SettingsSheet.Column.LOFT,
                found,
                option.pose().gaugeLoftDeg());
    }

    private void looked(int row, int column, SettingsSheet.Column from, String lookupRow, double cached) {
        String formula = "IF(" + lookupRow + "=0,\"?\",INDEX(" + settings.lookup(from) + "," + lookupRow + "))";
        pen.formula(row, column, Role.NUMBER, "0.00", formula, cached);
    }

    private void chart(int row, SlotOptions club, List<Option> open, List<Option> closed, int stateRow) {
        ClockChart chart = new ClockChart(
                pen.sheet(),
                place.chartColumn(),
                row,
                place.chartColumns(),
                LEAST_ROWS,
                club.main().name() + ": loft and lie by setting");
        List<Option> all = club.options();
        chart.window(
                extreme(all, option -> option.pose().gaugeLieDeg(), -1),
                extreme(all, option -> option.pose().gaugeLieDeg(), 1),
                extreme(all, option -> option.pose().gaugeLoftDeg(), -1),
                extreme(all, option -> option.pose().gaugeLoftDeg(), 1));
        int first = row + 1;
        add(chart, "Allowed", first, open, SeriesLook.ALLOWED);
        add(chart, "Not allowed", first + open.size(), closed, SeriesLook.CLOSED);
        chart.points(
                "Today", stateRow, stateRow, place.lieColumn(), place.loftColumn(), SeriesLook.TODAY_RING, List.of());
        chart.points(
                "Planned",
                stateRow + 1,
                stateRow + 1,
                place.lieColumn(),
                place.loftColumn(),
                SeriesLook.PLANNED,
                List.of());
        chart.points(
                "Live", stateRow + 2, stateRow + 2, place.lieColumn(), place.loftColumn(), SeriesLook.LIVE, List.of());
        chart.plot();
    }

    private void add(ClockChart chart, String title, int first, List<Option> options, SeriesLook look) {
        if (!options.isEmpty()) {
            List<String> marks = options.stream()
                    .map(option -> option.choice().settingText())
                    .toList();
            chart.points(title, first, first + options.size() - 1, place.lieColumn(), place.loftColumn(), look, marks);
        }
    }

    private static double extreme(List<Option> options, ToDoubleFunction<Option> value, int sign) {
        return sign
                * options.stream()
                        .mapToDouble(value)
                        .map(each -> sign * each)
                        .max()
                        .orElseThrow();
    }
}
