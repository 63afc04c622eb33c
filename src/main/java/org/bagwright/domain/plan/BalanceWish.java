package org.bagwright.domain.plan;

import java.util.Optional;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.option.BuildAdvice;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Swingweight;

/**
 * A planned club whose balance is worth a change of mass: it is off its swingweight target, or off the mean of its group.
 *
 * @param club the club with its numbers
 * @param by what is off
 * @param figure its swingweight or inertia as planned, in words
 * @param wish what is wanted instead, such as {@code wanted D2}
 * @param advice which mass would do it
 */
public record BalanceWish(Option club, Matching.By by, String figure, String wish, BuildAdvice advice) {
    private static final double WORTH_SAYING_POINTS = 0.3;
    private static final double WORTH_SAYING_KG_CM2 = 10;

    /**
     * The wish of the planned club at a position in the bag.
     *
     * @param matching by what clubs are matched
     * @return empty where the slot is left empty, nothing is wanted or the club is close enough
     */
    public static Optional<BalanceWish> of(BagResult bag, int index, Matching matching) {
        Option club = bag.optionsOf(bag.planned()).get(index);
        if (club.isEmpty()) {
            return Optional.empty();
        }
        Optional<Swingweight> target = club.club().targets().swingweight();
        return target.isPresent() ? ofTarget(club, target.get()) : ofGroup(bag, index, matching);
    }

    private static Optional<BalanceWish> ofTarget(Option club, Swingweight target) {
        Swingweight planned = club.build().swingweight();
        if (Math.abs(planned.scalePoints() - target.scalePoints()) < WORTH_SAYING_POINTS) {
            return Optional.empty();
        }
        BuildAdvice advice = BuildAdvice.forSwingweight(club.build(), target);
        return Optional.of(new BalanceWish(club, Matching.By.SWINGWEIGHT, planned.text(), "wanted " + target.text(), advice));
    }

    private static Optional<BalanceWish> ofGroup(BagResult bag, int index, Matching matching) {
        Option club = bag.optionsOf(bag.planned()).get(index);
        boolean bySwingweight = matching.by() == Matching.By.SWINGWEIGHT;
        double worthSaying = bySwingweight ? WORTH_SAYING_POINTS : WORTH_SAYING_KG_CM2;
        boolean counts = bag.options().spreadAim().must()
                || bag.options().spreadAim().importancePoints() > 0;
        return bag.planned()
                .spreadAt(index)
                .filter(spread -> counts && Math.abs(spread.deviationMeasureUnits()) >= worthSaying)
                .map(spread -> bySwingweight ? bySwingweight(club, spread) : byInertia(club, spread));
    }

    private static BalanceWish bySwingweight(Option club, SpreadTerm spread) {
        BuildNumbers build = club.build();
        Swingweight mean = new Swingweight(build.swingweight().scalePoints() - spread.deviationMeasureUnits());
        return new BalanceWish(
                club, Matching.By.SWINGWEIGHT, build.swingweight().text(), fromMean(spread, 1), BuildAdvice.forSwingweight(build, mean));
    }

    private static BalanceWish byInertia(Option club, SpreadTerm spread) {
        double inertiaKgCm2 = club.build().clubInertiaKgCm2();
        BuildAdvice advice = BuildAdvice.forClubInertia(club.build(), inertiaKgCm2 - spread.deviationMeasureUnits());
        return new BalanceWish(club, Matching.By.INERTIA, Numbers.fixed(inertiaKgCm2, 0) + " kg cm2", fromMean(spread, 0), advice);
    }

    private static String fromMean(SpreadTerm spread, int decimals) {
        return Numbers.signed(spread.deviationMeasureUnits(), decimals) + " from the mean of its group (" + spread.group()
                + ")";
    }
}
