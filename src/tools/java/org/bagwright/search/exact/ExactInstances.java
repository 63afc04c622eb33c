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
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.WantedRange;
import org.bagwright.search.score.LexCost;
import org.bagwright.search.score.PenaltyRules;

/** Bags and teams drawn from a seed: small ones that can be enumerated, and full ones of a fitter's size. */
public final class ExactInstances {
    private static final long CHANGE_MICROPOINTS = 50_000;
    private static final int DRIVER = 0;
    private static final int FAIRWAY = 1;
    private static final int HYBRID = 2;
    private static final int IRON = 3;
    private static final int WEDGE = 4;

    private final Random random;
    private final Random limits;
    private final int items;

    private ExactInstances(long seed, int items) {
        random = new Random(seed * 0x9E3779B97F4A7C15L);
        limits = new Random(seed * 0x9E3779B97F4A7C15L + 5);
        this.items = items;
    }

    /**
     * The size of full bags.
     *
     * @param bendSteps how many lofts and as many lies an iron can be bent to
     * @param settings how many settings a sleeve has
     * @param items how many kinds of pieces are in stock
     */
    public record Shape(int bendSteps, int settings, int items) {}

    // Small ones: every kind of limit, often against each other, and many ties.

    /** One to three bags of together at most six slots. */
    public static ExactProblem small(long seed) {
        ExactInstances draw = new ExactInstances(seed, (int) Math.floorMod(seed, 4L));
        int bags = draw.random.nextInt(4) == 0 ? 2 + draw.random.nextInt(2) : 1;
        int slots = bags == 1 ? 2 + draw.random.nextInt(4) : 2;
        int options = bags == 1 ? new int[] {0, 0, 40, 16, 9, 6}[slots] : bags == 2 ? 8 : 5;
        return new ExactProblem(
                IntStream.range(0, bags)
                        .mapToObj(bag -> draw.smallBag(slots, options))
                        .toList(),
                IntStream.range(0, draw.items)
                        .mapToObj(item -> draw.random.nextInt(3))
                        .toList());
    }

    /** A bag of sixteen slots, most with one option, some of which can be empty: more clubs than may be carried. */
    public static ExactProblem crowded(long seed) {
        ExactInstances draw = new ExactInstances(seed, 1);
        List<List<ExactOption>> slots = new ArrayList<>();
        int emptiable = 1 + draw.random.nextInt(4);
        for (int slot = 0; slot < 16; slot++) {
            int count = slot < 8 ? 2 : 1;
            List<ExactOption> options = new ArrayList<>(draw.smallSlot(slot, count, false, false));
            if (slot < emptiable) {
                options.add(draw.empty(options.size()));
            }
            slots.add(options);
        }
        return new ExactProblem(
                List.of(new ExactBag(
                        slots, OptionalInt.empty(), draw.smallAim(Measure.GAP), draw.smallAim(Measure.SPREAD))),
                List.of(draw.random.nextInt(3)));
    }

    private ExactBag smallBag(int slots, int most) {
        List<List<ExactOption>> filled = new ArrayList<>();
        int putter = random.nextInt(3) == 0 ? random.nextInt(slots) : -1;
        for (int slot = 0; slot < slots; slot++) {
            int count = 1 + random.nextInt(most);
            boolean optional = random.nextInt(4) == 0;
            filled.add(smallSlot(slot, count, slot == putter, optional));
        }
        OptionalInt mostChanges = random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(random.nextInt(5));
        return new ExactBag(filled, mostChanges, smallAim(Measure.GAP), smallAim(Measure.SPREAD));
    }

    private Aim smallAim(Measure measure) {
        return new Aim(measure, 0.5 + random.nextInt(5), random.nextInt(4) * 0.5, random.nextInt(4) == 0);
    }

    private List<ExactOption> smallSlot(int slot, int count, boolean putter, boolean optional) {
        boolean coarse = random.nextBoolean();
        boolean needy = random.nextInt(6) == 0;
        int kinds = 1 + random.nextInt(2);
        List<ExactOption> options = new ArrayList<>();
        for (int index = 0; index < count; index++) {
            options.add(smallOption(index, slot, coarse, needy, putter ? -1 : random.nextInt(kinds)));
        }
        if (optional) {
            options.add(empty(count));
        }
        return options;
    }

