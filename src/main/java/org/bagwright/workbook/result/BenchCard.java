package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.pen.SheetBlock;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.ResultSheet;

/** The bench card of one golfer. */
final class BenchCard {
    static final int BOX = 0;
    static final int CLUB = 1;
    static final int WHAT = 2;
    static final int FROM = 3;
    static final int TO = 4;
    static final int HOW = 5;
    static final int LOFT = 6;
    static final int LIE = 7;
    static final int SITS = 8;
    static final int SWINGWEIGHT = 9;
    static final List<Double> WIDTHS_CHARS = List.of(5.0, 15.0, 10.0, 11.0, 11.0, 32.0, 10.5, 10.5, 10.5, 13.0);

    private static final double LEAST_ROW_POINTS = 20;
    private static final double MERGED_CHARS =
            WIDTHS_CHARS.stream().mapToDouble(Double::doubleValue).sum();
    private static final String PLUS_MINUS = " \u00b1 ";

    private final SheetPen pen;
    private final SheetBlock block;
    private final Book book;
    private final BagResult bag;

    BenchCard(SheetPen pen, BookResult result, BagResult bag) {
        this.pen = pen;
        this.book = result.book();
        this.block = new SheetBlock(pen, book.settings().units());
        this.bag = bag;
    }

    /** Writes the card from a row on and gives the first row after it. */
    int write(int row) {
        head(row);
        int next = row + 4;
        headings(next++);
        List<String> staying = new ArrayList<>();
        int first = next;
        List<Option> today = bag.optionsOf(bag.today());
        List<Option> planned = bag.optionsOf(bag.planned());
        for (int slot = 0; slot < today.size(); slot++) {
            OptionChange change = new OptionChange(today.get(slot), planned.get(slot));
            if (change.isNone()) {
                if (!change.to().isEmpty()) {
                    staying.add(change.to().clubText());
                }
            } else {
                next = club(next, change);
            }
        }
        if (next == first) {
            pen.text(next++, CLUB, Role.PLAIN, "Nothing to change: today's bag is the plan.");
        }
        return cautions(staying(next + 1, staying) + 1);
    }

    private void head(int row) {
        String hand = bag.golfer().hand() == Hand.LEFT ? " (left-handed)" : "";
        pen.text(row, 0, Role.TITLE, "Bench card: " + bag.golfer().name() + hand);
        pen.height(row, 24);
        pen.text(row + 1, 0, Role.PLAIN, book.settings().title().orElse(""));
        blank(row + 1, LOFT, "Date", LIE);
        blank(row + 2, LOFT, "Done by", LIE);
        pen.text(row + 2, 0, Role.FAINT, ResultSheet.REBUILT);
        pen.height(row + 1, 22);
        pen.height(row + 2, 22);
        pen.height(row + 3, 8);
    }

    /** A label and a line to write on by hand. */
    private void blank(int row, int labelColumn, String label, int firstColumn) {
        pen.text(row, labelColumn, Role.PLAIN, label);
        for (int column = firstColumn; column <= SWINGWEIGHT; column++) {
            pen.blank(row, column, Role.TEXT);
        }
    }

    private void headings(int row) {
        block.headings(
                row,
                0,
                List.of(
                        "Done",
                        "Club",
                        "What",
                        "From",
                        "To",
                        "How",
                        "Gauge loft then [deg]",
                        "Gauge lie then [deg]",
                        "Sits then [deg]",
                        SheetBlock.arrows("Swingweight before -> after")),
                30);
    }

    /** One row for each thing to do; what to read afterwards stands in the first. */
    private int club(int row, OptionChange change) {
        List<BenchWork.Item> items = BenchWork.of(book, change);
        int next = row;
        for (BenchWork.Item item : items) {
            for (int column = CLUB; column <= SWINGWEIGHT; column++) {
                pen.blank(next, column, Role.CELL);
            }
            pen.blank(next, BOX, Role.BOX);
            pen.text(next, WHAT, Role.CELL, item.what());
            pen.text(next, FROM, Role.CELL, item.from());
            pen.text(next, TO, Role.MARKED, item.to());
            pen.text(next, HOW, Role.CELL, item.how());
            pen.height(next++, height(item, next == row + 1 ? change : null));
        }
        String club = (change.to().isEmpty() ? change.from() : change.to()).clubText();
        pen.text(row, CLUB, Role.MARKED, club);
        if (!change.to().isEmpty()) {
            after(row, change);
        }
        return next;
    }

    private static double height(BenchWork.Item item, OptionChange first) {
        double points = SheetBlock.heightPoints(item.how(), WIDTHS_CHARS.get(HOW));
        points = Math.max(points, SheetBlock.heightPoints(item.from(), WIDTHS_CHARS.get(FROM)));
        points = Math.max(points, SheetBlock.heightPoints(item.to(), WIDTHS_CHARS.get(TO) - 1));
        if (first != null) {
            String club = (first.to().isEmpty() ? first.from() : first.to()).clubText();
            points = Math.max(points, SheetBlock.heightPoints(club, WIDTHS_CHARS.get(CLUB) - 1));
        }
        return Math.max(LEAST_ROW_POINTS, points);
    }

    private void after(int row, OptionChange change) {
        PoseNumbers pose = change.to().pose();
        pen.text(row, LOFT, Role.CELL, reading(pose.gaugeLoftDeg(), Measure.LOFT));
        pen.text(row, LIE, Role.CELL, reading(pose.gaugeLieDeg(), Measure.LIE));
        pen.text(row, SITS, Role.CELL, sits(pose.sitsClosedDeg()));
        pen.text(row, SWINGWEIGHT, Role.CELL, swingweight(change));
    }

    private String reading(double valueDeg, Measure measure) {
        double tolerance = book.aims().of(measure).toleranceMeasureUnits();
        return Numbers.fixed(valueDeg, 1) + PLUS_MINUS + Numbers.trimmed(tolerance, 2);
    }

    /** How a head sits, such as {@code 1.2 closed}, {@code 0.4 open} or {@code square}. */
    static String sits(double closedDeg) {
        String size = Numbers.fixed(Math.abs(closedDeg), 1);
        if (size.equals("0.0")) {
            return "square";
        }
        return size + (closedDeg > 0 ? " closed" : " open");
    }

    private static String swingweight(OptionChange change) {
        String after = change.to().build().swingweight().text();
        if (change.from().isEmpty()) {
            return after;
        }
        String before = change.from().build().swingweight().text();
        return before.equals(after) ? after + ", stays" : SheetBlock.arrows(before + " -> " + after);
    }

    private int staying(int row, List<String> clubs) {
        if (clubs.isEmpty()) {
            return row;
        }
        String text = "No change: " + String.join(", ", clubs) + ".";
        wrapped(row, text);
        return row + 1;
    }

    private int cautions(int row) {
        block.band(row, SWINGWEIGHT, "Cautions");
        int next = row + 1;
        for (String caution : BenchCautions.LINES) {
            wrapped(next++, caution);
        }
        return next;
    }

    private void wrapped(int row, String text) {
        pen.text(row, 0, Role.WRAPPED, text);
        pen.merge(row, row, 0, SWINGWEIGHT);
        pen.height(row, SheetBlock.heightPoints(text, MERGED_CHARS));
    }
}
