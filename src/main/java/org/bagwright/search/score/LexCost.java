package org.bagwright.search.score;

/**
 * A cost inside the exact search: breaks first, then the weight, which is micropoints and below them the number of
 * changes, so that of equal penalties the one with fewer changes is less. Weights of bounds can be negative.
 *
 * @param breaks hard breaks, thousandths
 * @param weight micropoints times {@link #WEIGHT_PER_MICROPOINT} plus changes
 */
public record LexCost(long breaks, long weight) implements Comparable<LexCost> {
    public static final long WEIGHT_PER_MICROPOINT = 1024;
    public static final LexCost NONE = new LexCost(0, 0);
    static final long UNREACHED_BREAKS = 1L << 60;

    /** More than any plan costs. */
    public static final LexCost OUT_OF_REACH = new LexCost(UNREACHED_BREAKS, 0);

    public static long weight(long micropoints, int changes) {
        return micropoints * WEIGHT_PER_MICROPOINT + changes;
    }

    public LexCost plus(LexCost other) {
        return new LexCost(breaks + other.breaks, weight + other.weight);
    }

    public LexCost minus(LexCost other) {
        return new LexCost(breaks - other.breaks, weight - other.weight);
    }

    public long micropoints() {
        return Math.floorDiv(weight, WEIGHT_PER_MICROPOINT);
    }

    public boolean reaches(LexCost other) {
        return compareTo(other) >= 0;
    }

    public static LexCost max(LexCost one, LexCost other) {
        return one.reaches(other) ? one : other;
    }

    public static LexCost min(LexCost one, LexCost other) {
        return one.reaches(other) ? other : one;
    }

    @Override
    public int compareTo(LexCost other) {
        return breaks != other.breaks ? Long.compare(breaks, other.breaks) : Long.compare(weight, other.weight);
    }
}
