package org.bagwright.search.score;

import java.util.Arrays;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.Terms;

/** Terms in whole numbers, made once: micropoints by measure, each rounded by itself, and what they break in all. */
public final class WholeTerms {
    private static final Measure[] MEASURES = Measure.values();

    private final long[] micropoints;
    private final Cost cost;

    private WholeTerms(long[] micropoints, Cost cost) {
        this.micropoints = micropoints;
        this.cost = cost;
    }

    public static WholeTerms of(Terms terms) {
        long[] micropoints = new long[MEASURES.length];
        long total = 0;
        for (int index = 0; index < MEASURES.length; index++) {
            micropoints[index] = PenaltyRules.micropoints(terms.points(MEASURES[index]));
            total += micropoints[index];
        }
        return new WholeTerms(micropoints, new Cost(0, PenaltyRules.breaks(terms.totalBreaks()), total));
    }

    /** What a measure costs, millionths of a point. */
    public long micropoints(Measure measure) {
        return micropoints[measure.ordinal()];
    }

    /** What all measures cost together. */
    public Cost cost() {
        return cost;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WholeTerms terms
                && Arrays.equals(micropoints, terms.micropoints)
                && cost.equals(terms.cost);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(micropoints);
    }
}
