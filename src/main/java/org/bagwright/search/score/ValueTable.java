package org.bagwright.search.score;

import java.util.Arrays;

/** Least values by row (what the rest of a bag can tell apart) and by the changes used. */
public final class ValueTable {
    /** The breaks of what cannot be reached; far above any sum of breaks, far below overflow. */
    private final int counts;

    private final long[] breaks;
    private final long[] weights;

    private ValueTable(int rows, int counts) {
        this.counts = counts;
        breaks = new long[rows * counts];
        weights = new long[rows * counts];
    }

    public static ValueTable free(int rows, int counts) {
        return new ValueTable(rows, counts);
    }

    public static ValueTable outOfReach(int rows, int counts) {
        ValueTable table = new ValueTable(rows, counts);
        Arrays.fill(table.breaks, LexCost.UNREACHED_BREAKS);
        return table;
    }

    /** Nothing used yet, at no cost; the only cell that can be reached. */
    public static ValueTable start(int counts) {
        ValueTable table = outOfReach(1, counts);
        table.breaks[0] = 0;
        return table;
    }

    public long breaks(int row, int used) {
        return breaks[row * counts + used];
    }

    public long weight(int row, int used) {
        return weights[row * counts + used];
    }

    /**
     * Lowers a row to what another table's row costs plus a step; the innermost loop of the search.
     *
     * @param shift how many changes this row's cells lie after the other's: above 0 forward, below 0 backward
     */
    public void lower(int row, ValueTable from, int fromRow, int shift, long addBreaks, long addWeight) {
        int cell = row * counts + Math.max(0, shift);
        int fromCell = fromRow * counts + Math.max(0, -shift);
        for (int left = counts - Math.abs(shift); left > 0; left--, cell++, fromCell++) {
            long wayBreaks = from.breaks[fromCell] + addBreaks;
            if (wayBreaks <= breaks[cell]) {
                long wayWeight = from.weights[fromCell] + addWeight;
                if (wayBreaks < breaks[cell] || wayWeight < weights[cell]) {
                    breaks[cell] = wayBreaks;
                    weights[cell] = wayWeight;
                }
            }
        }
    }

    /** Whether some way through this row, a step and the other table's row costs less than a value. */
    public boolean below(
            LexCost limit, int row, ValueTable after, int afterRow, int shift, long addBreaks, long addWeight) {
        int cell = row * counts;
        int afterCell = afterRow * counts + shift;
        for (int left = counts - shift; left > 0; left--, cell++, afterCell++) {
            long wayBreaks = breaks[cell] + addBreaks + after.breaks[afterCell];
            if (wayBreaks < limit.breaks()
                    || (wayBreaks == limit.breaks()
                            && weights[cell] + addWeight + after.weights[afterCell] < limit.weight())) {
                return true;
            }
        }
        return false;
    }
}
