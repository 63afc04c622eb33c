package org.bagwright.search.planner;

import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.bagwright.search.model.Candidate;
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
    private static final int MOST_DRAWS = 10_000;

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
        return switch (random.nextInt(problem.stock().isEmpty() ? 3 : 4)) {
            case 0 ->
                together(first, first.isLast() ? first : problem.assignments().get(first.id() + 1), random);
            case 1 -> together(first, drawn(problem.bagOf(first), random), random);
            case 2 -> together(first, first, random);
            default -> exchange(problem, drawn(problem.stock(), random), random);
        };
    }

    /** Moves two slots, or one that is given twice. */
    private static AssignmentMove together(SlotAssignment first, SlotAssignment second, Random random) {
        List<SlotAssignment> moved = second == first ? List.of(first) : List.of(first, second);
        return new AssignmentMove(
                moved, moved.stream().map(slot -> drawn(slot.open(), random)).toList());
    }

    /** Lets a slot take of a pile, and another one that has of it take less. */
    private static AssignmentMove exchange(PlanningProblem problem, StockPile pile, Random random) {
        SlotAssignment taker = drawn(problem.takers(pile), random);
        Candidate taking = drawn(taker.taking(pile.item()), random);
        List<SlotAssignment> holders = problem.holders(pile, taker);
        if (holders.isEmpty()) {
            return new AssignmentMove(List.of(taker), List.of(taking));
        }
        SlotAssignment giver = drawn(holders, random);
        return new AssignmentMove(List.of(giver, taker), List.of(leaving(giver, pile.item(), random), taking));
    }

    private static Candidate leaving(SlotAssignment giver, int item, Random random) {
        Candidate choice = drawn(giver.open(), random);
        for (int tries = 1;
                tries < MOST_TRIES && choice.pieces(item) >= giver.choice().pieces(item);
                tries++) {
            choice = drawn(giver.open(), random);
        }
        return choice;
    }

    private static <T> T drawn(List<T> from, Random random) {
        return from.get(random.nextInt(from.size()));
    }
}
