package org.bagwright.search;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BiConsumer;

/**
 * Branch and bound for one bag whose limits are hard: boxes of group means, the one with the least bound first. In each
 * box a chain pass with multipliers bounds the plans and rules options out; what is left is settled by labels where it
 * is small enough, else the box is split, or, where its width is not what makes the bound loose, more labels are
 * allowed.
 */
final class BagTree {
    private static final int FIRST_WIDTH = 300;
    private static final int WIDEN = 4;
    private static final int MOST_WIDTH = 200_000;

    /** With less than this share of the distance to the best plan in the width of a box, splitting it is no help. */
    private static final double LOOSE_SHARE = 0.25;

    private static final int ROOT_ROUNDS = 40;
    private static final int CHILD_ROUNDS = 8;
    private static final double POINTS_PER_WEIGHT = 1e-6 / Value.WEIGHT_PER_MICROPOINT;

    private final BestChoice best;
    private final Meter meter;
    private final BiConsumer<Value, List<ExactOption>> told;
    private final boolean centreHolds;
    private final PriorityQueue<Node> open = new PriorityQueue<>(
            Comparator.comparing((Node node) -> node.bound()).thenComparingLong(Node::order));
    private final BagModel root;
    private Value bound = Value.NONE;
    private long made;
    private Optional<ExactEnding> ending = Optional.empty();

    private record Node(BoxBound.State state, Value bound, int width, int rounds, long order) {}

    BagTree(
            ExactBag bag,
            BagLimits limits,
            BestChoice best,
            Meter meter,
            boolean tellsTakes,
            BiConsumer<Value, List<ExactOption>> told) {
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
    void run() {
        try {
            push(BoxBound.State.root(root), Value.NONE, FIRST_WIDTH, ROOT_ROUNDS);
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

    private void raise(Value to) {
        bound = Value.min(Value.max(bound, to), best.value());
        told.accept(bound, best.chosen());
    }

    private void handle(Node node) {
        BoxBound box = new BoxBound(node.state(), best, meter, centreHolds);
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

    private void branch(Node node, BoxBound box) {
        int widest = box.widest();
        Value least = Value.max(node.bound(), box.bound());
        if (widest >= 0 && isLoose(node, box)) {
            for (BoxBound.State half : box.halves(widest)) {
                push(half, least, node.width(), CHILD_ROUNDS);
            }
        } else {
            push(box.state(), least, node.width() * WIDEN, CHILD_ROUNDS);
        }
    }

    /** Whether it is the width of the box that keeps the bound low; where labels can be no more, that is what is left. */
    private boolean isLoose(Node node, BoxBound box) {
        Value apart = best.value().minus(box.bound());
        if (apart.breaks() > 0) {
            return box.breakLooseness() > LOOSE_SHARE * apart.breaks() || node.width() * WIDEN > MOST_WIDTH;
        }
        return box.looseness() > LOOSE_SHARE * Math.max(0, apart.weight()) * POINTS_PER_WEIGHT;
    }

    private void push(BoxBound.State state, Value least, int width, int rounds) {
        made++;
        open.add(new Node(state, least, width, rounds, made));
    }

    /** What no choice within the limits can be below. */
    Value bound() {
        return bound;
    }

    ExactEnding ending() {
        return ending.orElseThrow();
    }
}
