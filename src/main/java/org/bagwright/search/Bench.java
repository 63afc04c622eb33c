package org.bagwright.search;

import java.util.ArrayList;
import java.util.List;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;

/** All bags that are planned together. */
@PlanningSolution
public final class Bench {
    @PlanningEntityCollectionProperty
    private List<ClubSeat> seats;

    @PlanningScore
    private HardSoftLongScore score;

    /** For the planner, which copies benches field by field. */
    Bench() {}

    Bench(List<ClubSeat> seats) {
        this.seats = seats;
    }

    /** The seats of one bag after another; the position of a seat is its number. */
    List<ClubSeat> seats() {
        return seats;
    }

    /** The seats of the bag to which a seat belongs. */
    List<ClubSeat> bagOf(ClubSeat seat) {
        return seats.subList(seat.firstId(), seat.firstId() + seat.bag().clubCount());
    }

    Cost cost() {
        return new Cost(-score.hardScore(), -score.softScore());
    }

    /** A bench with a seat for every club, each with the option chosen for it by its index. */
    static Bench of(List<SearchBag> bags, List<List<Integer>> chosen) {
        Bench bench = of(bags);
        List<Integer> options = chosen.stream().flatMap(List::stream).toList();
        for (ClubSeat seat : bench.seats) {
            seat.choose(options.get(seat.id()));
        }
        return bench;
    }

    /** A bench with an empty seat for every club. */
    static Bench of(List<SearchBag> bags) {
        List<ClubSeat> seats = new ArrayList<>();
        for (SearchBag bag : bags) {
            int firstId = seats.size();
            for (int club = 0; club < bag.clubCount(); club++) {
                seats.add(new ClubSeat(bag, firstId, club));
            }
        }
        return new Bench(seats);
    }
}
