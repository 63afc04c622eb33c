package org.bagwright.search.exact;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import org.bagwright.search.score.LexCost;

/**
 * Branch and bound for one bag whose limits are hard: intervals of group means, those with the least bound first. In
 * each node a chain pass with multipliers bounds the plans and rules options out; labels settle what is left where it
 * is small enough. If it is not, the node is split, or, where the width of its intervals is not what makes the bound
 * loose, more labels are allowed.
 */
public final class BagTree {
    private static final int FIRST_WIDTH = 300;
    private static final int WIDEN = 16;
    private static final int MOST_WIDTH = 200_000;

    private static final int ROOT_ROUNDS = 40;
    /** The first look at the breaks ends within this part of them. */
    private static final int FINE_SHARE = 32;

    /** Steps up to a higher penalty are this part of it. */
    private static final int PENALTY_SHARE = 8;

    /** After so many the search goes on without a limit. */
    private static final int MOST_STAGES = 12;

    private static final int CHILD_ROUNDS = 8;

    private final Incumbent incumbent;
    private final Meter meter;
    private final PriorityQueue<Node> open = new PriorityQueue<>(
            Comparator.comparing((Node node) -> node.bound()).thenComparingLong(Node::order));
    private final boolean stockMatters;
    private LexCost floor;

    /** What an earlier stage has proven that nothing is below. */
    private LexCost reached = LexCost.NONE;

    private boolean started;
    private Optional<IntervalNode> atWork = Optional.empty();
    private long made;
    private Optional<ExactEnding> ending = Optional.empty();

    private record Node(IntervalNode.State state, LexCost bound, int width, int rounds, long order) {}

    /**
     * @param incumbent what is known of the bag; takes every choice that is found
     * @param stockMatters whether choices differ by what they take of the stock, whatever limits the bag has
     */
    public BagTree(Incumbent incumbent, Meter meter, boolean stockMatters) {
        this.incumbent = incumbent;
        this.meter = meter;
        this.stockMatters = stockMatters;
        floor = incumbent.bag().floor();
    }

    /**
     * Searches until the incumbent is proven or the meter ends it.
     *
     * @return this tree, for its results
     */
    public BagTree run() {
        try {
            meter.look();
            BagModel root = new BagModel(incumbent.bag(), incumbent.limits(), stockMatters);
            floor = LexCost.max(floor, new LexCost(floor.breaks(), root.leastWeight()));
            push(IntervalNode.State.root(root), floor, FIRST_WIDTH, ROOT_ROUNDS);
            started = true;
            if (root.hasSpreadMust() && !stockMatters) {
                raiseBreaks(root);
                exploreByPenalty();
            } else {
                explore(Integer.MAX_VALUE);
            }
            ending = Optional.of(ExactEnding.PROVEN);
        } catch (Meter.Ended ended) {
            ending = Optional.of(ended.why());
        }
        return this;
    }

    private void explore(int mostNodes) {
        for (int node = 0;
                node < mostNodes && !open.isEmpty() && !open.peek().bound().reaches(incumbent.limit());
                node++) {
            if (open.peek().width() > MOST_WIDTH) {
                throw new Meter.Ended(ExactEnding.STEPS);
            }
            handle(open.poll());
            atWork = Optional.empty();
        }
    }

    /**
     * Searches the root, and then, where the best plan known costs far more, its parts with limits on the penalty that go up
     * from the bound: a limit far above rules nothing out.
     */
    private void exploreByPenalty() {
        explore(1);
        List<Node> parts = List.copyOf(open);
        LexCost known = parts.isEmpty() ? incumbent.limit() : open.peek().bound();
        for (int stage = 0; stage < MOST_STAGES && isFar(known); stage++) {
            LexCost next = new LexCost(known.breaks(), known.weight() + known.weight() / PENALTY_SHARE);
            incumbent.cut(next);
            explore(Integer.MAX_VALUE);
            open.clear();
            known = next;
            reached = LexCost.max(reached, LexCost.min(known, incumbent.value()));
            if (incumbent.value().compareTo(next) < 0) {
                return;
            }
            incumbent.cut(LexCost.OUT_OF_REACH);
            open.addAll(parts);
        }
        explore(Integer.MAX_VALUE);
    }

    private boolean isFar(LexCost known) {
        LexCost limit = incumbent.limit();
        return known.breaks() == limit.breaks()
                && limit.weight() > known.weight() + 2 * (known.weight() / PENALTY_SHARE);
    }

    /** Raises the bound by a look at the breaks alone. */
    private void raiseBreaks(BagModel root) {
        long low = floor.breaks();
        long high = incumbent.value().breaks();
        MeanIntervals all = SpreadBound.over(root).intervals();
        while (high - low > high / FINE_SHARE) {
            long middle = (low + high) / 2;
            if (new BreakSearch(root, all, middle, meter).run()) {
                high = middle;
            } else {
                low = middle + 1;
                reached = LexCost.max(reached, new LexCost(low, 0));
            }
        }
    }

    private void handle(Node node) {
        IntervalNode part = new IntervalNode(node.state(), node.bound(), incumbent, meter);
        atWork = Optional.of(part);
        if (!part.tighten(node.rounds())) {
            return;
        }
        if (node.rounds() == ROOT_ROUNDS && !stockMatters) {
            part.improve();
            if (!part.tighten(node.rounds())) {
                return;
            }
        }
        if (!part.settle(node.width())) {
            branch(node, part);
        }
    }

    private void branch(Node node, IntervalNode part) {
        int loosest = part.loosest();
        LexCost least = part.bound();
        if (loosest >= 0 && isLoose(node, part)) {
            for (IntervalNode.State half : part.halves(loosest)) {
                push(half, least, node.width(), CHILD_ROUNDS);
            }
        } else {
            push(part.state(), least, node.width() * WIDEN, CHILD_ROUNDS);
        }
    }

    /** Whether a split can help: where labels can be no more and musts break, that is all that is left. */
    private boolean isLoose(Node node, IntervalNode part) {
        boolean mostLabels = node.width() * WIDEN > MOST_WIDTH;
        return part.isLoose()
                || (mostLabels && incumbent.limit().breaks() > part.bound().breaks());
    }

    private void push(IntervalNode.State state, LexCost least, int width, int rounds) {
        made++;
        open.add(new Node(state, least, width, rounds, made));
    }

    /** What no choice within the limits can be below, as far as the search has come. */
    public LexCost bound() {
        LexCost least = started ? incumbent.limit() : LexCost.min(floor, incumbent.limit());
        if (!open.isEmpty()) {
            least = LexCost.min(least, open.peek().bound());
        }
        if (atWork.isPresent()) {
            least = LexCost.min(least, atWork.orElseThrow().bound());
        }
        return LexCost.max(least, reached);
    }

    /** A simple bound that needs no search: the least breaks and the least penalty each by itself, whatever the other. */
    public LexCost floor() {
        return floor;
    }

    public Incumbent incumbent() {
        return incumbent;
    }

    public ExactEnding ending() {
        return ending.orElseThrow();
    }
}
