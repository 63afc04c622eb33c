package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagFigures;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.OtherPlan;
import org.bagwright.domain.plan.Relaxation;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SheetBlock;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.ResultSheets;

/** The sheet Others: other good plans beside the plan, and what holds the plan back, golfer by golfer. */
final class OthersSheet {
    static final String NAME = "Others";
    static final int HEADING_ROW = 3;
    /** The sign before everything in which another plan differs from the plan. */
    static final String DIFFERS = "* ";

    private static final int LEAST_COLUMNS = 4;
    private static final double LABEL_CHARS = 34;
    private static final double PLAN_CHARS = 27;

    private final SheetPen pen;
    private final SheetBlock block;
    private final BookResult result;
    private final int lastColumn;

    private OthersSheet(SheetPen pen, BookResult result) {
        this.pen = pen;
        this.result = result;
        this.block = new SheetBlock(pen, result.book().settings().units());
        int most = result.bags().stream()
                .mapToInt(bag -> bag.others().size() + 1)
                .max()
                .orElse(1);
        this.lastColumn = Math.max(LEAST_COLUMNS - 1, most);
    }

    static void write(XSSFWorkbook workbook, BookStyles styles, BookResult result) {
        SheetPen pen = new SheetPen(workbook.getSheet(NAME), styles);
        OthersSheet others = new OthersSheet(pen, result);
        pen.text(0, 0, Role.TITLE, "Other plans");
        pen.text(
                1,
                0,
                Role.FAINT,
                "Nearly as good, but different. A star marks what is not as in the plan. " + ResultSheets.MADE_ANEW);
        others.headings();
        int row = HEADING_ROW + 1;
        for (BagResult bag : result.bags()) {
            row = others.golfer(bag, row) + 1;
            pen.sheet().setRowBreak(row - 1);
        }
        pen.sheet().createFreezePane(1, HEADING_ROW + 1);
        pen.print(PageSetup.landscape(HEADING_ROW, row - 2, others.lastColumn));
    }

    private void headings() {
        List<String> headings = new ArrayList<>(List.of("", "The plan"));
        pen.width(0, LABEL_CHARS);
        pen.width(1, PLAN_CHARS);
        for (int column = 2; column <= lastColumn; column++) {
            headings.add("Other " + (column - 1));
            pen.width(column, PLAN_CHARS);
        }
        block.headings(HEADING_ROW, 0, headings, 18);
    }

    /** Writes one golfer from a row on and gives the first free row. */
    private int golfer(BagResult bag, int row) {
        block.band(row, lastColumn, bag.golfer().name());
        List<String> labels = List.of(
                "What is different",
                "Penalty [points]",
                "Penalty against the plan [points]",
                "Changes [items]",
                "Musts missed by [tolerances]",
                block.inDistance("Gap unevenness"),
                "Worst miss [tolerances]");
        int first = row + 1;
        for (int line = 0; line < labels.size(); line++) {
            pen.text(first + line, 0, Role.TEXT, labels.get(line));
        }
        int slots = first + labels.size();
        for (int slot = 0; slot < bag.options().slots().size(); slot++) {
            pen.text(slots + slot, 0, Role.TEXT, label(bag.options().slots().get(slot)));
        }
        plan(bag, first, slots, 1, "the plan", bag.planned());
        double height = 0;
        for (int other = 0; other < bag.others().size(); other++) {
            OtherPlan plan = bag.others().get(other);
            plan(bag, first, slots, other + 2, plan.difference(), plan.state());
            height = Math.max(height, SheetBlock.heightPoints(plan.difference(), PLAN_CHARS));
        }
        pen.height(first, Math.max(height, SheetBlock.heightPoints("", PLAN_CHARS)));
        heights(bag, slots);
        int next = slots + bag.options().slots().size();
        if (bag.others().isEmpty()) {
            pen.text(next++, 0, Role.FAINT, "No other plan is listed.");
        }
        return relaxations(bag, next + 1);
    }

