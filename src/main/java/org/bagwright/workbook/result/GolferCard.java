package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.pen.BookChart;
import org.bagwright.workbook.pen.SeriesLook;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;

/** The card of one golfer: a picture of his carries, a row for each club, and no word of the bench. */
final class GolferCard {
    static final double[] WIDTHS_CHARS = {14, 7, 7, 7, 7, 34};
    static final int LAST = WIDTHS_CHARS.length - 1;

    private static final int CHART_ROWS = 20;
    private static final double ROW_POINTS = 15.5;
    private static final List<String> NOTES = List.of(
            "Carry: how far you can expect the ball to fly, as a mean of many shots. Gap: how much further than the next"
                    + " club. More closed, more open: where the face looks when the club rests on the ground.",
            "During a round nothing on a club may be adjusted (Rules of Golf, 4.1a).");

    private final SheetPen pen;
    private final TablePen table;
    private final BookSettings settings;
    private final BagResult bag;

    GolferCard(SheetPen pen, BookSettings settings, BagResult bag) {
        this.pen = pen;
        this.table = new TablePen(pen, settings.units());
        this.settings = settings;
        this.bag = bag;
    }

    /** Writes the card from a row on and gives the first row after it. */
    int write(int row) {
        head(row);
        int headings = row + 5 + CHART_ROWS;
        table.headings(
                headings,
                List.of(
                        "Club",
                        table.inDistance("Carry before"),
                        table.inDistance("Carry now"),
                        table.inDistance("Gap before"),
                        table.inDistance("Gap now"),
                        "What was changed"),
                42);
        int next = rows(headings + 1);
        for (String note : NOTES) {
            pen.text(next, 0, Role.WRAPPED, note);
            pen.merge(next, next, 0, LAST);
            pen.height(
                    next++,
                    TablePen.heightPoints(note, Arrays.stream(WIDTHS_CHARS).sum()));
        }
        return next;
    }

    private void head(int row) {
        pen.text(row, 0, Role.TITLE, bag.golfer().name() + ": your clubs");
        pen.height(row, 24);
        pen.text(row + 1, 0, Role.PLAIN, settings.title().orElse(""));
        pen.text(row + 3, 0, Role.PLAIN, summary());
        pen.height(row + 3, 18);
        toFillIn(row + 1, "Date");
        toFillIn(row + 2, "Fitted by");
    }

    private void toFillIn(int row, String label) {
        pen.text(row, LAST - 1, Role.PLAIN, label);
        pen.blank(row, LAST, Role.FILL_IN);
        pen.height(row, 20);
    }

    /** How many clubs are changed, and between which gaps they were and are. */
    private String summary() {
        long changed = changes().stream().filter(change -> !change.isNone()).count();
        return (changed == 1 ? "1 club" : changed + " clubs") + " changed. " + gaps("Gaps before", bag.today())
                + gaps(", now", bag.planned());
    }

    private String gaps(String label, BagState state) {
        if (state.gaps().isEmpty()) {
            return "";
        }
        DoubleSummaryStatistics gaps = state.gaps().stream()
                .mapToDouble(gap -> settings.units().distance().fromM(gap.gapM()))
                .summaryStatistics();
        return label + " " + Numbers.fixed(gaps.getMin(), 0) + " to " + Numbers.fixed(gaps.getMax(), 0) + " "
                + settings.units().distance().label();
    }

    private List<OptionChange> changes() {
        return IntStream.range(0, bag.options().slots().size())
                .mapToObj(index -> new OptionChange(
                        bag.optionsOf(bag.today()).get(index),
                        bag.optionsOf(bag.planned()).get(index)))
                .filter(change -> !change.from().isEmpty() || !change.to().isEmpty())
                .toList();
    }

    private int rows(int first) {
        int row = first;
        List<Integer> carrying = new ArrayList<>();
        for (int index = 0; index < bag.options().slots().size(); index++) {
            OptionChange change = new OptionChange(
                    bag.optionsOf(bag.today()).get(index),
                    bag.optionsOf(bag.planned()).get(index));
            if (change.from().isEmpty() && change.to().isEmpty()) {
                continue;
            }
            club(row, index, change);
            if (change.from().carryM().isPresent() || change.to().carryM().isPresent()) {
                carrying.add(row);
            }
            row++;
        }
        chart(first - 1 - CHART_ROWS, carrying);
        return row;
    }

    private void club(int row, int index, OptionChange change) {
        pen.text(row, 0, Role.TEXT, (change.to().isEmpty() ? change.from() : change.to()).clubText());
        table.distance(row, 1, Role.NUMBER, change.from().carryM());
        table.distance(row, 2, Role.AFTER, change.to().carryM());
        table.distance(row, 3, Role.NUMBER, gapM(bag.today(), index));
        table.distance(row, 4, Role.AFTER, gapM(bag.planned(), index));
        String changed = new ClubNews(change).inWords();
        pen.text(row, LAST, Role.CELL, changed);
        pen.height(row, Math.max(ROW_POINTS, TablePen.heightPoints(changed, WIDTHS_CHARS[LAST])));
    }

    private static OptionalDouble gapM(BagState state, int index) {
        return state.gapAfter(index).map(GapTerm::gapM).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    private void chart(int row, List<Integer> carrying) {
        if (carrying.size() < 2) {
            return;
        }
        BookChart chart = new BookChart(pen.sheet(), 0, row, WIDTHS_CHARS.length, CHART_ROWS - 1);
        chart.title("How far each club carries");
        chart.axes("", "Carry [" + settings.units().distance().label() + "]");
        int first = carrying.get(0);
        int last = carrying.get(carrying.size() - 1);
        chart.columns(List.of(
                new BookChart.Series("Before", first, last, 0, 1, SeriesLook.TODAY),
                new BookChart.Series("Now", first, last, 0, 2, SeriesLook.PLANNED)));
    }
}
