package org.bagwright.geometry;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bagwright.domain.text.Numbers;
import org.bagwright.geometry.GaugeModel.Value;

/** Decides which unknowns a set of readings determines, holds the others at their stated values and fits the rest. */
final class GaugeSolver {
    private static final double LEAST_BEND_DEG = 1;

    private final GaugeModel model;
    private final double repeatabilityDeg;

    GaugeSolver(GaugeModel model, double repeatabilityDeg) {
        this.model = model;
        this.repeatabilityDeg = repeatabilityDeg;
    }

    /**
     * A fit and what it held.
     *
     * @param solution the fit
     * @param held why each unknown that is not free was held
     */
    record Solved(GaugeSolution solution, Map<Unknown, String> held) {}

    Solved solve(List<Value> values) {
        Map<Unknown, String> held = holdUnread(values);
        Set<Unknown> free = EnumSet.allOf(Unknown.class);
        free.removeAll(held.keySet());
        while (true) {
            GaugeSolution stated = GaugeSolution.stated(model, values, free, repeatabilityDeg);
            GaugeSolution solution = beforehand(stated).isPresent() ? stated : stated.fitted();
            Optional<Unknown> open = beforehand(stated).or(() -> afterwards(solution));
            if (open.isEmpty()) {
                return new Solved(solution, held);
            }
            hold(open.get(), solution, free, held);
        }
    }

    /** What is held because no reading gives a number about it. */
    private Map<Unknown, String> holdUnread(List<Value> values) {
        Map<Unknown, String> held = new EnumMap<>(Unknown.class);
        Stream.of(Unknown.LOFT, Unknown.LIE, Unknown.FACE)
                .filter(kind -> values.stream().noneMatch(value -> value.kind() == kind))
                .forEach(kind -> held.put(kind, "no reading has one"));
        boolean lone = model.atOneHour(values);
        for (Unknown unknown : List.of(Unknown.BEND, Unknown.CLOCK)) {
            if (!model.hasSleeve() || lone) {
                held.put(unknown, "all readings were taken with the shaft leaning one way");
            }
        }
        return held;
    }

    /** The unknown to hold before the fit because the readings give nothing about it. */
    private static Optional<Unknown> beforehand(GaugeSolution stated) {
        return firstOpen(stated, LEAST_BEND_DEG, 4);
    }

    private static Optional<Unknown> afterwards(GaugeSolution solution) {
        return firstOpen(solution, 0, 1);
    }

    /** The last of the open unknowns: the clock offset is held before the bend, and that before the head. */
    private static Optional<Unknown> firstOpen(GaugeSolution solution, double leastBendDeg, double slackRatio) {
        return solution.free().stream()
                .filter(unknown -> !unknown.determinedBy(solution.standardError(unknown, leastBendDeg) / slackRatio))
                .max(Comparator.naturalOrder());
    }

    private static void hold(Unknown open, GaugeSolution solution, Set<Unknown> free, Map<Unknown, String> held) {
        String reason = open == Unknown.CLOCK && solution.standardError(Unknown.BEND, 0) <= LEAST_BEND_DEG / 2
                ? "a bend of " + Numbers.fixed(solution.bendDeg(), 2) + " degrees is too small to show its direction"
                : "there are too few readings, or they are too much alike";
        held.put(open, reason);
        free.remove(open);
        if (open == Unknown.BEND && free.remove(Unknown.CLOCK)) {
            held.put(Unknown.CLOCK, reason);
        }
    }
}
