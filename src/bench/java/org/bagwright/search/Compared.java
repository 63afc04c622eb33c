package org.bagwright.search;

import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What each solver made of one problem.
 *
 * @param of the problem
 * @param capS the most time each had, seconds
 * @param bySolver what it found by the solver's name; nothing under its name where it found no plan, no name where it was
 *     not run
 */
record Compared(BenchCase of, double capS, Map<String, Optional<Solved>> bySolver) {

    private Collection<Optional<Solved>> all() {
        return bySolver.values();
    }

    Cost best() {
        return all().stream()
                .flatMap(Optional::stream)
                .map(Solved::cost)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    boolean asFewBreaks(Solved solved) {
        return solved.cost().excess() == best().excess() && solved.cost().breaks() == best().breaks();
    }

    /** The best bound that any solver has shown for plans with as few breaks as the best plan has. */
    OptionalLong bestBound() {
        return all().stream()
                .flatMap(Optional::stream)
                .filter(this::asFewBreaks)
                .flatMapToLong(solved -> solved.boundMicropoints().stream())
                .max();
    }

    /** A bound above a plan that is known: one of the solvers is wrong. */
    boolean contradicts() {
        return bestBound().isPresent() && bestBound().getAsLong() > best().micropoints();
    }
}
