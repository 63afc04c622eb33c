package org.bagwright.search.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bagwright.search.score.Cost;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/** All bags that are planned together. */
@PlanningSolution
public final class PlanningProblem {
    @PlanningEntityCollectionProperty
    private List<SlotAssignment> assignments;

    @ProblemFactCollectionProperty
    private List<StockPile> stock;

    @PlanningScore
    private HardMediumSoftLongScore score;

    /** For the planner, which copies problems field by field. */
    PlanningProblem() {}

    PlanningProblem(List<SlotAssignment> assignments, List<StockPile> stock) {
        this.assignments = assignments;
        this.stock = stock;
    }

    /** The slots of one bag after another; the position of an assignment is its number. */
    public List<SlotAssignment> assignments() {
        return assignments;
    }

    /** What all bags share. */
    public List<StockPile> stock() {
        return stock;
    }

    /** All slots of the bag to which a slot belongs. */
    public List<SlotAssignment> bagOf(SlotAssignment slot) {
        return assignments.subList(slot.firstId(), slot.firstId() + slot.bag().slotCount());
    }

    /** The slots of the bag at a place among the bags. */
    public List<SlotAssignment> bag(int place) {
        return bagOf(firsts().skip(place).findFirst().orElseThrow());
    }

    /** The place of a bag among the bags. */
    public int place(SearchBag bag) {
        return firsts().map(SlotAssignment::bag).toList().indexOf(bag);
    }

    private Stream<SlotAssignment> firsts() {
        return assignments.stream().filter(slot -> slot.id() == slot.firstId());
    }

    /** Items that differ from today in the bag to which a slot belongs. */
    public int changes(SlotAssignment slot) {
        return bagOf(slot).stream().mapToInt(other -> other.choice().changes()).sum();
    }

    /** Pieces of a pile that all slots take. */
    public int taken(StockPile pile) {
        return taken(pile, assignments);
    }

    /** Pieces of a pile that some slots take. */
    public static int taken(StockPile pile, List<SlotAssignment> assignments) {
        return assignments.stream()
                .mapToInt(slot -> slot.choice().pieces(pile.item()))
                .sum();
    }

    /** The slots that could take of a pile. */
    public List<SlotAssignment> takers(StockPile pile) {
        return assignments.stream()
                .filter(slot -> !slot.taking(pile.item()).isEmpty())
                .toList();
    }

    /** The slots but one that take of a pile now. */
    public List<SlotAssignment> holders(StockPile pile, SlotAssignment but) {
        return assignments.stream()
                .filter(slot -> slot != but && slot.choice().pieces(pile.item()) > 0)
                .toList();
    }

    /** For each bag, for each of its slots, the index of the option chosen. */
    public List<List<Integer>> chosen() {
        return firsts().map(first ->
                        bagOf(first).stream().map(slot -> slot.choice().index()).toList())
                .toList();
    }

    /** Whether every slot has an option. */
    public boolean isComplete() {
        return assignments.stream().allMatch(slot -> slot.choice() != null);
    }

    public Cost cost() {
        return new Cost(-score.hardScore(), -score.mediumScore(), -score.softScore());
    }

    /** With an option chosen for every slot, by its index. */
    public static PlanningProblem of(List<SearchBag> bags, List<StockPile> stock, List<List<Integer>> chosen) {
        PlanningProblem problem = of(bags, stock);
        List<Integer> options = chosen.stream().flatMap(List::stream).toList();
        for (SlotAssignment slot : problem.assignments) {
            slot.choose(options.get(slot.id()));
        }
        return problem;
    }

    /** With nothing chosen yet. */
    static PlanningProblem of(List<SearchBag> bags, List<StockPile> stock) {
        List<SlotAssignment> assignments = new ArrayList<>();
        for (SearchBag bag : bags) {
            int firstId = assignments.size();
            for (int slot = 0; slot < bag.slotCount(); slot++) {
                assignments.add(new SlotAssignment(bag, firstId, slot));
            }
        }
        return new PlanningProblem(assignments, stock);
    }
}
