package org.bagwright.workbook.plan;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.bagwright.domain.option.ClosedReason;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.Broken;
import org.bagwright.domain.plan.GapTerm;

/** What the live choices of a book break, in the words of the sheet Plan. The sheet computes the same by formulas. */
public final class PlanVerdict {
    private final List<Broken> broken;
    private final Set<Integer> shortItems;

    public PlanVerdict(BookResult result) {
        broken = result.broken(PlanState.LIVE::of);
        shortItems = result.shortItems(PlanState.LIVE::of);
    }

    /** All of it in a line. */
    public String inWords() {
        return inWords(broken, VerdictLine.SHORT, shortItems.size());
    }

    /** What a golfer's choices break. */
    String inWords(BagResult bag) {
        List<Broken> his = broken.stream()
                .filter(rule -> rule.place().golfer().equals(bag.golfer().name()))
                .toList();
        int slots = (int) IntStream.range(0, bag.options().slots().size())
                .filter(index -> isShort(new PlanRow(bag, index)))
                .count();
        return inWords(his, VerdictLine.SLOTS_SHORT, slots);
    }

    private static String inWords(List<Broken> broken, String shortWords, int shortCount) {
        int limits = count(broken, Broken.Kind.LIMIT);
        int musts = count(broken, Broken.Kind.MUST);
        // a choice may be closed for several reasons
        long closed = broken.stream()
                .filter(rule -> rule.kind() == Broken.Kind.CLOSED)
                .map(Broken::place)
                .distinct()
                .count();
        return limits + musts + shortCount + closed == 0
                ? VerdictLine.ALL_KEPT
                : VerdictLine.LIMITS
                        + limits
                        + VerdictLine.MUSTS
                        + musts
                        + shortWords
                        + shortCount
                        + VerdictLine.CLOSED
                        + closed
                        + VerdictLine.END;
    }

    private static int count(List<Broken> broken, Broken.Kind kind) {
        return (int) broken.stream().filter(rule -> rule.kind() == kind).count();
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
        return must.isEmpty() ? row.missInWords() : "must: " + must;
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
