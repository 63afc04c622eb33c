package org.bagwright.search.exact;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bagwright.search.score.LexCost;

/** The plans of one bag whose group means are in given intervals: their lower bound, the options left, and the best found. */
final class IntervalNode {
    private static final int MEAN_ROUNDS = 6;
    private static final int BEAM = 200;
    private static final int PATIENCE = 3;
    private static final double LEAST_STEP = 0.02;

    /** Ruling out fewer options than this share is not worth a new model. */
    private static final double WORTH_SHARE = 0.1;

    private final Incumbent incumbent;
    private final Meter meter;
    private BagModel model;
    private SpreadBound spread;
    private Prices prices;
    private LexCost bound;

    /** The choice with the least cost in the last pass, limits aside. */
    private List<ExactOption> last = List.of();

    /**
     * What a node hands on to its parts.
     *
     * @param model the bag with the options left
     * @param spread the intervals of the means, with the better kind of bound for each group
     * @param prices the multipliers that gave the best bound
     */
    record State(BagModel model, SpreadBound spread, Prices prices) {
        static State root(BagModel model) {
            return new State(model, SpreadBound.over(model), Prices.none(model.resources.length));
        }
    }

    /** @param bound what is known that no plan in it is below */
    IntervalNode(State state, LexCost bound, Incumbent incumbent, Meter meter) {
        this.bound = bound;
        this.incumbent = incumbent;
        this.meter = meter;
        model = state.model();
        spread = state.spread();
        prices = state.prices();
    }

    State state() {
        return new State(model, spread, prices);
    }

    LexCost bound() {
        return bound;
    }

    /**
     * Raises the bound by multipliers and rules options out.
     *
     * @return whether a plan in these intervals can still beat the incumbent
     */
    boolean tighten(int rounds) {
        return (!model.hasSpreadMust() || lessBreaks()) && raise(rounds);
    }

    /** Rules out what breaks more than the incumbent by the musts of clubs and groups alone. */
    private boolean lessBreaks() {
        Optional<SpreadBound> within = model.isPossible() ? spread.within(model) : Optional.empty();
        if (within.isEmpty()) {
            return false;
        }
        spread = within.orElseThrow();
        BreakSearch breaks =
                new BreakSearch(model, spread.intervals(), incumbent.limit().breaks(), meter);
        if (!breaks.run()) {
            return false;
        }
        bound = LexCost.max(bound, new LexCost(breaks.breaks(), 0));
        spread = spread.in(breaks.intervals(spread.intervals()));
        keep(breaks.marks());
        return true;
    }

    private boolean raise(int rounds) {
        StepLength step = new StepLength(PATIENCE);
        Optional<Prices> trial = Optional.of(prices);
        for (int round = 0; round < rounds && step.length() >= LEAST_STEP && trial.isPresent(); round++) {
            Optional<SpreadBound> within = model.isPossible() ? spread.within(model) : Optional.empty();
            if (within.isEmpty()) {
                return false;
            }
            spread = within.orElseThrow();
            ChainPass pass = new ChainPass(new PricedCosts(model, spread, trial.orElseThrow()), meter);
            if (pass.bound().reaches(incumbent.limit())) {
                return false;
            }
            trial = next(pass, trial.orElseThrow(), step, round == 0);
        }
        return true;
    }

    /** Takes what a pass has found; the multipliers for the next one, or nothing if it would find the same. */
    private Optional<Prices> next(ChainPass pass, Prices trial, StepLength step, boolean first) {
        BagModel before = model;
        LexCost reached = pass.bound();
        int[] path = pass.path();
        List<ExactOption> chosen = model.chosen(path);
        last = chosen;
        boolean improved = incumbent.offer(chosen);
        boolean raised = first || reached.compareTo(bound) > 0;
        step.after(raised);
        if (raised) {
            bound = LexCost.max(bound, reached);
            prices = trial;
        }
        SpreadBound tighter = spread.tighter(model.groups, chosen);
        boolean switched = tighter != spread;
        spread = tighter;
        Prices left = raised || improved ? ruleOut(pass, trial) : trial;
        if (model != before) {
            return Optional.of(left);
        }
        Prices moved = moved(trial, path, reached, step.length());
        return moved == trial && !switched ? Optional.empty() : Optional.of(moved);
    }

    /** Multipliers one step further, or the same if the limits are kept and cost nothing beyond what they are worth. */
    private Prices moved(Prices trial, int[] path, LexCost reached, double step) {
        int[] beyond = beyond(path);
        long square = IntStream.of(beyond).mapToLong(each -> (long) each * each).sum();
        boolean kept = IntStream.of(beyond).allMatch(each -> each <= 0);
        if (square == 0 || (kept && trial.areZero())) {
            return trial;
        }
        LexCost distance = incumbent.limit().minus(reached);
        boolean byBreaks = distance.breaks() > 0;
        double length = byBreaks ? distance.breaks() : distance.weight();
        return trial.moved(step * length / square, byBreaks, beyond);
    }

    private int[] beyond(int[] path) {
        int[] beyond = new int[model.resources.length];
        for (int resource = 0; resource < beyond.length; resource++) {
            beyond[resource] = -model.available[resource];
            for (int slot = 0; slot < path.length; slot++) {
                beyond[resource] += model.layers[slot].uses[path[slot]][resource];
            }
        }
        return beyond;
    }

    private Prices ruleOut(ChainPass pass, Prices trial) {
        BagModel before = model;
        keep(pass.canBeat(incumbent.limit()));
        return model == before ? trial : trial.forResources(before.resources, model.resources);
    }

    /** Keeps only the options that are marked, if these are few enough. */
    private void keep(boolean[][] marked) {
        int left = 0;
        for (boolean[] slot : marked) {
            for (boolean mark : slot) {
                left += mark ? 1 : 0;
            }
        }
        if (left >= model.size() * (1 - WORTH_SHARE)) {
            return;
        }
        BagModel before = model;
        model = before.keep(marked);
        prices = prices.forResources(before.resources, model.resources);
    }

    /** Labels with little width around the means of the incumbent, moved to the new means as long as that helps. */
    void improve() {
        boolean better = true;
        List<ExactOption> at = incumbent.value().compareTo(incumbent.limit()) <= 0 ? incumbent.chosen() : last;
        for (int round = 0; round < MEAN_ROUNDS && better; round++) {
            SpreadBound means = spread.at(model, at).byCentre();
            LexCost before = incumbent.value();
            ChainPass pass = new ChainPass(new PricedCosts(model, means, prices), meter);
            new LabelPass(pass, incumbent, meter, BEAM).run(true);
            better = incumbent.value().compareTo(before) < 0;
            at = incumbent.chosen();
        }
    }

    /** Settles the node by labels; whether no plan in it can beat the incumbent any more. */
    boolean settle(int width) {
        ChainPass pass = new ChainPass(new PricedCosts(model, spread.byCentre(), prices), meter);
        if (pass.bound().reaches(incumbent.limit())) {
            return true;
        }
        bound = LexCost.max(bound, pass.bound());
        return new LabelPass(pass, incumbent, meter, width).run(false);
    }

    /** Whether the width of the intervals keeps the bound far below the incumbent. */
    boolean isLoose() {
        return spread.isLoose(model.groups, incumbent.limit().minus(bound));
    }

    /** The group whose interval makes the bound loosest, or {@link ExactOption#NO_GROUP} if none does. */
    int loosest() {
        return spread.loosest(model.groups);
    }

    /** The two parts of the node across the interval of a group. */
    List<State> halves(int group) {
        return spread.halves(group).stream()
                .map(half -> new State(model, half, prices))
                .toList();
    }
}
