package org.bagwright.domain.option;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.units.Checks;

/**
 * One golfer's bag with all options, ready to be searched.
 *
 * @param golfer whose bag
 * @param slots the slots in order
 * @param gapWishM the gap he wants where neither a club's row nor its slot asks for another, metres
 * @param keptGapsM the gaps of today that he wants to keep, by the number of the slot above, metres
 * @param aims how much each measure counts
 */
public record BagOptions(
        Golfer golfer, List<SlotOptions> slots, double gapWishM, Map<Integer, Double> keptGapsM, Aims aims) {

    /** The clubs that the rules of the game allow in a bag. */
    public static final int MOST_CLUBS = 14;

    /** Whether an option may be taken. */
    @FunctionalInterface
    public interface OpenTest {
        /** Whether the option in this place of the slot in this place may be taken. */
        boolean isOpen(int slot, int option);
    }

    /** A bag of a golfer who does not ask for his gaps of today. */
    public BagOptions(Golfer golfer, List<SlotOptions> slots, double gapWishM, Aims aims) {
        this(golfer, slots, gapWishM, Map.of(), aims);
    }

    public BagOptions {
        slots = List.copyOf(slots);
        keptGapsM = Map.copyOf(keptGapsM);
        Checks.that(!slots.isEmpty(), "a bag needs a slot");
        Checks.finite(gapWishM, "gap wish");
    }

    /** How much a gap counts. */
    public Aim gapAim() {
        return aims.of(Measure.GAP);
    }

    /** How much it counts when the longest club flies less far than today's. */
    public Aim reachAim() {
        return aims.of(Measure.REACH);
    }

    /** The carry of today's longest club, the first in slot order that flies, metres; empty if none does. */
    public OptionalDouble longestTodayM() {
        return slots.stream()
                .map(SlotOptions::today)
                .map(Option::carryM)
                .filter(OptionalDouble::isPresent)
                .findFirst()
                .orElseGet(OptionalDouble::empty);
    }

    /** How much it counts when a club differs from the mean of its group. */
    public Aim spreadAim() {
        return aims.of(Measure.SPREAD);
    }

    /**
     * The options of a choice, in the order of the slots.
     *
     * @param chosen for each slot the index of its option
     */
    public List<Option> chosen(List<Integer> chosen) {
        Checks.that(chosen.size() == slots.size(), "a choice needs one option for each slot of the bag");
        return IntStream.range(0, slots.size())
                .mapToObj(slot -> slots.get(slot).options().get(chosen.get(slot)))
                .toList();
    }

    /** For each slot the index of today's option. */
    public List<Integer> today() {
        return slots.stream().map(SlotOptions::todayIndex).toList();
    }

    /** How many of an item, by its place in the stock, a choice takes. */
    public int taken(int item, List<Integer> chosen) {
        return chosen(chosen).stream()
                .mapToInt(option -> option.takes().get(item))
                .sum();
    }

    public OptionalInt mostChanges() {
        return golfer.mostChanges();
    }

    /** The gap wanted from a club to the next one that carries, metres. */
    public double wishAfterM(Option option) {
        return option.club()
                .targets()
                .gapWishM()
                .orElseGet(() -> wishAfterM(option.club().slot()));
    }

    private double wishAfterM(int slot) {
        return keptGapsM.getOrDefault(slot, gapWishM);
    }

    /** The bag with other options open; a slot that would have none keeps those that it has. */
    public BagOptions withOpen(OpenTest test) {
        List<SlotOptions> opened = IntStream.range(0, slots.size())
                .mapToObj(slot -> slots.get(slot).withOpen(option -> test.isOpen(slot, option)))
                .toList();
        return new BagOptions(golfer, opened, gapWishM, keptGapsM, aims);
    }

    /** The bag with another limit of changes. */
    public BagOptions withMostChanges(OptionalInt mostChanges) {
        return new BagOptions(golfer.withMostChanges(mostChanges), slots, gapWishM, keptGapsM, aims);
    }

    /** The bag without the musts and limits that a test does not keep. */
    public BagOptions keeping(Predicate<HardRule> kept) {
        List<SlotOptions> fewer = slots.stream()
                .map(slot -> slot.mapped(option -> option.keeping(kept)))
                .toList();
        return new BagOptions(
                golfer,
                fewer,
                gapWishM,
                keptGapsM,
                aims.mapped(aim -> aim.withMust(aim.must() && keeps(kept, aim.measure()))));
    }

    /** The same bag with all points divided by a number above 0; musts stay as they are. */
    public BagOptions cheaperBy(double divisor) {
        List<SlotOptions> cheaper = slots.stream()
                .map(slot -> slot.mapped(option -> option.cheaperBy(divisor)))
                .toList();
        return new BagOptions(golfer, cheaper, gapWishM, keptGapsM, aims.mapped(aim -> aim.cheaperBy(divisor)));
    }

    /** The musts of single clubs are kept or not in their options. */
    private static boolean keeps(Predicate<HardRule> kept, Measure measure) {
        return measure.isOfOption() || kept.test(new HardRule.Must(measure, Optional.empty()));
    }
}
