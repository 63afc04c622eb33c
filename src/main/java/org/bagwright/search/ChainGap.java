package org.bagwright.search;

import org.bagwright.domain.Aim;

/** What lies between two clubs that follow each other in a chain: a gap, or nothing where the second does not carry. */
final class ChainGap {
    private final double[] fromCarriesM;
    private final double[] toCarriesM;
    private final boolean free;
    private final Aim aim;
    private final double wishM;

    private ChainGap(double[] fromCarriesM, double[] toCarriesM, boolean free, Aim aim, double wishM) {
        this.fromCarriesM = fromCarriesM;
        this.toCarriesM = toCarriesM;
        this.free = free;
        this.aim = aim;
        this.wishM = wishM;
    }

    /**
     * @param bag the bag
     * @param place the place in the chain of the second club
     * @param from the carries of the club before it, metres
     * @param to its own carries, metres
     */
    static ChainGap before(SearchBag bag, int place, double[] from, double[] to) {
        boolean free = place >= bag.flyingIndexes().size();
        return new ChainGap(from, to, free, bag.gapAim(), free ? 0 : bag.gapWishM(place - 1));
    }

    Cost cost(int from, int to) {
        return free ? Cost.NONE : new Cost(0, breaks(gapM(from, to)), micropoints(gapM(from, to)));
    }

    /** For every carry before the gap and every count of changes the least cost of the gap and all that follows it. */
    ChainTable through(ChainTable after, int changeCounts) {
        ChainTable before = new ChainTable(fromCarriesM.length, changeCounts).outOfReach();
        for (int from = 0; from < fromCarriesM.length; from++) {
            for (int to = 0; to < toCarriesM.length; to++) {
                double gapM = gapM(from, to);
                long weight = free ? 0 : ChainTable.weight(micropoints(gapM), 0);
                before.lowerAll(from, after, to, free ? 0 : breaks(gapM), weight);
            }
        }
        return before;
    }

    private double gapM(int from, int to) {
        return fromCarriesM[from] - toCarriesM[to];
    }

    private long breaks(double gapM) {
        long must = aim.must() ? PenaltyRules.gapMustBreaks(aim, gapM, wishM) : 0;
        return must + PenaltyRules.carryBreaks(gapM);
    }

    private long micropoints(double gapM) {
        return PenaltyRules.gapMicropoints(aim, gapM, wishM);
    }
}
