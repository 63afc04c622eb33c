package org.bagwright.search;

/**
 * What a choice costs, in whole numbers so that sums are the same in any order; less is better, breaks first.
 *
 * @param breaks hard breaks, thousandths
 * @param micropoints the penalty, millionths of a point
 */
record Cost(long breaks, long micropoints) implements Comparable<Cost> {
    static final Cost NONE = new Cost(0, 0);

    Cost plus(Cost other) {
        return new Cost(breaks + other.breaks, micropoints + other.micropoints);
    }

    @Override
    public int compareTo(Cost other) {
        return breaks != other.breaks
                ? Long.compare(breaks, other.breaks)
                : Long.compare(micropoints, other.micropoints);
    }
}
