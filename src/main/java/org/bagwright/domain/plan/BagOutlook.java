package org.bagwright.domain.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.units.Checks;

/**
 * How a planned bag answers to small changes, and how sure it is.
 *
 * @param clubs the carrying clubs in slot order
 * @param bands their single shots, in the same order
 * @param gaps the gaps in slot order
 * @param otherModel the ball model with which the gaps are compared
 */
public record BagOutlook(
        List<Sensitivity> clubs, List<CarryBand> bands, List<GapOutlook> gaps, BallModelKind otherModel) {
    public BagOutlook {
        clubs = List.copyOf(clubs);
        bands = List.copyOf(bands);
        gaps = List.copyOf(gaps);
        Checks.that(clubs.size() == bands.size(), "one band for every club");
    }

    /** The gap that is least likely to be inside its limits; the longest of equals. */
    public Optional<GapOutlook> leastSureGap() {
        return gaps.stream().min(Comparator.comparingDouble(GapOutlook::chanceRatio));
    }
}
