package org.bagwright.domain.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.LengthUnit;

/**
 * Planned books next to each other, golfer by golfer. Distances are shown in the unit of the first book.
 *
 * @param books at least two
 */
public record Comparison(List<ComparedBook> books) {

    /** What is shown instead of a club where a book has no such golfer or slot. */
    public static final String ABSENT = "-";

    /**
     * What fills one slot in every book.
     *
     * @param slot its number
     * @param state {@code today} or {@code planned}
     * @param choices what fills it, in the order of the books
     */
    public record Difference(int slot, String state, List<String> choices) {
        public Difference {
            choices = List.copyOf(choices);
        }
    }

    public Comparison {
        books = List.copyOf(books);
        Checks.that(books.size() >= 2, "a comparison needs at least two books");
    }

    public LengthUnit distance() {
        return books.get(0).result().book().settings().units().distance();
    }

    /** Every golfer who has a bag in any book, in the order of the books. */
    public List<String> golfers() {
        List<String> names = new ArrayList<>();
        books.forEach(book -> book.result().bags().stream()
                .map(bag -> bag.golfer().name())
                .filter(name -> names.stream().noneMatch(name::equalsIgnoreCase))
                .forEach(names::add));
        return names;
    }

    /** A golfer in all books that have him. */
    public ComparedGolfer golfer(String golfer) {
        return new ComparedGolfer(books, golfer);
    }

    /** The bag of a golfer in every book, in their order. */
    public List<Optional<BagResult>> bagsOf(String golfer) {
        return books.stream().map(book -> book.bagOf(golfer)).toList();
    }

    /** The names of the books that have no bag of a golfer. */
    public List<String> without(String golfer) {
        return books.stream()
                .filter(book -> book.bagOf(golfer).isEmpty())
                .map(ComparedBook::name)
                .toList();
    }

    /** The slots that the books which have this golfer do not fill alike, today's first. */
    public List<Difference> differences(String golfer) {
        List<Difference> all = new ArrayList<>(differences(golfer, "today", BagResult::today));
        all.addAll(differences(golfer, "planned", BagResult::planned));
        return all;
    }

    private List<Difference> differences(String golfer, String label, Function<BagResult, BagState> state) {
        List<Optional<BagResult>> bags = bagsOf(golfer);
        TreeSet<Integer> slots = new TreeSet<>();
        bags.forEach(bag -> bag.ifPresent(found -> found.options().slots().forEach(slot -> slots.add(slot.slot()))));
        return slots.stream()
                .map(slot -> new Difference(
                        slot,
                        label,
                        bags.stream()
                                .map(bag -> bag.flatMap(found -> inSlot(found, state.apply(found), slot))
                                        .orElse(ABSENT))
                                .toList()))
                .filter(difference -> differs(difference, bags))
                .toList();
    }

    private static boolean differs(Difference difference, List<Optional<BagResult>> bags) {
        return IntStream.range(0, bags.size())
                        .filter(index -> bags.get(index).isPresent())
                        .mapToObj(index -> difference.choices().get(index).toLowerCase(Locale.ROOT))
                        .distinct()
                        .count()
                > 1;
    }

    private static Optional<String> inSlot(BagResult bag, BagState state, int slot) {
        List<Option> options = bag.optionsOf(state);
        return IntStream.range(0, options.size())
                .filter(index -> bag.options().slots().get(index).slot() == slot)
                .mapToObj(index -> inWords(options.get(index)))
                .findFirst();
    }

    /** An option as people read it, such as {@code Driver, setting 2}. */
    static String inWords(Option option) {
        if (option.isEmpty()) {
            return Option.LEFT_OUT;
        }
        Choice choice = option.choice();
        StringBuilder words = new StringBuilder(option.clubText());
        choice.setting().ifPresent(mark -> words.append(", setting ").append(mark));
        choice.weighting().ifPresent(name -> words.append(", weighting ").append(name));
        bend(words, ", loft bend ", choice.bend().loftDeg());
        bend(words, ", lie bend ", choice.bend().lieDeg());
        return words.toString();
    }

    private static void bend(StringBuilder words, String what, double bendDeg) {
        String text = OptionChange.bendText(bendDeg);
        if (!text.equals("0")) {
            words.append(what).append(text);
        }
    }
}