    private ExactOption smallOption(int index, int slot, boolean coarse, boolean needy, int group) {
        double carryM = 120 - 7 * slot + (coarse ? random.nextInt(9) - 4 : random.nextDouble() * 12 - 6);
        int changes = needy ? 1 + random.nextInt(2) : index == 0 ? 0 : random.nextInt(4);
        double points = coarse ? random.nextInt(3) : random.nextDouble() * 3;
        long breaks = random.nextInt(5) == 0 ? random.nextInt(2) * 500L + random.nextInt(2000) : 0;
        double match = coarse ? random.nextInt(5) : random.nextDouble() * 5;
        double wishM = 5 + random.nextInt(4);
        return new ExactOption(
                index,
                breaks,
                PenaltyRules.micropoints(points) + changes * CHANGE_MICROPOINTS,
                new ExactOption.Needs(changes, true, takes(needy ? 2 : 4)),
                group < 0 ? Optional.empty() : Optional.of(smallFlight(carryM, wishM)),
                group < 0 ? Optional.empty() : Optional.of(new ExactOption.Match(group, match)));
    }

    /** Now and then with limits of the gap, and with a cost as the first that flies. */
    private ExactOption.Flight smallFlight(double carryM, double wishM) {
        WantedRange limitsM = limits.nextInt(3) > 0
                ? WantedRange.ANY
                : new WantedRange(
                        limits.nextBoolean() ? Double.NEGATIVE_INFINITY : wishM - 2 + limits.nextInt(3),
                        limits.nextBoolean() ? Double.POSITIVE_INFINITY : wishM + limits.nextInt(3));
        long breaks = limits.nextInt(6) == 0 ? limits.nextInt(1500) : 0;
        long micropoints = limits.nextBoolean() ? 0 : PenaltyRules.micropoints(limits.nextInt(4) * 0.75);
        LexCost first = new LexCost(breaks, LexCost.weight(micropoints, 0));
        return new ExactOption.Flight(carryM, wishM, limitsM, CarryDoubt.NONE, first);
    }

    private List<Integer> takes(int seldom) {
        return IntStream.range(0, items)
                .mapToObj(item -> random.nextInt(seldom) == 0 ? 1 + random.nextInt(2) : 0)
                .toList();
    }

    private ExactOption empty(int index) {
        ExactOption.Needs needs = new ExactOption.Needs(1, false, Collections.nCopies(items, 0));
        return new ExactOption(index, 0, 300_000, needs, Optional.empty(), Optional.empty());
    }

    // Full ones.

    /** One full bag with stock, most changes and spread. */
    static ExactProblem full(long seed, Shape shape) {
        return team(seed, 1, shape);
    }

    /** A team of full bags with the same stock, which is scarce. */
    public static ExactProblem team(long seed, int bags, Shape shape) {
        ExactInstances draw = new ExactInstances(seed, shape.items());
        List<ExactBag> filled =
                IntStream.range(0, bags).mapToObj(bag -> draw.fullBag(shape)).toList();
        List<Integer> stock = IntStream.range(0, shape.items())
                .mapToObj(item -> draw.random.nextInt(2) + (bags * (1 + draw.random.nextInt(3))) / 2)
                .toList();
        return new ExactProblem(filled, stock);
    }

    private ExactBag fullBag(Shape shape) {
        int[] kinds = {DRIVER, FAIRWAY, FAIRWAY, HYBRID, IRON, IRON, IRON, IRON, IRON, IRON, WEDGE, WEDGE, WEDGE, -1};
        double longestM = 200 + random.nextDouble() * 40;
        double wishM = 9 + random.nextDouble() * 3;
        List<List<ExactOption>> slots = new ArrayList<>();
        List<Integer> twofold = random.ints(0, 13).distinct().limit(6).boxed().toList();
        for (int slot = 0; slot < kinds.length; slot++) {
            double middleM = longestM - 10.5 * slot + random.nextGaussian() * 3;
            int candidates = twofold.contains(slot) ? 2 + random.nextInt(2) : 1;
            slots.add(kinds[slot] < 0 ? putter() : fullSlot(kinds[slot], candidates, middleM, wishM, shape));
        }
        boolean gapMust = random.nextInt(6) == 0;
        boolean spreadMust = random.nextInt(8) == 0;
        return new ExactBag(
                slots,
                OptionalInt.of(3 + random.nextInt(8)),
                new Aim(Measure.GAP, 2.7432, 2, gapMust),
                new Aim(Measure.SPREAD, 1, 0.5, spreadMust));
    }

