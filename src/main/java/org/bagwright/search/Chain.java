package org.bagwright.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The best choice for one bag, exactly. Apart from the count of changes a club only meets its neighbours, so the bag is
 * a chain: from its last club backward, the least cost of the rest of the bag is known for every carry of a club and
 * every number of changes used so far (dynamic programming). The result is least in hard breaks, then in penalty, then
 * in changes; what still ties goes to the earlier options, from the first club on.
 */
final class Chain {
    private final SearchBag bag;
    private final List<Integer> order;
    private final List<ChainClub> clubs;
    private final int affordedChanges;

    /** Whether the changes are counted: only where the limit can bite. */
    private final boolean counted;

    /** For each club, by its carry and the changes used up to it: the least cost of all that follows it. */
    private final List<ChainTable> ahead = new ArrayList<>();

    Chain(SearchBag bag) {
        this.bag = bag;
        order = bag.chainOrder();
        clubs = order.stream()
                .map(club -> new ChainClub(bag.openBySlot().get(club)))
                .toList();
        affordedChanges = bag.affordedChanges();
        counted = clubs.stream().mapToInt(ChainClub::mostChanges).sum() > affordedChanges;
    }

    /** How many pairs of carries the search has to look at, once for every number of changes. */
    long work() {
        long pairs = 0;
        for (int club = 0; club + 1 < clubs.size(); club++) {
            pairs += (long) carries(club) * carries(club + 1);
        }
        return pairs * changeCounts();
    }

    /** The best choice and its cost as the chain sums it up. */
    Start best() {
        lookAhead();
        Integer[] chosen = new Integer[order.size()];
        ChainClub.Link first = bestLink(0, 0, 0);
        Cost rest = ahead.get(0).cost(first.carry(), usedAfter(0, first));
        int carry = 0;
        int used = 0;
        for (int club = 0; club < clubs.size(); club++) {
            ChainClub.Link link = bestLink(club, carry, used);
            chosen[order.get(club)] = link.option();
            carry = link.carry();
            used = usedAfter(used, link);
        }
        return new Start(Arrays.asList(chosen), rest.plus(first.own()).plus(constantCost()), true);
    }

    /** What every choice costs that the chain looks at. */
    private Cost constantCost() {
        int changes = PenaltyRules.changesBeyond(affordedChanges, bag.mostChanges());
        return new Cost(changes + bag.leastClosed(), 0, 0);
    }

    private void lookAhead() {
        ahead.clear();
        ahead.add(new ChainTable(carries(clubs.size() - 1), changeCounts()));
        for (int club = clubs.size() - 1; club > 0; club--) {
            ahead.add(0, gapBefore(club).through(throughClub(club, ahead.get(0)), changeCounts()));
        }
    }

    /** The least cost of a club and all that follows, by its carry and the changes used before it. */
    private ChainTable throughClub(int club, ChainTable after) {
        ChainTable from = new ChainTable(carries(club), changeCounts()).outOfReach();
        for (ChainClub.Link link : clubs.get(club).links()) {
            long weight = ChainTable.weight(link.own().micropoints(), link.changes());
            for (int used = 0; used < changeCounts(); used++) {
                int usedAfter = usedAfter(used, link);
                if (usedAfter < changeCounts()) {
                    from.lower(
                            link.carry(),
                            used,
                            after,
                            link.carry(),
                            usedAfter,
                            link.own().breaks(),
                            weight);
                }
            }
        }
        return from;
    }

    private ChainClub.Link bestLink(int club, int carryBefore, int used) {
        ChainTable ways = new ChainTable(1, changeCounts()).outOfReach();
        ChainClub.Link best = null;
        for (ChainClub.Link link : clubs.get(club).links()) {
            int usedAfter = usedAfter(used, link);
            if (usedAfter < changeCounts()) {
                Cost way =
                        link.own().plus(club == 0 ? Cost.NONE : gapBefore(club).cost(carryBefore, link.carry()));
                long weight = ChainTable.weight(way.micropoints(), link.changes());
                if (ways.lower(0, 0, ahead.get(club), link.carry(), usedAfter, way.breaks(), weight)) {
                    best = link;
                }
            }
        }
        return best;
    }

    private ChainGap gapBefore(int club) {
        return ChainGap.before(
                bag, club, clubs.get(club - 1).carriesM(), clubs.get(club).carriesM());
    }

    private int carries(int club) {
        return clubs.get(club).carriesM().length;
    }

    private int changeCounts() {
        return counted ? affordedChanges + 1 : 1;
    }

    private int usedAfter(int used, ChainClub.Link link) {
        return counted ? used + link.changes() : 0;
    }
}
