package org.bagwright.search.model;

import java.util.List;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.WantedRange;

/** The open options of a slot in arrays, for the search that looks at all of them at once. */
public final class OptionTable {
    /** The group of an option that is not matched. */
    public static final int NO_GROUP = -1;

    public final List<Candidate> options;
    public final double[] ownMicropoints;
    public final double[] ownBreaks;

    /** What each costs more if no club before it flies. */
    public final double[] firstMicropoints;

    public final double[] firstBreaks;
    public final boolean[] flies;
    public final boolean[] hasGapLimits;
    public final double[] carryM;
    public final double[] wishM;
    public final CarryDoubt[] doubts;
    public final int[] groups;
    public final double[] matchMeasureUnits;
    public final int[] changes;
    public final boolean[] carried;
    public final boolean[] takes;

    /** For each option the pieces that it takes of each item of the stock, up to the last that it takes of. */
    private final int[][] pieces;

    /** @param groupNames the groups of the bag, in the order of their numbers */
    OptionTable(List<Candidate> options, List<String> groupNames) {
        this.options = options;
        int size = options.size();
        ownMicropoints = new double[size];
        ownBreaks = new double[size];
        firstMicropoints = new double[size];
        firstBreaks = new double[size];
        flies = new boolean[size];
        hasGapLimits = new boolean[size];
        carryM = new double[size];
        wishM = new double[size];
        doubts = new CarryDoubt[size];
        groups = new int[size];
        matchMeasureUnits = new double[size];
        changes = new int[size];
        carried = new boolean[size];
        takes = new boolean[size];
        pieces = new int[size][];
        for (int place = 0; place < size; place++) {
            fill(place, options.get(place), groupNames);
        }
    }

    private void fill(int place, Candidate option, List<String> groupNames) {
        ownMicropoints[place] = option.own().cost().micropoints();
        ownBreaks[place] = option.own().cost().breaks();
        firstMicropoints[place] = option.first().cost().micropoints();
        firstBreaks[place] = option.first().cost().breaks();
        flies[place] = option.flies();
        hasGapLimits[place] = !option.gapLimitsM().equals(WantedRange.ANY);
        carryM[place] = option.carryM();
        wishM[place] = option.wishM();
        doubts[place] = option.doubt();
        groups[place] =
                option.match().map(match -> groupNames.indexOf(match.group())).orElse(NO_GROUP);
        matchMeasureUnits[place] =
                option.match().map(match -> match.valueMeasureUnits()).orElse(0.0);
        changes[place] = option.changes();
        carried[place] = option.carried();
        takes[place] = !option.taken().isEmpty();
        int items =
                option.taken().stream().mapToInt(some -> some.item() + 1).max().orElse(0);
        pieces[place] = new int[items];
        option.taken().forEach(some -> pieces[place][some.item()] = some.pieces());
    }

    /** How many pieces of an item of the stock the option at a place takes. */
    public int pieces(int place, int item) {
        return item < pieces[place].length ? pieces[place][item] : 0;
    }
}
