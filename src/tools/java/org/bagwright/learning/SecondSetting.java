package org.bagwright.learning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.planning.options.BagMaker;

/**
 * What shots at a second setting of one club are worth: the error of the change of carry to settings that were never hit, with
 * shots at today's setting, twice as many there, or as many at another setting. All other clubs have shots as they are today.
 */
final class SecondSetting {
    private static final int SHOTS = 6;

    /** Where the club is hit. */
    enum Design {
        ONE,
        TWICE,
        TWO
    }

    private final Device device;
    private final List<Map<Design, List<Double>>> squaresM2;

    /**
     * The study with so many golfers.
     *
     * @param device what every golfer's monitor tells
     */
    SecondSetting(Device device, int golfers, long firstSeed) {
        this.device = device;
        this.squaresM2 = LongStream.range(firstSeed, firstSeed + golfers)
                .parallel()
                .mapToObj(this::judged)
                .toList();
    }

    /** How much smaller the error is than with shots at one setting, as a share of that; of roots of mean squares. */
    double savedRatio(Design design) {
        return 1 - rootM(design) / rootM(Design.ONE);
    }

    private double rootM(Design design) {
        return Math.sqrt(squaresM2.stream()
                .flatMap(golfer -> golfer.get(design).stream())
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow());
    }

    private Map<Design, List<Double>> judged(long seed) {
        Dice dice = new Dice(seed);
        HiddenBag bag = HiddenBag.drawn(dice);
        HiddenTruth truth = new HiddenTruth(bag, TrueBall.ofTruth((int) (seed % TrueBall.BLENDS), dice), dice);
        List<Club> free = bag.clubs().stream()
                .filter(club -> !HiddenGolfer.otherSetups(bag, club).isEmpty())
                .toList();
        Club studied = free.get(dice.below(free.size()));
        Choice second = HiddenGolfer.otherSetups(bag, studied).stream()
                .max(Comparator.comparingDouble(
                        choice -> Math.abs(truth.launch(studied.name(), choice).launchDeg()
                                - truth.launch(studied.name(), studied.today()).launchDeg())))
                .orElseThrow();
        Map<Design, List<Double>> errors = new EnumMap<>(Design.class);
        for (Design design : Design.values()) {
            HiddenGolfer hidden = golfer(seed, bag, truth, studied, second, design);
            errors.put(design, squaresM2(hidden, studied, second));
        }
        return errors;
    }

    private HiddenGolfer golfer(
            long seed, HiddenBag bag, HiddenTruth truth, Club studied, Choice second, Design design) {
        HiddenShots shots = new HiddenShots(bag, truth, device, new Dice(~seed), Population.USUAL.strays(0));
        for (Club club : bag.clubs()) {
            if (!club.equals(studied)) {
                shots.hit(club, club.today(), HiddenShots.Day.ANY, SHOTS);
            }
        }
        shots.hit(studied, studied.today(), HiddenShots.Day.ANY, design == Design.TWICE ? 2 * SHOTS : SHOTS);
        if (design == Design.TWO) {
            shots.hit(studied, second, HiddenShots.Day.ANY, SHOTS);
        }
        return new HiddenGolfer(bag, truth, device, shots.shots());
    }

    private static List<Double> squaresM2(HiddenGolfer hidden, Club studied, Choice second) {
        List<Double> squaresM2 = new ArrayList<>();
        SlotOptions slot =
                new BagMaker(hidden.book()).bags().bags().get(0).slots().get(studied.slot() - 1);
        for (Option option : slot.options()) {
            if (!option.choice().equals(studied.today()) && !option.choice().equals(second)) {
                double saidM =
                        option.carryM().orElseThrow() - slot.today().carryM().orElseThrow();
                double trueM = hidden.trueCarryM(option) - hidden.trueCarryM(slot.today());
                squaresM2.add((saidM - trueM) * (saidM - trueM));
            }
        }
        return squaresM2;
    }
}
