package org.bagwright.search.team;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.bagwright.search.exact.ExactInstances;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.exact.ExactResult;
import org.bagwright.search.exact.HardInstances;
import org.bagwright.search.exact.SearchClock;
import org.bagwright.search.score.Cost;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How much work a proof takes, and how near the bound is where the steps are used up. A bound that has become weaker is still
 * true and the plan is still best, so that only the work tells of it. Steps are counted, not timed: on every machine they are
 * the same but for the last digits of a sine.
 */
@Tag("regression")
class SearchEffortTest {
    /** For the last digits of the books drawn. */
    private static final double SLACK = 1.01;

    private static final ExactInstances.Shape SHAPE = new ExactInstances.Shape(5, 8, 3);

    private enum Sort {
        SMALL(ExactInstances::small),
        SMALL_WITH_SPREAD(HardInstances::small),
        CROWDED(ExactInstances::crowded),
        FULL(seed -> ExactInstances.team(seed, 1, SHAPE)),
        TEAM(seed -> ExactInstances.team(seed, 4, SHAPE)),
        TEAM_WITH_A_MUST(seed -> HardInstances.team(seed, 3)),
        BAG_WITH_SPREAD(seed -> HardInstances.bag(seed, 0.6));

        private final LongFunction<ExactProblem> problem;

        Sort(LongFunction<ExactProblem> problem) {
            this.problem = problem;
        }

        ExactResult best(long seed, long steps) {
            return new ExactSearch(new SearchClock(1e9), 1).best(problem.apply(seed), steps);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "SMALL, 0, 150, 14734873",
        "SMALL_WITH_SPREAD, 0, 100, 46772398",
        "CROWDED, 0, 20, 1915399",
        "FULL, 1, 20, 25755123",
        "TEAM, 3, 8, 9005815",
        "TEAM_WITH_A_MUST, 3, 4, 7129607"
    })
    void proof_takesNoMoreStepsThanBefore(Sort sort, long from, long to, long stepsBefore) {
        long steps = LongStream.range(from, to)
                .mapToObj(seed -> sort.best(seed, 50_000_000))
                .peek(result -> assertTrue(result.proven(), sort + ": " + result.ending()))
                .mapToLong(ExactResult::steps)
                .sum();
        assertTrue(steps <= SLACK * stepsBefore, sort + " took " + steps + " steps");
    }

    /** Cost and bound as breaks in thousandths and millionths of a point. */
    @ParameterizedTest
    @CsvSource({
        "TEAM, 2, 1886, 225687863, 312, 157773362",
        "TEAM_WITH_A_MUST, 2, 116213, 178791866, 58107, 86217094",
        "TEAM_WITH_A_MUST, 5, 34662, 269464711, 34662, 217794615",
        "BAG_WITH_SPREAD, 1, 5768, 74830390, 0, 6333642"
    })
    void bound_ofAnUnfinishedSearch_isAsNearAsBefore(
            Sort sort, long seed, long breaks, long micropoints, long boundBreaks, long boundMicropoints) {
        ExactResult result = sort.best(seed, 10_000_000);
        assertEquals(0, result.cost().excess());
        assertAtMost(result.cost(), breaks, micropoints);
        Cost bound = result.bound();
        assertAtMost(new Cost(0, boundBreaks, boundMicropoints), bound.breaks(), bound.micropoints());
    }

    private static void assertAtMost(Cost cost, long breaks, long micropoints) {
        Cost most = new Cost(0, Math.round(SLACK * breaks), Math.round(SLACK * micropoints));
        assertTrue(cost.compareTo(most) <= 0, cost + " is above " + most);
    }
}
