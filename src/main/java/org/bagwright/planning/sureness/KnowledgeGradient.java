package org.bagwright.planning.sureness;

import java.util.Arrays;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * What a measurement is worth to a plan before it is made: by how much the penalty of the best plan is expected to fall below
 * that of the plan which is best now, both by what would be known then (the knowledge gradient for correlated beliefs of
 * Frazier, Powell and Dayanik 2009). What is measured is normal, so one standard normal number says how it comes out; it
 * takes {@link #OUTCOMES} values of equal chance, each the mean of its part of the normal distribution.
 */
final class KnowledgeGradient {
    static final int OUTCOMES = 11;

    /** Plans that differ by less are the same to a fitter: the usual cost of one change. */
    private static final double SAME_POINTS = 0.05;

    /**
     * What a measurement brings.
     *
     * @param gainPoints by how much the penalty is expected to fall, points
     * @param changeRatio the chance, 0 to 1, that another plan is then better
     */
    record Value(double gainPoints, double changeRatio) {
        Value plus(Value other) {
            return new Value(gainPoints + other.gainPoints, Math.max(changeRatio, other.changeRatio));
        }
    }

    private final Chain chain;
    private final ChainSearch search;
    private final int[] now;
    private final double[] outcomes = outcomes();

    /** @param expected the world at the best guess, with all that is not known */
    KnowledgeGradient(Chain chain, World expected) {
        this.chain = chain;
        this.search = new ChainSearch(chain);
        this.now = search.best(expected);
    }

    private static double[] outcomes() {
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        double[] middles = new double[OUTCOMES];
        Arrays.setAll(middles, part -> OUTCOMES * (density(normal, part) - density(normal, part + 1)));
        return middles;
    }

    private static double density(NormalDistribution normal, int part) {
        return normal.density(normal.inverseCumulativeProbability((double) part / OUTCOMES));
    }

    /** @param after the world by what is then known, for the standard normal number that says how it came out */
    Value of(DoubleFunction<World> after) {
        double points = 0;
        int changed = 0;
        for (double outcome : outcomes) {
            World world = after.apply(outcome);
            double gainPoints = chain.points(world, now) - chain.points(world, search.best(world));
            points += Math.max(0, gainPoints);
            changed += gainPoints > SAME_POINTS ? 1 : 0;
        }
        return new Value(points / OUTCOMES, (double) changed / OUTCOMES);
    }
}
