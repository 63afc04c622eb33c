package org.bagwright.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.Book;
import org.bagwright.domain.Club;
import org.bagwright.domain.ClubOptions;
import org.bagwright.domain.Golfer;
import org.bagwright.domain.Measure;
import org.bagwright.domain.Message;
import org.bagwright.flight.GolferFlight;
import org.bagwright.geometry.ClubGeometry;

/** Turns a book into bags with all their options, and keeps what was assumed on the way. */
final class BagMaker {
    private final Book book;
    private final List<Message> messages = new ArrayList<>();

    BagMaker(Book book) {
        this.book = book;
    }

    List<Message> messages() {
        return messages;
    }

    /** One bag for each golfer who has clubs, in the order of the book. */
    List<BagOptions> bags() {
        List<BagOptions> bags = new ArrayList<>();
        for (Golfer golfer : book.golfers()) {
            List<Club> clubs = book.bagOf(golfer);
            if (clubs.isEmpty()) {
                messages.add(Message.warning(golfer.cell(), golfer.name() + " has no clubs, so nothing is planned"));
            } else {
                bags.add(bag(golfer, clubs));
            }
        }
        return bags;
    }

    private BagOptions bag(Golfer golfer, List<Club> clubs) {
        Map<Club, ClubGeometry> geometries = new HashMap<>();
        for (Club club : clubs) {
            geometries.put(club, ClubGeometry.of(club, book.sleeveOf(club), golfer));
        }
        GolferFlight flight = GolferFlight.fit(
                book.settings(),
                golfer,
                clubs,
                club -> OptionMaker.presentedLoftDeg(
                        golfer, geometries.get(club).pose(OptionMaker.today(club))),
                book.shots().stream()
                        .filter(shot -> shot.golfer().equalsIgnoreCase(golfer.name()))
                        .toList());
        messages.addAll(flight.messages());
        OptionMaker maker = new OptionMaker(golfer, book.aims(), flight);
        List<ClubOptions> options = new ArrayList<>();
        for (Club club : clubs) {
            ClubOptions made = maker.options(club, book.sleeveOf(club), geometries.get(club));
            options.add(made);
            messages.addAll(RatedMessages.of(club, book.sleeveOf(club), geometries.get(club)));
            warnIfClosed(made);
        }
        SoleMessages.of(golfer, clubs).ifPresent(messages::add);
        FaceMessages.of(golfer, options).ifPresent(messages::add);
        return new BagOptions(
                golfer, options, gapWishesM(golfer, options), book.aims().of(Measure.GAP));
    }

    private void warnIfClosed(ClubOptions made) {
        if (made.options().stream().noneMatch(option -> option.open())) {
            messages.add(Message.warning(
                    made.club().cell(),
                    "no setting of " + made.club().name() + " is allowed to a plan, so it stays as it is"));
        }
    }

    private static List<Double> gapWishesM(Golfer golfer, List<ClubOptions> clubs) {
        List<ClubOptions> carrying =
                clubs.stream().filter(club -> club.club().kind().carries()).toList();
        if (carrying.size() < 2) {
            return List.of();
        }
        double evenM =
                (carryTodayM(carrying.get(0)) - carryTodayM(carrying.get(carrying.size() - 1))) / (carrying.size() - 1);
        double golferM = golfer.gaps().wish().fixedM().orElse(evenM);
        List<Double> wishes = new ArrayList<>();
        for (ClubOptions club : carrying.subList(0, carrying.size() - 1)) {
            OptionalDouble own = club.club().targets().gapWishM();
            wishes.add(own.orElse(golferM));
        }
        return wishes;
    }

    private static double carryTodayM(ClubOptions club) {
        return club.today().carryM().orElseThrow();
    }
}
