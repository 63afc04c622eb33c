package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bagwright.search.score.LexCost;

/** The plans of one bag whose group means lie in one box: their bound, the options left, and the best found in it. */
final class IntervalNode {
    private static final int MEAN_ROUNDS = 6;
    private static final int BEAM = 200;
    private static final int PATIENCE = 3;
    private static final double LEAST_STEP = 0.02;

    /** Ruling out fewer options than this share is not worth a new model. */
    private static final double WORTH_SHARE = 0.1;

    private final BestChoice best;
    private final Meter meter;
    private final boolean centreHolds;
    private BagModel model;
    private MeanIntervals box;
    private Prices prices;
    private boolean[] centred;
    private LexCost bound = LexCost.NONE;

    /**
     * What a box hands on to its parts.
     *
     * @param model the bag with the options left
     * @param box where the means lie
     * @param prices the multipliers that gave the best bound
     * @param centred for which groups the bound by the centre was the better one
     */
    record State(BagModel model, MeanIntervals box, Prices prices, List<Boolean> centred) {
        static State root(BagModel model) {
            List<Boolean> centred =
                    IntStream.of(model.groups).mapToObj(group -> false).toList();
            return new State(model, MeanIntervals.all(model), Prices.none(model.resources.length), centred);
        }
    }

    IntervalNode(State state, BestChoice best, Meter meter, boolean centreHolds) {
        this.best = best;
        this.meter = meter;
        this.centreHolds = centreHolds;
        model = state.model();
        box = state.box();
        prices = state.prices();
        centred = new boolean[model.groups.length];
        for (int group = 0; group < centred.length; group++) {
            centred[group] = state.centred().get(group);
        }
    }

    State state() {
        return stateOf(box);
    }

    private State stateOf(MeanIntervals part) {
        List<Boolean> kinds = IntStream.range(0, centred.length)
                .mapToObj(group -> centred[group])
                .toList();
        return new State(model, part, prices, kinds);
    }

    LexCost bound() {
        return bound;
    }

    /**
     * Raises the bound by multipliers and rules options out.
     *
     * @return whether a plan in this box can still beat the best
     */
    boolean tighten(int rounds, LexCost known) {
        bound = LexCost.max(bound, known);
        double step = 1;
        int idle = 0;
        Prices trial = prices;
        for (int round = 0; round < rounds && step >= LEAST_STEP; round++) {
            Optional<MeanIntervals> within = model.possible() ? box.within(model) : Optional.empty();
            if (within.isEmpty()) {
                return false;
            }
            box = within.orElseThrow();
            PricedCosts terms = terms(trial);
            ChainPass pass = new ChainPass(terms, meter);
            LexCost reached = pass.bound();
            if (reached.reaches(best.value())) {
                return false;
            }
            int[] path = pass.path();
            List<ExactOption> chosen = model.chosen(path);
            boolean improved = best.offer(chosen);
            boolean higher = reached.compareTo(bound) > 0;
            if (higher || round == 0) {
                bound = LexCost.max(bound, reached);
                prices = trial;
                idle = 0;
            } else if (++idle >= PATIENCE) {
                step /= 2;
                idle = 0;
            }
            boolean switched = switchKinds(terms, chosen);
            if (higher || improved || round == 0) {
                trial = ruleOut(pass, trial);
            }
            Prices next = model == terms.model ? moved(trial, path, reached, step) : trial;
            if (next == trial && !switched && model == terms.model) {
                return true;
            }
            trial = next;
        }
        return true;
    }

