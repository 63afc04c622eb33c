package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.plan.Relaxation;
import org.bagwright.domain.plan.Step;
import org.bagwright.domain.text.Numbers;

/**
 * In a few lines why a plan is as it is: what the first changes bring, and what holds it back.
 *
 * @param bag the planned bag
 */
record ExplanationText(BagResult bag) {
    private static final int MOST_STEPS = 4;
    static final int MOST_RELAXATIONS = 3;

    /** @param mostRelaxations how many restrictions are named at most */
    List<String> lines(int mostRelaxations, boolean withSteps) {
        List<String> lines = new ArrayList<>();
        if (withSteps) {
            firstStep().ifPresent(lines::add);
        }
        bag.relaxations().stream()
                .limit(mostRelaxations)
                .map(relaxation -> "Would help: " + inWords(relaxation))
                .forEach(lines::add);
        unsettled().ifPresent(lines::add);
        return lines;
    }

    private Optional<String> unsettled() {
        List<String> unsettled = bag.reasons().unsettled();
        if (unsettled.isEmpty()) {
            return Optional.empty();
        }
        int more = unsettled.size() - 1;
        return Optional.of("Not settled in the time: " + unsettled.get(0)
                + (more == 0 ? "" : ", and " + more + " more: see the sheet Others"));
    }

    /** The best single change in a few words, where the plan has more than one. */
    Optional<String> firstChange() {
        return bag.steps().size() < 3
                ? Optional.empty()
                : Optional.of(difference(bag.steps().get(1)));
    }

    private Optional<String> firstStep() {
        List<Step> steps = bag.steps();
        if (steps.size() < 3) {
            return Optional.empty();
        }
        String more = steps.stream()
                .skip(2)
                .limit(MOST_STEPS - 1)
                .map(step -> step.changes() + " changes " + points(step))
                .collect(Collectors.joining(", "));
        return Optional.of("Best single change: " + difference(steps.get(1)) + " (" + gain(steps.get(0), steps.get(1))
                + "); " + more + ": see the sheet Steps");
    }

    /** What it brings: first of all limits and musts that are kept, then points. */
    private String gain(Step from, Step to) {
        long before = from.state().score().hardBreaks();
        long after = to.state().score().hardBreaks();
        String points = "penalty " + points(from) + " -> " + points(to);
        return before == after
                ? points
                : "limits and musts missed by " + missed(from) + " -> " + missed(to) + " tolerances, " + points;
    }

    /** By how much a step misses limits and musts, and which. */
    private String missed(Step step) {
        Set<String> broken = bag.broken(step.state());
        return Numbers.trimmed(step.state().score().hardBreaks() / 1000.0, 2)
                + (broken.isEmpty() ? "" : " (" + String.join(", ", broken) + ")");
    }

    private String difference(Step step) {
        return IntStream.range(0, bag.options().slots().size())
                .mapToObj(slot -> new OptionChange(
                        bag.optionsOf(bag.today()).get(slot),
                        bag.optionsOf(step.state()).get(slot)))
                .filter(change -> !change.isNone())
                .map(OptionChange::inWords)
                .collect(Collectors.joining("; "));
    }

    private static String points(Step step) {
        return Numbers.fixed(step.state().score().penaltyPoints(), 2);
    }

    /** A restriction, and what its end would bring. */
    static String inWords(Relaxation relaxation) {
        String gain = relaxation.fewerBreaks() > 0
                ? "broken limits and musts down by " + Numbers.fixed(relaxation.fewerBreaks() / 1000.0, 2)
                : Numbers.signed(-relaxation.gainPoints(), 2) + " points";
        return relaxation.what() + " (" + gain + ")";
    }
}
