package org.bagwright.domain;

import java.util.List;

/**
 * One golfer's bag, as it is today and as planned.
 *
 * @param options the bag with all its options
 * @param today the bag as it is
 * @param planned the bag as planned
 * @param boundPoints no choice with as few hard breaks has a penalty below this, points
 * @param proven whether no choice at all is better than the plan
 */
public record BagResult(BagOptions options, BagState today, BagState planned, double boundPoints, boolean proven) {
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
