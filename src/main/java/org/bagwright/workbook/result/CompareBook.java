package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagFigures;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.ComparedBook;
import org.bagwright.domain.plan.Comparison;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SheetBlock;
import org.bagwright.workbook.pen.SheetPen;

/** A book of its own with the sheet Compare: each golfer in several books, figures first, then what differs. */
public final class CompareBook {
    static final String NAME = "Compare";
    static final int HEADING_ROW = 3;

    private static final int FIRST_MEASURE = 9;
    private static final int LAST = FIRST_MEASURE + Measure.values().length;
    private static final double CHOICE_CHARS = 18;

    private final SheetPen pen;
    private final SheetBlock block;
    private final Comparison comparison;

    private CompareBook(SheetPen pen, Comparison comparison) {
        this.pen = pen;
        this.comparison = comparison;
        this.block = new SheetBlock(
                pen, comparison.books().get(0).result().book().settings().units());
    }

    /**
     * Writes the book.
     *
     * @throws IOException if the target cannot be written
     */
    public static void write(Comparison comparison, OutputStream target) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            SheetPen pen = new SheetPen(workbook.createSheet(NAME), new BookStyles(workbook));
            new CompareBook(pen, comparison).sheet();
            pen.protect();
            workbook.write(target);
        }
    }

    private void sheet() {
        pen.text(0, 0, Role.TITLE, NAME);
        pen.text(
                1,
                0,
                Role.FAINT,
                "Each book planned anew from its own sheets. Distances in " + block.inDistance("the unit of the first")
                        + ". Gap unevenness: root mean square of gap less wish.");
        headings();
        int row = HEADING_ROW + 1;
        for (String golfer : comparison.golfers()) {
            row = golfer(golfer, row) + 1;
        }
        pen.sheet().createFreezePane(1, HEADING_ROW + 1);
        pen.print(PageSetup.landscape(HEADING_ROW, row, LAST));
    }

    private void headings() {
        List<String> headings = new ArrayList<>(List.of(
                "Golfer and book",
                "State",
                block.inDistance("Gap unevenness"),
                "Worst miss [tolerances]",
                "Worst miss of",
                "Penalty [points]",
                "Musts missed by [tolerances]",
                "Changes [items]",
                "Proven best"));
        for (Measure measure : Measure.values()) {
            headings.add(capital(measure.label()) + " [points]");
        }
        headings.add("Above the best possible, at most [points]");
        block.headings(HEADING_ROW, 0, headings, 56);
        block.widths(26, 10, 12, 12, 22, 11, 12, 10, 10, 10, 10, 10, 10, 10, 13, 10, 10, 13);
    }

    private static String capital(String label) {
        return Character.toUpperCase(label.charAt(0)) + label.substring(1);
    }

    /** Writes one golfer from a row on and gives the row after it. */
    private int golfer(String golfer, int first) {
        block.band(first, LAST, golfer);
        int row = first + 1;
        for (ComparedBook book : comparison.books()) {
            Optional<BagResult> bag = book.bagOf(golfer);
            if (bag.isEmpty()) {
                pen.text(row, 0, Role.TEXT, book.name());
                pen.text(row++, 1, Role.PLAIN, "has no bag of this golfer");
            } else {
                state(row++, book, bag.get(), "today", bag.get().today());
                state(row++, book, bag.get(), "planned", bag.get().planned());
            }
        }
        return differences(golfer, row);
    }

    private void state(int row, ComparedBook book, BagResult bag, String label, BagState state) {
        Aims aims = book.result().book().aims();
        Optional<BagFigures.Miss> worst = BagFigures.worstMiss(bag, state, aims);
        pen.text(row, 0, Role.TEXT, book.name());
        pen.text(row, 1, Role.COUNT, label);
        block.distance(row, 2, Role.NUMBER, BagFigures.unevennessM(state));
        block.number(
                row,
                3,
                Role.NUMBER,
                "0.0",
                worst.stream().mapToDouble(BagFigures.Miss::toleranceRatio).findFirst());
        pen.text(row, 4, Role.TEXT, worst.map(miss -> where(bag, state, miss)).orElse(""));
        pen.number(row, 5, Role.NUMBER, SheetBlock.POINTS, state.score().penaltyPoints());
        block.breaks(row, 6, Role.NUMBER, state.score().hardBreaks());
        pen.number(row, 7, Role.COUNT, "0", bag.changesOf(state));
        measures(row, BagFigures.pointsByMeasure(bag, state));
        proof(row, book, label);
    }

    private static String where(BagResult bag, BagState state, BagFigures.Miss miss) {
        Option option = bag.optionsOf(state).get(miss.index());
        return miss.measure() == Measure.GAP
                ? "gap after " + option.clubText()
                : miss.measure().label() + " of " + option.clubText();
    }

    private void measures(int row, Map<Measure, Double> points) {
        points.forEach((measure, share) ->
                pen.number(row, FIRST_MEASURE + measure.ordinal(), Role.NUMBER, SheetBlock.POINTS, share));
    }

    private void proof(int row, ComparedBook book, String label) {
        boolean planned = label.equals("planned");
        boolean proven = book.result().proven();
        pen.text(row, 8, Role.COUNT, planned ? (proven ? "yes" : "no") : "");
        OptionalDouble above = planned && !proven
                ? OptionalDouble.of(
                        book.result().plannedPoints() - book.result().boundPoints())
                : OptionalDouble.empty();
        block.number(row, LAST, Role.NUMBER, SheetBlock.POINTS, above);
    }

    /** What differs between the books, a row a slot and a block of columns a book. */
    private int differences(String golfer, int first) {
        List<Comparison.Difference> differences = comparison.differences(golfer);
        if (differences.isEmpty()) {
            pen.text(first, 0, Role.FAINT, "The same clubs in the same set-up, today and as planned.");
            return first + 1;
        }
        int row = first;
        difference(
                row++,
                Role.GROUP,
                "What differs",
                "",
                comparison.books().stream().map(ComparedBook::name).toList());
        for (Comparison.Difference difference : differences) {
            difference(row++, Role.CELL, "Slot " + difference.slot(), difference.state(), difference.choices());
        }
        return row;
    }

    private void difference(int row, Role role, String what, String state, List<String> choices) {
        pen.text(row, 0, role == Role.CELL ? Role.TEXT : role, what);
        pen.text(row, 1, role == Role.CELL ? Role.COUNT : role, state);
        double heightPoints = 0;
        for (int book = 0; book < choices.size(); book++) {
            int column = 2 + 2 * book;
            pen.text(row, column, role, choices.get(book));
            pen.blank(row, column + 1, role);
            pen.merge(row, row, column, column + 1);
            heightPoints = Math.max(heightPoints, SheetBlock.heightPoints(choices.get(book), CHOICE_CHARS));
        }
        pen.height(row, heightPoints);
    }
}
