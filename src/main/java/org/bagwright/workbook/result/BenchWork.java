package org.bagwright.workbook.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.PieceMoves;
import org.bagwright.domain.club.SleeveTurn;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BalanceWish;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.pen.TablePen;

/**
 * What a fitter does at the bench to bring one slot from today to the plan: a few short lines, and below them whatever is
 * longer.
 */
final class BenchWork {
    private static final int SHORT_LINES = 3;
    private static final int SHORT_LETTERS = 26;

    private final Book book;
    private final boolean leftHanded;
    private final OptionChange change;
    private final List<String> lines = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    BenchWork(Book book, BagResult bag, int index, OptionChange change) {
        this.book = book;
        this.leftHanded = bag.golfer().hand() == Hand.LEFT;
        this.change = change;
        if (change.isNone()) {
            add("Leave as it is");
        } else if (change.to().isEmpty()) {
            add("Take out of the bag");
        } else {
            setUp();
        }
        BalanceWish.of(bag, index, book.settings().matching()).ifPresent(this::balance);
    }

    /** A few short lines. */
    String shortText() {
        return String.join("\n", lines);
    }

    /** What is too long for them, a line for each item; often empty. */
    String notes() {
        return String.join("\n", notes);
    }

    private void setUp() {
        if (change.putsClubIn()) {
            add(
                    change.from().isEmpty()
                            ? "Put into the bag"
                            : "Put in for " + change.from().clubText());
        }
        sleeve();
        weights();
        bends();
    }

    /** Adds one thing to do, in short lines while there is room for all of them. */
    private void add(String... parts) {
        List<String> wanted = List.of(parts);
        boolean fits = lines.size() + wanted.size() <= SHORT_LINES
                && wanted.stream().allMatch(part -> part.length() <= SHORT_LETTERS);
        if (fits) {
            lines.addAll(wanted);
        } else {
            notes.add(String.join(" ", wanted));
        }
    }

    private void sleeve() {
        String before = change.choiceBefore().settingText();
        String after = change.to().choice().settingText();
        if (before.equalsIgnoreCase(after)) {
            return;
        }
        String marks = TablePen.arrows("Sleeve " + before + " -> " + after);
        String turn = book.sleeveOf(change.to().club())
                .map(sleeve -> SleeveTurn.inWords(sleeve, leftHanded, before, after))
                .orElse("");
        if (turn.isEmpty()) {
            add(marks);
        } else if (turn.length() <= SHORT_LETTERS) {
            add(marks + ":", turn);
        } else {
            add(marks);
            notes.add("Sleeve: " + turn);
        }
    }

    private void weights() {
        String before = change.choiceBefore().weightingText();
        String after = change.to().choice().weightingText();
        if (!before.equalsIgnoreCase(after)) {
            Club club = change.to().club();
            String moves = String.join("; ", new PieceMoves(weighting(club, before), weighting(club, after)).byPort());
            String weights = TablePen.arrows("Weights " + before + " -> " + after);
            add(moves.isEmpty() ? weights : weights + ": " + moves);
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
            bend(
                    loftDeg > 0 ? "weaker" : "stronger",
                    before.bend().loftDeg(),
                    after.bend().loftDeg());
        }
        double lieDeg = after.bend().lieDeg() - before.bend().lieDeg();
        if (differs(lieDeg)) {
            bend(
                    lieDeg > 0 ? "more upright" : "flatter",
                    before.bend().lieDeg(),
                    after.bend().lieDeg());
        }
    }

    /** The bend to make; in brackets the whole bend of the hosel, where it is bent today. */
    private void bend(String way, double beforeDeg, double afterDeg) {
        String all = differs(beforeDeg)
                ? TablePen.arrows(
                        " (" + OptionChange.bendText(beforeDeg) + " -> " + OptionChange.bendText(afterDeg) + " in all)")
                : "";
        add("Bend " + Numbers.trimmed(Math.abs(afterDeg - beforeDeg)) + " deg " + way + all);
    }

    private static boolean differs(double bendDeg) {
        return !OptionChange.bendText(bendDeg).equals("0");
    }

    private void balance(BalanceWish wish) {
        String shaft = wish.advice()
                .shaftWords(book.settings().units().length())
                .map(words -> ", or " + words)
                .orElse("");
        String mass = wish.advice().atHeadKg().isPresent()
                ? "head " + Numbers.signed(1000 * wish.advice().atHeadKg().getAsDouble(), 1) + " g" + shaft
                : "no mass at the head is enough";
        notes.add("For " + wish.goal() + ": " + mass);
    }
}
