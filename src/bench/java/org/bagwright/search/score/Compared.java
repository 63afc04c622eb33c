package org.bagwright.search.score;

import java.util.Collection;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.bagwright.search.exact.BenchCase;

/**
 * What each solver made of one problem.
 *
 * @param of the problem
 * @param capS the most time that our search and CP-SAT had, seconds
 * @param othersCapS the most time that the others had, seconds
 * @param bySolver what it found by the solver's name; nothing under its name where it found no plan, no name where it was
 *     not run
 */
public record Compared(BenchCase of, double capS, double othersCapS, Map<String, Optional<Solved>> bySolver) {

    private Collection<Optional<Solved>> all() {
        return bySolver.values();
    }

    public Cost best() {
        return all().stream()
                .flatMap(Optional::stream)
                .map(Solved::cost)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    public boolean asFewBreaks(Solved solved) {
        return solved.cost().excess() == best().excess() && solved.cost().breaks() == best().breaks();
    }

    /** The best bound that any solver has shown for plans with as few breaks as the best plan has. */
    public OptionalLong bestBound() {
        return all().stream()
                .flatMap(Optional::stream)
                .filter(this::asFewBreaks)
                .flatMapToLong(solved -> solved.boundMicropoints().stream())
                .max();
    }

    /** A bound above a plan that is known: one of the solvers is wrong. */
    public boolean contradicts() {
        return bestBound().isPresent() && bestBound().getAsLong() > best().micropoints();
    }
}
