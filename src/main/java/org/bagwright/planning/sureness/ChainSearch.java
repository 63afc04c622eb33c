package org.bagwright.planning.sureness;

import java.util.Arrays;

/**
 * The best choice of a chain in one world, by dynamic programming over the slots: a state is the last option that flies,
 * and where the number of changes is limited, how many were made. Keeps its arrays from one world to the next; for one
 * thread.
 */
final class ChainSearch {
    /** The state of a chain in which nothing flies yet; the others are the numbers of options and one more. */
    private static final int NOTHING = 0;

    private final Chain chain;
    private final Pass free;
    private Pass counting;

    ChainSearch(Chain chain) {
        this.chain = chain;
        this.free = new Pass(false, 1);
    }

    /** For each slot the number of its option in the best choice. */
    int[] best(World world) {
        int[] chosen = free.best(world);
        if (chain.changes(chosen) <= chain.mostChanges()) {
            return chosen;
        }
        if (counting == null) {
            counting = new Pass(true, chain.mostChanges() + 1);
        }
        return counting.best(world);
    }

    /** One pass over the slots, with as many levels as numbers of changes are told apart. */
    private final class Pass {
        private final boolean counts;
        private final int levels;
        private final int[][] before;
        private final int[][] taken;
        private final int[] live;
        private double[] points;
        private double[] next;
        private int liveCount;

        Pass(boolean counts, int levels) {
            this.counts = counts;
            this.levels = levels;
            int states = levels * (chain.size() + 1);
            before = new int[chain.slotCount()][states];
            taken = new int[chain.slotCount()][states];
            points = new double[states];
            next = new double[states];
            live = new int[chain.size() + 1];
        }

        int[] best(World world) {
            Arrays.fill(points, Double.POSITIVE_INFINITY);
            points[0] = 0;
            live[0] = NOTHING;
            liveCount = 1;
            for (int slot = 0; slot < chain.slotCount(); slot++) {
                Arrays.fill(next, Double.POSITIVE_INFINITY);
                boolean mayStay = false;
                for (int number = chain.firstOf(slot); number < chain.firstOf(slot + 1); number++) {
                    if (chain.option(number).flies()) {
                        fly(world, slot, number);
                    } else {
                        stay(world, slot, number);
                        mayStay = true;
                    }
                }
                goOn(slot, mayStay);
            }
            return chosen();
        }

        private void fly(World world, int slot, int number) {
            int changes = counts ? chain.option(number).changes() : 0;
            int to = levels * (number + 1);
            double ownPoints = world.ownPoints(number);
            for (int place = 0; place < liveCount; place++) {
                int from = levels * live[place];
                if (!counts && points[from] + ownPoints >= next[to]) {
                    return;
                }
                double stepPoints = ownPoints
                        + (live[place] == NOTHING
                                ? chain.reachPoints(world, number)
                                : chain.gapPoints(world, live[place] - 1, number));
                step(slot, number, from, to, changes, stepPoints);
            }
        }

        private void stay(World world, int slot, int number) {
            int changes = counts ? chain.option(number).changes() : 0;
            for (int place = 0; place < liveCount; place++) {
                int state = levels * live[place];
                step(slot, number, state, state, changes, world.ownPoints(number));
            }
        }

        private void step(int slot, int number, int from, int to, int changes, double stepPoints) {
            for (int level = 0; level + changes < levels; level++) {
                double sum = points[from + level] + stepPoints;
                if (sum < next[to + level + changes]) {
                    next[to + level + changes] = sum;
                    before[slot][to + level + changes] = from + level;
                    taken[slot][to + level + changes] = number;
                }
            }
        }

        private void goOn(int slot, boolean mayStay) {
            liveCount = mayStay ? liveCount : 0;
            for (int number = chain.firstOf(slot); number < chain.firstOf(slot + 1); number++) {
                if (chain.option(number).flies()) {
                    live[liveCount++] = number + 1;
                }
            }
            double[] used = points;
            points = next;
            next = used;
            sortLive();
        }

        /** The cheapest state first, so that the others need not be tried once they cost more by themselves. */
        private void sortLive() {
            for (int place = 1; !counts && place < liveCount; place++) {
                int state = live[place];
                int free = place;
                while (free > 0 && points[live[free - 1]] > points[state]) {
                    live[free] = live[free - 1];
                    free--;
                }
                live[free] = state;
            }
        }

        private int[] chosen() {
            int state = 0;
            for (int other = 1; other < points.length; other++) {
                state = points[other] < points[state] ? other : state;
            }
            int[] chosen = new int[chain.slotCount()];
            for (int slot = chosen.length - 1; slot >= 0; slot--) {
                chosen[slot] = taken[slot][state];
                state = before[slot][state];
            }
            return chosen;
        }
    }
}
