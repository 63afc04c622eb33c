package org.bagwright.search;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/** All bags that are planned together. */
@PlanningSolution
public final class Bench {
    @PlanningEntityCollectionProperty
    private List<ClubSeat> seats;

    @ProblemFactCollectionProperty
    private List<StockPile> stock;

    @PlanningScore
    private HardMediumSoftLongScore score;

    /** For the planner, which copies benches field by field. */
    Bench() {}

    Bench(List<ClubSeat> seats, List<StockPile> stock) {
        this.seats = seats;
        this.stock = stock;
    }

    /** The seats of one bag after another; the position of a seat is its number. */
    List<ClubSeat> seats() {
        return seats;
    }

    /** What all bags share. */
    List<StockPile> stock() {
        return stock;
    }

    /** The seats of the bag to which a seat belongs. */
    List<ClubSeat> bagOf(ClubSeat seat) {
        return seats.subList(seat.firstId(), seat.firstId() + seat.bag().slotCount());
    }

    Cost cost() {
        return new Cost(-score.hardScore(), -score.mediumScore(), -score.softScore());
    }

    /** A bench with a seat for every slot, each with the option chosen for it by its index. */
    static Bench of(List<SearchBag> bags, List<StockPile> stock, List<List<Integer>> chosen) {
        Bench bench = of(bags, stock);
        List<Integer> options = chosen.stream().flatMap(List::stream).toList();
        for (ClubSeat seat : bench.seats) {
            seat.choose(options.get(seat.id()));
        }
        return bench;
    }

    /** A bench with an empty seat for every slot. */
    static Bench of(List<SearchBag> bags, List<StockPile> stock) {
        List<ClubSeat> seats = new ArrayList<>();
        for (SearchBag bag : bags) {
            int firstId = seats.size();
            for (int slot = 0; slot < bag.slotCount(); slot++) {
                seats.add(new ClubSeat(bag, firstId, slot));
            }
        }
        return new Bench(seats, stock);
    }
}
