package org.bagwright.search.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.StockItem;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.Targets;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.option.Terms;

/**
 * Books for tests, drawn from a seed: several bags whose slots have several clubs or may be left empty, whose clubs are
 * matched and have gap wishes of their own, and that share a stock.
 */
public final class TestBooks {
    private TestBooks() {}

    /** What differs between the sorts of books. */
    private record Sort(int bags, int slots, int options, int items, boolean coarse, boolean rich) {}

    /** One to three bags of two or three slots with up to six options each; limits often against each other. */
    public static BookOptions small(long seed) {
        Random random = random(seed);
        Sort sort = new Sort(
                1 + random.nextInt(3), 2 + random.nextInt(2), 6, random.nextInt(4), random.nextBoolean(), false);
        return book(random, sort);
    }

    /** Two bags; in each two clubs for the first slot, a second slot that may be left empty, and pieces of the stock. */
    public static BookOptions rich(long seed) {
        return book(random(seed + 1000), new Sort(2, 3, 6, 2, seed % 2 == 0, true));
    }

    /** Bags of 14 slots with this many options each; the stock has three items of which there are too few. */
    public static BookOptions full(long seed, int bags, int options) {
        return book(random(seed), new Sort(bags, 14, options, 3, false, false));
    }

    /** Bags of 16 slots, more than the clubs that may be carried. */
    public static BookOptions crowded(long seed) {
        return book(random(seed), new Sort(2, 16, 4, 2, true, false));
    }

    private static Random random(long seed) {
        return new Random((seed + 77) * 0x9E3779B97F4A7C15L);
    }

    private static BookOptions book(Random random, Sort sort) {
        List<BagOptions> bags = new ArrayList<>();
        for (int bag = 0; bag < sort.bags(); bag++) {
            bags.add(bag(random, sort));
        }
        List<StockLimit> stock = new ArrayList<>();
        for (int item = 0; item < sort.items(); item++) {
            stock.add(limit(
                    item,
                    sort.rich() ? random.nextInt(3) : todaysPieces(bags, item) + random.nextInt(1 + sort.bags())));
        }
        return new BookOptions(bags, stock);
    }

    public static StockLimit limit(int item, int available) {
        StockItem.Kind kind = StockItem.Kind.PIECE;
        OptionalDouble massKg = OptionalDouble.of(0.002 * (item + 1));
        return new StockLimit(new StockItem(kind, Optional.empty(), massKg, available, "Stock!A" + item), available);
    }

    private static int todaysPieces(List<BagOptions> bags, int item) {
        return bags.stream()
                .flatMap(bag -> bag.slots().stream())
                .mapToInt(slot -> slot.today().takes().get(item))
                .sum();
    }

    private static BagOptions bag(Random random, Sort sort) {
        boolean matched = random.nextInt(3) > 0;
        int putter = random.nextInt(4) == 0 ? random.nextInt(sort.slots()) : -1;
        List<SlotOptions> slots = new ArrayList<>();
        for (int slot = 0; slot < sort.slots(); slot++) {
            ClubKind kind = slot == putter ? ClubKind.PUTTER : ClubKind.IRON;
            slots.add(slot(random, sort, kind, slot, matched));
        }
        OptionalInt mostChanges =
                random.nextBoolean() ? OptionalInt.empty() : OptionalInt.of(random.nextInt(2 * sort.slots()));
        Aim gapAim = new Aim(Measure.GAP, 1 + random.nextInt(5), random.nextInt(3), random.nextInt(3) == 0);
        Aim spreadAim = matched
                ? new Aim(Measure.SPREAD, 0.7 + random.nextInt(2), random.nextInt(3), random.nextInt(3) == 0)
                : TestBags.NO_SPREAD;
        return new BagOptions(
                TestBags.golfer(mostChanges), slots, 4 + random.nextInt(9), TestBags.aims(gapAim, spreadAim));
    }

    private static SlotOptions slot(Random random, Sort sort, ClubKind kind, int slot, boolean matched) {
        List<Club> clubs = new ArrayList<>();
        int rows = sort.rich() && slot == 0 ? 2 : 1 + random.nextInt(2);
        for (int row = 0; row < rows; row++) {
            OptionalDouble wishM =
                    random.nextInt(4) == 0 ? OptionalDouble.of(5 + random.nextInt(10)) : OptionalDouble.empty();
            clubs.add(TestBags.club(kind, slot + 1, wishM));
        }
        boolean optional = random.nextInt(4) == 0 || (sort.rich() && slot == 1);
        int empty = optional ? random.nextInt(sort.options()) : -1;
        boolean pinned = random.nextInt(8) == 0 && !sort.rich();
        List<Option> options = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        for (int index = 0; index < sort.options(); index++) {
            boolean isOpen = pinned ? index == 0 : sort.rich() || random.nextInt(6) > 0;
            Club club = clubs.get(index % clubs.size());
            options.add(
                    index == empty
                            ? none(sort, slot, index, isOpen)
                            : option(random, sort, club, index, isOpen, matched));
            if (isOpen) {
                open.add(index);
            }
        }
        return new SlotOptions(
                slot + 1, clubs, options, 0, open.isEmpty() ? List.of(random.nextInt(options.size())) : open);
    }

    /** A slot left empty. */
    public static Option none(int slot, int changes) {
        return new Option(Option.keyOfNone("Golfer", slot), Optional.empty(), changes, Terms.NONE, Set.of(), List.of());
    }

