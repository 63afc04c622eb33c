package org.bagwright;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.StockItem;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.BendRange;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.club.PortPiece;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.ClubWishes;
import org.bagwright.domain.option.ExpectedShot;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.ChoiceSureness;
import org.bagwright.domain.plan.GapOutlook;
import org.bagwright.domain.plan.MeasureNext;
import org.bagwright.domain.plan.OtherPlan;
import org.bagwright.domain.plan.PlanBounds;
import org.bagwright.domain.plan.PlanProof;
import org.bagwright.domain.plan.PlanReasons;
import org.bagwright.domain.plan.Relaxation;
import org.bagwright.domain.plan.Step;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.SpeedUnit;
import org.bagwright.domain.units.Swingweight;
import org.bagwright.domain.units.Units;
import org.bagwright.search.BagSearch;

/** A planned book of two golfers with round numbers, metres for distances, so that sums are done by hand. */
public final class SampleBags {
    private static final BendRange BENDS = new BendRange(2, 0.5);
    public static final Aims AIMS = Aims.defaults();
    public static final double WISH_M = 20;

    /** Written in the book out of the order of the clock. */
    public static final Sleeve SLEEVE = new Sleeve(
            "S1",
            List.of(
                    setting("A", 12),
                    setting("D", 6),
                    setting("B", 2),
                    setting("F", 10),
                    setting("C", 4),
                    setting("E", 8)));

    public static final Kit KIT = new Kit(
            "Front",
            List.of(
                    new Weighting("even", List.of(piece("heel", 2), piece("toe", 2))),
                    new Weighting("heel heavy", List.of(piece("heel", 12), piece("toe", 0)))));

    private static final List<StockLimit> STOCK = List.of(
            new StockLimit(
                    new StockItem(StockItem.Kind.PIECE, Optional.empty(), OptionalDouble.of(0.012), 1, "Stock!B2"), 1),
            new StockLimit(
                    new StockItem(StockItem.Kind.SLEEVE, Optional.of("S1"), OptionalDouble.empty(), 2, "Stock!B3"), 3));

    private SampleBags() {}

    public static SleeveSetting setting(String mark, double clockH) {
        return new SleeveSetting(mark, List.of(new Ring(clockH, 1.5)), true, Optional.empty());
    }

    private static PortPiece piece(String port, double massG) {
        return new PortPiece(port, massG / 1000, 0, 10, 0);
    }

    /** The book with both golfers planned: A with steps, other plans and relaxations, B with nothing to change. */
    public static BookResult book() {
        return book(List.of(golferA(), golferB()));
    }

    public static BookResult book(List<BagResult> bags) {
        BookSettings settings = new BookSettings(
                Optional.of("Spring fitting"),
                new Units(LengthUnit.METRE, SpeedUnit.METRES_PER_SECOND, LengthUnit.INCH),
                BookSettings.DEFAULT.air(),
                BookSettings.DEFAULT.ballModel(),
                BookSettings.DEFAULT.lengthLimitM(),
                BookSettings.DEFAULT.matching());
        Book book = new Book(
                settings,
                AIMS,
                bags.stream().map(BagResult::golfer).toList(),
                bags.stream()
                        .flatMap(bag -> bag.options().slots().stream())
                        .flatMap(slot -> slot.clubs().stream())
                        .toList(),
                new Book.Equipment(
                        List.of(SLEEVE),
                        List.of(KIT),
                        STOCK.stream().map(StockLimit::item).toList()),
                new Book.Measurements(List.of(), List.of(), Set.of()),
                List.of(),
                List.of());
        return new BookResult(
                book, bags, STOCK, new PlanProof(new PlanBounds(0, 0, 1), false, List.of()), List.of(), 1, 0.5);
    }

