package org.bagwright.workbook.plan;

import java.util.List;
import java.util.Set;
import org.bagwright.domain.option.ClosedReason;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.Broken;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.GapTerm;

/** What the live choices of a book break, in the words of the sheet Plan. The sheet computes the same by formulas. */
public final class PlanVerdict {
    private final List<Broken> broken;
    private final Set<Integer> shortItems;

    public PlanVerdict(BookResult result) {
        broken = result.broken(PlanState.LIVE::of);
        shortItems = result.shortItems(PlanState.LIVE::of);
    }

    /** How many limits are broken. */
    int limits() {
        return count(Broken.Kind.LIMIT);
    }

    /** How many musts are missed, carries that do not fall among them. */
    int musts() {
        return count(Broken.Kind.MUST);
    }

    private int count(Broken.Kind kind) {
        return (int) broken.stream().filter(rule -> rule.kind() == kind).count();
    }

    /** How many choices are closed, each for one reason or for several. */
    private long closed() {
        return broken.stream()
                .filter(rule -> rule.kind() == Broken.Kind.CLOSED)
                .map(Broken::place)
                .distinct()
                .count();
    }

    /** All of it in a line. */
    public String inWords() {
        return broken.isEmpty()
                ? VerdictLine.START + VerdictLine.ALL_KEPT
                : VerdictLine.START + VerdictLine.LIMITS + limits() + VerdictLine.MUSTS + musts() + VerdictLine.SHORT
                        + shortItems.size() + VerdictLine.CLOSED + closed() + VerdictLine.END;
    }

    /** The word of a row: the first of what is wrong, else how far the live choice misses. */
    public String word(PlanRow row) {
        Option live = row.option(PlanState.LIVE);
        if (!live.open()) {
            return "closed: " + ClosedReason.labels(live.closedReasons());
        }
        if (live.isEmpty()) {
            return Option.LEFT_OUT;
        }
        if (isShort(row)) {
            return "not in stock";
        }
        String limit = first(row, Broken.Kind.LIMIT);
        if (!limit.isEmpty()) {
            return "limit: " + limit;
        }
        if (row.gap(PlanState.LIVE).map(GapTerm::gapM).orElse(1.0) <= 0) {
            return "out of order";
        }
        String must = first(row, Broken.Kind.MUST);
        return must.isEmpty() ? PlanFormulas.fitWord(row.worstTolerances()) : "must: " + must;
    }

    /** Whether the live choice takes a piece of which there are too few. */
    boolean isShort(PlanRow row) {
        List<Integer> takes = row.option(PlanState.LIVE).takes();
        return shortItems.stream().anyMatch(item -> takes.get(item) > 0);
    }

    /** How many rules of a kind are broken in a row. */
    int count(PlanRow row, Broken.Kind kind) {
        return (int) broken.stream()
                .filter(rule -> rule.kind() == kind && row.isWhere(rule))
                .count();
    }

    /** What the first must is about that is missed in a row, but for the order of carries; blank if there is none. */
    String first(PlanRow row, Broken.Kind kind) {
        return broken.stream()
                .filter(rule -> rule.kind() == kind && row.isWhere(rule))
                .map(Broken::what)
                .filter(what -> !what.equals(Broken.ORDER))
                .findFirst()
                .orElse("");
    }
}
