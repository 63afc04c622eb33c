package org.bagwright.search;

import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.Aim;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.Option;
import org.bagwright.domain.SlotOptions;

/** What the search needs of a bag as a whole. Each is its own: two bags are equal only if they are the same object. */
final class SearchBag {
    private final List<List<Candidate>> openBySlot;
    private final Aim gapAim;
    private final Aim spreadAim;
    private final int mostChanges;
    private final int affordedChanges;

    SearchBag(BagOptions bag) {
        openBySlot = bag.slots().stream().map(slot -> openCandidates(bag, slot)).toList();
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

    static Candidate candidate(BagOptions bag, SlotOptions slot, int index) {
        Option option = slot.options().get(index);
        return Candidate.of(index, option, option.isEmpty() ? 0 : bag.wishAfterM(option));
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

    int slotCount() {
        return openBySlot.size();
    }

    Aim gapAim() {
        return gapAim;
    }

    Aim spreadAim() {
        return spreadAim;
    }

    /** The most items that may change; the largest whole number if there is no limit. */
    int mostChanges() {
        return mostChanges;
    }

    /**
     * The most items that a plan takes: no plan trades the limit against another, so more than the limit only where the
     * open options leave no choice, and then as few as they leave.
     */
    int affordedChanges() {
        return affordedChanges;
    }

    /**
     * Whether every slot always flies or never does, with one wish, and clubs are not matched: what {@link Chain} can do.
     */
    boolean isPlainChain() {
        boolean matched = spreadAim.must() || spreadAim.importancePoints() > 0;
        return !matched
                && slotCount() <= PenaltyRules.MOST_CLUBS
                && openBySlot.stream().allMatch(SearchBag::isPlain);
    }

    private static boolean isPlain(List<Candidate> options) {
        return options.stream()
                        .map(option -> List.of(option.flies(), option.wishM()))
                        .distinct()
                        .count()
                == 1;
    }

    /** The slots whose clubs fly, for a plain chain. */
    List<Integer> flyingIndexes() {
        return IntStream.range(0, slotCount())
                .filter(slot -> openBySlot.get(slot).get(0).flies())
                .boxed()
                .toList();
    }

    /** The wish after the club at a place of {@link #flyingIndexes()}, for a plain chain, metres. */
    double gapWishM(int gap) {
        return openBySlot.get(flyingIndexes().get(gap)).get(0).wishM();
    }

    /** The slots in the order in which the chain links them: those that fly, then the others. */
    List<Integer> chainOrder() {
        List<Integer> flying = flyingIndexes();
        IntStream others = IntStream.range(0, slotCount()).filter(slot -> !flying.contains(slot));
        return IntStream.concat(flying.stream().mapToInt(Integer::intValue), others)
                .boxed()
                .toList();
    }
}
