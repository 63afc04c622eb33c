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
    private List<SlotAssignment> seats;

    @ProblemFactCollectionProperty
    private List<StockPile> stock;

    @PlanningScore
    private HardMediumSoftLongScore score;

    /** For the planner, which copies benches field by field. */
    PlanningProblem() {}

    PlanningProblem(List<SlotAssignment> seats, List<StockPile> stock) {
        this.seats = seats;
        this.stock = stock;
    }

    /** The seats of one bag after another; the position of a seat is its number. */
    public List<SlotAssignment> seats() {
        return seats;
    }

    /** What all bags share. */
    public List<StockPile> stock() {
        return stock;
    }

    /** The seats of the bag to which a seat belongs. */
    public List<SlotAssignment> bagOf(SlotAssignment seat) {
        return seats.subList(seat.firstId(), seat.firstId() + seat.bag().slotCount());
    }

    /** The seats of the bag at a place on the bench. */
    public List<SlotAssignment> bag(int place) {
        return bagOf(firsts().skip(place).findFirst().orElseThrow());
    }

    private Stream<SlotAssignment> firsts() {
        return seats.stream().filter(seat -> seat.id() == seat.firstId());
    }

    /** Items that differ from today in the bag to which a seat belongs. */
    public int changes(SlotAssignment seat) {
        return bagOf(seat).stream().mapToInt(other -> other.choice().changes()).sum();
    }

    /** Pieces of a pile that all seats take. */
    public int taken(StockPile pile) {
        return taken(pile, seats);
    }

    /** Pieces of a pile that some seats take. */
    public static int taken(StockPile pile, List<SlotAssignment> seats) {
        return seats.stream()
                .mapToInt(seat -> seat.choice().pieces(pile.item()))
                .sum();
    }

    /** The seats that could take of a pile. */
    public List<SlotAssignment> takers(StockPile pile) {
        return seats.stream()
                .filter(seat -> !seat.taking(pile.item()).isEmpty())
                .toList();
    }

    /** The seats but one that take of a pile now. */
    public List<SlotAssignment> holders(StockPile pile, SlotAssignment but) {
        return seats.stream()
                .filter(seat -> seat != but && seat.choice().pieces(pile.item()) > 0)
                .toList();
    }

    /** For each bag, for each of its slots, the index of the option chosen. */
    public List<List<Integer>> chosen() {
        return firsts().map(first ->
                        bagOf(first).stream().map(seat -> seat.choice().index()).toList())
                .toList();
    }

    /** What no choice for these bags costs less than, broken musts or not. */
    public long leastMicropoints() {
        return firsts().mapToLong(first -> first.bag().leastMicropoints()).sum();
    }

    public Cost cost() {
        return new Cost(-score.hardScore(), -score.mediumScore(), -score.softScore());
    }

    /** A bench with a seat for every slot, each with the option chosen for it by its index. */
    public static PlanningProblem of(List<SearchBag> bags, List<StockPile> stock, List<List<Integer>> chosen) {
        PlanningProblem bench = of(bags, stock);
        List<Integer> options = chosen.stream().flatMap(List::stream).toList();
        for (SlotAssignment seat : bench.seats) {
            seat.choose(options.get(seat.id()));
        }
        return bench;
    }

    /** A bench with an empty seat for every slot. */
    static PlanningProblem of(List<SearchBag> bags, List<StockPile> stock) {
        List<SlotAssignment> seats = new ArrayList<>();
        for (SearchBag bag : bags) {
            int firstId = seats.size();
            for (int slot = 0; slot < bag.slotCount(); slot++) {
                seats.add(new SlotAssignment(bag, firstId, slot));
            }
        }
        return new PlanningProblem(seats, stock);
    }
}
