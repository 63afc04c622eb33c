package org.bagwright.search;

import java.time.Duration;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/** How the planner is set up, with the reason of each choice. */
final class SolverSettings {
    /**
     * The end that decides. Counted, so that the plan does not depend on the machine; and counted in score calculations
     * rather than steps, because late acceptance can try without end and make no step.
     */
    static final long SCORE_CALCULATIONS = 500_000;

    /** How many steps back a worse bag is still accepted: chosen by measurement, see {@code LocalSearchTest}. */
    private static final int LATE_ACCEPTANCE_STEPS = 1000;

    private static final double MS_PER_S = 1000;

    private SolverSettings() {}

    /**
     * @param limits seed and cap of time
     * @param mode how much the planner checks itself
     * @param bound no bench costs less: the search stops when it gets there, at once if it starts there
     */
    static SolverConfig config(SearchLimits limits, EnvironmentMode mode, Cost bound) {
        return new SolverConfig()
                .withEnvironmentMode(mode)
                .withRandomSeed(limits.seed())
                .withSolutionClass(Bench.class)
                .withEntityClasses(ClubSeat.class)
                .withConstraintProviderClass(BagConstraintProvider.class)
                .withConstraintStreamImplType(ConstraintStreamImplType.BAVET)
                .withTerminationConfig(termination(limits, bound))
                .withPhases(localSearch());
    }

    private static TerminationConfig termination(SearchLimits limits, Cost bound) {
        HardSoftLongScore best = HardSoftLongScore.of(-bound.breaks(), -bound.micropoints());
        return new TerminationConfig()
                .withBestScoreLimit(best.toString())
                .withScoreCalculationCountLimit(SCORE_CALCULATIONS)
                .withSpentLimit(cap(limits));
    }

    static Duration cap(SearchLimits limits) {
        return Duration.ofMillis(Math.max(1, Math.round(limits.mostS() * MS_PER_S)));
    }

    /** One move a step: with late acceptance the first accepted move is as good as the best of many and far cheaper. */
    private static LocalSearchPhaseConfig localSearch() {
        return new LocalSearchPhaseConfig()
                .withMoveSelectorConfig(
                        new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(SeatMoveFactory.class))
                .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE_ACCEPTANCE_STEPS))
                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    }
}
