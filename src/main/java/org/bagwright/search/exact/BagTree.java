package org.bagwright.search.exact;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BiConsumer;
import org.bagwright.search.score.LexCost;

/**
 * Branch and bound for one bag whose limits are hard: boxes of group means, the one with the least bound first. In each
 * box a chain pass with multipliers bounds the plans and rules options out; what is left is settled by labels where it
 * is small enough, else the box is split, or, where its width is not what makes the bound loose, more labels are
 * allowed.
 */
public final class BagTree {
    private static final int FIRST_WIDTH = 300;
    private static final int WIDEN = 4;
    private static final int MOST_WIDTH = 200_000;

    /** With less than this share of the distance to the best plan in the width of a box, splitting it is no help. */
    private static final double LOOSE_SHARE = 0.25;

    private static final int ROOT_ROUNDS = 40;
    private static final int CHILD_ROUNDS = 8;
    private static final double POINTS_PER_WEIGHT = 1e-6 / LexCost.WEIGHT_PER_MICROPOINT;

    private final BestChoice best;
    private final Meter meter;
    private final BiConsumer<LexCost, List<ExactOption>> told;
    private final boolean centreHolds;
    private final PriorityQueue<Node> open = new PriorityQueue<>(
            Comparator.comparing((Node node) -> node.bound()).thenComparingLong(Node::order));
    private final BagModel root;
    private LexCost bound = LexCost.NONE;
    private long made;
    private Optional<ExactEnding> ending = Optional.empty();

    private record Node(IntervalNode.State state, LexCost bound, int width, int rounds, long order) {}

    public BagTree(
            ExactBag bag,
            BagLimits limits,
            BestChoice best,
            Meter meter,
            boolean tellsTakes,
            BiConsumer<LexCost, List<ExactOption>> told) {
        this.best = best;
        this.told = told;
        this.meter = meter;
        root = new BagModel(bag, limits, tellsTakes);
        centreHolds = SpreadBound.centreHolds(bag.spreadAim(), apart(bag));
    }

    private static double apart(ExactBag bag) {
        double[] numbers = bag.slots().stream()
                .flatMap(List::stream)
                .filter(option -> option.group() >= 0)
                .mapToDouble(ExactOption::matchMeasureUnits)
                .sorted()
                .toArray();
        return numbers.length == 0 ? 0 : numbers[numbers.length - 1] - numbers[0];
    }

    /** Searches until the best choice is proven or the meter ends it. */
    public void run() {
        try {
            push(IntervalNode.State.root(root), LexCost.NONE, FIRST_WIDTH, ROOT_ROUNDS);
            while (!open.isEmpty() && !open.peek().bound().reaches(best.value())) {
                raise(open.peek().bound());
                Node node = open.poll();
                if (node.width() > MOST_WIDTH) {
                    throw new Meter.Ended(ExactEnding.STEPS);
                }
                handle(node);
            }
            bound = best.value();
            ending = Optional.of(ExactEnding.PROVEN);
        } catch (Meter.Ended ended) {
            ending = Optional.of(ended.why());
        }
    }

    private void raise(LexCost to) {
        bound = LexCost.min(LexCost.max(bound, to), best.value());
        told.accept(bound, best.chosen());
    }

    private void handle(Node node) {
        IntervalNode box = new IntervalNode(node.state(), best, meter, centreHolds);
        if (!box.tighten(node.rounds(), node.bound())) {
            return;
        }
        if (node.rounds() == ROOT_ROUNDS && !root.tellsTakes) {
            box.improve();
            if (!box.tighten(node.rounds(), node.bound())) {
                return;
            }
        }
        if (box.settle(node.width())) {
            return;
        }
        branch(node, box);
    }

    private void branch(Node node, IntervalNode box) {
        int widest = box.widest();
        LexCost least = LexCost.max(node.bound(), box.bound());
        if (widest >= 0 && isLoose(node, box)) {
            for (IntervalNode.State half : box.halves(widest)) {
                push(half, least, node.width(), CHILD_ROUNDS);
            }
        } else {
            push(box.state(), least, node.width() * WIDEN, CHILD_ROUNDS);
        }
    }

    /** Whether it is the width of the box that keeps the bound low; where labels can be no more, that is what is left. */
    private boolean isLoose(Node node, IntervalNode box) {
        LexCost apart = best.value().minus(box.bound());
        if (apart.breaks() > 0) {
            return box.breakLooseness() > LOOSE_SHARE * apart.breaks() || node.width() * WIDEN > MOST_WIDTH;
        }
        return box.looseness() > LOOSE_SHARE * Math.max(0, apart.weight()) * POINTS_PER_WEIGHT;
    }

    private void push(IntervalNode.State state, LexCost least, int width, int rounds) {
        made++;
        open.add(new Node(state, least, width, rounds, made));
    }

    /** What no choice within the limits can be below. */
    public LexCost bound() {
        return bound;
    }

    public ExactEnding ending() {
        return ending.orElseThrow();
    }
}
