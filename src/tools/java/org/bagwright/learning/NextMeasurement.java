package org.bagwright.learning;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.plan.MeasureNext;

/**
 * What the first advice to measure is worth: the true penalty of the plan before five more shots less that of the plan after
 * them, with the club and setting that the program advises and with some club at some setting.
 */
final class NextMeasurement {
    private static final int SHOTS = 5;
    /** Shots are drawn this often for each golfer, and the drops averaged. */
    private static final int REPEATS = 4;

    /**
     * What five shots brought one golfer.
     *
     * @param advisedPoints drop of the true penalty with the advised club and setting, points
     * @param someClubPoints the same with a club and a setting that are drawn
     * @param saidPoints what the advice was said to be worth, points
     */
    private record Drop(double advisedPoints, double someClubPoints, double saidPoints) {
        double betterPoints() {
            return advisedPoints - someClubPoints;
        }
    }

    private final SummaryStatistics advised = new SummaryStatistics();
    private final SummaryStatistics someClub = new SummaryStatistics();
    private final SummaryStatistics said = new SummaryStatistics();
    private final SummaryStatistics better = new SummaryStatistics();

    NextMeasurement(int golfers, long firstSeed) {
        List<Drop> drops = LongStream.range(firstSeed, firstSeed + golfers)
                .parallel()
                .mapToObj(NextMeasurement::drop)
                .toList();
        for (Drop drop : drops) {
            advised.addValue(drop.advisedPoints());
            someClub.addValue(drop.someClubPoints());
            said.addValue(drop.saidPoints());
            better.addValue(drop.betterPoints());
        }
    }

    private static Drop drop(long seed) {
        HiddenGolfer hidden = HiddenGolfer.drawn(seed, Population.USUAL);
        TrueBag bag = TrueBag.of(hidden);
        List<Integer> planned = bag.plan(true);
        MeasureNext.Advice advice = bag.advice(planned).orElseThrow();
        Club club = hidden.bag().clubs().get(advice.slot() - 1);
        Choice advised = new Choice(advice.setting(), club.today().bend());
        Dice dice = new Dice(~seed);
        double advisedPoints = 0;
        double somePoints = 0;
        for (int repeat = 0; repeat < REPEATS; repeat++) {
            Club some = hidden.bag().clubs().get(dice.below(hidden.bag().clubs().size()));
            advisedPoints += afterPoints(bag, hidden.after(club, advised, SHOTS, dice));
            somePoints += afterPoints(bag, hidden.after(some, someSetting(hidden, some, dice), SHOTS, dice));
        }
        double beforePoints = bag.truePoints(planned);
        return new Drop(
                beforePoints - advisedPoints / REPEATS, beforePoints - somePoints / REPEATS, advice.worthPoints());
    }

    private static double afterPoints(TrueBag before, HiddenGolfer more) {
        TrueBag bag = before.after(more);
        return bag.truePoints(bag.plan(true));
    }

    private static Choice someSetting(HiddenGolfer hidden, Club club, Dice dice) {
        Optional<String> mark = hidden.bag()
                .sleeveOf(club)
                .map(Sleeve::settings)
                .map(settings -> settings.get(dice.below(settings.size())).mark());
        return new Choice(mark, club.today().bend());
    }

    double advisedPoints() {
        return advised.getMean();
    }

    double someClubPoints() {
        return someClub.getMean();
    }

    double saidPoints() {
        return said.getMean();
    }

    /** By how much more the penalty drops by the advice, points. */
    double betterPoints() {
        return better.getMean();
    }

    /** The standard error of that, points. */
    double errorPoints() {
        return better.getStandardDeviation() / Math.sqrt((double) better.getN());
    }
}
