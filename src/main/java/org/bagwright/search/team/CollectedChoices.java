package org.bagwright.search.team;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bagwright.search.exact.BagLimits;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.Incumbent;
import org.bagwright.search.score.LexCost;

/** All choices of one bag below a cost, of those with the same pieces the best: what a team may need of the bag. */
final class CollectedChoices extends Incumbent {
    private final LexCost below;
    private final Map<List<Integer>, BagColumn> byTakes = new LinkedHashMap<>();

    CollectedChoices(ExactBag bag, BagLimits limits, List<ExactOption> start, LexCost below) {
        super(bag, limits, start);
        this.below = below;
    }

    @Override
    protected boolean offer(List<ExactOption> other) {
        if (limits().keeps(other)) {
            BagColumn column = BagColumn.of(bag(), other, limits().stock().size());
            if (column.value().compareTo(below) < 0) {
                byTakes.merge(column.takes(), column, BagColumn::better);
            }
        }
        return false;
    }

    /** The cost that the choices are below: fixed, so that the search does not end with the best of them. */
    @Override
    protected LexCost limit() {
        return below;
    }

    List<List<ExactOption>> choices() {
        return byTakes.values().stream().map(BagColumn::chosen).toList();
    }
}
