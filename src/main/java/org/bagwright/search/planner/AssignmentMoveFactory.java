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
 * Random moves, in equal parts: a club takes the option that is best as the others are; a club takes any option and its
 * neighbours answer with what is then best for them ({@link Replies}), since a gap is often kept only if both its clubs
 * move; the same with any clubs of the bag, since with few changes allowed one club must give its change up for another; and
 * where the stock is short, a club takes some of it and one that has of it answers, most often in another golfer's bag. A
 * club's candidate, setting, weighting and bend are one option, so every move changes all of them at once.
 */
public final class AssignmentMoveFactory implements MoveIteratorFactory<PlanningProblem, AssignmentMove> {
    private static final List<Integer> NEIGHBOURS = List.of(1, -1, 2);

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
        replies.put(first, drawn(first.open(), random));
        List<SlotAssignment> givers = replies.givers(first);
        if (!givers.isEmpty()) {
            replies.answer(drawn(givers, random));
        }
        return kind == 1 ? neighbours(problem, replies, first, random) : any(problem, replies, first, random);
    }

    /** One to three clubs next to it answer: the one after it, the one before it, the second after it. */
    private static AssignmentMove neighbours(
            PlanningProblem problem, Replies replies, SlotAssignment first, Random random) {
        List<SlotAssignment> bag = problem.bagOf(first);
        NEIGHBOURS.subList(0, 1 + random.nextInt(NEIGHBOURS.size())).stream()
                .map(step -> bag.get(Math.floorMod(first.slot() + step, bag.size())))
                .filter(slot -> slot != first)
                .forEach(replies::answer);
        return replies.move();
    }

    /** One to three clubs of its bag answer. */
    private static AssignmentMove any(PlanningProblem problem, Replies replies, SlotAssignment first, Random random) {
        List<SlotAssignment> bag = problem.bagOf(first);
        for (int others = 1 + random.nextInt(NEIGHBOURS.size()); others > 0; others--) {
            SlotAssignment slot = drawn(bag, random);
            if (slot != first) {
                replies.answer(slot);
            }
        }
        return replies.move();
    }

    /** Lets a slot take of a pile, and another one that has of it answer. */
    private static Replies exchange(PlanningProblem problem, Replies replies, StockPile pile, Random random) {
        List<SlotAssignment> takers = problem.takers(pile);
        if (takers.isEmpty()) {
            return replies;
        }
        SlotAssignment taker = drawn(takers, random);
        replies.put(taker, drawn(taker.taking(pile.item()), random));
        List<SlotAssignment> holders = problem.holders(pile, taker);
        return holders.isEmpty() ? replies : replies.answer(drawn(holders, random));
    }

    private static <T> T drawn(List<T> from, Random random) {
        return from.get(random.nextInt(from.size()));
    }
}
