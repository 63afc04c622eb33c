package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.book.Aim;
import org.bagwright.search.exact.ExactOption.Flight;
import org.bagwright.search.score.LexCost;

/**
 * One slot of a bag as arrays. A <em>front</em> is all that the later slots depend on in the earlier ones: the last club
 * that flies. After a slot the fronts are first its own (one for each different carry, doubt and wish), then, if it can be
 * empty or hold a putter, the fronts before it.
 */
final class SlotLayer {
    /** The front of an option that does not fly: the one before it stays. */
    static final int PASSES = -1;

    private static final long UNREACHED = Long.MAX_VALUE / 4;

    /** The only front before the first slot. */
    static final List<Optional<Flight>> NONE_FLIES = List.of(Optional.empty());

    final ExactOption[] options;

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

    /** What the gap costs between each front before (row) and each own front (column); where nothing flew, what the first
     * club that flies costs. */
    private final long[] gapBreaks;

    private final long[] gapWeights;
    private final List<Optional<Flight>> flightsAfter;
    private final Map<Optional<Flight>, Integer> places = new HashMap<>();

    SlotLayer(
            List<Optional<Flight>> before,
            List<ExactOption> filled,
            boolean countsChanges,
            int[] resources,
            Aim gapAim) {
        options = filled.toArray(ExactOption[]::new);
        counted = filled.stream()
                .mapToInt(option -> countsChanges ? option.changes() : 0)
                .toArray();
        uses = filled.stream().map(option -> uses(option, resources)).toArray(int[][]::new);
        List<Optional<Flight>> own = filled.stream()
                .map(ExactOption::flight)
                .filter(Optional::isPresent)
                .distinct()
                .toList();
        own.forEach(flight -> places.put(flight, places.size()));
        fronts = filled.stream().mapToInt(this::front).toArray();
        ownFronts = own.size();
        passes = !filled.stream().allMatch(ExactOption::flies);
        flightsAfter = new ArrayList<>(own);
        flightsAfter.addAll(passes ? before : List.of());
        frontsBefore = before.size();
        gapBreaks = new long[frontsBefore * ownFronts];
        gapWeights = new long[frontsBefore * ownFronts];
        fillGaps(before, own, gapAim);
    }

    private static int[] uses(ExactOption option, int[] resources) {
        int[] uses = new int[resources.length];
        for (int place = 0; place < uses.length; place++) {
            uses[place] = option.needs().of(resources[place]);
        }
        return uses;
    }

    private int front(ExactOption option) {
        return places.getOrDefault(option.flight(), PASSES);
    }

    private void fillGaps(List<Optional<Flight>> before, List<Optional<Flight>> own, Aim aim) {
        int cell = 0;
        for (Optional<Flight> from : before) {
            for (Optional<Flight> to : own) {
                Flight next = to.orElseThrow();
                LexCost gap = from.map(flight -> flight.gap(aim, next)).orElse(next.first());
                gapBreaks[cell] = gap.breaks();
                gapWeights[cell] = gap.weight();
                cell++;
            }
        }
    }

    int size() {
        return options.length;
    }

    /** The last club that flies, for each front after the slot. */
    List<Optional<Flight>> flightsAfter() {
        return flightsAfter;
    }

    int frontsAfter() {
        return flightsAfter.size();
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

    /** What the gap before an option breaks where this front was before it; nothing if the option does not fly. */
    long gapBreaksTo(int option, int frontBefore) {
        return fronts[option] == PASSES ? 0 : gapBreaks(frontBefore, fronts[option]);
    }

    long gapWeightTo(int option, int frontBefore) {
        return fronts[option] == PASSES ? 0 : gapWeight(frontBefore, fronts[option]);
    }

    /**
     * For each front before the slot the least weight of the slot and all that follow, whatever they break.
     *
     * @param possible all options of the slot, those too that cost more than another one with the same front
     * @param rest the same by the fronts after it
     */
    long[] leastWeights(List<ExactOption> possible, long[] rest) {
        long[] own = new long[ownFronts];
        Arrays.fill(own, UNREACHED);
        long passing = UNREACHED;
        for (ExactOption option : possible) {
            int front = front(option);
            if (front == PASSES) {
                passing = Math.min(passing, option.own().weight());
            } else {
                own[front] = Math.min(own[front], option.own().weight() + rest[front]);
            }
        }
        long[] least = new long[frontsBefore];
        for (int before = 0; before < frontsBefore; before++) {
            least[before] = passes ? passing + rest[ownFronts + before] : UNREACHED;
            for (int front = 0; front < ownFronts; front++) {
                least[before] = Math.min(least[before], gapWeight(before, front) + own[front]);
            }
        }
        return least;
    }

    /** How many steps one pass through this slot takes for each count of changes. */
    long work() {
        return (long) frontsBefore * ownFronts + (long) size() * (passes ? frontsBefore : 1);
    }
}
