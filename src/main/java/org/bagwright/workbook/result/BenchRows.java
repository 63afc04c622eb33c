package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;

/** The rows of one slot on a bench card: what to do, and its figures now and then. */
final class BenchRows {
    private static final double LEAST_ROW_POINTS = 14;
    private static final double LINE_POINTS = 13;
    private static final double LETTERS_PER_CHAR = 1.1;

    private final SheetPen pen;
    private final TablePen table;
    private final Book book;
    private final BagResult bag;
    private final int index;
    private final OptionChange change;

    BenchRows(SheetPen pen, Book book, BagResult bag, int index) {
        this.pen = pen;
        this.table = new TablePen(pen, book.settings().units());
        this.book = book;
        this.bag = bag;
        this.index = index;
        this.change = new OptionChange(
                bag.optionsOf(bag.today()).get(index),
                bag.optionsOf(bag.planned()).get(index));
    }

    /** Whether there is a club to write about, today or as planned. */
    boolean hasClub() {
        return !change.from().isEmpty() || !change.to().isEmpty();
    }

    /**
     * Writes one row of figures for a club that stays or goes, two for one that is changed, and one below for what is long to
     * say; gives the first free row.
     */
    int write(int row) {
        BenchWork work = new BenchWork(book, bag, index, change);
        boolean changed = !change.isNone() && !change.to().isEmpty();
        int last = changed ? row + 1 : row;
        int end = work.notes().isEmpty() ? last : last + 1;
        heights(row, last, work.shortText());
        text(row, last, end, work);
        if (changed) {
            figures(row, "now", Role.BEFORE, asItComes(), change.putsClubIn() ? Optional.empty() : gap(bag.today()));
            figures(last, "then", Role.AFTER, Optional.of(change.to()), gap(bag.planned()));
        } else if (change.isNone()) {
            figures(row, "stays", Role.STAYS, Optional.of(change.to()), gap(bag.planned()));
        } else {
            figures(row, "now", Role.STAYS, Optional.of(change.from()), gap(bag.today()));
        }
        return end + 1;
    }

    private void text(int row, int last, int end, BenchWork work) {
        Role box = change.isNone() ? Role.CELL : Role.BOX;
        block(row, end, BenchColumn.BOX, BenchColumn.BOX, box, "");
        block(row, end, BenchColumn.CLUB, BenchColumn.CLUB, Role.CELL, club());
        block(row, last, BenchColumn.WORK, BenchColumn.WORK, Role.CELL, work.shortText());
        if (end > last) {
            block(end, end, BenchColumn.WORK, BenchColumn.GAP, Role.CELL, work.notes());
            pen.height(end, heightPoints(work.notes(), BenchColumn.charsFrom(BenchColumn.WORK)));
        }
    }

    /** Cells that are merged into one with a text. */
    private void block(int firstRow, int lastRow, BenchColumn first, BenchColumn last, Role role, String text) {
        for (int row = firstRow; row <= lastRow; row++) {
            for (int column = first.ordinal(); column <= last.ordinal(); column++) {
                pen.blank(row, column, role);
            }
        }
        if (!text.isEmpty()) {
            pen.text(firstRow, first.ordinal(), role, text);
        }
        pen.merge(firstRow, lastRow, first.ordinal(), last.ordinal());
    }

    private void heights(int row, int last, String work) {
        double points = Math.max(
                heightPoints(work, BenchColumn.WORK.widthChars()), heightPoints(club(), BenchColumn.CLUB.widthChars()));
        for (int line = row; line <= last; line++) {
            pen.height(line, Math.max(LEAST_ROW_POINTS, points / (last - row + 1)));
        }
    }

    /** How high a wrapped text is; a bench has other fonts than a desk, so that lines are taken for shorter than most. */
    private static double heightPoints(String text, double widthChars) {
        double lines = text.lines()
                .mapToDouble(line -> Math.max(1, Math.ceil(line.length() / (LETTERS_PER_CHAR * (widthChars - 1)))))
                .sum();
        return 1 + LINE_POINTS * Math.max(1, lines);
    }

    private String club() {
        return (change.to().isEmpty() ? change.from() : change.to()).clubText();
    }

    /** The club that fills the slot in the end as it is before the work, if the book has that as an option. */
    private Optional<Option> asItComes() {
        if (!change.putsClubIn()) {
            return Optional.of(change.from());
        }
        return bag.options().slots().get(index).optionsOf(change.to().club()).stream()
                .filter(option -> option.choice().equals(change.to().club().tidiedToday()))
                .findFirst();
    }

    private Optional<GapTerm> gap(BagState state) {
        return state.gapAfter(index);
    }

    private void figures(int row, String when, Role role, Optional<Option> option, Optional<GapTerm> gap) {
        for (int column = BenchColumn.STATE.ordinal(); column <= BenchColumn.LAST; column++) {
            pen.blank(row, column, role);
        }
        pen.text(row, BenchColumn.STATE.ordinal(), role, when);
        option.ifPresent(found -> figures(row, role, found));
        gap.ifPresent(term -> table.distance(row, BenchColumn.GAP.ordinal(), role, OptionalDouble.of(term.gapM())));
    }

    private void figures(int row, Role role, Option option) {
        pen.number(row, BenchColumn.LOFT.ordinal(), role, "0.0", option.pose().gaugeLoftDeg());
        pen.number(row, BenchColumn.LIE.ordinal(), role, "0.0", option.pose().gaugeLieDeg());
        pen.text(row, BenchColumn.SITS.ordinal(), role, option.pose().sitsText());
        pen.text(
                row,
                BenchColumn.SWINGWEIGHT.ordinal(),
                role,
                option.build().swingweight().text());
        table.distance(row, BenchColumn.CARRY.ordinal(), role, option.carryM());
    }
}
