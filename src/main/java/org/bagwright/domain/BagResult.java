package org.bagwright.domain;

import java.util.List;
import java.util.Optional;

/**
 * One golfer's bag, as it is today and as planned.
 *
 * @param options the bag with all its options
 * @param today the bag as it is
 * @param planned the bag as planned
 * @param boundPoints no choice with as few hard breaks has a penalty below this, points
 * @param proven whether no choice at all is better than the plan
 * @param outlook how sure the plan is; empty until it is computed
 */
public record BagResult(
        BagOptions options,
        BagState today,
        BagState planned,
        double boundPoints,
        boolean proven,
        Optional<BagOutlook> outlook) {
    public BagResult withOutlook(BagOutlook computed) {
        return new BagResult(options, today, planned, boundPoints, proven, Optional.of(computed));
    }

    public Golfer golfer() {
        return options.golfer();
    }

    /** The options of a state, in the order of the bag. */
    public List<Option> optionsOf(BagState state) {
        return java.util.stream.IntStream.range(0, options.clubs().size())
                .mapToObj(index ->
                        options.clubs().get(index).options().get(state.chosen().get(index)))
                .toList();
    }
}
