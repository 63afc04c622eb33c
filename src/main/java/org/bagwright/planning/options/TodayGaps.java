package org.bagwright.planning.options;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.GapWish;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/**
 * The gaps of a bag today, as the wishes of a golfer who wants them even or as they are.
 *
 * @param golfer the golfer
 * @param slots the slots of his bag
 */
record TodayGaps(Golfer golfer, List<SlotOptions> slots) {

    /** The mean: the carries of the first and the last club that carry shared out over the gaps; 0 with fewer than two. */
    double meanM() {
        List<Option> flying = flying();
        int gaps = flying.size() - 1;
        return gaps < 1 ? 0 : (carryM(flying.get(0)) - carryM(flying.get(gaps))) / gaps;
    }

    /** Each gap by the number of the slot above it, metres, where the golfer wants to keep them; elsewhere none. */
    Map<Integer, Double> keptM() {
        if (golfer.gapWish().kind() != GapWish.Kind.TODAY) {
            return Map.of();
        }
        List<Option> flying = flying();
        return IntStream.range(0, Math.max(0, flying.size() - 1))
                .boxed()
                .collect(Collectors.toMap(
                        index -> flying.get(index).club().slot(),
                        index -> carryM(flying.get(index)) - carryM(flying.get(index + 1))));
    }

    private List<Option> flying() {
        return slots.stream()
                .map(SlotOptions::today)
                .filter(option -> option.carryM().isPresent())
                .toList();
    }

    private static double carryM(Option option) {
        return option.carryM().orElseThrow();
    }

    /** The problem that the mean gap is none, at the measured carry that must be wrong; empty where all is well. */
    Optional<Message> problem(Book book) {
        List<Option> flying = flying();
        if (golfer.gapWish().kind() != GapWish.Kind.EVEN || flying.size() < 2 || meanM() > 0) {
            return Optional.empty();
        }
        int last = flying.size() - 1;
        boolean first = last == 1 || carryM(flying.get(0)) < carryM(flying.get(1));
        Option odd = flying.get(first ? 0 : last);
        LengthUnit distance = book.settings().units().distance();
        return measured(book, odd.club())
                .map(shot -> Message.problem(
                        shot.cell(),
                        "carry of " + odd.clubText() + " cannot be right, found "
                                + Numbers.fixed(distance.fromM(carryM(odd)), 1) + " " + distance.label()
                                + ": the mean gap of today's bag, which the gap wish even asks for, comes out at "
                                + Numbers.fixed(distance.fromM(meanM()), 1)
                                + "; expected carries that fall from the first club to the last, or a gap wish in "
                                + distance.label() + "."));
    }

    /** The first shot with a club whose carry was measured. */
    private static Optional<Shot> measured(Book book, Club club) {
        return book.shots().stream()
                .filter(shot -> shot.golfer().equalsIgnoreCase(club.golfer()))
                .filter(shot -> shot.club().equalsIgnoreCase(club.name()))
                .filter(shot -> shot.measured().carryM().isPresent())
                .findFirst();
    }
}
