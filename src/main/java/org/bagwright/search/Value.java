package org.bagwright.search;

/**
 * A cost inside the exact search: breaks first, then the weight, which is micropoints and below them the number of
 * changes, so that of equal penalties the one with fewer changes is less. Weights of bounds can be negative.
 *
 * @param breaks hard breaks, thousandths
 * @param weight micropoints times {@link #WEIGHT_PER_MICROPOINT} plus changes
 */
record Value(long breaks, long weight) implements Comparable<Value> {
    static final long WEIGHT_PER_MICROPOINT = 1024;
    static final Value NONE = new Value(0, 0);
    static final long UNREACHED_BREAKS = 1L << 60;

    /** More than any plan costs. */
    static final Value OUT_OF_REACH = new Value(UNREACHED_BREAKS, 0);

    static long weight(long micropoints, int changes) {
        return micropoints * WEIGHT_PER_MICROPOINT + changes;
    }

    Value plus(Value other) {
        return new Value(breaks + other.breaks, weight + other.weight);
    }

    Value minus(Value other) {
        return new Value(breaks - other.breaks, weight - other.weight);
    }

    long micropoints() {
        return Math.floorDiv(weight, WEIGHT_PER_MICROPOINT);
    }

    boolean reaches(Value other) {
        return compareTo(other) >= 0;
    }

    static Value max(Value one, Value other) {
        return one.reaches(other) ? one : other;
    }

    static Value min(Value one, Value other) {
        return one.reaches(other) ? other : one;
    }

    @Override
    public int compareTo(Value other) {
        return breaks != other.breaks ? Long.compare(breaks, other.breaks) : Long.compare(weight, other.weight);
    }
}
