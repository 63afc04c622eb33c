package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.OtherPlan;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;

/**
 * On the sheet Others: one golfer's plan and the other plans, a column each: figures first, then a row for each slot that is
 * not the same in all of them, then the others on one line.
 */
final class OtherPlans {
    static final double LABEL_CHARS = 22;
    static final double PLAN_CHARS = 16.6;

    /** The sign before everything in which another plan differs from the plan. */
    private static final String DIFFERS = "* ";
    /** The star, and about what bold letters take more. */
    private static final String WIDER = DIFFERS + "\u00a0";

    private final SheetPen pen;
    private final TablePen table;
    private final BookSettings settings;
    private final BagResult bag;
    private final List<SlotOptions> slots;
    private final int lastColumn;

    OtherPlans(SheetPen pen, TablePen table, BookSettings settings, BagResult bag, int lastColumn) {
        this.settings = settings;
        this.pen = pen;
        this.table = table;
        this.bag = bag;
        this.slots = bag.options().slots();
        this.lastColumn = lastColumn;
    }

    /** Writes from a row on and gives the first free row. */
    int write(int row) {
        int firstSlot = labels(row);
        int column = 1;
        for (OtherPlan plan : plans()) {
            plan(row, firstSlot, column++, plan);
        }
        heights(row, firstSlot);
        int next = firstSlot + differing().size();
        next = same(next);
        if (bag.others().isEmpty()) {
            pen.text(next++, 0, Role.FAINT, "No other plan is listed.");
        }
        return next;
    }

    /** The places of the slots that are not the same in all plans. */
    private List<Integer> differing() {
        return IntStream.range(0, slots.size())
                .filter(place -> !isSame(place))
                .boxed()
                .toList();
    }

    private boolean isSame(int place) {
        return plans().stream()
                        .map(plan -> plan.state().chosen().get(place))
                        .distinct()
                        .count()
                == 1;
    }

    /** Writes what all plans have in common on one line, and gives the row below. */
    private int same(int row) {
        List<Option> planned = bag.optionsOf(bag.planned());
        String text = IntStream.range(0, slots.size())
                .filter(this::isSame)
                .mapToObj(place -> slots.get(place).main().name() + ": "
                        + new SlotChoice(slots.get(place), planned.get(place)).inWords())
                .collect(Collectors.joining("; "));
        if (text.isEmpty()) {
            return row;
        }
        pen.text(row, 0, Role.TEXT, bag.others().isEmpty() ? "All slots" : "The same in all");
        for (int column = 1; column <= lastColumn; column++) {
            pen.blank(row, column, Role.CELL);
        }
        pen.text(row, 1, Role.CELL, text);
        pen.merge(row, row, 1, lastColumn);
        pen.height(row, TablePen.heightPoints(text, PLAN_CHARS * lastColumn));
        return row + 1;
    }

    /** The plan and then the other plans, in the order of the columns. */
    private List<OtherPlan> plans() {
        return Stream.concat(Stream.of(new OtherPlan("the plan", bag.planned())), bag.others().stream())
                .toList();
    }

    private String difference(OtherPlan plan) {
        return plan.difference() + TablePen.missed(bag.broken(plan.state(), settings));
    }

    /** Writes what each row is and gives the row of the first slot. */
    private int labels(int row) {
        List<String> figures = List.of(
                "What is different",
                "Penalty [points]",
                "Penalty against the plan [points]",
                "Changes [items]",
                "Musts missed by [tolerances]",
                table.inDistance("Gap unevenness"),
                "Worst miss [tolerances]");
        int next = row;
        for (String figure : figures) {
            pen.height(next, TablePen.heightPoints(figure, LABEL_CHARS));
            pen.text(next++, 0, Role.CELL, figure);
        }
        int firstSlot = next;
        for (int place : differing()) {
            pen.text(next++, 0, Role.CELL, label(slots.get(place)));
        }
        return firstSlot;
    }

    private static String label(SlotOptions slot) {
        return slot.slot() + "  " + slot.main().name();
    }

    private void plan(int row, int firstSlot, int column, OtherPlan plan) {
        pen.text(row, column, Role.CELL, difference(plan));
        figures(row + 1, column, plan.state());
        List<Option> chosen = bag.optionsOf(plan.state());
        List<Option> planned = bag.optionsOf(bag.planned());
        int next = firstSlot;
        for (int slot : differing()) {
            boolean differs = !chosen.get(slot).key().equals(planned.get(slot).key());
            String text = new SlotChoice(slots.get(slot), chosen.get(slot)).inWords();
            pen.text(next++, column, differs ? Role.MARKED : Role.CELL, differs ? DIFFERS + text : text);
        }
    }

    private void figures(int row, int column, BagState state) {
        double points = state.score().penaltyPoints();
        double morePoints = points - bag.planned().score().penaltyPoints();
        pen.number(row, column, Role.NUMBER, TablePen.POINTS, points);
        pen.number(row + 1, column, Role.NUMBER, TablePen.SIGNED_POINTS, morePoints);
        pen.number(row + 2, column, Role.NUMBER, "0", bag.changesOf(state));
        table.breaks(row + 3, column, Role.NUMBER, state.score().hardBreaks());
        table.distance(row + 4, column, Role.NUMBER, state.unevennessM());
        WorstMiss worst = new WorstMiss(bag, state);
        table.number(row + 5, column, Role.NUMBER, "0.0", worst.toleranceRatio());
    }

    private void heights(int row, int firstSlot) {
        pen.height(row, heightPoints(plans().stream().map(this::difference), PLAN_CHARS));
        int next = firstSlot;
        for (int place : differing()) {
            SlotOptions slot = slots.get(place);
            Stream<String> choices = plans().stream()
                    .map(plan -> plan.state().chosen().get(place))
                    .map(option -> (option.equals(bag.planned().chosen().get(place)) ? "" : WIDER)
                            + new SlotChoice(slot, slot.options().get(option)).inWords());
            double labelPoints = TablePen.heightPoints(label(slot), LABEL_CHARS);
            pen.height(next++, Math.max(labelPoints, heightPoints(choices, PLAN_CHARS)));
        }
    }

    /** How high a row must be for all these texts in columns of one width, points; one line at least. */
    private static double heightPoints(Stream<String> texts, double widthChars) {
        return texts.mapToDouble(text -> TablePen.heightPoints(text, widthChars))
                .reduce(TablePen.heightPoints("", widthChars), Math::max);
    }
}
