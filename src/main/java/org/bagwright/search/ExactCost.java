package org.bagwright.search;

import java.util.Comparator;

/**
 * What a plan costs; less is better, pieces before breaks before penalty.
 *
 * @param pieces stock taken that is not there, changes beyond the most and clubs beyond fourteen, all counted together
 * @param breaks hard breaks, thousandths
 * @param micropoints the penalty, millionths of a point
 */
record ExactCost(long pieces, long breaks, long micropoints) implements Comparable<ExactCost> {
    private static final Comparator<ExactCost> ORDER = Comparator.comparingLong(ExactCost::pieces)
            .thenComparingLong(ExactCost::breaks)
            .thenComparingLong(ExactCost::micropoints);

    static ExactCost of(long pieces, Value value) {
        return new ExactCost(pieces, value.breaks(), value.micropoints());
    }

    @Override
    public int compareTo(ExactCost other) {
        return ORDER.compare(this, other);
    }

    Cost cost() {
        return new Cost(pieces, breaks, micropoints);
    }
}
