package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.search.score.LexCost;
import org.bagwright.search.score.PenaltyRules;

/**
 * One slot of a bag as arrays. A <em>front</em> is all that the slots ahead can tell of the slots behind: carry and
 * wish of the last club that flies. After a slot the fronts are first its own (one for each different carry and wish),
 * then, if it can be empty or hold a putter, the fronts before it.
 */
public final class SlotLayer {
    /** The front of an option that does not fly: the one before it stays. */
    static final int PASSES = -1;

    private record Front(double carryM, double wishM) {}

    public final ExactOption[] options;

    /** The changes of each option, or 0 where nothing limits them. */
    final int[] counted;

    /** What each option takes of each limited resource. */
    final int[][] uses;

    /** The front of each option, or {@link #PASSES}. */
    final int[] fronts;

    /** How many fronts are the slot's own. */
    final int ownFronts;

    final int frontsBefore;
    final boolean passes;

    /** What lies between each front before (row) and each own front (column). */
    private final long[] gapBreaks;

    private final long[] gapWeights;
    private final List<Front> after;

    /** The layer before the first slot: nothing flies yet. */
    private SlotLayer() {
        options = new ExactOption[0];
        counted = new int[0];
        uses = new int[0][];
        fronts = new int[0];
        ownFronts = 1;
        frontsBefore = 0;
        passes = false;
        gapBreaks = new long[0];
        gapWeights = new long[0];
        after = List.of(new Front(Double.NaN, 0));
    }

    SlotLayer(SlotLayer before, List<ExactOption> filled, boolean counts, int[] resources, Aim gapAim) {
        options = filled.toArray(ExactOption[]::new);
        counted = filled.stream()
                .mapToInt(option -> counts ? option.changes() : 0)
                .toArray();
        uses = filled.stream()
                .map(option -> IntStream.of(resources)
                        .map(resource -> BagLimits.use(option, resource))
                        .toArray())
                .toArray(int[][]::new);
        List<Front> own = filled.stream()
                .filter(ExactOption::flies)
                .map(SlotLayer::front)
                .distinct()
                .toList();
        java.util.Map<Front, Integer> places = new java.util.HashMap<>();
        own.forEach(front -> places.put(front, places.size()));
        fronts = filled.stream()
                .mapToInt(option -> option.flies() ? places.get(front(option)) : PASSES)
                .toArray();
        ownFronts = own.size();
        passes = filled.stream().anyMatch(option -> !option.flies());
        after = new ArrayList<>(own);
        if (passes) {
            after.addAll(before.after);
        }
        frontsBefore = before.after.size();
        gapBreaks = new long[frontsBefore * ownFronts];
        gapWeights = new long[frontsBefore * ownFronts];
        fillGaps(before.after, own, gapAim);
    }

    static SlotLayer nothing() {
        return new SlotLayer();
    }

    private static Front front(ExactOption option) {
        return new Front(option.carryM(), option.wishM());
    }

    private void fillGaps(List<Front> before, List<Front> own, Aim aim) {
        int cell = 0;
        for (Front from : before) {
            for (Front to : own) {
                if (!Double.isNaN(from.carryM)) {
                    double gapM = from.carryM - to.carryM;
                    gapBreaks[cell] =
                            PenaltyRules.gapMustBreaks(aim, gapM, from.wishM) + PenaltyRules.carryBreaks(gapM);
                    gapWeights[cell] = LexCost.weight(PenaltyRules.gapMicropoints(aim, gapM, from.wishM), 0);
                }
                cell++;
            }
        }
    }

    public int size() {
        return options.length;
    }

    int frontsAfter() {
        return after.size();
    }

    /** The front after an option where this front was before it. */
    int frontAfter(int option, int frontBefore) {
        return fronts[option] == PASSES ? ownFronts + frontBefore : fronts[option];
    }

    long gapBreaks(int frontBefore, int ownFront) {
        return gapBreaks[frontBefore * ownFronts + ownFront];
    }

    long gapWeight(int frontBefore, int ownFront) {
        return gapWeights[frontBefore * ownFronts + ownFront];
    }

    /** How many steps one pass through this slot takes for each count of changes. */
    long work() {
        return (long) frontsBefore * ownFronts + (long) size() * (passes ? frontsBefore : 1);
    }
}
