package org.bagwright.planning.sureness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.WantedRange;

/**
 * The options of a bag that can be best, numbered slot by slot, with what neighbours cost together. Reach, gaps and what an
 * option costs by itself are in it; the spread of groups and the stock are not, since they couple more than neighbours.
 */
final class Chain {
    private static final double MM_PER_M = 1000;
    private static final double ORDER_THOUSANDTHS = 1000;

    private final List<ChainOption> options = new ArrayList<>();
    private final int[] firstOfSlot;
    private final double[] wishM;
    private final double[] lowM;
    private final double[] highM;
    private final WantedRange[] limitsM;
    private final Aim gapAim;
    private final Aim reachAim;
    private final double gapPointsPerM2;
    private final double reachPointsPerM2;
    private final Optional<ChainOption> longestToday;
    private final int mostChanges;
    private final double pointsPerThousandth;

    /**
     * A chain.
     *
     * @param bag the bag
     * @param planned for each slot the index of its planned option
     * @param most how many options of a slot are kept, but for the planned one and today's
     * @param pointsPerThousandth what a broken thousandth of a tolerance costs, points
     */
    Chain(BagOptions bag, List<Integer> planned, int most, double pointsPerThousandth) {
        this.pointsPerThousandth = pointsPerThousandth;
        this.firstOfSlot = new int[bag.slots().size() + 1];
        for (int slot = 0; slot < bag.slots().size(); slot++) {
            options.addAll(new ThinnedSlot(bag, bag.slots().get(slot), planned.get(slot)).options(most));
            firstOfSlot[slot + 1] = options.size();
        }
        this.gapAim = bag.gapAim();
        this.reachAim = bag.reachAim();
        this.gapPointsPerM2 = gapAim.penaltyPoints(1);
        this.reachPointsPerM2 = reachAim.penaltyPoints(1);
        this.wishM = new double[options.size()];
        this.lowM = new double[options.size()];
        this.highM = new double[options.size()];
        this.limitsM = new WantedRange[options.size()];
        IntStream.range(0, options.size()).forEach(number -> gapsAfter(bag, number));
        this.longestToday = longestToday(bag);
        this.mostChanges = Math.max(bag.mostChanges().orElse(Integer.MAX_VALUE), leastChanges());
    }

    private void gapsAfter(BagOptions bag, int number) {
        Option option = options.get(number).option();
        limitsM[number] = option.gapLimitsM();
        if (!option.isEmpty()) {
            double mustM = gapAim.isHard() ? gapAim.toleranceMeasureUnits() : Double.POSITIVE_INFINITY;
            wishM[number] = bag.wishAfterM(option);
            lowM[number] = Math.max(0, Math.max(limitsM[number].leastMeasureUnits(), wishM[number] - mustM));
            highM[number] = Math.min(limitsM[number].mostMeasureUnits(), wishM[number] + mustM);
        }
    }

    private static Optional<ChainOption> longestToday(BagOptions bag) {
        return bag.slots().stream()
                .map(SlotOptions::today)
                .map(today -> new ChainOption(bag, 0, today))
                .filter(ChainOption::flies)
                .findFirst();
    }

    private int leastChanges() {
        return IntStream.range(0, slotCount())
                .map(slot -> IntStream.range(firstOf(slot), firstOf(slot + 1))
                        .map(number -> options.get(number).changes())
                        .min()
                        .orElseThrow())
                .sum();
    }

    int slotCount() {
        return firstOfSlot.length - 1;
    }

    /** The number of a slot's first option; for the slot after the last how many options there are. */
    int firstOf(int slot) {
        return firstOfSlot[slot];
    }

    int size() {
        return options.size();
    }

    ChainOption option(int number) {
        return options.get(number);
    }

    /** Today's longest club, as it is set. */
    Optional<ChainOption> longestToday() {
        return longestToday;
    }

    /** The most items that may change. */
    int mostChanges() {
        return mostChanges;
    }

    /** The number of the option that has this place in its slot. */
    int numberOf(int slot, int index) {
        return IntStream.range(firstOf(slot), firstOf(slot + 1))
                .filter(number -> options.get(number).index() == index)
                .findFirst()
                .orElseThrow();
    }

    /** The world with these carries, the variance of each, and what is not known of gaps. */
    World world(double[] carriesM, double[] variancesM2, double todayM, World.GapDoubt doubt) {
        double[] ownPoints = new double[options.size()];
        Arrays.setAll(ownPoints, number -> options.get(number)
                .ownPoints(carriesM[number], variancesM2[number], pointsPerThousandth));
        return new World(carriesM, ownPoints, todayM, doubt);
    }

    /** What the gap from one option to another costs, points. */
    double gapPoints(World world, int from, int to) {
        double gapM = world.carryM(from) - world.carryM(to);
        double offM = gapM - wishM[from];
        double points = gapPointsPerM2 * (offM * offM + world.gapVarianceM2(from, to));
        return gapM <= 0 || gapM < lowM[from] || gapM > highM[from]
                ? points + pointsPerThousandth * brokenThousandths(from, gapM)
                : points;
    }

    private double brokenThousandths(int from, double gapM) {
        double order = gapM > 0 ? 0 : ORDER_THOUSANDTHS - MM_PER_M * gapM;
        double outside = 1000 * gapAim.tolerances(limitsM[from].deviationMeasureUnits(gapM));
        return order + outside + ChainOption.beyond(gapAim, gapM - wishM[from]);
    }

    /** What it costs that an option is the first to fly, points. */
    double reachPoints(World world, int first) {
        double shortM = world.todayM() - world.carryM(first);
        return shortM > 0
                ? reachPointsPerM2 * shortM * shortM + pointsPerThousandth * ChainOption.beyond(reachAim, shortM)
                : 0;
    }

    /** What a choice costs, points. */
    double points(World world, int[] chosen) {
        double points = 0;
        int last = -1;
        for (int number : chosen) {
            points += world.ownPoints(number);
            if (options.get(number).flies()) {
                points += last < 0 ? reachPoints(world, number) : gapPoints(world, last, number);
                last = number;
            }
        }
        return points;
    }

    int changes(int[] chosen) {
        return Arrays.stream(chosen)
                .map(number -> options.get(number).changes())
                .sum();
    }
}
