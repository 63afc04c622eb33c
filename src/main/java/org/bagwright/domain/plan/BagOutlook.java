package org.bagwright.domain.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.units.Checks;

/**
 * How a planned bag answers to small changes, how sure it is, and what would make it surer.
 *
 * @param clubs the carrying clubs in slot order
 * @param bands their carries, in the same order
 * @param gaps the gaps in slot order
 * @param choices how sure the choice of each slot is, in slot order
 * @param next what to measure next
 */
public record BagOutlook(
        List<Sensitivity> clubs,
        List<CarryBand> bands,
        List<GapOutlook> gaps,
        List<ChoiceSureness> choices,
        MeasureNext next) {
    public BagOutlook {
        clubs = List.copyOf(clubs);
        bands = List.copyOf(bands);
        gaps = List.copyOf(gaps);
        choices = List.copyOf(choices);
        Checks.that(clubs.size() == bands.size(), "one band for every club");
    }

    /** The gap that is least likely to be inside its limits; the longest of equals. */
    public Optional<GapOutlook> leastSureGap() {
        return gaps.stream().min(Comparator.comparingDouble(GapOutlook::chanceRatio));
    }

    /** The gap after the club in the slot at this position of the bag. */
    public Optional<GapOutlook> gapAfter(int index) {
        return gaps.stream().filter(gap -> gap.fromIndex() == index).findFirst();
    }
}
