package org.bagwright.search.planner;

import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SlotAssignment;
import org.bagwright.search.model.StockPile;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/**
 * Random moves, in equal parts: of one club; of two neighbours, since a gap is often kept only if both its clubs move; of
 * any two clubs of a bag, since with few changes allowed one club must give its change up for another; and where the
 * stock is short, of a club that gives up what another one takes, most often in another golfer's bag, since neither can
 * do it first. A club's candidate, setting, weighting and bend are one option, so every move changes all of them at once.
 */
public final class AssignmentMoveFactory implements MoveIteratorFactory<PlanningProblem, AssignmentMove> {
    /** Draws of an option that takes less of a pile, before one is left to chance: most options take nothing of it. */
    private static final int MOST_TRIES = 10;

    /** Draws for one step. Where none of them may be made, as in a bag that may not change, the search ends. */
    private static final int MOST_DRAWS = 500;

    @Override
    public long getSize(ScoreDirector<PlanningProblem> director) {
        return director.getWorkingSolution().assignments().stream()
                .mapToLong(slot -> slot.open().size())
                .sum();
    }

    @Override
    public Iterator<AssignmentMove> createOriginalMoveIterator(ScoreDirector<PlanningProblem> director) {
        throw new UnsupportedOperationException("the moves are drawn at random");
    }

    @Override
    public Iterator<AssignmentMove> createRandomMoveIterator(ScoreDirector<PlanningProblem> director, Random random) {
        PlanningProblem problem = director.getWorkingSolution();
        return Stream.generate(() -> move(problem, random))
                .limit(MOST_DRAWS)
                .filter(move -> move.isMoveDoable(director))
                .iterator();
    }

    private static AssignmentMove move(PlanningProblem problem, Random random) {
        SlotAssignment first = drawn(problem.assignments(), random);
        Replies replies = new Replies(problem, random);
        int kind = random.nextInt(problem.stock().isEmpty() ? 3 : 4);
        if (kind == 0) {
            return replies.answer(first).move();
        }
        if (kind == 3) {
            return exchange(problem, replies, drawn(problem.stock(), random), random)
                    .move();
        }
        List<SlotAssignment> bag = problem.bagOf(first);
        replies.put(first, drawn(first.open(), random));
        int others = 1 + random.nextInt(3);
        int place = first.id() - bag.get(0).id();
        for (int more = 0; more < others; more++) {
            int step = more % 2 == 0 ? 1 + more / 2 : -1 - more / 2;
            int at = kind == 1 ? Math.floorMod(place + step, bag.size()) : random.nextInt(bag.size());
            if (at != place) {
                replies.answer(bag.get(at));
            }
        }
        return replies.move();
    }

    /** Lets a slot take of a pile, and another one that has of it answer. */
    private static Replies exchange(PlanningProblem problem, Replies replies, StockPile pile, Random random) {
        SlotAssignment taker = drawn(problem.takers(pile), random);
        replies.put(taker, drawn(taker.taking(pile.item()), random));
        List<SlotAssignment> holders = problem.holders(pile, taker);
        return holders.isEmpty() ? replies : replies.answer(drawn(holders, random));
    }

    private static <T> T drawn(List<T> from, Random random) {
        return from.get(random.nextInt(from.size()));
    }
}
