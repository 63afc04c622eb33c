package org.bagwright.domain.plan;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.Option;

/**
 * One golfer's bag, as it is today and as planned.
 *
 * @param options the bag with all its options
 * @param today the bag as it is
 * @param planned the bag as planned
 * @param steps the best plans with at most 0, 1, 2, ... changes, until more changes gain nothing
 * @param others other good plans
 * @param relaxations what holds the plan back, the greatest gain first
 * @param outlook how sure the plan is; empty until it is computed
 */
public record BagResult(
        BagOptions options,
        BagState today,
        BagState planned,
        List<Step> steps,
        List<OtherPlan> others,
        List<Relaxation> relaxations,
        Optional<BagOutlook> outlook) {

    public BagResult {
        steps = List.copyOf(steps);
        others = List.copyOf(others);
        relaxations = List.copyOf(relaxations);
    }

    /** A bag with its plan alone, nothing computed about it yet. */
    public static BagResult of(BagOptions options, BagState today, BagState planned) {
        return new BagResult(options, today, planned, List.of(), List.of(), List.of(), Optional.empty());
    }

    public BagResult withOutlook(BagOutlook computed) {
        return new BagResult(options, today, planned, steps, others, relaxations, Optional.of(computed));
    }

    public BagResult withReasons(List<Step> newSteps, List<OtherPlan> newOthers, List<Relaxation> newRelaxations) {
        return new BagResult(options, today, planned, newSteps, newOthers, newRelaxations, outlook);
    }

    public Golfer golfer() {
        return options.golfer();
    }

    /** The options of a state, in the order of the bag. */
    public List<Option> optionsOf(BagState state) {
        return options.chosen(state.chosen());
    }

    /** How many items a state changes from today. */
    public int changesOf(BagState state) {
        return optionsOf(state).stream().mapToInt(Option::changes).sum();
    }
}
