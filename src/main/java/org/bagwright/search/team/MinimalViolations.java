package org.bagwright.search.team;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.bagwright.search.exact.BagLimits;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.score.PenaltyRules;

/**
 * How many pieces every plan must at least take beyond the limits, which is nearly always none. Dynamic programming over
 * all slots of all bags; a state is what has been used up, and only states that no other one dominates are kept. Where
 * limits cannot be kept they are raised by just what the least takes, in each way there is, and then held.
 */
final class MinimalViolations {
    private static final int MOST_STATES = 2_000;
    private static final int MOST_RAISES = 32;

    private final ExactProblem problem;
    private final int items;

    /** For each stock item the most pieces that the later slots can take. */
    private final int[] stockRest;

    private boolean complete = true;

    /**
     * Limits that a plan can keep.
     *
     * @param byBag the limits of each bag, all with the whole stock
     * @param witness a choice of all bags that keeps them
     */
    record RaisedLimits(List<BagLimits> byBag, List<List<ExactOption>> witness) {
        List<Integer> stock() {
            return byBag.get(0).stock();
        }

        /** With another choice as the one that keeps them, if it does and costs less. */
        RaisedLimits startingFrom(ExactProblem problem, List<List<ExactOption>> start) {
            return keeps(start) && problem.cost(start).compareTo(problem.cost(witness)) < 0
                    ? new RaisedLimits(byBag, start)
                    : this;
        }

        private boolean keeps(List<List<ExactOption>> start) {
            BagLimits together = new BagLimits(Integer.MAX_VALUE, Integer.MAX_VALUE, stock());
            return together.keeps(start.stream().flatMap(List::stream).toList())
                    && IntStream.range(0, byBag.size())
                            .allMatch(bag -> byBag.get(bag).keeps(start.get(bag)));
        }
    }

    /**
     * @param violations the least number of pieces beyond the limits that was found
     * @param fewest what no plan is below: the same unless too many ways had to be followed
     * @param certain whether there is no plan with fewer, and every way to raise the limits is in the list
     * @param limits the ways to raise the limits by that number
     */
    record Result(long violations, long fewest, boolean certain, List<RaisedLimits> limits) {}

    private MinimalViolations(ExactProblem problem) {
        this.problem = problem;
        items = problem.available().size();
        stockRest = new int[items];
        problem.bags().forEach(bag -> bag.slots().forEach(slot -> addMost(slot, 1)));
    }

    static Result of(ExactProblem problem) {
        return new MinimalViolations(problem).solve();
    }

    private Result solve() {
        List<Integer> stock = problem.available();
        List<LimitUse> states = List.of(LimitUse.none(items));
        for (ExactBag bag : problem.bags()) {
            states = through(bag, states);
        }
        int least =
                states.stream().mapToInt(state -> state.violations(stock)).min().orElseThrow();
        Map<List<List<Integer>>, RaisedLimits> raised = new LinkedHashMap<>();
        states.stream()
                .filter(state -> state.violations(stock) == least)
                .forEach(state -> raised.putIfAbsent(List.of(state.beyond(), state.stockBeyond(stock)), raised(state)));
        return new Result(
                least,
                complete ? least : Math.min(least, floor()),
                least == 0 || (complete && raised.size() <= MOST_RAISES),
                raised.values().stream().limit(MOST_RAISES).toList());
    }

    /** How far every plan is beyond the limits, each limit by itself. */
    private long floor() {
        long fewest = 0;
        for (int item = 0; item < items; item++) {
            int at = item;
            int taken = problem.bags().stream()
                    .mapToInt(bag -> least(bag, option -> option.needs().takes().get(at)))
                    .sum();
            fewest += Math.max(0, taken - problem.available().get(item));
        }
        for (ExactBag bag : problem.bags()) {
            fewest += Math.max(0, least(bag, ExactOption::changes) - bag.changesLimit());
            int clubs = least(bag, option -> option.needs().carried() ? 1 : 0);
            fewest += Math.max(0, clubs - PenaltyRules.MOST_CLUBS);
        }
        return fewest;
    }

