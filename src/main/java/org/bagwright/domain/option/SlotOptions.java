package org.bagwright.domain.option;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.bagwright.domain.book.LiveChoice;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.units.Checks;

/**
 * A place in a bag with every way to fill it.
 *
 * @param slot its number, 1 the longest
 * @param clubs the clubs that may fill it, in the order of the book
 * @param options all options, at least one
 * @param todayIndex which of them is today's
 * @param openIndexes which of them a plan may take; at least one
 */
public record SlotOptions(int slot, List<Club> clubs, List<Option> options, int todayIndex, List<Integer> openIndexes) {

    public SlotOptions {
        clubs = List.copyOf(clubs);
        options = List.copyOf(options);
        openIndexes = List.copyOf(openIndexes);
        Checks.that(!clubs.isEmpty(), "a slot needs a club that may fill it");
        Checks.that(todayIndex >= 0 && todayIndex < options.size(), "today must be one of the options");
        Checks.that(!openIndexes.isEmpty(), "a plan needs an open option for every slot");
    }

    public Option today() {
        return options.get(todayIndex);
    }

    /** The club that gives the slot its name: today's, or the first that may fill it. */
    public Club main() {
        return today().setup().map(ClubSetup::club).orElse(clubs.get(0));
    }

    /** The options of one of its clubs. */
    public List<Option> optionsOf(Club club) {
        return options.stream()
                .filter(option -> option.setup().isPresent() && option.club().equals(club))
                .toList();
    }

    /** The standard deviation of the change of carry from what is in the slot today to an option, m; empty where one does not fly. */
    public OptionalDouble changeSdM(Option option) {
        if (option.carryM().isEmpty() || today().carryM().isEmpty()) {
            return OptionalDouble.empty();
        }
        CarryDoubt today = today().doubt();
        return OptionalDouble.of(Math.sqrt(
                option.club().equals(today().club())
                        ? option.doubt().changeVarianceM2(today)
                        : option.doubt().gapVarianceM2(today)));
    }

    /** The option that is today's set-up of one of its clubs, in the bag or not. */
    public Optional<Option> todayOf(Club club) {
        Choice today = club.tidiedToday();
        return options.stream()
                .filter(other -> !other.isEmpty() && other.choice().itemsThatDiffer(today) == 0)
                .filter(other -> other.club().equals(club))
                .findFirst();
    }

    /** Whether there is anything to choose but settings, weightings and bends of one club. */
    public boolean hasCandidates() {
        return clubs.size() > 1 || options.stream().anyMatch(Option::isEmpty);
    }

    /** The slot with other options open; with those that it has now if there would be none. */
    SlotOptions withOpen(IntPredicate open) {
        List<Integer> indexes =
                IntStream.range(0, options.size()).filter(open).boxed().toList();
        List<Option> opened = IntStream.range(0, options.size())
                .mapToObj(index -> indexes.contains(index) && !openIndexes.contains(index)
                        ? options.get(index).opened()
                        : options.get(index))
                .toList();
        return new SlotOptions(slot, clubs, opened, todayIndex, indexes.isEmpty() ? openIndexes : indexes);
    }

    /** The slot with something changed in each option. */
    public SlotOptions mapped(UnaryOperator<Option> change) {
        return new SlotOptions(slot, clubs, options.stream().map(change).toList(), todayIndex, openIndexes);
    }

    /** The option that a person has chosen on the sheet Plan; empty where it is none of these. */
    public Optional<Option> chosenBy(LiveChoice live) {
        return options.stream()
                .filter(option -> option.setup()
                        .map(made -> live.means(made.club(), made.choice()))
                        .orElse(live.club().equalsIgnoreCase(Option.LEFT_OUT)))
                .findFirst();
    }
}