    private List<ExactOption> putter() {
        ExactOption.Needs needs = new ExactOption.Needs(0, true, Collections.nCopies(items, 0));
        return List.of(new ExactOption(0, 0, 100_000, needs, Optional.empty(), Optional.empty()));
    }

    private List<ExactOption> fullSlot(int kind, int candidates, double middleM, double wishM, Shape shape) {
        List<ExactOption> options = new ArrayList<>();
        for (int candidate = 0; candidate < candidates; candidate++) {
            Head head = new Head(
                    candidate,
                    kind,
                    middleM + (candidate == 0 ? 0 : random.nextGaussian() * 4),
                    wishM,
                    random.nextGaussian() * 1.2,
                    random.nextGaussian() * 1.2,
                    random.nextGaussian() * 1.5);
            if (kind < IRON) {
                sleeved(options, head, shape);
            } else {
                bent(options, head, shape);
            }
        }
        return options;
    }

    private record Head(
            int candidate,
            int kind,
            double carryM,
            double wishM,
            double loftOffDeg,
            double lieOffDeg,
            double matchOffPoints) {}

    /** A head with a sleeve and movable weights: settings times weightings. */
    private void sleeved(List<ExactOption> options, Head head, Shape shape) {
        for (int setting = 0; setting < shape.settings(); setting++) {
            double turnRad = 2 * Math.PI * setting / shape.settings();
            double loftDeg = 1.5 * Math.sin(turnRad) + 0.5 * Math.sin(2 * turnRad + 1);
            double lieDeg = 1.2 * (1 - Math.cos(turnRad));
            for (int weighting = 0; weighting < 5; weighting++) {
                int changes = (setting == 0 ? 0 : 1) + (weighting == 0 ? 0 : 1);
                double match = head.matchOffPoints + new double[] {0, 1, -1, 2, -2}[weighting];
                double carryM = head.carryM - 2.4 * loftDeg - 0.15 * lieDeg - 0.4 * match;
                options.add(option(options.size(), head, loftDeg, lieDeg, carryM, changes, match, weighting));
            }
        }
    }

    /** A head that can be bent in loft and lie. */
    private void bent(List<ExactOption> options, Head head, Shape shape) {
        int half = shape.bendSteps() / 2;
        double stepDeg = 2.0 / half;
        for (int loft = -half; loft <= half; loft++) {
            for (int lie = -half; lie <= half; lie++) {
                double loftDeg = loft * stepDeg;
                double lieDeg = lie * stepDeg;
                int changes = (loft == 0 ? 0 : 1) + (lie == 0 ? 0 : 1);
                double carryM = head.carryM - 2.6 * loftDeg + 0.21 * lieDeg;
                double match = head.matchOffPoints + 0.02 * lieDeg;
                options.add(option(options.size(), head, loftDeg, lieDeg, carryM, changes, match, 0));
            }
        }
    }

    private ExactOption option(
            int index,
            Head head,
            double loftDeg,
            double lieDeg,
            double carryM,
            int itemsChanged,
            double match,
            int weighting) {
        int changes = itemsChanged + (head.candidate > 0 ? 1 : 0);
        double loftOffDeg = (head.loftOffDeg + loftDeg) / 0.5;
        double lieOffDeg = head.lieOffDeg + lieDeg;
        double points = 0.3 * loftOffDeg * loftOffDeg + 0.5 * lieOffDeg * lieOffDeg + 0.25 * match * match;
        List<Integer> takes = IntStream.range(0, items)
                .mapToObj(item -> pieces(item, head, weighting))
                .toList();
        return new ExactOption(
                index,
                0,
                PenaltyRules.micropoints(points) + changes * CHANGE_MICROPOINTS,
                new ExactOption.Needs(changes, true, takes),
                Optional.of(new ExactOption.Flight(carryM, head.wishM + (head.candidate == 2 ? 0.5 : 0))),
                Optional.of(new ExactOption.Match(head.kind, match)));
    }

    /** Weightings take pieces (the heaviest two of one), another head takes the head. */
    private static int pieces(int item, Head head, int weighting) {
        if (item % 3 == 2) {
            return head.candidate > 0 && head.kind * 2 % 3 == item % 2 ? 1 : 0;
        }
        boolean heavy = weighting == 1 || weighting == 3;
        return (item % 2 == 0) == heavy && weighting > 0 && item < 4 ? (weighting + 1) / 2 : 0;
    }
}
