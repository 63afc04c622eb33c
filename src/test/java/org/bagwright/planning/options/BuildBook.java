package org.bagwright.planning.options;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.bagwright.ClubSketch;
import org.bagwright.GolferSketch;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.BendRange;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.PortPiece;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.planning.outlook.Outlooks;
import org.bagwright.search.BagSearch;
import org.bagwright.search.model.DoubtfulBooks;
import org.bagwright.search.model.SearchLimits;

/** An invented book with everything that a builder may choose, planned. */
public final class BuildBook {
    private static final BendRange BENDS = new BendRange(1, 0.5);
    private static final double M_PER_IN = 0.0254;

    private BuildBook() {}

    public static BookResult planned() {
        Book book = book(aims());
        return planned(book, new BagMaker(book).bags());
    }

    /** The same book with carries in doubt, the same doubts for either kind of aim. */
    public static BookResult doubtful(boolean onWhatIsLikely) {
        Book book = book(aims().mapped(aim -> aim.onWhatIsLikely(onWhatIsLikely)));
        return planned(book, DoubtfulBooks.byAims(new BagMaker(book).bags(), 4));
    }

    private static BookResult planned(Book book, BookOptions options) {
        BookPlan plan = new BagSearch(new SearchLimits(1, 10)).plan(options);
        Outlooks outlooks = new Outlooks(book, new BagMaker(book), 1);
        List<BagResult> bags = new ArrayList<>();
        for (int index = 0; index < options.bags().size(); index++) {
            var bag = options.bags().get(index);
            BagState today = BagSearch.state(
                    bag, bag.slots().stream().map(SlotOptions::todayIndex).toList());
            BagState best = BagSearch.state(bag, plan.bags().get(index).chosen());
            bags.add(outlooks.with(BagResult.of(bag, today, best)));
        }
        return new BookResult(book, bags, options.stock(), plan.proof(), List.of(), 1, 0.1);
    }

    private static Book book(Aims aims) {
        return new Book(
                BookSettings.DEFAULT,
                aims,
                List.of(golfer("Golfer A", Hand.RIGHT), golfer("Golfer B", Hand.LEFT)),
                clubs(),
                new Book.Equipment(
                        List.of(sleeve("Sleeve P", 4, 1.5), sleeve("Sleeve Q", 3, 1)), List.of(kit()), List.of()),
                new Book.Measurements(List.of(), List.of(), Set.of()),
                List.of(),
                List.of());
    }

    private static Aims aims() {
        Map<Measure, Aim> aims = new EnumMap<>(Aims.defaults().byMeasure());
        aims.put(Measure.SPREAD, new Aim(Measure.SPREAD, 2, 0.3, false));
        return new Aims(aims);
    }

    private static Golfer golfer(String name, Hand hand) {
        return new GolferSketch(name)
                .hand(hand)
                .speeds(OptionalDouble.of(43), OptionalDouble.of(36))
                .sits(-2, 2)
                .golfer();
    }

    private static Sleeve sleeve(String name, int settings, double bendDeg) {
        return new Sleeve(
                name,
                IntStream.range(0, settings)
                        .mapToObj(mark -> new SleeveSetting(
                                String.valueOf(mark + 1),
                                List.of(new Ring(12.0 * mark / settings, bendDeg)),
                                true,
                                Optional.empty()))
                        .toList());
    }

    private static Kit kit() {
        return new Kit(
                "Kit W",
                List.of(
                        new Weighting("back", List.of(new PortPiece("rear", 0.012, 0, 0, 0))),
                        new Weighting("light", List.of(new PortPiece("rear", 0.002, 0, 0, 0)))));
    }

    private static List<Club> clubs() {
        return List.of(
                draft("Golfer A", 1, "Driver", ClubKind.DRIVER, 10.5, 58, 45)
                        .sleeve("Sleeve P", "1")
                        .kit("Kit W", "back")
                        .swingweight(32.5)
                        .made(),
                draft("Golfer A", 2, "3 wood", ClubKind.WOOD, 15, 57.5, 43)
                        .sleeve("Sleeve P", "2")
                        .made(),
                draft("Golfer A", 2, "4 wood", ClubKind.WOOD, 17, 58, 42.5)
                        .sleeve("Sleeve Q", "1")
                        .kit("Kit W", "light")
                        .onBench()
                        .swingweight(31)
                        .made(),
                draft("Golfer A", 3, "5 wood", ClubKind.WOOD, 18.5, 58, 42)
                        .sleeve("Sleeve P", "1")
                        .optional()
                        .made(),
                draft("Golfer A", 3, "3 hybrid", ClubKind.HYBRID, 19.5, 58.5, 40.5)
                        .onBench()
                        .made(),
                draft("Golfer A", 4, "6 iron", ClubKind.IRON, 28, 61.5, 37.5)
                        .bends(BENDS)
                        .swingweight(31)
                        .made(),
                draft("Golfer A", 5, "8 iron", ClubKind.IRON, 36, 63, 36.5)
                        .bends(BENDS)
                        .made(),
                draft("Golfer A", 6, "Wedge", ClubKind.WEDGE, 48, 64, 35.5)
                        .bends(BENDS)
                        .made(),
                draft("Golfer A", 7, "Putter", ClubKind.PUTTER, 3, 70, 34).made(),
                draft("Golfer B", 1, "Driver", ClubKind.DRIVER, 12, 58, 44.5).made(),
                draft("Golfer B", 2, "5 wood", ClubKind.WOOD, 19, 58, 42)
                        .onBench()
                        .made(),
                draft("Golfer B", 3, "7 iron", ClubKind.IRON, 32, 62.5, 37)
                        .bends(BENDS)
                        .made());
    }

    private static ClubSketch draft(
            String golfer, int slot, String name, ClubKind kind, double loftDeg, double lieDeg, double lengthIn) {
        return new ClubSketch(golfer, slot, name, kind, "Clubs!C2")
                .head(loftDeg, lieDeg)
                .lengthM(lengthIn * M_PER_IN);
    }
}
