package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Measure;
import org.bagwright.search.score.PenaltyRules;

/** Bags drawn from a seed with a must on spread, scarce stock and few changes at once, and teams with one such bag. */
public final class HardInstances {
    /** A tolerance of a must on spread that cannot be met, swingweight points. */
    private static final double TIGHT_POINTS = 0.12;

    private static final int ITEMS = 4;
    private static final int STEPS = 9;
    private static final int SETTINGS = 16;
    private static final int WEIGHTS = 4;
    private static final int[] GROUPS = {0, 1, 1, 2, 3, 3, 3, 3, 3, 3, 4, 4, 4, -1};
    private static final int FIRST_BENT = 4;
    private static final long CHANGE_MICROPOINTS = 50_000;

    private final Random random;

    private HardInstances(long seed) {
        random = new Random(seed * 0x9E3779B97F4A7C15L + 11);
    }

    /** A bag of fourteen slots with about 600 options each, a must on spread, scarce stock and few changes. */
    public static ExactProblem bag(long seed, double spreadPoints) {
        HardInstances draw = new HardInstances(seed);
        double longestM = 200 + draw.random.nextDouble() * 40;
        List<List<ExactOption>> slots = new ArrayList<>();
        for (int slot = 0; slot < GROUPS.length; slot++) {
            slots.add(GROUPS[slot] < 0 ? draw.putter() : draw.slot(slot, longestM - 10.5 * slot));
        }
        ExactBag bag = new ExactBag(
                slots,
                OptionalInt.of(5 + draw.random.nextInt(6)),
                new Aim(Measure.GAP, 2.7432, 2, false),
                new Aim(Measure.SPREAD, spreadPoints, 0.5, true));
        return new ExactProblem(List.of(bag), List.of(3, 2, 2, 2));
    }

    /**
     * A team of full bags with the same scarce stock, of which one has a must that it cannot meet: on spread, or, with odd
     * seeds, on gaps.
     */
    public static ExactProblem team(long seed, int bags) {
        ExactProblem team = ExactInstances.team(seed, bags, new ExactInstances.Shape(9, 12, 1 + (int) (seed % 6)));
        int hard = (int) (seed % bags);
        List<ExactBag> changed = new ArrayList<>();
        for (ExactBag bag : team.bags()) {
            boolean must = changed.size() == hard;
            changed.add(new ExactBag(
                    bag.slots(),
                    bag.mostChanges(),
                    seed % 2 == 1 && must
                            ? new Aim(Measure.GAP, 0.2, 0.01, true)
                            : bag.gapAim().withMust(false),
                    seed % 2 == 0 && must
                            ? new Aim(Measure.SPREAD, TIGHT_POINTS, 0.01, true)
                            : bag.spreadAim().withMust(false)));
        }
        return new ExactProblem(changed, team.available());
    }

    /** A bag that can be enumerated, of up to five slots, with a must on spread that it can meet or not. */
    public static ExactProblem small(long seed) {
        HardInstances draw = new HardInstances(seed);
        int slots = 3 + draw.random.nextInt(3);
        int most = new int[] {16, 9, 6}[slots - 3];
        List<List<ExactOption>> filled = IntStream.range(0, slots)
                .mapToObj(slot -> draw.smallSlot(slot, 2 + draw.random.nextInt(most - 1)))
                .toList();
        ExactBag bag = new ExactBag(
                filled,
                OptionalInt.of(draw.random.nextInt(6)),
                new Aim(Measure.GAP, 2, draw.random.nextInt(3), draw.random.nextInt(4) == 0),
                new Aim(Measure.SPREAD, 0.02 * Math.pow(100, draw.random.nextDouble()), draw.random.nextInt(2), true));
        return new ExactProblem(List.of(bag), List.of(draw.random.nextInt(3), draw.random.nextInt(3)));
    }

