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
 * @param figure its swingweight or inertia as planned, in words
 * @param wish what is wanted instead, such as {@code wanted D2}
 * @param goal what would be right, such as {@code D2}
 * @param advice which mass would do it
 */
public record BalanceWish(Option club, String figure, String wish, String goal, BuildAdvice advice) {
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
        return Optional.of(new BalanceWish(club, planned.text(), "wanted " + target.text(), target.text(), advice));
    }

    private static Optional<BalanceWish> ofGroup(BagResult bag, int index, Matching matching) {
        Option club = bag.optionsOf(bag.planned()).get(index);
        boolean bySwingweight = matching.by() == Matching.By.SWINGWEIGHT;
        double worthSaying = bySwingweight ? WORTH_SAYING_POINTS : WORTH_SAYING_KG_CM2;
        boolean counts =
                bag.options().spreadAim().must() || bag.options().spreadAim().importancePoints() > 0;
        return bag.planned()
                .spreadAt(index)
                .filter(spread -> counts && Math.abs(spread.deviationMeasureUnits()) >= worthSaying)
                .map(spread -> bySwingweight ? bySwingweight(club, spread) : byInertia(club, spread));
    }

    private static BalanceWish bySwingweight(Option club, SpreadTerm spread) {
        BuildNumbers build = club.build();
        double meanPoints = build.swingweight().scalePoints() - spread.deviationMeasureUnits();
        BuildAdvice advice = BuildAdvice.forSwingweight(build, new Swingweight(meanPoints));
        return ofGroup(
                club, build.swingweight().text(), Numbers.signed(spread.deviationMeasureUnits(), 1), spread, advice);
    }

    private static BalanceWish byInertia(Option club, SpreadTerm spread) {
        double inertiaKgCm2 = club.build().clubInertiaKgCm2();
        BuildAdvice advice = BuildAdvice.forClubInertia(club.build(), inertiaKgCm2 - spread.deviationMeasureUnits());
        String figure = Numbers.fixed(inertiaKgCm2, 0) + " kg cm2";
        return ofGroup(club, figure, Numbers.signed(spread.deviationMeasureUnits(), 0), spread, advice);
    }

    private static BalanceWish ofGroup(Option club, String figure, String off, SpreadTerm spread, BuildAdvice advice) {
        String goal = "the mean of its group (" + spread.group() + ")";
        return new BalanceWish(club, figure, off + " from " + goal, goal, advice);
    }
}
