package org.bagwright.search.exact;

import java.util.List;
import org.bagwright.search.score.LexCost;

/** The best choice found so far for one bag: least in breaks, penalty and changes; of equals the earlier options. */
public class Incumbent {
    private final ExactBag bag;
    private final BagLimits limits;
    private List<ExactOption> chosen;
    private LexCost value;
    private LexCost cutoff = LexCost.OUT_OF_REACH;

    /** Starts from a choice that keeps the limits. */
    public Incumbent(ExactBag bag, BagLimits limits, List<ExactOption> start) {
        this.bag = bag;
        this.limits = limits;
        chosen = start;
        value = bag.cost(start);
    }

    /** Takes a choice if it keeps the limits and is better; whether its cost is less. */
    protected boolean offer(List<ExactOption> other) {
        if (!limits.keeps(other)) {
            return false;
        }
        LexCost otherValue = bag.cost(other);
        int order = otherValue.compareTo(value);
        if (order < 0 || (order == 0 && earlier(other, chosen))) {
            chosen = other;
            value = otherValue;
        }
        return order < 0;
    }

    private static boolean earlier(List<ExactOption> one, List<ExactOption> other) {
        for (int slot = 0; slot < one.size(); slot++) {
            int order = Integer.compare(one.get(slot).index(), other.get(slot).index());
            if (order != 0) {
                return order < 0;
            }
        }
        return false;
    }

    protected ExactBag bag() {
        return bag;
    }

    protected BagLimits limits() {
        return limits;
    }

    public List<ExactOption> chosen() {
        return chosen;
    }

    public LexCost value() {
        return value;
    }

    /** What a choice has to cost less than to be searched for. */
    protected LexCost limit() {
        return LexCost.min(value, cutoff);
    }

    /** Searches only for what costs less than this. */
    void cut(LexCost other) {
        cutoff = other;
    }
}
