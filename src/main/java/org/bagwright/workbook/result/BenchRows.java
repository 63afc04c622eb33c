package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.pen.SheetPen;

/** The rows of one slot on a bench card: what to do, and what to read afterwards. */
final class BenchRows {
    private static final double LEAST_ROW_POINTS = 20;
    private static final String PLUS_MINUS = " \u00b1 ";

    private final SheetPen pen;
    private final Book book;
    private final OptionChange change;

    BenchRows(SheetPen pen, Book book, OptionChange change) {
        this.pen = pen;
        this.book = book;
        this.change = change;
    }

    /** Writes one row for each thing to do, with what to read afterwards in the first; gives the first free row. */
    int write(int row) {
        List<BenchWork.Item> items = BenchWork.of(book, change);
        for (int index = 0; index < items.size(); index++) {
            item(row + index, items.get(index));
            pen.height(row + index, heightPoints(items.get(index), index == 0));
        }
        text(row, BenchColumn.CLUB, Role.MARKED, club());
        if (!change.to().isEmpty()) {
            readings(row);
        }
        return row + items.size();
    }

    private void item(int row, BenchWork.Item item) {
        for (int column = BenchColumn.CLUB.ordinal(); column <= BenchColumn.LAST; column++) {
            pen.blank(row, column, Role.CELL);
        }
        pen.blank(row, BenchColumn.BOX.ordinal(), Role.BOX);
        text(row, BenchColumn.WHAT, Role.CELL, item.what());
        text(row, BenchColumn.FROM, Role.CELL, item.from());
        text(row, BenchColumn.TO, Role.MARKED, item.to());
        text(row, BenchColumn.HOW, Role.CELL, item.how());
    }

    private String club() {
        return (change.to().isEmpty() ? change.from() : change.to()).clubText();
    }

    private double heightPoints(BenchWork.Item item, boolean first) {
        double points = TablePen.heightPoints(item.how(), BenchColumn.HOW.widthChars());
        points = Math.max(points, TablePen.heightPoints(item.from(), BenchColumn.FROM.widthChars()));
        points = Math.max(points, TablePen.heightPoints(item.to(), BenchColumn.TO.widthChars() - 1));
        if (first) {
            points = Math.max(points, TablePen.heightPoints(club(), BenchColumn.CLUB.widthChars() - 1));
        }
        return Math.max(LEAST_ROW_POINTS, points);
    }

    private void readings(int row) {
        PoseNumbers pose = change.to().pose();
        text(row, BenchColumn.LOFT, Role.CELL, reading(pose.gaugeLoftDeg(), Measure.LOFT));
        text(row, BenchColumn.LIE, Role.CELL, reading(pose.gaugeLieDeg(), Measure.LIE));
        text(row, BenchColumn.SITS, Role.CELL, sits(pose.sitsClosedDeg()));
        text(row, BenchColumn.SWINGWEIGHT, Role.CELL, swingweight());
    }

    private String reading(double valueDeg, Measure measure) {
        double tolerance = book.aims().of(measure).toleranceMeasureUnits();
        return Numbers.fixed(valueDeg, 1) + PLUS_MINUS + Numbers.trimmed(tolerance, 2);
    }

    /** How a head sits, such as {@code 1.2 closed}, {@code 0.4 open} or {@code square}. */
    private static String sits(double closedDeg) {
        String size = Numbers.fixed(Math.abs(closedDeg), 1);
        if (size.equals("0.0")) {
            return "square";
        }
        return size + (closedDeg > 0 ? " closed" : " open");
    }

    private String swingweight() {
        String after = change.to().build().swingweight().text();
        if (change.from().isEmpty()) {
            return after;
        }
        String before = change.from().build().swingweight().text();
        return before.equals(after) ? after + ", stays" : TablePen.arrows(before + " -> " + after);
    }

    private void text(int row, BenchColumn column, Role role, String text) {
        pen.text(row, column.ordinal(), role, text);
    }
}
