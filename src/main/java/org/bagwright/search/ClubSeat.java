package org.bagwright.search;

import java.util.List;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** One club of one bag, for which an option is chosen. */
@PlanningEntity
public final class ClubSeat {
    private static final int NOBODY = -1;

    @PlanningId
    private int id;

    private SearchBag bag;
    private int firstId;
    private int nextId;
    private double gapWishM;

    @ValueRangeProvider
    private List<Candidate> open;

    @PlanningVariable
    private Candidate choice;

    /** For the planner, which copies seats field by field. */
    ClubSeat() {}

    /**
     * @param bag whose club
     * @param firstId the number of the bag's first seat; those of its other clubs follow
     * @param club the position of the club in the bag
     */
    ClubSeat(SearchBag bag, int firstId, int club) {
        this.bag = bag;
        this.firstId = firstId;
        id = firstId + club;
        int next = bag.nextCarrying(club);
        nextId = next < 0 ? NOBODY : firstId + next;
        gapWishM = next < 0 ? 0 : bag.gapWishM(bag.carryingIndexes().indexOf(club));
        open = bag.openByClub().get(club);
    }

    int id() {
        return id;
    }

    SearchBag bag() {
        return bag;
    }

    /** The number of the bag's first seat. */
    int firstId() {
        return firstId;
    }

    /** The seat of the next club that carries; -1 if there is none. */
    int nextId() {
        return nextId;
    }

    boolean hasNext() {
        return nextId != NOBODY;
    }

    /** The gap wanted to the next club that carries, metres. */
    double gapWishM() {
        return gapWishM;
    }

    double gapM(ClubSeat next) {
        return choice.carryM() - next.choice.carryM();
    }

    List<Candidate> open() {
        return open;
    }

    Candidate choice() {
        return choice;
    }

    void choose(Candidate candidate) {
        choice = candidate;
    }

    /** Takes one of the open options, by its index. */
    void choose(int option) {
        choice = open.stream()
                .filter(candidate -> candidate.index() == option)
                .findFirst()
                .orElseThrow();
    }
}