    private static String label(SlotOptions slot) {
        return slot.slot() + "  " + slot.main().name();
    }

    private void plan(BagResult bag, int first, int slots, int column, String difference, BagState state) {
        double points = state.score().penaltyPoints();
        pen.text(first, column, Role.CELL, difference);
        pen.number(first + 1, column, Role.NUMBER, SheetBlock.POINTS, points);
        pen.number(
                first + 2,
                column,
                Role.NUMBER,
                SheetBlock.SIGNED_POINTS,
                points - bag.planned().score().penaltyPoints());
        pen.number(first + 3, column, Role.NUMBER, "0", bag.changesOf(state));
        block.breaks(first + 4, column, Role.NUMBER, state.score().hardBreaks());
        block.distance(first + 5, column, Role.NUMBER, BagFigures.unevennessM(state));
        block.number(first + 6, column, Role.NUMBER, "0.0", worst(bag, state));
        List<Option> chosen = bag.optionsOf(state);
        List<Option> planned = bag.optionsOf(bag.planned());
        for (int slot = 0; slot < chosen.size(); slot++) {
            boolean differs = !chosen.get(slot).key().equals(planned.get(slot).key());
            String text = ChoiceWords.of(bag.options().slots().get(slot), chosen.get(slot));
            pen.text(slots + slot, column, differs ? Role.MARKED : Role.CELL, differs ? DIFFERS + text : text);
        }
    }

    private OptionalDouble worst(BagResult bag, BagState state) {
        return BagFigures.worstMiss(bag, state, result.book().aims()).stream()
                .mapToDouble(BagFigures.Miss::toleranceRatio)
                .findFirst();
    }

    private void heights(BagResult bag, int slots) {
        List<BagState> states = new ArrayList<>(List.of(bag.planned()));
        bag.others().forEach(other -> states.add(other.state()));
        for (int slot = 0; slot < bag.options().slots().size(); slot++) {
            SlotOptions options = bag.options().slots().get(slot);
            double height = SheetBlock.heightPoints(label(options), LABEL_CHARS);
            for (BagState state : states) {
                String text = DIFFERS
                        + ChoiceWords.of(
                                options, options.options().get(state.chosen().get(slot)));
                height = Math.max(height, SheetBlock.heightPoints(text, PLAN_CHARS - 1));
            }
            pen.height(slots + slot, height);
        }
    }

    /** What holds the plan back, from a row on; gives the first free row. */
    private int relaxations(BagResult bag, int row) {
        pen.text(row, 0, Role.GROUP, "What holds the plan back");
        for (int column = 1; column < LEAST_COLUMNS; column++) {
            pen.blank(row, column, Role.GROUP);
        }
        if (bag.relaxations().isEmpty()) {
            pen.text(row + 1, 0, Role.PLAIN, "Nothing: no pin, limit, must or scarce piece costs it anything.");
            return row + 2;
        }
        block.headings(
                row + 1,
                0,
                List.of("Without this", "Where", "Penalty lower by [points]", "Musts missed less by [tolerances]"),
                30);
        int next = row + 2;
        for (Relaxation relaxation : biggestFirst(bag.relaxations())) {
            pen.text(next, 0, Role.CELL, relaxation.what());
            pen.text(next, 1, Role.CELL, relaxation.cell());
            pen.number(next, 2, Role.NUMBER, SheetBlock.POINTS, relaxation.gainPoints());
            block.breaks(next, 3, Role.NUMBER, relaxation.fewerBreaks());
            pen.height(next++, SheetBlock.heightPoints(relaxation.what(), LABEL_CHARS));
        }
        return next;
    }

    /** Broken musts weigh more than any penalty. */
    private static List<Relaxation> biggestFirst(List<Relaxation> relaxations) {
        return relaxations.stream()
                .sorted(Comparator.comparingLong(Relaxation::fewerBreaks)
                        .thenComparingDouble(Relaxation::gainPoints)
                        .reversed())
                .toList();
    }
}