    private static int least(ExactBag bag, ToIntFunction<ExactOption> use) {
        return bag.slots().stream()
                .mapToInt(slot -> slot.stream().mapToInt(use).min().orElseThrow())
                .sum();
    }

    private void addMost(List<ExactOption> slot, int sign) {
        for (int item = 0; item < items; item++) {
            int at = item;
            stockRest[item] += sign
                    * slot.stream()
                            .mapToInt(option -> option.needs().takes().get(at))
                            .max()
                            .orElseThrow();
        }
    }

    private List<LimitUse> through(ExactBag bag, List<LimitUse> before) {
        int changesRest = bag.slots().stream().mapToInt(ExactBag::mostChanges).sum();
        int clubsRest = bag.slots().size();
        List<LimitUse> states = before;
        for (List<ExactOption> slot : bag.slots()) {
            addMost(slot, -1);
            changesRest -= ExactBag.mostChanges(slot);
            clubsRest--;
            int[] floor = floor(bag, changesRest, clubsRest);
            List<ExactOption> least = leastNeeds(slot);
            List<LimitUse> next = new ArrayList<>();
            states.forEach(state -> least.forEach(option -> next.add(state.with(option, floor))));
            states = kept(next);
        }
        return kept(states.stream().map(state -> state.closed(bag)).toList());
    }

    /** Of each limit how much may be used so that the later slots cannot break it: less is no better. */
    private int[] floor(ExactBag bag, int changesRest, int clubsRest) {
        int[] floor = new int[items + 2];
        for (int item = 0; item < items; item++) {
            floor[item] = problem.available().get(item) - stockRest[item];
        }
        floor[items] = bag.changesLimit() - changesRest;
        floor[items + 1] = PenaltyRules.MOST_CLUBS - clubsRest;
        return floor;
    }

    /** One option for each of the needs that no others dominate. */
    private static List<ExactOption> leastNeeds(List<ExactOption> slot) {
        Map<ExactOption.Needs, ExactOption> first = new LinkedHashMap<>();
        slot.forEach(option -> first.putIfAbsent(option.needs(), option));
        Set<ExactOption.Needs> all = first.keySet();
        return first.values().stream()
                .filter(option -> all.stream().noneMatch(other -> other.isLessThan(option.needs())))
                .toList();
    }

    private List<LimitUse> kept(List<LimitUse> states) {
        List<LimitUse> ordered = new ArrayList<>(states);
        ordered.sort(Comparator.comparingInt((LimitUse state) -> state.violations())
                .thenComparingInt(state -> state.violations(problem.available()))
                .thenComparingLong(LimitUse::used));
        List<LimitUse> kept = new ArrayList<>();
        for (LimitUse state : ordered) {
            if (kept.stream().noneMatch(other -> other.dominates(state))) {
                kept.add(state);
            }
            if (kept.size() >= MOST_STATES) {
                complete = false;
                break;
            }
        }
        return kept;
    }

    private RaisedLimits raised(LimitUse state) {
        List<Integer> more = state.stockBeyond(problem.available());
        List<Integer> stock = IntStream.range(0, items)
                .mapToObj(item -> problem.available().get(item) + more.get(item))
                .toList();
        List<BagLimits> byBag = new ArrayList<>();
        List<List<ExactOption>> witness = new ArrayList<>();
        List<ExactOption> options = state.options();
        int from = 0;
        for (ExactBag bag : problem.bags()) {
            int place = 2 * byBag.size();
            byBag.add(new BagLimits(
                    bag.changesLimit() + state.beyond().get(place),
                    PenaltyRules.MOST_CLUBS + state.beyond().get(place + 1),
                    stock));
            witness.add(options.subList(from, from + bag.slots().size()));
            from += bag.slots().size();
        }
        return new RaisedLimits(byBag, witness);
    }
}
