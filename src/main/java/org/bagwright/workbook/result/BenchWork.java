package org.bagwright.workbook.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.SleeveTurn;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.text.Numbers;

/** What a fitter does at the bench to bring one slot from today to the plan. */
final class BenchWork {
    private static final String ALLOWED = "only if the maker allows bending";

    private final Book book;
    private final OptionChange change;
    private final List<Item> items = new ArrayList<>();

    /** One thing to do: what is touched, how it is, how it must be, and how to get there. */
    record Item(String what, String from, String to, String how) {}

    private BenchWork(Book book, OptionChange change) {
        this.book = book;
        this.change = change;
    }

    /** Everything to do, in the order of doing it. */
    static List<Item> of(Book book, OptionChange change) {
        BenchWork work = new BenchWork(book, change);
        if (!change.isNone()) {
            work.club();
            if (!change.to().isEmpty()) {
                work.sleeve();
                work.weights();
                work.bends();
            }
        }
        return work.items;
    }

    private void club() {
        if (change.to().isEmpty()) {
            items.add(new Item("Club", change.from().clubText(), change.to().clubText(), "take out of the bag"));
        } else if (change.putsClubIn()) {
            String before = change.from().isEmpty() ? "none" : change.from().clubText();
            items.add(new Item("Club", before, change.to().clubText(), asItComes(change.choiceBefore())));
        }
    }

    private static String asItComes(Choice choice) {
        List<String> words = new ArrayList<>();
        choice.setting().ifPresent(setting -> words.add("setting " + setting));
        choice.weighting().ifPresent(weighting -> words.add("weighting " + weighting));
        return words.isEmpty() ? "put into the bag" : "comes with " + String.join(", ", words);
    }

    private void sleeve() {
        String before = change.choiceBefore().settingText();
        String after = change.to().choice().settingText();
        if (!before.equalsIgnoreCase(after)) {
            String turn = book.sleeveOf(change.to().club())
                    .map(sleeve -> SleeveTurn.inWords(sleeve, before, after))
                    .orElse("");
            items.add(new Item("Sleeve", before, after, turn));
        }
    }

    private void weights() {
        String before = change.choiceBefore().weightingText();
        String after = change.to().choice().weightingText();
        if (!before.equalsIgnoreCase(after)) {
            Club club = change.to().club();
            String moves = String.join("; ", new PieceMoves(weighting(club, before), weighting(club, after)).byPort());
            items.add(new Item("Weights", before, after, moves));
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
            String how = size(loftDeg) + (loftDeg > 0 ? " weaker" : " stronger") + ", bounce "
                    + OptionChange.bendText(loftDeg) + " deg; " + ALLOWED;
            bend("Loft bend", before.bend().loftDeg(), after.bend().loftDeg(), how);
        }
        double lieDeg = after.bend().lieDeg() - before.bend().lieDeg();
        if (differs(lieDeg)) {
            String how = size(lieDeg) + (lieDeg > 0 ? " more upright" : " flatter") + "; " + ALLOWED;
            bend("Lie bend", before.bend().lieDeg(), after.bend().lieDeg(), how);
        }
    }

    private void bend(String what, double fromDeg, double toDeg, String how) {
        items.add(new Item(what, OptionChange.bendText(fromDeg) + " deg", OptionChange.bendText(toDeg) + " deg", how));
    }

    private static boolean differs(double bendDeg) {
        return !OptionChange.bendText(bendDeg).equals("0");
    }

    private static String size(double bendDeg) {
        return Numbers.trimmed(Math.abs(bendDeg)) + " deg";
    }
}
