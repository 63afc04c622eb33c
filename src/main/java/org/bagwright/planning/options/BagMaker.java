package org.bagwright.planning.options;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.bagwright.balance.ClubBalance;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.ClubWishes;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.plan.WorkProgress;
import org.bagwright.flight.golfer.GolferFlight;
import org.bagwright.geometry.ClubGeometry;

/** Turns a book into bags with all their options, and keeps what was assumed on the way. */
public final class BagMaker {
    private final Book book;
    private final List<StockLimit> stock;
    private final WorkProgress work;
    private final List<Message> messages = new ArrayList<>();
    private final List<Message> farWishes = new ArrayList<>();
    private final Map<Golfer, Workshop> workshops = new ConcurrentHashMap<>();
    private final Map<Golfer, GolferFlight> flights = new ConcurrentHashMap<>();

    public BagMaker(Book book) {
        this(book, WorkProgress.NONE);
    }

    public BagMaker(Book book, WorkProgress work) {
        this.book = book;
        this.stock = StockLimit.of(book);
        this.work = work;
    }

    /** Computes the options of a book once more, with the golfers as another maker learned them. */
    public BagMaker(Book book, BagMaker learned) {
        this(book);
        flights.putAll(learned.flights);
    }

    public List<Message> messages() {
        return messages;
    }

    /** Wishes that nothing comes near; often what follows from a figure that another message names. */
    public List<Message> farWishes() {
        return farWishes;
    }

    /** One bag for each golfer who has clubs, in the order of the book, and what they share. */
    public BookOptions bags() {
        List<BagOptions> bags = new ArrayList<>();
        for (Golfer golfer : book.golfers()) {
            work.at(WorkProgress.Stage.OPTIONS, bags.size(), book.golfers().size());
            List<Club> clubs = book.bagOf(golfer);
            if (clubs.isEmpty()) {
                messages.add(Message.warning(golfer.cell(), golfer.name() + " has no clubs, so nothing is planned"));
            } else {
                bags.add(bag(golfer, clubs));
            }
        }
        return new BookOptions(bags, stock);
    }

    private BagOptions bag(Golfer golfer, List<Club> clubs) {
        Workshop workshop = workshop(golfer);
        Map<Club, SlotClub> made = workshop.clubs();
        messages.addAll(workshop.flight().messages());
        List<SlotOptions> slots = bySlot(made.values()).parallelStream()
                .map(inSlot -> workshop.maker().options(inSlot, pin(inSlot)))
                .toList();
        made.values().forEach(club -> messages.addAll(new RatedMessages(club, book.readingsOf(club.club())).all()));
        slots.forEach(this::warnIfClosed);
        farWishes.addAll(new FarWishes(golfer, slots, book.settings().units().distance()).messages());
        GolferMessages about = new GolferMessages(golfer);
        about.soles(clubs).ifPresent(messages::add);
        messages.addAll(about.heads(clubs));
        about.face(slots).ifPresent(messages::add);
        TodayGaps gaps = new TodayGaps(golfer, slots);
        gaps.problem(book).ifPresent(messages::add);
        double wishM = golfer.gapWish().fixedM().orElseGet(gaps::meanM);
        return new BagOptions(golfer, slots, wishM, gaps.keptM(), book.aims());
    }

    /** All by which the options of a golfer's clubs are computed. */
    private record Workshop(Map<Club, SlotClub> clubs, GolferFlight flight, OptionMaker maker) {}

    private Workshop workshop(Golfer golfer) {
        Workshop known = workshops.get(golfer);
        if (known == null) {
            known = workshop(golfer, book.bagOf(golfer));
            workshops.put(golfer, known);
        }
        return known;
    }

    private Workshop workshop(Golfer golfer, List<Club> clubs) {
        Map<Club, SlotClub> made = new LinkedHashMap<>();
        for (Club club : clubs) {
            made.put(club, slotClub(golfer, club));
        }
        GolferFlight known = flights.get(golfer);
        GolferFlight flight = known == null ? learned(golfer, clubs, made) : known;
        flights.put(golfer, flight);
        return new Workshop(made, flight, new OptionMaker(book, golfer, flight, stock));
    }

    private GolferFlight learned(Golfer golfer, List<Club> clubs, Map<Club, SlotClub> made) {
        return GolferFlight.fit(
                book.settings(),
                golfer,
                clubs,
                new BagSetUps(book, golfer, made),
                book.shots().stream()
                        .filter(shot -> shot.golfer().equalsIgnoreCase(golfer.name()))
                        .toList());
    }

    /** The flight of a golfer's clubs. */
    public GolferFlight flight(Golfer golfer) {
        return workshop(golfer).flight();
    }

    /** Options of one golfer computed from the book once more, each by itself; one that leaves a slot empty stays as it is. */
    public List<Option> again(Golfer golfer, List<Option> options) {
        Workshop workshop = workshop(golfer);
        Map<Integer, List<SlotClub>> slots = workshop.clubs().values().stream()
                .collect(Collectors.groupingBy(club -> club.club().slot()));
        return options.stream()
                .map(option -> option.setup()
                        .map(setup -> workshop.maker()
                                .option(
                                        workshop.clubs().get(setup.club()),
                                        setup.choice(),
                                        pin(slots.get(setup.club().slot()))))
                        .orElse(option))
                .toList();
    }

    private SlotClub slotClub(Golfer golfer, Club club) {
        Optional<Sleeve> sleeve = book.sleeveOf(club);
        Optional<Kit> kit = book.kitOf(club);
        return new SlotClub(
                club,
                ClubWishes.of(club, golfer.limits()),
                sleeve,
                kit,
                ClubGeometry.of(club, sleeve, golfer),
                ClubBalance.of(club, kit));
    }

    private static Collection<List<SlotClub>> bySlot(Collection<SlotClub> clubs) {
        return clubs.stream()
                .collect(Collectors.groupingBy(club -> club.club().slot(), TreeMap::new, Collectors.toList()))
                .values();
    }

    private SlotPin pin(List<SlotClub> inSlot) {
        Club first = inSlot.get(0).club();
        return SlotPin.of(inSlot, book.pinOf(first.golfer(), first.slot()));
    }

    /** A pin that is no option is reported elsewhere, as a problem. */
    private void warnIfClosed(SlotOptions made) {
        boolean pinned = book.pinOf(made.main().golfer(), made.slot()).isPresent();
        if (!pinned && made.options().stream().noneMatch(Option::open)) {
            messages.add(Message.warning(
                    made.main().cell(), "no setting of " + made.main().name() + " is allowed, so it stays as it is"));
        }
    }
}
