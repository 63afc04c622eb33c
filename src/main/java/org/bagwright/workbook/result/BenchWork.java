package org.bagwright.workbook.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.SleeveTurn;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BalanceWish;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.text.Numbers;

/** What a fitter does at the bench to bring one slot from today to the plan. */
final class BenchWork {
    private final Book book;
    private final boolean leftHanded;
    private final OptionChange change;
    private final List<String> lines = new ArrayList<>();

    private BenchWork(Book book, BagResult bag, OptionChange change) {
        this.book = book;
        this.leftHanded = bag.golfer().hand() == Hand.LEFT;
        this.change = change;
    }

    /** Everything to do, a line each, in the order of doing it. */
    static List<String> of(Book book, BagResult bag, int index, OptionChange change) {
        BenchWork work = new BenchWork(book, bag, change);
        if (change.isNone()) {
            work.lines.add("Leave as it is");
        } else if (change.to().isEmpty()) {
            work.lines.add("Take out of the bag");
        } else {
            work.club();
            work.sleeve();
            work.weights();
            work.bends();
        }
        BalanceWish.of(bag, index, book.settings().matching()).ifPresent(work::balance);
        return work.lines;
    }

    private void club() {
        if (change.putsClubIn()) {
            String inPlace =
                    change.from().isEmpty() ? "" : ", in place of " + change.from().clubText();
            lines.add("Put into the bag" + inPlace);
        }
    }

    private void sleeve() {
        String before = change.choiceBefore().settingText();
        String after = change.to().choice().settingText();
        if (!before.equalsIgnoreCase(after)) {
            String turn = book.sleeveOf(change.to().club())
                    .map(sleeve -> SleeveTurn.inWords(sleeve, leftHanded, before, after))
                    .orElse("");
            lines.add(TablePen.arrows("Sleeve " + before + " -> " + after) + (turn.isEmpty() ? "" : ": " + turn));
        }
    }

    private void weights() {
        String before = change.choiceBefore().weightingText();
        String after = change.to().choice().weightingText();
        if (!before.equalsIgnoreCase(after)) {
            Club club = change.to().club();
            String moves = String.join("; ", new PieceMoves(weighting(club, before), weighting(club, after)).byPort());
            lines.add(TablePen.arrows("Weights " + before + " -> " + after) + (moves.isEmpty() ? "" : ": " + moves));
        }
    }

    private Optional<Weighting> weighting(Club club, String name) {
        return book.kitOf(club).flatMap(kit -> kit.weighting(name));
    }

    private void bends() {
        Choice before = change.choiceBefore();
        Choice after = change.to().choice();
        double loftDeg = after.bend().loftDeg() - before.bend().loftDeg();
        if (differs(loftDeg)) {
            bend(loftDeg > 0 ? "weaker" : "stronger", before.bend().loftDeg(), after.bend().loftDeg());
        }
        double lieDeg = after.bend().lieDeg() - before.bend().lieDeg();
        if (differs(lieDeg)) {
            bend(lieDeg > 0 ? "more upright" : "flatter", before.bend().lieDeg(), after.bend().lieDeg());
        }
    }

    /** The bend to make; in brackets the whole bend of the hosel, where it is bent today. */
    private void bend(String way, double beforeDeg, double afterDeg) {
        String all = differs(beforeDeg)
                ? TablePen.arrows(
                        " (" + OptionChange.bendText(beforeDeg) + " -> " + OptionChange.bendText(afterDeg) + " in all)")
                : "";
        lines.add("Bend " + Numbers.trimmed(Math.abs(afterDeg - beforeDeg)) + " deg " + way + all);
    }

    private static boolean differs(double bendDeg) {
        return !OptionChange.bendText(bendDeg).equals("0");
    }

    private void balance(BalanceWish wish) {
        String shaft = wish.advice()
                .shaftWords(book.settings().units().length())
                .map(words -> ", or " + words)
                .orElse("");
        String mass = wish.advice()
                .headWords()
                .map(words -> words + shaft)
                .orElse("no mass at the head is enough");
        lines.add(wish.by().heading() + " " + wish.figure() + ", " + wish.wish() + ": " + mass);
    }
}
