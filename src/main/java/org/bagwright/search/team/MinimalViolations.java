package org.bagwright.search.team;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bagwright.search.exact.BagLimits;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.score.PenaltyRules;

/**
 * How many pieces every plan must at least take beyond the limits, which is nearly always none. Dynamic programming over
 * all slots of all bags; a state is what has been used up, and only states that no other one undercuts are kept. Where
 * limits cannot be kept they are raised by just what the least takes, in each way there is, and then held.
 */
final class MinimalViolations {
    private static final int MOST_STATES = 2_000;
    private static final int MOST_RAISES = 32;

    private final ExactProblem problem;
    private final int items;
    private boolean all = true;

    /**
     * Limits that can be kept.
     *
     * @param byBag the limits of each bag, all with the whole stock
     * @param witness a choice of all bags that keeps them
     */
    record Raise(List<BagLimits> byBag, List<List<ExactOption>> witness) {}

    /**
     * @param pieces the least number of pieces beyond the limits
     * @param certain whether there is no plan with fewer, and every way to raise the limits is in the list
     * @param raises the ways to raise the limits by that number
     */
    record Result(long pieces, boolean certain, List<Raise> raises) {}

    /** What is used up: stock items, then changes and clubs of the present bag; and what bags before took too many. */
    private static final class State {
        private final State parent;
        private final ExactOption option;
        private final int[] used;
        private final int pieces;
        private final List<Integer> beyond;

        State(State parent, ExactOption option, int[] used, int pieces, List<Integer> beyond) {
            this.parent = parent;
            this.option = option;
            this.used = used;
            this.pieces = pieces;
            this.beyond = beyond;
        }

        int pieces() {
            return pieces;
        }

        boolean undercuts(State other) {
            if (pieces > other.pieces || (pieces == other.pieces && !beyond.equals(other.beyond))) {
                return false;
            }
            for (int at = 0; at < used.length; at++) {
                if (used[at] > other.used[at]) {
                    return false;
                }
            }
            return true;
        }
    }

    private MinimalViolations(ExactProblem problem) {
        this.problem = problem;
        items = problem.available().size();
    }

    static Result of(ExactProblem problem) {
        return new MinimalViolations(problem).solve();
    }

    private Result solve() {
        List<State> states = List.of(new State(null, null, new int[items + 2], 0, List.of()));
        int[] stockRest = new int[items];
        problem.bags().forEach(bag -> bag.slots().forEach(slot -> addMost(stockRest, slot)));
        for (ExactBag bag : problem.bags()) {
            states = through(bag, states, stockRest);
        }
        int least = states.stream().mapToInt(this::total).min().orElseThrow();
        Map<List<Integer>, Raise> raises = new LinkedHashMap<>();
        states.stream()
                .filter(state -> total(state) == least)
                .forEach(state -> raises.putIfAbsent(key(state), raise(state)));
        all &= raises.size() <= MOST_RAISES;
        return new Result(
                least,
                all || least == 0,
                raises.values().stream().limit(MOST_RAISES).toList());
    }

    private void addMost(int[] rest, List<ExactOption> slot) {
        for (int item = 0; item < items; item++) {
            int at = item;
            rest[item] += slot.stream()
                    .mapToInt(option -> option.takes().get(at))
                    .max()
                    .orElseThrow();
        }
    }

    private void takeMost(int[] rest, List<ExactOption> slot) {
        int[] most = new int[items];
        addMost(most, slot);
        for (int item = 0; item < items; item++) {
            rest[item] -= most[item];
        }
    }

    private List<State> through(ExactBag bag, List<State> before, int[] stockRest) {
        int changesRest =
                bag.slots().stream().mapToInt(MinimalViolations::mostChanges).sum();
        int clubsRest = bag.slots().size();
        List<State> states = before;
        for (List<ExactOption> slot : bag.slots()) {
            takeMost(stockRest, slot);
            changesRest -= mostChanges(slot);
            clubsRest--;
            int[] floor = floor(bag, stockRest, changesRest, clubsRest);
            List<ExactOption> unlike = unlike(slot);
            List<State> next = new ArrayList<>();
            states.forEach(state -> unlike.forEach(option -> next.add(step(state, option, floor))));
            states = kept(next);
        }
        return kept(states.stream().map(state -> closed(bag, state)).toList());
    }

    private static int mostChanges(List<ExactOption> slot) {
        return slot.stream().mapToInt(ExactOption::changes).max().orElseThrow();
    }

