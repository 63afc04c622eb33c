package org.bagwright.search.team;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.score.PenaltyRules;

/** One way to fill the first slots of a problem, and what it uses of the limits. */
final class LimitUse {
    private final LimitUse parent;
    private final ExactOption option;

    /** The stock items, then changes and clubs of the present bag. */
    private final int[] used;

    /** For each complete bag its changes and its clubs beyond the limits. */
    private final List<Integer> beyond;

    /** Their sum. */
    private final int violations;

    private LimitUse(LimitUse parent, ExactOption option, int[] used, List<Integer> beyond) {
        this.parent = parent;
        this.option = option;
        this.used = used;
        this.beyond = beyond;
        violations = beyond.stream().mapToInt(Integer::intValue).sum();
    }

    static LimitUse none(int items) {
        return new LimitUse(null, null, new int[items + 2], List.of());
    }

    private int items() {
        return used.length - 2;
    }

    /**
     * With an option for one more slot.
     *
     * @param floor of each limit how much can be used so that the later slots cannot break it: less is no better
     */
    LimitUse with(ExactOption next, int[] floor) {
        int[] after = used.clone();
        for (int item = 0; item < items(); item++) {
            after[item] += next.needs().takes().get(item);
        }
        after[items()] += next.changes();
        after[items() + 1] += next.needs().carried() ? 1 : 0;
        for (int at = 0; at < after.length; at++) {
            after[at] = Math.max(after[at], floor[at]);
        }
        return new LimitUse(this, next, after, beyond);
    }

    /** With the present bag complete. */
    LimitUse closed(ExactBag bag) {
        List<Integer> more = new ArrayList<>(beyond);
        more.add(Math.max(0, used[items()] - bag.changesLimit()));
        more.add(Math.max(0, used[items() + 1] - PenaltyRules.MOST_CLUBS));
        int[] after = used.clone();
        Arrays.fill(after, items(), after.length, 0);
        return new LimitUse(this, null, after, List.copyOf(more));
    }

    /** Whether it uses no more of any limit, and is fewer changes and clubs beyond those of complete bags, or the same. */
    boolean dominates(LimitUse other) {
        if (violations > other.violations || (violations == other.violations && !beyond.equals(other.beyond))) {
            return false;
        }
        for (int at = 0; at < used.length; at++) {
            if (used[at] > other.used[at]) {
                return false;
            }
        }
        return true;
    }

    /** Changes and clubs beyond the limits of the complete bags. */
    int violations() {
        return violations;
    }

    /** Those and the pieces beyond the stock. */
    int violations(List<Integer> available) {
        return violations
                + stockBeyond(available).stream().mapToInt(Integer::intValue).sum();
    }

    /** For each stock item the pieces beyond what there is. */
    List<Integer> stockBeyond(List<Integer> available) {
        List<Integer> more = new ArrayList<>();
        for (int item = 0; item < items(); item++) {
            more.add(Math.max(0, used[item] - available.get(item)));
        }
        return more;
    }

    /** For each complete bag its changes and its clubs beyond the limits. */
    List<Integer> beyond() {
        return beyond;
    }

    long used() {
        return Arrays.stream(used).asLongStream().sum();
    }

    /** The options of all slots, in their order. */
    List<ExactOption> options() {
        List<ExactOption> options = new ArrayList<>();
        for (LimitUse use = this; use.parent != null; use = use.parent) {
            if (use.option != null) {
                options.add(use.option);
            }
        }
        Collections.reverse(options);
        return options;
    }
}
