package org.bagwright.learning;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.special.Erf;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.learning.Tally.Row;
import org.bagwright.planning.options.BagMaker;

/** Compares what the program makes of a hidden golfer's book with what is true of him, at some options of every club. */
final class Judgement {
    private static final int SAMPLES = 3;

    private final HiddenGolfer hidden;
    private final BagOptions bag;
    private final Dice dice;
    private final Tally tally = new Tally();

    private Judgement(HiddenGolfer hidden, long seed) {
        this.hidden = hidden;
        this.bag = options(hidden);
        this.dice = new Dice(~seed);
    }

    static Tally of(HiddenGolfer hidden, long seed) {
        Judgement judgement = new Judgement(hidden, seed);
        List<List<Option>> sampled =
                judgement.bag.slots().stream().map(judgement::sample).toList();
        for (int slot = 0; slot < sampled.size(); slot++) {
            judgement.judgeCarries(judgement.bag.slots().get(slot).today(), sampled.get(slot));
        }
        for (int slot = 0; slot + 1 < sampled.size(); slot++) {
            judgement.judgeGaps(sampled.get(slot), sampled.get(slot + 1));
        }
        return judgement.tally;
    }

    /** What the plans that the program makes of a book are truly worth. */
    static Tally ofPlans(HiddenGolfer hidden) {
        Tally tally = new Tally();
        TrueBag bag = TrueBag.of(hidden);
        List<Integer> guess = bag.plan(false);
        List<Integer> likely = bag.plan(true);
        bag.shares(likely).forEach(tally.shares()::add);
        tally.add(new Tally.Plans(
                bag.truePoints(bag.today()),
                bag.promisedPoints(guess, false),
                bag.truePoints(guess),
                bag.promisedPoints(likely, true),
                bag.truePoints(likely),
                bag.truePoints(bag.bestPlan())));
        return tally;
    }

    static BagOptions options(HiddenGolfer hidden) {
        return new BagMaker(hidden.book()).bags().bags().get(0);
    }

    /** Some set-ups that were never hit; today's where there is none. */
    private List<Option> sample(SlotOptions slot) {
        List<Option> untried = new ArrayList<>(
                slot.options().stream().filter(hidden::isUntried).toList());
        List<Option> some = new ArrayList<>();
        while (some.size() < SAMPLES && !untried.isEmpty()) {
            some.add(untried.remove(dice.below(untried.size())));
        }
        return some.isEmpty() ? List.of(slot.today()) : some;
    }

    private void judgeCarries(Option today, List<Option> sampled) {
        boolean shot = hidden.hasShots(today.club());
        if (!shot && !sampled.contains(today)) {
            tally.add(Row.UNSHOT, errorM(today), today.doubt().varianceM2());
        }
        for (Option option : sampled) {
            if (!shot) {
                tally.add(Row.UNSHOT, errorM(option), option.doubt().varianceM2());
            } else if (!option.equals(today)) {
                tally.add(Row.UNTRIED, errorM(option), option.doubt().varianceM2());
                tally.add(
                        Row.CHANGE,
                        errorM(option) - errorM(today),
                        option.doubt().changeVarianceM2(today.doubt()));
            }
        }
    }

    private void judgeGaps(List<Option> longer, List<Option> shorter) {
        boolean bothShot = hidden.hasShots(longer.get(0).club())
                && hidden.hasShots(shorter.get(0).club());
        for (int sample = 0; sample < SAMPLES; sample++) {
            Option one = longer.get(dice.below(longer.size()));
            Option next = shorter.get(dice.below(shorter.size()));
            double varianceM2 = one.doubt().gapVarianceM2(next.doubt());
            if (bothShot) {
                tally.add(Row.GAP, errorM(one) - errorM(next), varianceM2);
            }
            if (varianceM2 > 0) {
                tally.chances().add(chance(one, next, Math.sqrt(varianceM2)));
            }
        }
    }

    /** The chance that a gap stays within some yards of the gap wish. */
    private Chances.Chance chance(Option one, Option next, double sdM) {
        double withinM = LengthUnit.YARD.toM(dice.between(3, 8));
        double offM = carryM(one) - carryM(next) - bag.gapWishM();
        double trueOffM = hidden.trueCarryM(one) - hidden.trueCarryM(next) - bag.gapWishM();
        double stated =
                (Erf.erf((withinM - offM) / (sdM * Math.sqrt(2))) - Erf.erf((-withinM - offM) / (sdM * Math.sqrt(2))))
                        / 2;
        return new Chances.Chance(stated, Math.abs(trueOffM) <= withinM);
    }

    private double errorM(Option option) {
        return carryM(option) - hidden.trueCarryM(option);
    }

    private static double carryM(Option option) {
        return option.carryM().orElseThrow();
    }
}
