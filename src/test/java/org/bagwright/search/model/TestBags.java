package org.bagwright.search.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.bagwright.ClubSketch;
import org.bagwright.GolferSketch;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.ClosedReason;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.ClubWishes;
import org.bagwright.domain.option.ExpectedShot;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.domain.units.Swingweight;
import org.bagwright.search.BagSearch;

/** Bags for tests: by hand, and drawn from a seed. */
public final class TestBags {
    public static final Aim GAP_AIM = new Aim(Measure.GAP, 3, 2, false);
    public static final Aim GAP_MUST = new Aim(Measure.GAP, 3, 2, true);
    public static final Terms FREE = Terms.NONE;

    private static final PoseNumbers POSE = new PoseNumbers(
            new PoseNumbers.Gauge(30, 62),
            new PoseNumbers.Address(30, 0, 0, 0, 0, 0),
            new PoseNumbers.Resting(0, 30),
            0);

    private static final BuildNumbers BUILD =
            new BuildNumbers(0.94, 0.27, 0.41, new Swingweight(30), 0.75, 0.27, 2.5e-4);
    static final Aim NO_SPREAD = new Aim(Measure.SPREAD, 1, 0, false);

    private TestBags() {}

    public static Option option(double carryM, int changes, Terms terms, boolean open) {
        return option(club(Double.isNaN(carryM) ? ClubKind.PUTTER : ClubKind.IRON, 1), carryM, changes, terms, open);
    }

    public static Option option(Club club, double carryM, int changes, Terms terms, boolean open) {
        Optional<ShotPrediction> shot = Double.isNaN(carryM)
                ? Optional.empty()
                : Optional.of(new ShotPrediction(50, 15, 5000, carryM, 25, 45, 0, 0));
        String key = "carry " + carryM + ", changes " + changes;
        ClubSetup setup = setup(club, new Choice(Optional.empty(), Bend.NONE), shot, Optional.empty());
        return new Option(key, Optional.of(setup), changes, terms, closedReasons(open), List.of());
    }

    /** A club of which nothing is wanted. */
    static ClubSetup setup(Club club, Choice choice, Optional<ShotPrediction> shot, Optional<MatchValue> match) {
        return new ClubSetup(club, ClubWishes.NONE, choice, POSE, 0, shot.map(ExpectedShot::certain), BUILD, match);
    }

    /** What is in the way of an option that is open or not. */
    static Set<ClosedReason> closedReasons(boolean open) {
        return open ? Set.of() : Set.of(ClosedReason.SETTING);
    }

    /** Points by measure, and what is broken of the must of loft. */
    public static Terms terms(Map<Measure, Double> points, long breaks) {
        Terms terms = loft(0, breaks);
        for (Map.Entry<Measure, Double> each : points.entrySet()) {
            terms = terms.plus(Terms.of(each.getKey(), each.getValue(), 0));
        }
        return terms;
    }

    /** Points of loft, and what it breaks of it. */
    public static Terms loft(double points, long breaks) {
        return Terms.of(Measure.LOFT, points, breaks);
    }

    public static Aims aims(Aim gapAim, Aim spreadAim) {
        return Aims.defaults()
                .mapped(aim ->
                        aim.measure() == Measure.GAP ? gapAim : aim.measure() == Measure.SPREAD ? spreadAim : aim);
    }

    public static Option carrying(double carryM) {
        return option(carryM, 0, FREE, true);
    }

    public static Option changed(int changes) {
        return option(100, changes, FREE, true);
    }

    /** A club whose first option is today's, open as its options say, or all of them if none is. */
    public static SlotOptions club(ClubKind kind, int slot, List<Option> options) {
        List<Integer> open = IntStream.range(0, options.size())
                .filter(index -> options.get(index).open())
                .boxed()
                .toList();
        List<Integer> all = IntStream.range(0, options.size()).boxed().toList();
        return new SlotOptions(slot, List.of(club(kind, slot)), options, 0, open.isEmpty() ? all : open);
    }

    public static SlotOptions iron(int slot, Option... options) {
        return club(ClubKind.IRON, slot, List.of(options));
    }

    public static BagOptions bag(Aim gapAim, OptionalInt mostChanges, double wishM, List<SlotOptions> clubs) {
        return new BagOptions(golfer(mostChanges), clubs, wishM, aims(gapAim, NO_SPREAD));
    }

    public static BagOptions bag(SlotOptions... clubs) {
        return bag(GAP_AIM, OptionalInt.empty(), 10, List.of(clubs));
    }

    static Golfer golfer(OptionalInt mostChanges) {
        return new GolferSketch("Golfer").mostChanges(mostChanges).golfer();
    }

    private static Club club(ClubKind kind, int slot) {
        return club(kind, slot, OptionalDouble.empty());
    }

    /**
     * A club with a gap wish of its own.
     *
     * @param gapWishM the gap that its own row asks for, metres
     */
    public static Club club(ClubKind kind, int slot, OptionalDouble gapWishM) {
        return new ClubSketch("Golfer", slot, "Club " + slot, kind, "Clubs!A" + (slot + 1))
                .targets(TestBooks.wishing(gapWishM))
                .made();
    }

    /** Random numbers that differ from the first draw on, which those of neighbouring seeds do not. */
    private static Random spread(long seed) {
        return new Random(seed * 0x9E3779B97F4A7C15L);
    }

