package org.bagwright.planning.reasons;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;

/** Bags that differ from another in what a plan may take or must keep. */
final class BagEdits {

    private BagEdits() {}

    /** Whether an option, by the places of its slot and of its own, is open. */
    @FunctionalInterface
    interface Opening {
        boolean isOpen(int slot, int option);
    }

    /** The bag with other options open; a slot that would have none keeps those that it has. */
    static BagOptions opening(BagOptions bag, Opening opening) {
        List<SlotOptions> slots = IntStream.range(0, bag.slots().size())
                .mapToObj(index -> opening(bag.slots().get(index), option -> opening.isOpen(index, option)))
                .toList();
        return new BagOptions(bag.golfer(), slots, bag.gapWishM(), bag.gapAim(), bag.spreadAim());
    }

    private static SlotOptions opening(SlotOptions slot, IntPredicate open) {
        List<Integer> indexes =
                IntStream.range(0, slot.options().size()).filter(open).boxed().toList();
        return new SlotOptions(
                slot.slot(),
                slot.clubs(),
                lifted(slot, indexes),
                slot.todayIndex(),
                indexes.isEmpty() ? slot.openIndexes() : indexes);
    }

    /** The options, newly opened ones without the reasons that closed them, since a score counts those. */
    private static List<Option> lifted(SlotOptions slot, List<Integer> indexes) {
        return IntStream.range(0, slot.options().size())
                .mapToObj(index -> {
                    Option option = slot.options().get(index);
                    boolean opened =
                            indexes.contains(index) && !slot.openIndexes().contains(index);
                    return opened ? free(option) : option;
                })
                .toList();
    }

    private static Option free(Option option) {
        return new Option(option.key(), option.setup(), option.changes(), option.terms(), Set.of(), option.takes());
    }

    /** The bag with another limit of changes. */
    static BagOptions withMostChanges(BagOptions bag, OptionalInt mostChanges) {
        return new BagOptions(
                bag.golfer().withMostChanges(mostChanges), bag.slots(), bag.gapWishM(), bag.gapAim(), bag.spreadAim());
    }

    /**
     * The bag with other musts.
     *
     * @param breaks what each option breaks by itself, thousandths
     */
    static BagOptions withMusts(BagOptions bag, ToLongFunction<Option> breaks, boolean gapMust, boolean spreadMust) {
        List<SlotOptions> slots = bag.slots().stream()
                .map(slot -> new SlotOptions(
                        slot.slot(),
                        slot.clubs(),
                        slot.options().stream()
                                .map(option -> withBreaks(option, breaks.applyAsLong(option)))
                                .toList(),
                        slot.todayIndex(),
                        slot.openIndexes()))
                .toList();
        return new BagOptions(
                bag.golfer(), slots, bag.gapWishM(), must(bag.gapAim(), gapMust), must(bag.spreadAim(), spreadMust));
    }

    private static Option withBreaks(Option option, long breaks) {
        return new Option(
                option.key(),
                option.setup(),
                option.changes(),
                option.terms().withHardBreaks(breaks),
                option.barriers(),
                option.takes());
    }

    private static Aim must(Aim aim, boolean must) {
        return new Aim(aim.measure(), aim.toleranceMeasureUnits(), aim.importancePoints(), must);
    }
}
