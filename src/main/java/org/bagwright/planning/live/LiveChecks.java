package org.bagwright.planning.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.LiveChoice;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;

/** Holds choices of the sheet Plan against the options that the book gives now. */
public final class LiveChecks {
    private final BookOptions options;
    private final String what;

    /** @param what what the choices are for, such as {@code the pinned choice} */
    public LiveChecks(BookOptions options, String what) {
        this.options = options;
        this.what = what;
    }

    /** A problem for every choice that is no option, and for every one of several for the same slot. */
    public List<Message> problems(List<LiveChoice> choices) {
        List<Message> problems = new ArrayList<>();
        for (int index = 0; index < choices.size(); index++) {
            LiveChoice choice = choices.get(index);
            boolean twice =
                    choices.subList(0, index).stream().anyMatch(other -> other.isFor(choice.golfer(), choice.slot()));
            (twice ? Optional.of("has a second row for the same slot; expected one") : problem(choice))
                    .ifPresent(text ->
                            problems.add(Message.problem(choice.cell(), what + " of " + place(choice) + " " + text)));
        }
        return problems;
    }

    private static String place(LiveChoice choice) {
        return choice.golfer() + ", slot " + choice.slot() + ",";
    }

    private Optional<String> problem(LiveChoice choice) {
        Optional<SlotOptions> slot = slot(choice);
        if (slot.isEmpty()) {
            return Optional.of("has no place: the sheet Clubs no longer has this slot; expected a row of a slot that"
                    + " the book has");
        }
        Optional<Option> chosen = slot.get().chosenBy(choice);
        if (chosen.isEmpty()) {
            return Optional.of("is not an option of this slot, found " + choice.inWords()
                    + "; expected a club of the slot, a setting of its sleeve, a weighting of its kit and bends within"
                    + " its limit, as in the lists of these cells");
        }
        return slot.get().clubs().stream()
                .filter(Club::pinned)
                .findFirst()
                .filter(club -> choice.pinned() && !isAsPinned(chosen.get(), club))
                .map(club ->
                        "is not what the sheet Clubs pins, found " + choice.inWords() + " here and Pinned in the row"
                                + " of " + club.name() + " (" + club.cell() + "); expected only one of the two pins");
    }

    private static boolean isAsPinned(Option option, Club club) {
        return !option.isEmpty()
                && option.club().equals(club)
                && option.choice().itemsThatDiffer(club.tidiedToday()) == 0;
    }

    private Optional<SlotOptions> slot(LiveChoice choice) {
        return options.bags().stream()
                .flatMap(bag -> slots(bag, choice).stream())
                .findFirst();
    }

    private static List<SlotOptions> slots(BagOptions bag, LiveChoice choice) {
        return bag.slots().stream()
                .filter(slot -> choice.isFor(bag.golfer().name(), slot.slot()))
                .toList();
    }
}
