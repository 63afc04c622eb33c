package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.ComparedBook;
import org.bagwright.domain.plan.Comparison;
import org.bagwright.domain.text.Numbers;

/** Several books as a terminal shows them: a table for each golfer, then which settings differ. */
public final class CompareText {
    private static final String FIGURES = "  %-20s %-8s %10s %10s %9s %8s  %s";

    private final Comparison comparison;

    public CompareText(Comparison comparison) {
        this.comparison = comparison;
    }

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (String golfer : comparison.golfers()) {
            lines.add(golfer);
            table(lines, golfer);
            comparison.without(golfer).forEach(name -> lines.add("  " + name + " has no bag for " + golfer + "."));
            measures(lines, golfer);
            differences(lines, golfer);
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

    private void measures(List<String> lines, String golfer) {
        StringBuilder heading = new StringBuilder(String.format("  %-20s %-8s", "penalty by measure", ""));
        for (Measure measure : Measure.values()) {
            heading.append(String.format(" %11s", measure.label()));
        }
        lines.add(heading.toString());
        for (ComparedBook book : comparison.books()) {
            book.bagOf(golfer).ifPresent(bag -> {
                lines.add(measures(book.name(), "today", bag.terms(bag.today())));
                lines.add(measures(book.name(), "planned", bag.terms(bag.planned())));
            });
        }
    }

    private static String measures(String name, String label, Terms terms) {
        return String.format("  %-20s %-8s", name, label)
                + Arrays.stream(Measure.values())
                        .map(measure -> String.format(" %11s", Numbers.fixed(terms.points(measure), 2)))
                        .collect(Collectors.joining());
    }

    private void differences(List<String> lines, String golfer) {
        List<Comparison.Difference> differences = comparison.differences(golfer);
        lines.add(
                differences.isEmpty()
                        ? "  The same clubs in the same set-up, today and as planned."
                        : "  What differs:");
        for (Comparison.Difference difference : differences) {
            lines.add("    slot " + difference.slot() + " " + difference.state());
            for (int book = 0; book < comparison.books().size(); book++) {
                lines.add(String.format(
                        "      %-20s %s",
                        comparison.books().get(book).name(),
                        difference.choices().get(book)));
            }
        }
    }
}
