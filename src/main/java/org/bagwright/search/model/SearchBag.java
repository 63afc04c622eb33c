package org.bagwright.search.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.model.Candidate.Taken;

/** What the search needs of a bag as a whole. Two bags are equal only if they are the same object. */
public final class SearchBag {
    private final List<List<Candidate>> openBySlot;
    private final List<Map<Integer, List<Candidate>>> takingBySlot;
    private final List<String> groups;
    private final List<OptionTable> tables;
    private final List<Boolean> alwaysFlies;
    private final Aim gapAim;
    private final Aim spreadAim;
    private final int mostChanges;
    private final int affordedChanges;

    public SearchBag(BagOptions bag) {
        openBySlot = bag.slots().stream().map(slot -> openCandidates(bag, slot)).toList();
        takingBySlot = openBySlot.stream().map(SearchBag::byItem).toList();
        groups = groups(openBySlot);
        tables = openBySlot.stream()
                .map(options -> new OptionTable(options, groups))
                .toList();
        alwaysFlies = bag.slots().stream().map(SearchBag::alwaysFlies).toList();
        gapAim = bag.gapAim();
        spreadAim = bag.spreadAim();
        mostChanges = bag.mostChanges().orElse(Integer.MAX_VALUE);
        affordedChanges = Math.max(mostChanges, leastChanges(openBySlot));
    }

    private static List<Candidate> openCandidates(BagOptions bag, SlotOptions slot) {
        return slot.openIndexes().stream()
                .sorted()
                .distinct()
                .map(index -> candidate(bag, slot, index))
                .toList();
    }

    private static List<String> groups(List<List<Candidate>> openBySlot) {
        return openBySlot.stream()
                .flatMap(List::stream)
                .flatMap(option -> option.match().stream())
                .map(MatchValue::group)
                .distinct()
                .toList();
    }

    private static Map<Integer, List<Candidate>> byItem(List<Candidate> options) {
        Map<Integer, List<Candidate>> taking = new HashMap<>();
        for (Candidate option : options) {
            for (Taken some : option.taken()) {
                taking.computeIfAbsent(some.item(), item -> new ArrayList<>()).add(option);
            }
        }
        return taking;
    }

    private static boolean alwaysFlies(SlotOptions slot) {
        return slot.options().stream()
                .noneMatch(option -> option.isEmpty() || !option.club().kind().carries());
    }

    static Candidate candidate(BagOptions bag, SlotOptions slot, int index) {
        Option option = slot.options().get(index);
        return Candidate.of(index, option, bag);
    }

    private static int leastChanges(List<List<Candidate>> openBySlot) {
        return openBySlot.stream()
                .mapToInt(options ->
                        options.stream().mapToInt(Candidate::changes).min().orElseThrow())
                .sum();
    }

    /** For each slot in the order of the bag the options that a plan may take, in the order of the book. */
    List<List<Candidate>> openBySlot() {
        return openBySlot;
    }

    /** The first open option of a slot that makes no difference to one of them, by its index. */
    int first(int slot, int index) {
        List<Candidate> options = openBySlot.get(slot);
        Candidate chosen = options.stream()
                .filter(option -> option.index() == index)
                .findFirst()
                .orElseThrow();
        return options.stream()
                .filter(chosen::isAsGoodAs)
                .mapToInt(Candidate::index)
                .findFirst()
                .orElse(index);
    }

    /** The open options of a slot that take a piece of an item of the stock. */
    List<Candidate> taking(int slot, int item) {
        return takingBySlot.get(slot).getOrDefault(item, List.of());
    }

    /** The last slot whose club can be the next one to fly after that of a slot: the first later one that always flies. */
    int reach(int slot) {
        int next = slot + 1;
        while (next < slotCount() - 1 && !alwaysFlies.get(next)) {
            next++;
        }
        return Math.min(next, slotCount() - 1);
    }

    /** The last slot whose club can be the first to fly: the first one that always flies. */
    int lastLongest() {
        return reach(-1);
    }

    /** The groups in which clubs are matched, in the order of their numbers. */
    public List<String> groups() {
        return groups;
    }

    /** The open options of a slot in arrays. */
    public OptionTable table(int slot) {
        return tables.get(slot);
    }

    public int slotCount() {
        return openBySlot.size();
    }

    public Aim gapAim() {
        return gapAim;
    }

    public Aim spreadAim() {
        return spreadAim;
    }

    /** The most items that may change; the largest whole number if there is no limit. */
    public int mostChanges() {
        return mostChanges;
    }

    public boolean countsChanges() {
        return mostChanges < Integer.MAX_VALUE;
    }

    /**
     * The most items that a plan takes: no plan trades the limit against another, so more than the limit only where the
     * open options leave no choice, and then as few as they leave.
     */
    public int affordedChanges() {
        return affordedChanges;
    }

    /** Whether it costs anything when clubs of a group differ. */
    public boolean isMatched() {
        return spreadAim.must() || spreadAim.importancePoints() > 0;
    }

    /** The slots that have closed options only. */
    long leastClosed() {
        return openBySlot.stream()
                .filter(options -> options.stream().allMatch(Candidate::closed))
                .count();
    }

    /** How many open options all slots have together. */
    public long optionCount() {
        return openBySlot.stream().mapToLong(List::size).sum();
    }

    /** The most pieces of an item of the stock that any plan of the bag takes. */
    int mostPieces(int item) {
        return openBySlot.stream()
                .mapToInt(options -> options.stream()
                        .mapToInt(option -> option.pieces(item))
                        .max()
                        .orElseThrow())
                .sum();
    }

    /**
     * The bag for the exact search.
     *
     * @param piles the items that are counted
     */
    public ExactBag exact(List<StockPile> piles) {
        List<List<ExactOption>> slots = openBySlot.stream()
                .map(options -> options.stream()
                        .map(option -> option.exact(piles, groups))
                        .toList())
                .toList();
        return new ExactBag(
                slots, countsChanges() ? OptionalInt.of(mostChanges) : OptionalInt.empty(), gapAim, spreadAim);
    }
}
