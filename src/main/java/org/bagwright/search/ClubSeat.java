package org.bagwright.search;

import java.util.List;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** One slot of one bag, for which an option is chosen. */
@PlanningEntity
public final class ClubSeat {
    @PlanningId
    private int id;

    private SearchBag bag;
    private int firstId;

    @ValueRangeProvider
    private List<Candidate> open;

    @PlanningVariable
    private Candidate choice;

    /** For the planner, which copies seats field by field. */
    ClubSeat() {}

    /**
     * @param bag whose slot
     * @param firstId the number of the bag's first seat; those of its other slots follow
     * @param slot the position of the slot in the bag
     */
    ClubSeat(SearchBag bag, int firstId, int slot) {
        this.bag = bag;
        this.firstId = firstId;
        id = firstId + slot;
        open = bag.openBySlot().get(slot);
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

    boolean isLast() {
        return id - firstId + 1 == bag.slotCount();
    }

    boolean flies() {
        return choice.flies();
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