    /** Slots: driver with sleeve and kit, 5 wood or 7 wood or nothing, 7 iron to bend, putter. */
    public static BagResult golferA() {
        BagOptions options = bag("Golfer A", Hand.RIGHT, List.of(driver(), fairway(), iron(), putter("Golfer A", 4)));
        List<Integer> today = List.of(0, 0, 0, 0);
        List<Integer> plan = List.of(2, 1, 2, 0);
        List<Step> steps = List.of(
                step(options, 0, today),
                step(options, 1, List.of(0, 1, 0, 0)),
                step(options, 2, List.of(0, 1, 1, 0)),
                step(options, 5, plan));
        List<OtherPlan> others = List.of(
                new OtherPlan("driver at another setting", BagSearch.state(options, List.of(1, 1, 2, 0))),
                new OtherPlan("one club fewer", BagSearch.state(options, List.of(2, 2, 2, 0))));
        List<Relaxation> relaxations = List.of(
                new Relaxation("Golfers!L2", "the limit of 5 changes", 3.25, 0),
                new Relaxation("Clubs!H5", "the bend limit of the 7 iron", 0.5, 0),
                new Relaxation("Aims!D5", "the must of gap", 0.25, 400));
        BagOutlook outlook = new BagOutlook(
                List.of(),
                List.of(),
                List.of(new GapOutlook(0, 1, 15, 25, 0.83, 0.5), new GapOutlook(1, 2, 15, 25, 0.64, 0.5)),
                List.of(
                        new ChoiceSureness(
                                0, 0.62, List.of(new ChoiceSureness.Share(2, 0.62), new ChoiceSureness.Share(1, 0.3))),
                        new ChoiceSureness(
                                1, 0.45, List.of(new ChoiceSureness.Share(0, 0.55), new ChoiceSureness.Share(1, 0.45))),
                        new ChoiceSureness(2, 0.714, List.of(new ChoiceSureness.Share(2, 0.714))),
                        new ChoiceSureness(3, 1, List.of(new ChoiceSureness.Share(0, 1)))),
                new MeasureNext(
                        List.of(
                                new MeasureNext.Advice(
                                        1,
                                        "Driver",
                                        MeasureNext.What.SHOTS,
                                        Optional.of("B"),
                                        1.234,
                                        MeasureNext.Worth.LIKELY),
                                new MeasureNext.Advice(
                                        3,
                                        "7 iron",
                                        MeasureNext.What.GAUGE,
                                        Optional.empty(),
                                        0.1,
                                        MeasureNext.Worth.LITTLE)),
                        false));
        return new BagResult(
                options,
                BagSearch.state(options, today),
                BagSearch.state(options, plan),
                new PlanReasons(steps, others, relaxations, List.of()),
                Optional.of(outlook),
                List.of());
    }

    /** Two clubs that stay as they are. */
    public static BagResult golferB() {
        Club iron = club("Golfer B", 1, "6 iron", ClubKind.IRON).bends(BENDS).made();
        Club wedge =
                club("Golfer B", 2, "50 wedge", ClubKind.WEDGE).bends(BENDS).made();
        BagOptions options = bag(
                "Golfer B",
                Hand.LEFT,
                List.of(
                        slot(iron, shot(iron, Bend.NONE, 30, 62, 150, 0)),
                        slot(wedge, shot(wedge, Bend.NONE, 50, 62, 127, 0))));
        return BagResult.of(options, BagSearch.state(options, List.of(0, 0)), BagSearch.state(options, List.of(0, 0)));
    }

    /** A bag of as many irons, each of them bent in loft and in lie. */
    public static BagResult bentIrons(String golfer, int clubs) {
        List<SlotOptions> slots = new ArrayList<>();
        for (int slot = 1; slot <= clubs; slot++) {
            Club iron = club(golfer, slot, "Iron with a long name " + slot, ClubKind.IRON)
                    .bends(BENDS)
                    .made();
            slots.add(slot(
                    iron,
                    shot(iron, Bend.NONE, 18 + 3 * slot, 62, 250 - 12 * slot, 0),
                    shot(iron, new Bend(-1.5, 0.5), 17 + 3 * slot, 62.5, 252 - 12 * slot, 2)));
        }
        BagOptions options = bag(golfer, Hand.RIGHT, slots);
        List<Integer> today = IntStream.range(0, clubs).mapToObj(slot -> 0).toList();
        List<Integer> plan = IntStream.range(0, clubs).mapToObj(slot -> 1).toList();
        return BagResult.of(options, BagSearch.state(options, today), BagSearch.state(options, plan));
    }

    private static Step step(BagOptions options, int changes, List<Integer> chosen) {
        return new Step(changes, BagSearch.state(options, chosen));
    }

    private static SlotOptions driver() {
        Club driver = club("Golfer A", 1, "Driver", ClubKind.DRIVER)
                .sleeve("S1", "A")
                .kit("Front", "even")
                .made();
        return slot(
                driver,
                set(driver, "A", "even", 10.5, 58, 0.04, 200, 32, 0),
                set(driver, "B", "even", 12.3, 58.4, 1.24, 204, 32, 1),
                set(driver, "E", "heel heavy", 12.3, 58.6, -1.24, 210, 36.5, 2));
    }

