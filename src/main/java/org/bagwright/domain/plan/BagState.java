package org.bagwright.domain.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.bagwright.domain.option.Terms;

/**
 * One choice of options for a whole bag, with its score.
 *
 * @param chosen for each slot, in the order of the bag, the index of its option
 * @param score how good it is
 * @param reach how far its longest club flies; empty if nothing flies, or nothing does today
 * @param gaps the gaps it gives, in slot order
 * @param spreads how its clubs differ from their groups, in slot order
 */
public record BagState(List<Integer> chosen, BagScore score, Optional<ReachTerm> reach, List<GapTerm> gaps, List<SpreadTerm> spreads) {

    public BagState {
        chosen = List.copyOf(chosen);
        gaps = List.copyOf(gaps);
        spreads = List.copyOf(spreads);
    }

    /** The gap from the club in the slot at this position of the bag to the next carrying one. */
    public Optional<GapTerm> gapAfter(int index) {
        return gaps.stream().filter(gap -> gap.fromIndex() == index).findFirst();
    }

    /** How the club in the slot at this position of the bag differs from its group. */
    public Optional<SpreadTerm> spreadAt(int index) {
        return spreads.stream().filter(spread -> spread.index() == index).findFirst();
    }

    /** How far the club in the slot at this position flies, if it is the longest. */
    public Optional<ReachTerm> reachAt(int index) {
        return reach.filter(term -> term.index() == index);
    }

    /** What the club in the slot at this position costs together with others: its reach, the gap after it, its group. */
    public Terms termsWithOthers(int index) {
        Terms gap = gapAfter(index).map(GapTerm::terms).orElse(Terms.NONE);
        Terms first = reachAt(index).map(ReachTerm::terms).orElse(Terms.NONE);
        return first.plus(gap).plus(spreadAt(index).map(SpreadTerm::terms).orElse(Terms.NONE));
    }

    /** What all clubs cost together with others. */
    public Terms termsWithOthers() {
        Terms first = reach.map(ReachTerm::terms).orElse(Terms.NONE);
        return Stream.concat(gaps.stream().map(GapTerm::terms), spreads.stream().map(SpreadTerm::terms))
                .reduce(first, Terms::plus);
    }

    /**
     * How uneven the gaps of a bag are: the root of the mean square of gap less wish, metres. Empty for a bag without a
     * gap.
     */
    public OptionalDouble unevennessM() {
        OptionalDouble meanSquare = gaps.stream()
                .mapToDouble(gap -> gap.deviationM() * gap.deviationM())
                .average();
        return meanSquare.isPresent() ? OptionalDouble.of(Math.sqrt(meanSquare.getAsDouble())) : meanSquare;
    }
}
