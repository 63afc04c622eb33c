package org.bagwright.planning.sureness;

import java.util.List;
import java.util.function.Predicate;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.plan.ChoiceSureness;
import org.bagwright.domain.plan.MeasureNext;

/**
 * How sure a planned bag is.
 *
 * @param bag the bag with its options
 * @param planned for each slot the index of its planned option
 */
public record BagSureness(BagOptions bag, List<Integer> planned) {
    public BagSureness {
        planned = List.copyOf(planned);
    }

    /** For each slot in how many of the likely cases its planned option is best; the same seed gives the same shares. */
    public List<ChoiceSureness> choices(long seed) {
        return new ChoiceShares(bag, planned, seed).all();
    }

    /**
     * What to measure next.
     *
     * @param gauged whether a club has a gauge reading
     */
    public MeasureNext measureNext(Predicate<Club> gauged) {
        return new MeasureAdvice(bag, planned, gauged).next();
    }
}
