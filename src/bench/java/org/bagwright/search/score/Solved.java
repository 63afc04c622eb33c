package org.bagwright.search.score;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * What one solver made of one problem.
 *
 * @param cost what its plan costs by the plain sum, whatever the solver thinks of it
 * @param boundMicropoints what it has shown that no plan with as few breaks can be below; empty where it shows nothing
 * @param course its better and better plans
 * @param provenS when it had shown that nothing is better, seconds from its start; empty if it had not
 * @param note what else to say, or nothing
 */
public record Solved(
        Cost cost, OptionalLong boundMicropoints, List<Better> course, OptionalDouble provenS, String note) {
    public Solved {
        course = List.copyOf(course);
    }

    /**
     * A plan better than those before it.
     *
     * @param atS when, seconds from the start
     * @param cost what it costs
     */
    public record Better(double atS, Cost cost) {}

    /** When it had its best plan, seconds from its start. */
    public double bestS() {
        return course.isEmpty() ? 0 : course.get(course.size() - 1).atS();
    }

    /** When it first had a plan that breaks no more than another and costs at most so much more; empty if never. */
    public OptionalDouble withinS(Cost best, double percent) {
        return course.stream()
                .filter(better -> better.cost().excess() <= best.excess()
                        && better.cost().breaks() <= best.breaks()
                        && better.cost().micropoints() <= best.micropoints() * (1 + percent / 100))
                .mapToDouble(Better::atS)
                .findFirst();
    }

    /** The best plan that it had at a time, seconds from its start; empty if it had none. */
    public Optional<Cost> costAt(double timeS) {
        return course.stream()
                .filter(better -> better.atS() <= timeS)
                .map(Better::cost)
                .reduce((before, later) -> later);
    }

    /** Above the best bound that any solver has shown, percent of the penalty. */
    public double gapPercent(long bestBoundMicropoints) {
        return 100.0 * (cost.micropoints() - bestBoundMicropoints) / Math.max(1, cost.micropoints());
    }
}
