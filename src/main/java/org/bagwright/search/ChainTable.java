package org.bagwright.search;

import java.util.Arrays;

/**
 * The least costs by carry and changes used. Two arrays of whole numbers, since millions of cells are compared: the
 * breaks, and the weight, which is micropoints and below them the number of changes, so that of equal penalties the one
 * with fewer changes is less.
 */
final class ChainTable {
    private static final long WEIGHT_PER_MICROPOINT = 1024;

    /** The breaks of what cannot be reached; far above any sum of breaks, far below overflow. */
    private static final long OUT_OF_REACH = 1L << 61;

    private final int changeCounts;
    private final long[] breaks;
    private final long[] weights;

    ChainTable(int carries, int changeCounts) {
        this.changeCounts = changeCounts;
        breaks = new long[carries * changeCounts];
        weights = new long[carries * changeCounts];
    }

    ChainTable outOfReach() {
        Arrays.fill(breaks, OUT_OF_REACH);
        return this;
    }

    static long weight(long micropoints, int changes) {
        return micropoints * WEIGHT_PER_MICROPOINT + changes;
    }

    /** Lowers one cell to a way through a cell of another table plus what the way itself costs, if that is less. */
    boolean lower(
            int carry, int changes, ChainTable from, int fromCarry, int fromChanges, long addBreaks, long addWeight) {
        int cell = carry * changeCounts + changes;
        int fromCell = fromCarry * changeCounts + fromChanges;
        long wayBreaks = from.breaks[fromCell] + addBreaks;
        long wayWeight = from.weights[fromCell] + addWeight;
        boolean less = wayBreaks < breaks[cell] || (wayBreaks == breaks[cell] && wayWeight < weights[cell]);
        if (less) {
            breaks[cell] = wayBreaks;
            weights[cell] = wayWeight;
        }
        return less;
    }

    /** As {@link #lower} for every count of changes; the innermost loop of the whole search. */
    void lowerAll(int carry, ChainTable from, int fromCarry, long addBreaks, long addWeight) {
        int cell = carry * changeCounts;
        int fromCell = fromCarry * changeCounts;
        for (int end = cell + changeCounts; cell < end; cell++, fromCell++) {
            long wayBreaks = from.breaks[fromCell] + addBreaks;
            long wayWeight = from.weights[fromCell] + addWeight;
            if (wayBreaks < breaks[cell] || (wayBreaks == breaks[cell] && wayWeight < weights[cell])) {
                breaks[cell] = wayBreaks;
                weights[cell] = wayWeight;
            }
        }
    }

    /** The least cost in one cell. */
    Cost cost(int carry, int changes) {
        int cell = carry * changeCounts + changes;
        return new Cost(0, breaks[cell], weights[cell] / WEIGHT_PER_MICROPOINT);
    }
}
