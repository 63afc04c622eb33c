package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.bagwright.domain.compare.ComparedBook;
import org.bagwright.domain.compare.Comparison;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.text.Numbers;

/** Several books as a terminal shows them: for each golfer a table of figures, then what differs. */
public final class CompareText {
    /** A golfer takes fewer lines than this, the blank one after him counted. */
    private static final int MOST_LINES = 29;

    private static final String FIGURES = "  %-20s %-8s %10s %10s %9s %8s  %s";

    private final Comparison comparison;

    public CompareText(Comparison comparison) {
        this.comparison = comparison;
    }

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (String golfer : comparison.golfers()) {
            List<String> own = new ArrayList<>(List.of(golfer));
            table(own, golfer);
            comparison.without(golfer).forEach(name -> own.add("  " + name + " has no bag for " + golfer + "."));
            if (comparison.bagsOf(golfer).size() - comparison.without(golfer).size() > 1) {
                own.addAll(new DifferenceText(comparison.golfer(golfer)).lines(MOST_LINES - 1 - own.size()));
            }
            lines.addAll(own);
            lines.add("");
        }
        lines.add("Uneven: root mean square of gap minus wish, in "
                + comparison.distance().label() + ". Worst: the worst miss, in tolerances.");
        return lines;
    }

    private void table(List<String> lines, String golfer) {
        lines.add(String.format(FIGURES, "book", "state", "uneven", "worst", "penalty", "changes", "")
                .stripTrailing());
        for (ComparedBook book : comparison.books()) {
            book.bagOf(golfer).ifPresent(bag -> {
                lines.add(figures(book.name(), bag, "today", bag.today(), ""));
                lines.add(figures(book.name(), bag, "planned", bag.planned(), proof(book)));
            });
        }
    }

    private String figures(String book, BagResult bag, String label, BagState state, String proof) {
        Set<String> broken = bag.broken(state);
        String breaks = broken.isEmpty() ? "" : "misses a must (" + String.join(", ", broken) + ") ";
        return String.format(
                        FIGURES,
                        book,
                        label,
                        shown(state.unevennessM()),
                        bag.worstMiss(state)
                                .map(miss -> Numbers.fixed(miss.toleranceRatio(), 1))
                                .orElse("-"),
                        Numbers.fixed(state.score().penaltyPoints(), 2),
                        bag.changesOf(state),
                        breaks + proof)
                .stripTrailing();
    }

    private static String proof(ComparedBook book) {
        double above = book.result().plannedPoints() - book.result().boundPoints();
        return book.result().proven() ? "proven best" : "at most " + Numbers.fixed(above, 2) + " above the best";
    }

    private String shown(OptionalDouble valueM) {
        return valueM.isPresent() ? Numbers.fixed(comparison.distance().fromM(valueM.getAsDouble()), 1) : "-";
    }
}
