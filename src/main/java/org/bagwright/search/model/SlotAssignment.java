package org.bagwright.search.model;

import java.util.List;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** One slot of one bag, for which an option is chosen. */
@PlanningEntity
public final class SlotAssignment {
    @PlanningId
    private int id;

    private SearchBag bag;
    private int firstId;
    private int reach;

    @ValueRangeProvider
    private List<Candidate> open;

    @PlanningVariable
    private Candidate choice;

    /** For the planner, which copies assignments field by field. */
    SlotAssignment() {}

    /**
     * @param bag whose slot
     * @param firstId the number of the bag's first assignment; those of its other slots follow
     * @param slot the position of the slot in the bag
     */
    SlotAssignment(SearchBag bag, int firstId, int slot) {
        this.bag = bag;
        this.firstId = firstId;
        id = firstId + slot;
        reach = firstId + bag.reach(slot);
        open = bag.openBySlot().get(slot);
    }

    public int id() {
        return id;
    }

    public SearchBag bag() {
        return bag;
    }

    /** The position of the slot in its bag. */
    public int slot() {
        return id - firstId;
    }

    /** The number of the bag's first assignment. */
    int firstId() {
        return firstId;
    }

    /** The number of the last assignment whose club can be the next one to fly after this one's. */
    public int reach() {
        return reach;
    }

    public boolean flies() {
        return choice.flies();
    }

    /** Whether its club can be the longest of its bag: no slot before it has clubs only that fly. */
    public boolean mayBeLongest() {
        return id <= firstId + bag.lastLongest();
    }

    public double gapM(SlotAssignment next) {
        return choice.carryM() - next.choice.carryM();
    }

    /** The variance of that gap, m2; nothing where it costs nothing. */
    public double gapVarianceM2(SlotAssignment next) {
        return choice.doubt().gapVarianceM2(next.choice.doubt());
    }

    public List<Candidate> open() {
        return open;
    }

    /** The open options that take a piece of an item of the stock. */
    public List<Candidate> taking(int item) {
        return bag.taking(slot(), item);
    }

    public Candidate choice() {
        return choice;
    }

    public void choose(Candidate candidate) {
        choice = candidate;
    }

    /** Takes one of the open options, by its index. */
    void choose(int option) {
        choice = option(option);
    }

    /** One of the open options, by its index. */
    public Candidate option(int index) {
        return open.stream()
                .filter(candidate -> candidate.index() == index)
                .findFirst()
                .orElseThrow();
    }
}