    /** Three clubs with up to 16 options each; limits of every sort, often against each other, and many ties. */
    static BagOptions small(long seed) {
        Random random = spread(seed);
        int putter = random.nextInt(4) == 0 ? random.nextInt(3) : -1;
        double stepM = random.nextBoolean() ? 1 : 0.013;
        List<SlotOptions> clubs = new ArrayList<>();
        for (int slot = 0; slot < 3; slot++) {
            ClubKind kind = slot == putter ? ClubKind.PUTTER : ClubKind.IRON;
            clubs.add(club(kind, slot + 1, smallOptions(random, kind, 120 - 6 * slot, stepM)));
        }
        OptionalInt mostChanges = random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(random.nextInt(6));
        Aim aim = new Aim(Measure.GAP, 0.5 + random.nextInt(6), random.nextInt(3), random.nextInt(3) == 0);
        return bag(aim, mostChanges, 4 + random.nextInt(9), clubs);
    }

    private static List<Option> smallOptions(Random random, ClubKind kind, double middleM, double stepM) {
        boolean pinned = random.nextInt(6) == 0;
        boolean restricted = random.nextInt(5) == 0;
        boolean coarse = random.nextBoolean();
        int count = 1 + random.nextInt(16);
        List<Option> options = new ArrayList<>();
        for (int index = 0; index < count; index++) {
            double carryM = kind.carries() ? middleM + stepM * (random.nextInt(25) - 12) : Double.NaN;
            int changes = index == 0 ? 0 : 1 + random.nextInt(3);
            boolean open = pinned ? index == 0 : !restricted || random.nextInt(3) > 0;
            options.add(option(carryM, changes, smallTerms(random, changes, coarse), open));
        }
        return options;
    }

    private static Terms smallTerms(Random random, int changes, boolean coarse) {
        double[] points =
                random.doubles(4, 0, 3).map(x -> coarse ? Math.floor(x) : x).toArray();
        long breaks = random.nextInt(4) == 0 ? random.nextInt(2500) : 0;
        return terms(
                Map.of(
                        Measure.LOFT, points[0],
                        Measure.LIE, points[1],
                        Measure.SITS, points[2],
                        Measure.CARRY, points[3],
                        Measure.CHANGE, changes * 0.05),
                breaks);
    }

    /** Thirteen clubs that carry and a putter, each with this many options, carries all different. */
    public static BagOptions full(long seed, int optionCount, OptionalInt mostChanges) {
        Random random = spread(seed);
        List<SlotOptions> clubs = new ArrayList<>();
        for (int slot = 0; slot < 14; slot++) {
            ClubKind kind = slot == 13 ? ClubKind.PUTTER : ClubKind.IRON;
            double middleM = 230 - 13 * slot + random.nextGaussian() * 4;
            clubs.add(club(kind, slot + 1, fullOptions(random, kind, middleM, optionCount)));
        }
        return bag(new Aim(Measure.GAP, 2.7432, 2, seed % 2 == 0), mostChanges, 12, clubs);
    }

    private static List<Option> fullOptions(Random random, ClubKind kind, double middleM, int count) {
        List<Option> options = new ArrayList<>();
        for (int index = 0; index < count; index++) {
            double loftDeg = index == 0 ? 0 : random.nextDouble() * 8 - 4;
            double lieDeg = index == 0 ? 0 : random.nextDouble() * 8 - 4;
            double carryM = kind.carries() ? middleM - 3 * loftDeg + 0.1 * lieDeg : Double.NaN;
            int changes = index == 0 ? 0 : 1 + random.nextInt(2);
            double carryPoints = Math.pow(loftDeg / 2, 2) / 3;
            Terms terms = terms(
                    Map.of(
                            Measure.LOFT,
                            loftDeg * loftDeg,
                            Measure.LIE,
                            lieDeg * lieDeg / 2,
                            Measure.CARRY,
                            carryPoints,
                            Measure.CHANGE,
                            changes * 0.05),
                    0);
            options.add(option(carryM, changes, terms, true));
        }
        return options;
    }

    /** Any option of every club, open or not. */
    static List<Integer> anyChoice(BagOptions bag, Random random) {
        return bag.slots().stream()
                .map(club -> random.nextInt(club.options().size()))
                .toList();
    }

    public static int changes(BagOptions bag, List<Integer> chosen) {
        return IntStream.range(0, chosen.size())
                .map(club ->
                        bag.slots().get(club).options().get(chosen.get(club)).changes())
                .sum();
    }

    static List<Integer> today(BagOptions bag) {
        return bag.slots().stream().map(SlotOptions::todayIndex).toList();
    }

    /** A problem with these bags, each with the options chosen for it, open or not. */
    static PlanningProblem problem(List<BagOptions> bags, List<List<Integer>> chosen) {
        return problem(new BookOptions(bags, List.of()), chosen);
    }

    /** A problem with the bags and the stock of a book. */
    public static PlanningProblem problem(BookOptions book, List<List<Integer>> chosen) {
        List<BagOptions> bags = book.bags();
        PlanningProblem problem =
                PlanningProblem.of(bags.stream().map(SearchBag::new).toList(), TestBooks.piles(book));
        int place = 0;
        for (int bag = 0; bag < bags.size(); bag++) {
            for (int slot = 0; slot < bags.get(bag).slots().size(); slot++) {
                SlotOptions options = bags.get(bag).slots().get(slot);
                int index = chosen.get(bag).get(slot);
                problem.assignments().get(place++).choose(SearchBag.candidate(bags.get(bag), options, index));
            }
        }
        return problem;
    }

    /** The plans of bags that share nothing. */
    static BookPlan plan(BagSearch search, List<BagOptions> bags) {
        return search.plan(new BookOptions(bags, List.of()));
    }
}