    /** A slot with one iron that is matched to others; slots are 10 m apart. */
    public static SlotOptions matched(int slot, String group, double value) {
        Option bare = TestBags.carrying(200 - 10 * slot);
        return TestBags.iron(slot, with(bare, Optional.of(new MatchValue(group, value)), List.of()));
    }

    public static BagOptions matched(Aim spreadAim, SlotOptions... slots) {
        return new BagOptions(
                TestBags.golfer(OptionalInt.empty()), List.of(slots), 10, TestBags.aims(TestBags.GAP_AIM, spreadAim));
    }

    /** A bag of one iron, or of several, that take these pieces of the stock. */
    @SafeVarargs
    public static BagOptions taking(List<Integer>... takes) {
        return TestBags.bag(IntStream.range(0, takes.length)
                .mapToObj(place -> TestBags.iron(
                        place + 1, with(TestBags.carrying(200 - 10 * place), Optional.empty(), takes[place])))
                .toArray(SlotOptions[]::new));
    }

    public static Option with(Option bare, Optional<MatchValue> match, List<Integer> takes) {
        ClubSetup made = bare.setup().orElseThrow();
        ClubSetup setup = TestBags.setup(made.club(), made.choice(), made.shot(), match);
        return new Option(bare.key(), Optional.of(setup), bare.changes(), bare.terms(), bare.closedReasons(), takes);
    }

    private static Option none(Sort sort, int slot, int index, boolean open) {
        int changes = index == 0 ? 0 : 1;
        Terms terms = Terms.of(Measure.CHANGE, changes * 0.05, 0);
        List<Integer> takes = Collections.nCopies(sort.items(), 0);
        return new Option(
                Option.keyOfNone("Golfer", slot),
                Optional.empty(),
                changes,
                terms,
                TestBags.closedReasons(open),
                takes);
    }

    private static Option option(Random random, Sort sort, Club club, int index, boolean open, boolean matched) {
        double offM = random.nextGaussian() * 4;
        double carryM = 240 - 13 * club.slot() + (sort.coarse() ? Math.rint(offM) : offM);
        int changes = index == 0 ? 0 : 1 + random.nextInt(3);
        List<Integer> takes = IntStream.range(0, sort.items())
                .mapToObj(item -> random.nextInt(sort.rich() ? 2 : 4) > 0 ? 0 : 1 + random.nextInt(2))
                .toList();
        Option bare = TestBags.option(
                club, club.kind().carries() ? carryM : Double.NaN, changes, terms(random, sort, changes), open);
        return with(bare, match(random, sort, club, matched), takes);
    }

    private static Optional<MatchValue> match(Random random, Sort sort, Club club, boolean matched) {
        if (!matched || !club.kind().carries()) {
            return Optional.empty();
        }
        double value = 30 + random.nextGaussian();
        String group = club.slot() < 4 ? "long" : "short";
        return Optional.of(new MatchValue(group, sort.coarse() ? Math.rint(value * 2) / 2 : value));
    }

    private static Terms terms(Random random, Sort sort, int changes) {
        double[] points = random.doubles(5, 0, 3)
                .map(x -> sort.coarse() ? Math.floor(x) : x)
                .toArray();
        long breaks = random.nextInt(5) == 0 ? random.nextInt(2500) : 0;
        return TestBags.terms(
                Map.of(
                        Measure.LOFT, points[0],
                        Measure.LIE, points[1],
                        Measure.SITS, points[2],
                        Measure.CARRY, points[3],
                        Measure.SWINGWEIGHT, points[4],
                        Measure.CHANGE, changes * 0.05),
                breaks);
    }

    static Targets wishing(OptionalDouble gapWishM) {
        OptionalDouble none = OptionalDouble.empty();
        return new Targets(none, none, none, gapWishM, Optional.empty(), none);
    }

    /** Any option of every slot, open or not. */
    static List<List<Integer>> anyChoice(BookOptions book, Random random) {
        return book.bags().stream().map(bag -> TestBags.anyChoice(bag, random)).toList();
    }

    public static List<List<Integer>> today(BookOptions book) {
        return book.bags().stream().map(TestBags::today).toList();
    }

    public static List<StockPile> piles(BookOptions book) {
        return StockPile.all(book.stock().stream().map(StockLimit::available).toList());
    }

    /** A problem that starts with the fewest changes of every slot, or with its last options. */
    public static PlanningProblem start(BookOptions book, boolean least) {
        List<SearchBag> bags = book.bags().stream().map(SearchBag::new).toList();
        List<List<Integer>> first = bags.stream()
                .map(bag -> least
                        ? eachOwnBest(bag)
                        : bag.openBySlot().stream()
                                .map(options -> options.get(options.size() - 1).index())
                                .toList())
                .toList();
        return PlanningProblem.of(bags, piles(book), first);
    }

    /** The fewest changes first, so that it is within the most changes; of those the cheapest by themselves. */
    private static List<Integer> eachOwnBest(SearchBag bag) {
        Comparator<Candidate> order = Comparator.comparingInt(Candidate::changes)
                .thenComparing(Candidate::closed)
                .thenComparing(option -> option.own().cost());
        return bag.openBySlot().stream()
                .map(options -> options.stream().min(order).orElseThrow().index())
                .toList();
    }
}