    private static SlotOptions fairway() {
        Club five = club("Golfer A", 2, "5 wood", ClubKind.WOOD).made();
        Club seven = club("Golfer A", 2, "7 wood", ClubKind.WOOD).onBench().made();
        Option none =
                new Option(Option.keyOfNone("Golfer A", 2), Optional.empty(), 1, Terms.NONE, Set.of(), List.of(0, 0));
        return new SlotOptions(
                2,
                List.of(five, seven),
                List.of(shot(five, Bend.NONE, 18, 62, 190, 0), shot(seven, Bend.NONE, 21, 62, 185, 1), none),
                0,
                List.of(0, 1, 2));
    }

    private static SlotOptions iron() {
        Club iron = club("Golfer A", 3, "7 iron", ClubKind.IRON).bends(BENDS).made();
        return slot(
                iron,
                shot(iron, Bend.NONE, 32, 62, 150, 0),
                shot(iron, new Bend(1, 0), 33, 62, 146, 1),
                shot(iron, new Bend(1, -0.5), 33, 61.5, 145, 2));
    }

    public static SlotOptions putter(String golfer, int slot) {
        Club putter = club(golfer, slot, "Putter", ClubKind.PUTTER).made();
        return slot(putter, option(putter, new Choice(Optional.empty(), Bend.NONE), 4, 62, 0, Double.NaN, 30, 0));
    }

    private static Option set(
            Club club,
            String setting,
            String weighting,
            double loftDeg,
            double lieDeg,
            double sitsDeg,
            double carryM,
            double swingweightPoints,
            int changes) {
        Choice choice = new Choice(Optional.of(setting), Optional.of(weighting), Bend.NONE);
        return option(club, choice, loftDeg, lieDeg, sitsDeg, carryM, swingweightPoints, changes);
    }

    public static Option shot(Club club, Bend bend, double loftDeg, double lieDeg, double carryM, int changes) {
        return option(club, new Choice(Optional.empty(), bend), loftDeg, lieDeg, 0, carryM, 30, changes);
    }

    private static Option option(
            Club club,
            Choice choice,
            double loftDeg,
            double lieDeg,
            double sitsDeg,
            double carryM,
            double swingweightPoints,
            int changes) {
        PoseNumbers pose = new PoseNumbers(
                new PoseNumbers.Gauge(loftDeg, lieDeg),
                new PoseNumbers.Address(loftDeg, 0, 0, 0, 0, 0),
                new PoseNumbers.Resting(sitsDeg, loftDeg),
                0);
        Optional<ShotPrediction> shot = Double.isNaN(carryM)
                ? Optional.empty()
                : Optional.of(new ShotPrediction(60, 12, 3000, carryM, 30, 40, 0, 0));
        BuildNumbers build = new BuildNumbers(1, 0.2, 0.32, new Swingweight(swingweightPoints), 0.75, 0.27, 4e-4);
        ClubSetup setup = new ClubSetup(
                club,
                ClubWishes.of(club, Limits.NONE),
                choice,
                pose,
                0,
                shot.map(ExpectedShot::certain),
                build,
                Optional.empty());
        Optional<Weighting> weighting = choice.weighting().flatMap(KIT::weighting);
        List<Integer> takes = STOCK.stream()
                .map(limit -> limit.item().takenBy(club, weighting))
                .toList();
        Terms terms = Terms.of(Measure.CHANGE, 0.05 * changes, 0);
        return new Option(Option.keyOf(club, choice), Optional.of(setup), changes, terms, Set.of(), takes);
    }

    public static SlotOptions slot(Club club, Option... options) {
        return new SlotOptions(
                club.slot(),
                List.of(club),
                List.of(options),
                0,
                IntStream.range(0, options.length).boxed().toList());
    }

    public static BagOptions bag(String name, Hand hand, List<SlotOptions> slots) {
        Golfer golfer = new GolferSketch(name).hand(hand).golfer();
        return new BagOptions(golfer, slots, WISH_M, AIMS);
    }

    public static ClubSketch club(String golfer, int slot, String name, ClubKind kind) {
        return new ClubSketch(golfer, slot, name, kind, "Clubs!C" + (slot + 1))
                .head(30, kind == ClubKind.DRIVER ? 58 : 62);
    }
}
