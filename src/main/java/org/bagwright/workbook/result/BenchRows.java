package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.workbook.pen.SheetPen;

/** The rows of one slot on a bench card: what to do, and its figures now and then. */
final class BenchRows {
    private static final double LEAST_ROW_POINTS = 15;

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

    /** Writes one row for a club that stays or goes, two for one that is changed; gives the first free row. */
    int write(int row) {
        List<String> work = BenchWork.of(book, bag, index, change);
        boolean changed = !change.isNone() && !change.to().isEmpty();
        int last = changed ? row + 1 : row;
        text(row, last, work);
        if (changed) {
            figures(row, "now", Role.BEFORE, asItComes(), change.putsClubIn() ? Optional.empty() : gap(bag.today()));
            figures(last, "then", Role.AFTER, Optional.of(change.to()), gap(bag.planned()));
        } else if (change.isNone()) {
            figures(row, "stays", Role.STAYS, Optional.of(change.to()), gap(bag.planned()));
        } else {
            figures(row, "now", Role.STAYS, Optional.of(change.from()), gap(bag.today()));
        }
        return last + 1;
    }

    private void text(int row, int last, List<String> work) {
        String all = String.join("\n", work);
        for (int line = row; line <= last; line++) {
            for (BenchColumn column : List.of(BenchColumn.BOX, BenchColumn.CLUB, BenchColumn.WORK)) {
                boolean box = column == BenchColumn.BOX && !change.isNone();
                pen.blank(line, column.ordinal(), box ? Role.BOX : Role.CELL);
            }
        }
        pen.text(row, BenchColumn.CLUB.ordinal(), Role.CELL, club());
        pen.text(row, BenchColumn.WORK.ordinal(), Role.CELL, all);
        for (BenchColumn column : List.of(BenchColumn.BOX, BenchColumn.CLUB, BenchColumn.WORK)) {
            pen.merge(row, last, column.ordinal(), column.ordinal());
        }
        double points = Math.max(
                TablePen.heightPoints(all, BenchColumn.WORK.widthChars()),
                TablePen.heightPoints(club(), BenchColumn.CLUB.widthChars()));
        for (int line = row; line <= last; line++) {
            pen.height(line, Math.max(LEAST_ROW_POINTS, points / (last - row + 1)));
        }
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
        gap.ifPresent(term ->
                table.distance(row, BenchColumn.GAP.ordinal(), role, OptionalDouble.of(term.gapM())));
    }

    private void figures(int row, Role role, Option option) {
        pen.number(row, BenchColumn.LOFT.ordinal(), role, "0.0", option.pose().gaugeLoftDeg());
        pen.number(row, BenchColumn.LIE.ordinal(), role, "0.0", option.pose().gaugeLieDeg());
        pen.text(row, BenchColumn.SITS.ordinal(), role, option.pose().sitsText());
        pen.text(
                row, BenchColumn.SWINGWEIGHT.ordinal(), role, option.build().swingweight().text());
        table.distance(row, BenchColumn.CARRY.ordinal(), role, option.carryM());
    }
}
