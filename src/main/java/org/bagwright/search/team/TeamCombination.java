package org.bagwright.search.team;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bagwright.search.exact.Prices;
import org.bagwright.search.score.LexCost;

/** The best way to take one known choice for each bag of a team within the stock, by dynamic programming over bags. */
final class TeamCombination {
    private static final int MOST_STATES = 5_000;

    private final List<Integer> stock;
    private boolean exact = true;

    private record State(State parent, BagColumn column, List<Integer> used, LexCost value) {}

    TeamCombination(List<Integer> stock) {
        this.stock = stock;
    }

    /** The best combination, one column for each bag; at least one combination must fit the stock. */
    List<BagColumn> best(List<List<BagColumn>> byBag, Prices prices) {
        List<State> states = List.of(new State(null, null, Collections.nCopies(stock.size(), 0), LexCost.NONE));
        for (List<BagColumn> columns : byBag) {
            Map<List<Integer>, State> next = new HashMap<>();
            for (State state : states) {
                for (BagColumn column : columns) {
                    add(next, state, column);
                }
            }
            states = kept(next, prices);
        }
        State best = states.stream().min(Comparator.comparing(State::value)).orElse(null);
        return best == null ? List.of() : columns(best);
    }

    /** Whether nothing had to be left out. */
    boolean exact() {
        return exact;
    }

    private void add(Map<List<Integer>, State> next, State state, BagColumn column) {
        List<Integer> used = new ArrayList<>();
        for (int item = 0; item < stock.size(); item++) {
            int sum = state.used.get(item) + column.takes().get(item);
            if (sum > stock.get(item)) {
                return;
            }
            used.add(sum);
        }
        LexCost value = state.value.plus(column.value());
        State known = next.get(used);
        if (known == null || value.compareTo(known.value) < 0) {
            next.put(used, new State(state, column, used, value));
        }
    }

    private List<State> kept(Map<List<Integer>, State> next, Prices prices) {
        List<State> states = new ArrayList<>(next.values());
        states.sort(Comparator.comparing((State state) -> state.value.plus(prices.of(state.used)))
                .thenComparing(state -> state.used.toString()));
        if (states.size() <= MOST_STATES) {
            return states;
        }
        exact = false;
        return states.subList(0, MOST_STATES);
    }

    private static List<BagColumn> columns(State last) {
        List<BagColumn> columns = new ArrayList<>();
        for (State state = last; state.parent != null; state = state.parent) {
            columns.add(state.column);
        }
        Collections.reverse(columns);
        return columns;
    }
}
