package org.bagwright.search.team;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.bagwright.Tries;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactEnding;
import org.bagwright.search.exact.ExactInstances;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.exact.ExactResult;
import org.bagwright.search.exact.HardInstances;
import org.bagwright.search.exact.SearchClock;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.ExactEnumeration;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Against looking at every choice. */
@Tag("analytic")
class ExactSearchTest {
    private static final long AMPLE_STEPS = 5_000_000_000L;
    private static final double NO_CAP_S = 1e9;

    private static ExactSearch searching(int threads) {
        return new ExactSearch(new SearchClock(NO_CAP_S), threads);
    }

    private static ExactResult best(ExactProblem problem) {
        return searching(1).best(problem, AMPLE_STEPS);
    }

    @Test
    void small_problems_equal_enumeration_and_are_proven() {
        for (long seed = 0; seed < Tries.of(700); seed++) {
            assertProvenBest("small " + seed, ExactInstances.small(seed));
        }
    }

    @Test
    void bags_with_more_than_fourteen_slots_equal_enumeration() {
        for (long seed = 0; seed < 40; seed++) {
            assertProvenBest("crowded " + seed, ExactInstances.crowded(seed));
        }
    }

    @Test
    void bags_with_a_must_on_spread_scarce_stock_and_few_changes_equal_enumeration() {
        int broken = 0;
        for (long seed = 0; seed < Tries.of(400); seed++) {
            ExactProblem problem = HardInstances.small(seed);
            assertProvenBest("must on spread " + seed, problem);
            broken += ExactEnumeration.best(problem).breaks() > 0 ? 1 : 0;
        }
        assertTrue(broken > Tries.of(100), "only " + broken + " musts that cannot be met");
        assertTrue(broken < Tries.of(390), "only " + (Tries.of(400) - broken) + " musts that can be met");
    }

    private static void assertProvenBest(String name, ExactProblem problem) {
        ExactResult result = best(problem);
        assertEquals(ExactEnumeration.best(problem), result.cost(), name);
        assertEquals(result.cost(), ExactEnumeration.cost(result.chosen(), problem), name + ": reported and true cost");
        assertEquals(result.cost(), result.bound(), name + ": bound");
        assertTrue(result.proven(), name + ": proven");
        assertEquals(ExactEnding.PROVEN, result.ending(), name);
    }

    @Test
    void a_search_stopped_early_never_claims_more_than_is_true() {
        Random random = new Random(7);
        int unproven = 0;
        for (long seed = 0; seed < Tries.of(1200); seed++) {
            ExactProblem problem = seed % 4 == 0 ? HardInstances.small(seed) : ExactInstances.small(seed);
            Cost best = ExactEnumeration.best(problem);
            long whole = best(problem).steps();
            ExactResult result = searching(1).best(problem, start(problem, random), random.nextLong(whole + 1));
            assertTrue(result.bound().compareTo(best) <= 0, "bound above the best, seed " + seed);
            long least = ExactEnumeration.leastMicropoints(problem);
            assertTrue(result.leastMicropoints() <= least, "penalty above the least, seed " + seed);
            assertEquals(result.cost(), ExactEnumeration.cost(result.chosen(), problem), "true cost, seed " + seed);
            assertTrue(!result.proven() || result.cost().equals(best), "wrongly proven, seed " + seed);
            unproven += result.proven() ? 0 : 1;
        }
        assertTrue(unproven > Tries.of(120), "only " + unproven + " were stopped before the proof");
    }

    /** Any choice, or none. */
    private static Optional<List<List<Integer>>> start(ExactProblem problem, Random random) {
        return random.nextBoolean()
                ? Optional.empty()
                : Optional.of(problem.bags().stream()
                        .map(bag -> bag.slots().stream()
                                .map(slot ->
                                        slot.get(random.nextInt(slot.size())).index())
                                .toList())
                        .toList());
    }

    @Test
    void a_search_that_may_not_work_gives_its_start_if_that_keeps_the_limits() {
        for (long seed = 0; seed < 100; seed++) {
            ExactProblem problem = ExactInstances.small(seed);
            List<List<Integer>> best = best(problem).chosen();
            assertEquals(best, searching(1).best(problem, Optional.of(best), 0).chosen(), "seed " + seed);
        }
    }

    @Test
    void of_equal_plans_the_one_with_fewest_changes_is_taken() {
        for (long seed = 0; seed < 200; seed++) {
            ExactProblem problem = ExactInstances.small(seed);
            if (problem.bags().size() == 1) {
                assertEquals(
                        ExactEnumeration.fewestChanges(problem),
                        changes(problem, best(problem).chosen()),
                        "seed " + seed);
            }
        }
    }

    private static int changes(ExactProblem problem, List<List<Integer>> chosen) {
        int changes = 0;
        for (int slot = 0; slot < chosen.get(0).size(); slot++) {
            changes +=
                    problem.bags().get(0).option(slot, chosen.get(0).get(slot)).changes();
        }
        return changes;
    }

    @Test
    void forbidden_options_are_not_taken_and_the_rest_is_still_best() {
        for (long seed = 0; seed < 200; seed++) {
            ExactProblem problem = ExactInstances.small(seed);
            ExactBag bag = problem.bags().get(0);
            List<List<ExactOption>> even = bag.slots().stream()
                    .map(slot -> slot.stream()
                            .filter(option -> option.index() % 2 == 0)
                            .toList())
                    .toList();
            ExactBag half = new ExactBag(even, bag.mostChanges(), bag.gapAim(), bag.spreadAim());
            assertProvenBest("even options, seed " + seed, new ExactProblem(List.of(half), problem.available()));
        }
    }

    @Test
    void another_run_and_another_number_of_threads_find_the_same() {
        for (long seed = 0; seed < Tries.of(150); seed++) {
            ExactProblem problem = ExactInstances.small(seed);
            ExactResult one = best(problem);
            ExactResult again = best(problem);
            ExactResult two = searching(2).best(problem, AMPLE_STEPS);
            assertEquals(one.chosen(), again.chosen(), "seed " + seed);
            assertEquals(one.chosen(), two.chosen(), "two threads, seed " + seed);
            assertEquals(one.steps(), two.steps(), "steps on two threads, seed " + seed);
        }
    }

    @Test
    void stopping_at_once_still_gives_a_plan_and_a_true_bound() {
        List<Double> reported = new ArrayList<>();
        SearchClock clock = new SearchClock(NO_CAP_S);
        clock.onProgress((breaks, points, bound, elapsedS) -> reported.add(points));
        clock.stop();
        ExactProblem problem = ExactInstances.team(3, 3, new ExactInstances.Shape(9, 8, 3));
        ExactResult result = new ExactSearch(clock, 2).best(problem, Long.MAX_VALUE);
        assertEquals(ExactEnding.STOPPED, result.ending());
        assertEquals(result.cost(), ExactEnumeration.cost(result.chosen(), problem));
        assertTrue(result.bound().compareTo(result.cost()) <= 0);
        assertTrue(!reported.isEmpty());
    }
}