    /** Multipliers one step further, or the same if the limits are kept and cost nothing beyond what they are worth. */
    private Prices moved(Prices trial, int[] path, LexCost reached, double step) {
        int[] beyond = beyond(path);
        long square = IntStream.of(beyond).mapToLong(each -> (long) each * each).sum();
        boolean kept = IntStream.of(beyond).allMatch(each -> each <= 0);
        if (square == 0 || (kept && trial.zero())) {
            return trial;
        }
        boolean byBreaks = best.value().breaks() > reached.breaks();
        double distance = byBreaks
                ? best.value().breaks() - reached.breaks()
                : best.value().weight() - reached.weight();
        return trial.moved(step * distance / square, byBreaks, beyond);
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

    /** Takes for each group the kind of bound that says more of the choice found. */
    private boolean switchKinds(PricedCosts terms, List<ExactOption> chosen) {
        boolean switched = false;
        for (int group = 0; group < centred.length && centreHolds; group++) {
            boolean[] other = centred.clone();
            other[group] = !other[group];
            PricedCosts trial = new PricedCosts(model, new SpreadBound(model.bag.spreadAim(), box, other), prices);
            if (trial.spreadWeight(chosen, group) > terms.spreadWeight(chosen, group)) {
                centred = other;
                switched = true;
            }
        }
        return switched;
    }

    private Prices ruleOut(ChainPass pass, Prices trial) {
        boolean[][] marked = pass.canBeat(best.value());
        int left = 0;
        for (boolean[] slot : marked) {
            for (boolean mark : slot) {
                left += mark ? 1 : 0;
            }
        }
        if (left >= model.size() * (1 - WORTH_SHARE)) {
            return trial;
        }
        BagModel before = model;
        model = before.keep(marked);
        prices = prices.forResources(before.resources, model.resources);
        return trial.forResources(before.resources, model.resources);
    }

    private PricedCosts terms(Prices at) {
        return new PricedCosts(model, new SpreadBound(model.bag.spreadAim(), box, centred), at);
    }

    /** Labels with little width around the means of the best plan, moved to the new means as long as that helps. */
    void improve() {
        boolean better = true;
        for (int round = 0; round < MEAN_ROUNDS && better; round++) {
            MeanIntervals means = MeanIntervals.at(means(best.chosen()));
            PricedCosts terms =
                    new PricedCosts(model, new SpreadBound(model.bag.spreadAim(), means, centred(centreHolds)), prices);
            LexCost before = best.value();
            new LabelPass(new ChainPass(terms, meter), terms, best, meter, centreHolds, BEAM).run(true);
            better = best.value().compareTo(before) < 0;
        }
    }

    private double[] means(List<ExactOption> chosen) {
        double[] means = new double[model.groups.length];
        for (int group = 0; group < means.length; group++) {
            int place = group;
            means[group] = chosen.stream()
                    .filter(option -> model.group(option) == place)
                    .mapToDouble(ExactOption::matchMeasureUnits)
                    .average()
                    .orElse(box.centre(group));
        }
        return means;
    }

    private boolean[] centred(boolean all) {
        boolean[] kinds = new boolean[model.groups.length];
        Arrays.fill(kinds, all);
        return kinds;
    }

    /** Settles the box by labels; whether there is no plan in it that could beat the best any more. */
    boolean settle(int width) {
        PricedCosts terms =
                new PricedCosts(model, new SpreadBound(model.bag.spreadAim(), box, centred(centreHolds)), prices);
        ChainPass pass = new ChainPass(terms, meter);
        if (pass.bound().reaches(best.value())) {
            return true;
        }
        bound = LexCost.max(bound, pass.bound());
        return new LabelPass(pass, terms, best, meter, centreHolds, width).run(false);
    }

    /** How far the bound can lie below the truth because of the width of the box, points (tolerances for musts). */
    double looseness() {
        return IntStream.range(0, centred.length).mapToDouble(this::looseness).sum();
    }

    /** How far the breaks of the bound can lie below the truth because of the width of the box, thousandths. */
    double breakLooseness() {
        SpreadBound spread = new SpreadBound(model.bag.spreadAim(), box, centred);
        return IntStream.range(0, centred.length)
                .mapToDouble(group -> spread.breakLooseness(group, model.members[group]))
                .sum();
    }

    private double looseness(int group) {
        return new SpreadBound(model.bag.spreadAim(), box, centred).looseness(group, model.members[group]);
    }

    /** The group whose interval makes the bound loosest, or -1 if none does. */
    int widest() {
        int widest = -1;
        for (int group = 0; group < centred.length; group++) {
            if (looseness(group) > 1e-9 && (widest < 0 || looseness(group) > looseness(widest))) {
                widest = group;
            }
        }
        return widest;
    }

    List<State> halves(int group) {
        List<State> halves = new ArrayList<>();
        box.halves(group).forEach(half -> halves.add(stateOf(half)));
        return halves;
    }
}
