package org.bagwright.search;

import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.Aim;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.ClubOptions;

/** What the search needs of a bag as a whole. Each is its own: two bags are equal only if they are the same object. */
final class SearchBag {
    private final List<List<Candidate>> openByClub;
    private final List<Integer> carryingIndexes;
    private final List<Double> gapWishesM;
    private final Aim gapAim;
    private final int mostChanges;
    private final int affordedChanges;

    SearchBag(BagOptions bag) {
        openByClub = bag.clubs().stream().map(SearchBag::openCandidates).toList();
        carryingIndexes = bag.carryingIndexes();
        gapWishesM = bag.gapWishesM();
        gapAim = bag.gapAim();
        mostChanges = bag.mostChanges().orElse(Integer.MAX_VALUE);
        affordedChanges = Math.max(mostChanges, leastChanges(openByClub));
    }

    private static List<Candidate> openCandidates(ClubOptions club) {
        return club.openIndexes().stream()
                .sorted()
                .distinct()
                .map(index ->
                        Candidate.of(club.club().kind(), index, club.options().get(index)))
                .toList();
    }

    private static int leastChanges(List<List<Candidate>> openByClub) {
        return openByClub.stream()
                .mapToInt(options ->
                        options.stream().mapToInt(Candidate::changes).min().orElseThrow())
                .sum();
    }

    /** For each club in the order of the bag the options that a plan may take, in the order of the book. */
    List<List<Candidate>> openByClub() {
        return openByClub;
    }

    int clubCount() {
        return openByClub.size();
    }

    List<Integer> carryingIndexes() {
        return carryingIndexes;
    }

    double gapWishM(int gap) {
        return gapWishesM.get(gap);
    }

    Aim gapAim() {
        return gapAim;
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

    /** The last club of every gap by the position of its first; -1 where there is none. */
    int nextCarrying(int club) {
        int place = carryingIndexes.indexOf(club);
        return place < 0 || place + 1 == carryingIndexes.size() ? -1 : carryingIndexes.get(place + 1);
    }

    /** The clubs in the order in which the chain links them: those that carry by slot, then the others. */
    List<Integer> chainOrder() {
        IntStream others = IntStream.range(0, clubCount()).filter(club -> !carryingIndexes.contains(club));
        return IntStream.concat(carryingIndexes.stream().mapToInt(Integer::intValue), others)
                .boxed()
                .toList();
    }
}
