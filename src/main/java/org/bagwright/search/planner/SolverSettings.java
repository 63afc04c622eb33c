package org.bagwright.search.planner;

import java.time.Duration;
import java.util.List;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.SlotAssignment;
import org.bagwright.search.score.Cost;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.phase.custom.CustomPhaseConfig;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/**
 * How the planner is set up, with the reason of each choice.
 *
 * @param limits its seed, how much it checks itself, and when it ends
 */
record SolverSettings(SearchLimits limits) {
    /**
     * How many steps back a worse choice is still accepted. Measured on 16 made-up bags of 14 clubs with 30 or 100
     * options each, half of them with a limit of 6 changes, chain left out, 500,000 score calculations: with 50 the
     * search ended at most 5.5 % above the exact best; with 100 and 200 it broke a hard limit more in one or two bags;
     * with 400 it ended up to 30 % above.
     */
    private static final int LATE_ACCEPTANCE_STEPS = 50;

    /** The planner that only scores. */
    SolverConfig scoring() {
        return new SolverConfig()
                .withEnvironmentMode(limits.mode())
                .withSolutionClass(PlanningProblem.class)
                .withEntityClasses(SlotAssignment.class)
                .withConstraintProviderClass(BagConstraintProvider.class)
                .withConstraintStreamImplType(ConstraintStreamImplType.BAVET);
    }

    /**
     * The planner that searches.
     *
     * @param bags how many bags it searches
     * @param cap the most time for it
     * @param bound no choice costs less: the search stops when it gets there
     * @param reoptimize re-optimises whole bags: before the local search, for a good start that costs little, and after
     *     it, since another bag may have left something of the stock meanwhile
     */
    SolverConfig searching(int bags, Duration cap, Cost bound, ReoptimizeBagPhase reoptimize) {
        HardMediumSoftLongScore best =
                HardMediumSoftLongScore.of(-bound.excess(), -bound.breaks(), -bound.micropoints());
        TerminationConfig termination =
                new TerminationConfig().withBestScoreLimit(best.toString()).withSpentLimit(cap);
        return scoring()
                .withRandomSeed(limits.seed())
                .withTerminationConfig(termination)
                .withPhases(wholeBags(reoptimize), localSearch(bags), wholeBags(reoptimize));
    }

    private static CustomPhaseConfig wholeBags(ReoptimizeBagPhase reoptimize) {
        return new CustomPhaseConfig().withCustomPhaseCommandList(List.of(reoptimize));
    }

    /** One move a step: with late acceptance the first accepted move is as good as the best of many and far cheaper. */
    private LocalSearchPhaseConfig localSearch(int bags) {
        TerminationConfig end =
                new TerminationConfig().withScoreCalculationCountLimit(limits.scoreCalculations() * bags);
        return new LocalSearchPhaseConfig()
                .withTerminationConfig(end)
                .withMoveSelectorConfig(
                        new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(AssignmentMoveFactory.class))
                .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE_ACCEPTANCE_STEPS))
                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    }
}
