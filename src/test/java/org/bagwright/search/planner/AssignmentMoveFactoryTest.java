package org.bagwright.search.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.search.model.PlanningProblem;
import org.bagwright.search.model.SearchBag;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.search.model.SlotAssignment;
import org.bagwright.search.model.StockPile;
import org.bagwright.search.model.Team;
import org.bagwright.search.model.TestBooks;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.impl.score.director.InnerScoreDirector;
import org.optaplanner.core.impl.solver.DefaultSolverFactory;

@Tag("analytic")
class AssignmentMoveFactoryTest {

    private static InnerScoreDirector<PlanningProblem, HardMediumSoftLongScore> director() {
        SolverFactory<PlanningProblem> factory =
                SolverFactory.create(new SolverSettings(new SearchLimits(1, 600)).scoring());
        return ((DefaultSolverFactory<PlanningProblem>) factory)
                .<HardMediumSoftLongScore>getScoreDirectorFactory()
                .buildScoreDirector();
    }

    private static List<Integer> taken(PlanningProblem problem) {
        return problem.stock().stream().map(problem::taken).toList();
    }

    private static List<Integer> changes(PlanningProblem problem, List<SearchBag> bags) {
        return IntStream.range(0, bags.size())
                .mapToObj(bag -> problem.changes(problem.bag(bag).get(0)))
                .toList();
    }

    private static void assertNoMore(List<Integer> before, List<Integer> after, List<Integer> most) {
        for (int place = 0; place < most.size(); place++) {
            assertTrue(after.get(place) <= Math.max(before.get(place), most.get(place)));
        }
    }

    /** Whether one of these amounts has just come up to the most that is allowed. */
    private static boolean reachesTheMost(List<Integer> before, List<Integer> after, List<Integer> most) {
        return IntStream.range(0, most.size())
                .anyMatch(place ->
                        before.get(place) < most.get(place) && after.get(place).equals(most.get(place)));
    }

    /** Whether one of these amounts is more than is allowed and stays as it is. */
    private static boolean staysBeyond(List<Integer> before, List<Integer> after, List<Integer> most) {
        return IntStream.range(0, most.size()).anyMatch(place -> staysBeyond(place, before, after, most));
    }

    private static boolean staysBeyond(int place, List<Integer> before, List<Integer> after, List<Integer> most) {
        return before.get(place) > most.get(place) && after.get(place).equals(before.get(place));
    }

    /** Two thousand random moves in a row on each of twenty problems, half of them with an excess from the start. */
    @Test
    void moves_takeNoMoreThanThereIsOrAlreadyWas() {
        int acrossBags = 0;
        int lastPieces = 0;
        int lastChanges = 0;
        int beyondStock = 0;
        int beyondChanges = 0;
        for (int seed = 0; seed < 20; seed++) {
            BookOptions book = seed < 16 ? TestBooks.small(seed) : TestBooks.full(seed, 3, 10);
            PlanningProblem problem = TestBooks.start(book, seed % 2 == 0);
            List<SearchBag> bags = problem.assignments().stream()
                    .map(SlotAssignment::bag)
                    .distinct()
                    .toList();
            List<Integer> afforded =
                    bags.stream().map(SearchBag::affordedChanges).toList();
            List<Integer> available =
                    problem.stock().stream().map(StockPile::available).toList();
            Random random = new Random(seed);
            try (InnerScoreDirector<PlanningProblem, HardMediumSoftLongScore> director = director()) {
                director.setWorkingSolution(problem);
                director.calculateScore();
                for (int step = 0; step < 2_000; step++) {
                    Iterator<AssignmentMove> moves =
                            new AssignmentMoveFactory().createRandomMoveIterator(director, random);
                    if (!moves.hasNext()) {
                        break;
                    }
                    List<Integer> takenBefore = taken(problem);
                    List<Integer> changesBefore = changes(problem, bags);
                    List<List<Integer>> before = problem.chosen();
                    moves.next().doMoveOnly(director);
                    assertNoMore(takenBefore, taken(problem), available);
                    assertNoMore(changesBefore, changes(problem, bags), afforded);
                    lastPieces += reachesTheMost(takenBefore, taken(problem), available) ? 1 : 0;
                    lastChanges += reachesTheMost(changesBefore, changes(problem, bags), afforded) ? 1 : 0;
                    beyondStock += staysBeyond(takenBefore, taken(problem), available) ? 1 : 0;
                    List<List<Integer>> now = problem.chosen();
                    List<Integer> changesNow = changes(problem, bags);
                    beyondChanges += (int) IntStream.range(0, bags.size())
                            .filter(bag -> !before.get(bag).equals(now.get(bag)))
                            .filter(bag -> staysBeyond(bag, changesBefore, changesNow, afforded))
                            .count();
                    acrossBags += bagsThatDiffer(before, problem.chosen()) > 1 ? 1 : 0;
                }
            }
        }
        assertTrue(acrossBags > 500, "moves of two bags: " + acrossBags);
        assertTrue(lastPieces > 100, "moves that take the last piece: " + lastPieces);
        assertTrue(lastChanges > 100, "moves that use the last change: " + lastChanges);
        assertTrue(beyondStock > 100, "moves that leave an excess of the stock as it is: " + beyondStock);
        assertTrue(beyondChanges > 0, "moves that leave an excess of changes as it is: " + beyondChanges);
    }

    private static long bagsThatDiffer(List<List<Integer>> before, List<List<Integer>> after) {
        return IntStream.range(0, before.size())
                .filter(bag -> !before.get(bag).equals(after.get(bag)))
                .count();
    }

    /** The first and third bag share an item of which there is too little; the second takes one of which there is plenty. */
    @Test
    void teams_areTheBagsBetweenWhichTheStockCouldRunShort() {
        List<SearchBag> bags = List.of(
                        TestBooks.taking(List.of(1, 1, 0)),
                        TestBooks.taking(List.of(0, 1, 0)),
                        TestBooks.taking(List.of(1, 0, 2)))
                .stream()
                .map(SearchBag::new)
                .toList();
        List<StockPile> stock = List.of(new StockPile(0, 1), new StockPile(1, 2), new StockPile(2, 1));
        List<Team> teams = Team.of(bags, stock);
        assertEquals(
                List.of(List.of(0, 2), List.of(1)),
                teams.stream().map(Team::places).toList());
        assertEquals(
                List.of(List.of(stock.get(0), stock.get(2)), List.of()),
                teams.stream().map(Team::scarce).toList());
    }
}