    private List<ExactOption> smallSlot(int slot, int count) {
        int groups = 1 + random.nextInt(2);
        boolean coarse = random.nextBoolean();
        List<ExactOption> options = new ArrayList<>();
        for (int index = 0; index < count; index++) {
            double match = coarse ? random.nextInt(4) : 3 * random.nextDouble();
            options.add(new ExactOption(
                    index,
                    random.nextInt(8) == 0 ? random.nextInt(900) : 0,
                    PenaltyRules.micropoints(3 * random.nextDouble()),
                    new ExactOption.Needs(
                            index == 0 ? 0 : random.nextInt(3), true, List.of(random.nextInt(2), random.nextInt(2))),
                    Optional.of(new ExactOption.Flight(120 - 7 * slot + 8 * random.nextDouble(), 7)),
                    Optional.of(new ExactOption.Match(random.nextInt(groups), match))));
        }
        return options;
    }

    private List<ExactOption> putter() {
        ExactOption.Needs needs = new ExactOption.Needs(0, true, Collections.nCopies(ITEMS, 0));
        return List.of(new ExactOption(0, 0, 100_000, needs, Optional.empty(), Optional.empty()));
    }

    /** Two heads, of which the second is taken from the stock, in all their settings and weights. */
    private List<ExactOption> slot(int slot, double middleM) {
        List<ExactOption> options = new ArrayList<>();
        for (int head = 0; head < 2; head++) {
            double carryM = middleM + 3 * random.nextGaussian();
            double loftOffDeg = 1.2 * random.nextGaussian();
            double lieOffDeg = 1.2 * random.nextGaussian();
            double matchOff = 1.5 * random.nextGaussian();
            int settings = slot < FIRST_BENT ? SETTINGS : STEPS * STEPS;
            for (int setting = 0; setting < settings; setting++) {
                double[] bent = slot < FIRST_BENT ? sleeve(setting) : bend(setting);
                int changes = head + (slot < FIRST_BENT ? Math.min(1, setting) : bends(bent));
                for (int weight = 0; weight < (slot < FIRST_BENT ? 5 * WEIGHTS : WEIGHTS); weight++) {
                    double match = matchOff + 0.7 * (weight % 2 == 0 ? weight : -weight) / (slot < FIRST_BENT ? 4 : 1);
                    double loft = (loftOffDeg + bent[0]) / 0.5;
                    double lie = lieOffDeg + bent[1];
                    int moved = changes + Math.min(1, weight);
                    options.add(new ExactOption(
                            options.size(),
                            0,
                            PenaltyRules.micropoints(0.3 * loft * loft + 0.5 * lie * lie) + moved * CHANGE_MICROPOINTS,
                            new ExactOption.Needs(moved, true, takes(slot, head, weight)),
                            Optional.of(new ExactOption.Flight(
                                    carryM - 2.6 * bent[0] + 0.21 * bent[1] - 0.4 * (match - matchOff), 10)),
                            Optional.of(new ExactOption.Match(GROUPS[slot], match + 0.02 * bent[1]))));
                }
            }
        }
        return options;
    }

    private static double[] sleeve(int setting) {
        double turnRad = 2 * Math.PI * setting / SETTINGS;
        return new double[] {1.5 * Math.sin(turnRad) + 0.5 * Math.sin(2 * turnRad + 1), 1.2 * (1 - Math.cos(turnRad))};
    }

    /** The first is as it is today. */
    private static double[] bend(int setting) {
        int middle = STEPS * STEPS / 2;
        int place = setting == 0 ? middle : setting == middle ? 0 : setting;
        return new double[] {0.5 * (place / STEPS - STEPS / 2), 0.5 * (place % STEPS - STEPS / 2)};
    }

    private static int bends(double[] bent) {
        return (bent[0] == 0 ? 0 : 1) + (bent[1] == 0 ? 0 : 1);
    }

    /** Two kinds of weights, heads for the woods and heads for the irons. */
    private static List<Integer> takes(int slot, int head, int weight) {
        return List.of(
                weight % 2 == 1 ? 1 : 0,
                weight > 0 && weight % 2 == 0 ? 1 : 0,
                slot < FIRST_BENT ? head : 0,
                slot < FIRST_BENT ? 0 : head);
    }
}
