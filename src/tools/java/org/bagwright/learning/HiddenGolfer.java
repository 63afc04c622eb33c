package org.bagwright.learning;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.option.Option;

/**
 * A golfer of whom everything is known, and the book that a fitter has of him.
 *
 * @param bag his clubs
 * @param truth what is true of him
 * @param device what his monitor tells
 * @param shots what the fitter has measured
 */
record HiddenGolfer(HiddenBag bag, HiddenTruth truth, Device device, List<Shot> shots) {
    private static final double UNSHOT_RATIO = 0.3;
    private static final double SECOND_SETTING_RATIO = 0.35;
    private static final double DATED_RATIO = 0.4;
    private static final int FEWEST_SHOTS = 3;
    private static final int MOST_SHOTS = 10;

    /** Whether he plays a ball that is neither of the published ones. */
    enum Ball {
        BLEND,
        THIRD
    }

    /** The golfer of a seed. */
    static HiddenGolfer drawn(long seed, Population population) {
        Dice dice = new Dice(seed);
        HiddenBag bag = HiddenBag.drawn(dice);
        TrueBall flown = population.ball() == Ball.THIRD
                ? TrueBall.third()
                : TrueBall.ofTruth((int) Math.floorMod(seed, (long) TrueBall.BLENDS), dice);
        HiddenTruth truth = new HiddenTruth(bag, flown, dice);
        Device usual = Device.drawn(dice);
        Device device = population.device().orElse(usual);
        HiddenShots shots = new HiddenShots(bag, truth, device, dice, population);
        boolean second = population.moreSetups() && dice.chance(SECOND_SETTING_RATIO);
        List<HiddenShots.Day> days = population.moreSetups() && (dice.chance(DATED_RATIO) || population.dayRatio() > 1)
                ? List.of(HiddenShots.Day.drawn(0, population, dice), HiddenShots.Day.drawn(7, population, dice))
                : List.of(HiddenShots.Day.ANY);
        int sure = dice.below(bag.clubs().size());
        for (Club club : bag.clubs()) {
            if (club.slot() - 1 == sure || !dice.chance(UNSHOT_RATIO)) {
                hit(shots, bag, club, second, days, dice, population.shotsRatio());
            }
        }
        return new HiddenGolfer(bag, truth, device, shots.shots());
    }

    /** 3 to 10 shots with a club; where some may be at a second setting, with every other club half of them are. */
    private static void hit(
            HiddenShots shots,
            HiddenBag bag,
            Club club,
            boolean second,
            List<HiddenShots.Day> days,
            Dice dice,
            int shotsRatio) {
        int count = shotsRatio * (FEWEST_SHOTS + dice.below(MOST_SHOTS - FEWEST_SHOTS + 1));
        List<Choice> others = otherSetups(bag, club);
        int later = second && !others.isEmpty() && dice.chance(0.5) ? count / 2 : 0;
        shots.hit(club, club.today(), days.get(dice.below(days.size())), count - later);
        if (later > 0) {
            shots.hit(club, others.get(dice.below(others.size())), days.get(dice.below(days.size())), later);
        }
    }

    /**
     * A golfer of whom all that is assumed is true, who hits every club alike each time, with a monitor that is never off. His
     * ball is that of Bearman and Harvey.
     */
    static HiddenGolfer exact(long seed) {
        Dice even = new Dice(seed, 0);
        HiddenBag bag = HiddenBag.drawn(new Dice(seed));
        HiddenTruth truth = new HiddenTruth(bag, TrueBall.blend(0, 0, 0), even);
        HiddenShots shots = new HiddenShots(bag, truth, Device.FULL_WITH_HEAD, even, Population.USUAL.strays(0));
        bag.clubs().forEach(club -> shots.hit(club, club.today(), HiddenShots.Day.ANY, 5));
        return new HiddenGolfer(bag, truth, Device.FULL_WITH_HEAD, shots.shots());
    }

    /** Every other setting of a club's sleeve, and every other bend of its loft in whole degrees. */
    static List<Choice> otherSetups(HiddenBag bag, Club club) {
        Stream<Choice> settings = bag.sleeveOf(club).map(Sleeve::settings).orElse(List.of()).stream()
                .map(SleeveSetting::mark)
                .map(mark -> new Choice(Optional.of(mark), Bend.NONE));
        Stream<Choice> bends = club.freedom().bendRange().bendsDeg(0).stream()
                .map(bendDeg -> new Choice(club.today().setting(), new Bend(bendDeg, 0)));
        return Stream.concat(settings, bends)
                .filter(choice -> !choice.equals(club.today()))
                .distinct()
                .toList();
    }

    /** The same golfer after some more shots with a club in one set-up. */
    HiddenGolfer after(Club club, Choice choice, int count, Dice dice) {
        HiddenShots more = new HiddenShots(bag, truth, device, dice, Population.USUAL);
        more.shots().addAll(shots);
        more.hit(club, choice, HiddenShots.Day.ANY, count);
        return new HiddenGolfer(bag, truth, device, more.shots());
    }

    /** What the fitter has. */
    Book book() {
        return book(shots);
    }

    /** The same with other shots. */
    Book book(List<Shot> others) {
        return new Book(
                BookSettings.DEFAULT,
                Aims.defaults(),
                List.of(bag.golfer()),
                bag.clubs(),
                new Book.Equipment(bag.sleeves(), List.of(), List.of()),
                new Book.Measurements(others, List.of(), Set.of()),
                List.of(),
                List.of());
    }

    /** The true carry of an option, m. */
    double trueCarryM(Option option) {
        return truth.carryM(option.club().name(), option.choice());
    }

    boolean hasShots(Club club) {
        return shots.stream().anyMatch(shot -> shot.club().equals(club.name()));
    }

    /** Whether no shot was hit with an option's setting and loft bend, and it is not today's. */
    boolean isUntried(Option option) {
        Club club = option.club();
        Choice choice = option.choice();
        return !choice.equals(club.tidiedToday())
                && shots.stream()
                        .filter(shot -> shot.club().equals(club.name()))
                        .map(Shot::setup)
                        .filter(setup -> !setup.equals(Shot.Setup.TODAY))
                        .noneMatch(setup -> setup.setting().equals(choice.setting())
                                && setup.loftBendDeg().orElse(0)
                                        == choice.bend().loftDeg());
    }
}
