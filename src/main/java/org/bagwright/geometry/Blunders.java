package org.bagwright.geometry;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.RealMatrix;
import org.bagwright.geometry.GaugeModel.Value;

/** Looks for the reading that disagrees most with all others; {@link GaugeFit} gives the rule. */
final class Blunders {
    private static final double FIRST_CHANCE = 0.045;
    private static final double NEXT_CHANCE = 0.002;
    private static final double LEAST_REDUNDANCY = 0.02;
    private static final double ALIKE = 0.9;

    private final GaugeSolution solution;
    private final List<Value> values;
    private final double repeatabilityDeg;
    private final RealMatrix redundancy;

    private Blunders(GaugeSolution solution, List<Value> values, double repeatabilityDeg) {
        this.solution = solution;
        this.values = values;
        this.repeatabilityDeg = repeatabilityDeg;
        redundancy = solution.redundancy();
    }

    /**
     * The reading to suspect.
     *
     * @param readingIndex which
     * @param rivals other readings that explain the conflict almost as well
     */
    record Suspect(int readingIndex, List<Integer> rivals) {}

    static Optional<Suspect> suspect(
            GaugeSolution solution, List<Value> values, double repeatabilityDeg, boolean first) {
        return new Blunders(solution, values, repeatabilityDeg).suspect(first ? FIRST_CHANCE : NEXT_CHANCE);
    }

    private Optional<Suspect> suspect(double chance) {
        int worst = IntStream.range(0, values.size())
                .reduce((a, b) -> ratio(a) >= ratio(b) ? a : b)
                .orElseThrow();
        double alone = 1 - Math.pow(1 - chance, 1.0 / values.size());
        double limit = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(1 - alone / 2);
        return ratio(worst) > limit
                ? Optional.of(new Suspect(values.get(worst).readingIndex(), rivals(worst)))
                : Optional.empty();
    }

    /** The residual in its own standard deviations; 0 where no other number looks over it. */
    private double ratio(int index) {
        double spare = redundancy.getEntry(index, index);
        return spare < LEAST_REDUNDANCY
                ? 0
                : Math.abs(solution.residualDeg(values.get(index))) / repeatabilityDeg / Math.sqrt(spare);
    }

    private List<Integer> rivals(int worst) {
        int reading = values.get(worst).readingIndex();
        return IntStream.range(0, values.size())
                .filter(index -> values.get(index).readingIndex() != reading && likeness(worst, index) > ALIKE)
                .map(index -> values.get(index).readingIndex())
                .distinct()
                .boxed()
                .toList();
    }

    /** Correlation of two residuals, without its sign. */
    private double likeness(int one, int other) {
        double spares = redundancy.getEntry(one, one) * redundancy.getEntry(other, other);
        return spares < LEAST_REDUNDANCY * LEAST_REDUNDANCY
                ? 0
                : Math.abs(redundancy.getEntry(one, other)) / Math.sqrt(spares);
    }
}