    /** Of each limit how much may be used so that the slots ahead cannot break it: less is no better. */
    private int[] floor(ExactBag bag, int[] stockRest, int changesRest, int clubsRest) {
        int[] floor = new int[items + 2];
        for (int item = 0; item < items; item++) {
            floor[item] = problem.available().get(item) - stockRest[item];
        }
        floor[items] = bag.mostChanges().orElse(Integer.MAX_VALUE) - changesRest;
        floor[items + 1] = PenaltyRules.MOST_CLUBS - clubsRest;
        return floor;
    }

    private List<ExactOption> unlike(List<ExactOption> slot) {
        Map<List<Integer>, ExactOption> first = new LinkedHashMap<>();
        slot.forEach(option -> first.putIfAbsent(needs(option), option));
        return first.entrySet().stream()
                .filter(entry -> first.keySet().stream().noneMatch(other -> less(other, entry.getKey())))
                .map(Map.Entry::getValue)
                .toList();
    }

    private static List<Integer> needs(ExactOption option) {
        List<Integer> needs = new ArrayList<>(option.takes());
        needs.add(option.changes());
        needs.add(option.carried() ? 1 : 0);
        return needs;
    }

    private static boolean less(List<Integer> one, List<Integer> other) {
        for (int at = 0; at < one.size(); at++) {
            if (one.get(at) > other.get(at)) {
                return false;
            }
        }
        return !one.equals(other);
    }

    private static State step(State state, ExactOption option, int[] floor) {
        List<Integer> needs = needs(option);
        int[] used = new int[floor.length];
        for (int at = 0; at < used.length; at++) {
            used[at] = Math.max(state.used[at] + needs.get(at), floor[at]);
        }
        return new State(state, option, used, state.pieces, state.beyond);
    }

    private State closed(ExactBag bag, State state) {
        int changes = Math.max(0, state.used[items] - bag.mostChanges().orElse(Integer.MAX_VALUE));
        int clubs = Math.max(0, state.used[items + 1] - PenaltyRules.MOST_CLUBS);
        int[] used = Arrays.copyOf(state.used, items + 2);
        used[items] = 0;
        used[items + 1] = 0;
        List<Integer> beyond = new ArrayList<>(state.beyond);
        beyond.add(changes);
        beyond.add(clubs);
        return new State(state, null, used, state.pieces + changes + clubs, List.copyOf(beyond));
    }

    private List<State> kept(List<State> states) {
        List<State> ordered = new ArrayList<>(states);
        ordered.sort(Comparator.comparingInt(State::pieces)
                .thenComparingInt(this::total)
                .thenComparingLong(
                        state -> Arrays.stream(state.used).asLongStream().sum()));
        List<State> kept = new ArrayList<>();
        for (State state : ordered) {
            if (kept.stream().noneMatch(other -> other.undercuts(state))) {
                kept.add(state);
            }
            if (kept.size() >= MOST_STATES) {
                all = false;
                break;
            }
        }
        return kept;
    }

    private int stockBeyond(State state, int item) {
        return Math.max(0, state.used[item] - problem.available().get(item));
    }

    private int total(State state) {
        int total = state.pieces;
        for (int item = 0; item < items; item++) {
            total += stockBeyond(state, item);
        }
        return total;
    }

    private List<Integer> key(State state) {
        List<Integer> key = new ArrayList<>(state.beyond);
        for (int item = 0; item < items; item++) {
            key.add(stockBeyond(state, item));
        }
        return key;
    }

    private Raise raise(State state) {
        List<Integer> stock = new ArrayList<>();
        for (int item = 0; item < items; item++) {
            stock.add(problem.available().get(item) + stockBeyond(state, item));
        }
        List<BagLimits> byBag = new ArrayList<>();
        for (int bag = 0; bag < problem.bags().size(); bag++) {
            int most = problem.bags().get(bag).mostChanges().orElse(Integer.MAX_VALUE);
            byBag.add(new BagLimits(
                    most + state.beyond.get(2 * bag), PenaltyRules.MOST_CLUBS + state.beyond.get(2 * bag + 1), stock));
        }
        return new Raise(byBag, witness(state));
    }

    private List<List<ExactOption>> witness(State last) {
        List<ExactOption> options = new ArrayList<>();
        for (State state = last; state.parent != null; state = state.parent) {
            if (state.option != null) {
                options.add(state.option);
            }
        }
        Collections.reverse(options);
        List<List<ExactOption>> bags = new ArrayList<>();
        int from = 0;
        for (ExactBag bag : problem.bags()) {
            bags.add(options.subList(from, from + bag.slots().size()));
            from += bag.slots().size();
        }
        return bags;
    }
}
