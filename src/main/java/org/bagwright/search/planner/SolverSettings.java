package org.bagwright.search.planner;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.SlotAssignment;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.config.constructionheuristic.ConstructionHeuristicPhaseConfig;
import org.optaplanner.core.config.constructionheuristic.ConstructionHeuristicType;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.phase.PhaseConfig;
import org.optaplanner.core.config.phase.custom.CustomPhaseConfig;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/**
 * How the planner is set up, with the reason of each choice. One solver makes the whole plan of a team: a construction
 * heuristic, then rounds of a local search and the exact search, each round with more work than the one before.
 *
 * @param limits its seed, how much it checks itself, and how much work the rounds do
 */
record SolverSettings(SearchLimits limits) {
    /**
     * How many steps back a worse choice is still accepted. Measured on 30 made-up bags of 14 clubs, local search alone,
     * one second: with 200 it ended within 0.5 % of the best known in 30 of them, with 50 in 28.
     */
    private static final int LATE_ACCEPTANCE_STEPS = 200;

    /** One local search takes no more than this part of the time: one fourth. */
    private static final int LOCAL_SEARCH_SHARE = 4;

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
     * @param options how many options the team has to choose from
     * @param cap the most time for it
     * @param exact the exact search, which ends the solver when nothing can be better
     */
    SolverConfig searching(long options, Duration cap, ExactPhase exact) {
        List<PhaseConfig<?>> phases = new ArrayList<>();
        phases.add(construction());
        long calculations = options;
        for (int round = 0; round < limits.rounds(); round++) {
            calculations += limits.scoreCalculations(round, options);
            phases.add(localSearch(calculations, cap.dividedBy(LOCAL_SEARCH_SHARE)));
            if (limits.steps(round) > 0) {
                phases.add(new CustomPhaseConfig().withCustomPhaseCommandList(List.of(exact)));
            }
        }
        return scoring()
                .withRandomSeed(limits.seed())
                .withTerminationConfig(new TerminationConfig().withSpentLimit(cap))
                .withPhases(phases.toArray(PhaseConfig[]::new));
    }

    /** Slot by slot the option that scores best with those before it: a whole choice after one look at each option. */
    private static ConstructionHeuristicPhaseConfig construction() {
        return new ConstructionHeuristicPhaseConfig()
                .withConstructionHeuristicType(ConstructionHeuristicType.FIRST_FIT);
    }

    /**
     * One move a step: with late acceptance the first accepted move is as good as the best of many and far cheaper. It ends
     * by its score calculations, since late acceptance can try without end and make no step.
     *
     * @param scoreCalculations when it ends, counted from the start of the solver
     * @param cap the most time for it, so that the exact search has its part of a short time
     */
    private static LocalSearchPhaseConfig localSearch(long scoreCalculations, Duration cap) {
        return new LocalSearchPhaseConfig()
                .withTerminationConfig(new TerminationConfig()
                        .withScoreCalculationCountLimit(scoreCalculations)
                        .withSpentLimit(cap))
                .withMoveSelectorConfig(
                        new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(AssignmentMoveFactory.class))
                .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE_ACCEPTANCE_STEPS))
                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    }
}
