package org.bagwright.planning.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.LiveChoice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.OldSetups;
import org.bagwright.domain.plan.TodayChange;

/** A book whose live choices have become what is in the bag today. */
public final class LiveStart {
    private final Book book;
    private final BookOptions options;

    /** @param options those of the book as it is, of which every live choice must be one */
    public LiveStart(Book book, BookOptions options) {
        this.book = book;
        this.options = options;
    }

    /** What differs from the sheet Clubs, club by club. */
    public List<TodayChange> changes() {
        List<TodayChange> changes = new ArrayList<>();
        options.bags().forEach(bag -> bag.slots().forEach(slot -> book.liveChoices().stream()
                .filter(live -> live.isFor(bag.golfer().name(), slot.slot()))
                .findFirst()
                .ifPresent(live -> changes.addAll(changes(slot, live)))));
        return changes;
    }

    private static List<TodayChange> changes(SlotOptions slot, LiveChoice live) {
        Optional<ClubSetup> chosen = slot.chosenBy(live).flatMap(Option::setup);
        List<Club> now = slot.clubs().stream()
                .map(club -> chosen.filter(setup -> setup.club().equals(club))
                        .map(setup -> club.withToday(setup.choice(), true))
                        .orElseGet(() -> club.withInBag(false)))
                .toList();
        List<TodayChange> changes = new ArrayList<>();
        boolean otherClub = !now.stream()
                .map(Club::inBag)
                .toList()
                .equals(slot.clubs().stream().map(Club::inBag).toList());
        for (int index = 0; index < now.size(); index++) {
            TodayChange change = new TodayChange(slot.clubs().get(index), now.get(index), otherClub);
            if (!change.isNone()) {
                changes.add(change);
            }
        }
        return changes;
    }

    /** The book with those changes made; shots that were hit with a club as it was say so. */
    public Book book(List<TodayChange> changes) {
        OldSetups before = new OldSetups(changes, book.clubs());
        return withChanged(changes)
                .withShots(book.shots().stream()
                        .map(shot -> before.of(shot.golfer(), shot.club())
                                .map(shot::hitWith)
                                .orElse(shot))
                        .toList());
    }

    private Book withChanged(List<TodayChange> changes) {
        return book.withClubs(book.clubs().stream()
                .map(club -> changes.stream()
                        .filter(change -> change.before().cell().equals(club.cell()))
                        .map(TodayChange::after)
                        .findFirst()
                        .orElse(club))
                .toList());
    }
}
