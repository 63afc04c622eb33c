package org.bagwright.search.exact;

import java.util.Arrays;

/** The first slots of a bag filled in one way, and all that the later slots need to know of it. */
final class Label {
    final Label parent;

    /** The place of the option in the last slot filled. */
    final int option;

    final int front;
    final int changes;
    final int[] uses;

    /** A lower bound of what these slots cost, with the prices of their pieces. */
    long breaks;

    long weight;

    /** What these slots cost with every mean at its centre, without prices and without the musts of open groups. */
    long centreBreaks;

    long centreWeight;

    /** For each group still open the sum of its clubs' numbers, how many they are, and a fingerprint of the numbers. */
    final double[] sums;

    final int[] members;
    final long[] prints;

    /** A fingerprint of those numbers with which a club might break a must. */
    final long[] breakers;

    /** The lower bound for the whole bag. */
    long totalBreaks;

    long totalWeight;

    Label(Label parent, int option, int front, int changes, int[] uses, int groups) {
        this.parent = parent;
        this.option = option;
        this.front = front;
        this.changes = changes;
        this.uses = uses;
        sums = parent == null ? new double[groups] : parent.sums.clone();
        members = parent == null ? new int[groups] : parent.members.clone();
        prints = parent == null ? new long[groups] : parent.prints.clone();
        breakers = parent == null ? new long[groups] : parent.breakers.clone();
    }

    /** No slot filled yet. */
    static Label root(BagModel model) {
        return new Label(null, -1, 0, 0, new int[model.resources.length], model.groups.count());
    }

    void join(int group, double number, boolean canBreak) {
        sums[group] += number;
        members[group]++;
        long bits = Double.doubleToLongBits(number) * 0x9E3779B97F4A7C15L;
        bits = (bits ^ (bits >>> 32)) * 0xD6E8FEB86659FD93L;
        prints[group] += bits ^ (bits >>> 29);
        breakers[group] += canBreak ? bits ^ (bits >>> 29) : 0;
    }

    void close(int group) {
        sums[group] = 0;
        members[group] = 0;
        prints[group] = 0;
        breakers[group] = 0;
    }

    boolean takesNoMoreThan(Label other) {
        if (changes > other.changes) {
            return false;
        }
        for (int resource = 0; resource < uses.length; resource++) {
            if (uses[resource] > other.uses[resource]) {
                return false;
            }
        }
        return true;
    }

    boolean takesTheSame(Label other) {
        return Arrays.equals(uses, other.uses);
    }

    boolean sameMembers(Label other) {
        return Arrays.equals(prints, other.prints) && Arrays.equals(members, other.members);
    }

    /** Whether a group's clubs break the same musts whatever joins them: the same breakers and the same mean. */
    boolean breaksTheSame(Label other, int group) {
        return breakers[group] == other.breakers[group] && sums[group] == other.sums[group];
    }

    static int compareByTotal(Label one, Label other) {
        int order = Long.compare(one.totalBreaks, other.totalBreaks);
        return order != 0 ? order : Long.compare(one.totalWeight, other.totalWeight);
    }

    static int compareByCentre(Label one, Label other) {
        int order = Long.compare(one.centreBreaks, other.centreBreaks);
        return order != 0 ? order : Long.compare(one.centreWeight, other.centreWeight);
    }
}
