package org.bagwright.flight.golfer;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What a golfer's other clubs lead one to expect of a club.
 *
 * @param clubs the clubs that have the ratio, at least two
 * @param ratio what is compared, above 0
 */
record OtherClubs(List<ClubFit> clubs, ToDoubleFunction<ClubFit> ratio) {

    /**
     * A club's ratio over that of the other clubs, less 1: over their median, or over the clubs next to it where that is nearer;
     * 0 where these two do not agree on the side.
     */
    double offRatio(ClubFit club) {
        List<ClubFit> others = clubs.stream().filter(other -> other != club).toList();
        double median =
                ShotMedians.median(others.stream().mapToDouble(ratio).toArray()).orElseThrow();
        ClubInterpolation nextToIt = new ClubInterpolation();
        others.forEach(other -> nextToIt.add(other.today().placeM(), ratio.applyAsDouble(other)));
        double byMedian = ratio.applyAsDouble(club) / median - 1;
        double byNext = ratio.applyAsDouble(club) / nextToIt.at(club.today().placeM()) - 1;
        return byMedian * byNext <= 0 ? 0 : Math.abs(byMedian) < Math.abs(byNext) ? byMedian : byNext;
    }
}
