package org.bagwright.search.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.search.exact.ExactProblem;
import org.bagwright.search.score.PenaltyScale;

/**
 * Bags that must be planned together because the stock could run short between them; a bag that shares nothing scarce is
 * a team by itself, so that its plan depends on no other bag.
 *
 * @param places the places of its bags in the book, ascending
 * @param bags its bags
 * @param scarce the piles of the stock that could run short between them
 */
public record Team(List<Integer> places, List<SearchBag> bags, List<StockPile> scarce) {

    /** The teams of a book, in the order of their first bags. */
    public static List<Team> of(List<SearchBag> bags, List<StockPile> stock) {
        List<StockPile> scarce = stock.stream()
                .filter(pile -> mostPieces(bags, pile) > pile.available())
                .toList();
        return together(bags, scarce).stream()
                .map(places -> of(places, bags, scarce))
                .toList();
    }

    private static Team of(List<Integer> places, List<SearchBag> bags, List<StockPile> scarce) {
        List<SearchBag> own = places.stream().map(bags::get).toList();
        return new Team(
                places,
                own,
                scarce.stream().filter(pile -> mostPieces(own, pile) > 0).toList());
    }

    private static List<List<Integer>> together(List<SearchBag> bags, List<StockPile> scarce) {
        List<List<Integer>> teams = new ArrayList<>();
        for (int place = 0; place < bags.size(); place++) {
            SearchBag bag = bags.get(place);
            List<List<Integer>> joined = teams.stream()
                    .filter(team -> team.stream().anyMatch(other -> shares(bag, bags.get(other), scarce)))
                    .toList();
            List<Integer> merged = new ArrayList<>(
                    joined.stream().flatMap(List::stream).sorted().toList());
            merged.add(place);
            int at = joined.isEmpty() ? teams.size() : teams.indexOf(joined.get(0));
            teams.removeAll(joined);
            teams.add(at, merged);
        }
        return teams;
    }

    private static boolean shares(SearchBag bag, SearchBag other, List<StockPile> scarce) {
        return scarce.stream().anyMatch(pile -> bag.mostPieces(pile.item()) > 0 && other.mostPieces(pile.item()) > 0);
    }

    private static int mostPieces(List<SearchBag> bags, StockPile pile) {
        return bags.stream().mapToInt(bag -> bag.mostPieces(pile.item())).sum();
    }

    /** The same team with the points of its bags on a scale. */
    public Team on(PenaltyScale scale, BookOptions book) {
        if (scale.equals(PenaltyScale.BOOK)) {
            return this;
        }
        return new Team(
                places,
                places.stream()
                        .map(place -> new SearchBag(scale.of(book.bags().get(place))))
                        .toList(),
                scarce);
    }

    /** The same choice with the first of all options between which it makes no difference. */
    public List<List<Integer>> first(List<List<Integer>> chosen) {
        return IntStream.range(0, bags.size())
                .mapToObj(bag -> IntStream.range(0, chosen.get(bag).size())
                        .mapToObj(slot ->
                                bags.get(bag).first(slot, chosen.get(bag).get(slot)))
                        .toList())
                .toList();
    }

    /** The team for the planner, with nothing chosen. */
    public PlanningProblem problem() {
        return PlanningProblem.of(bags, scarce);
    }

    /** The team for the exact search. */
    public ExactProblem exact() {
        return new ExactProblem(
                bags.stream().map(bag -> bag.exact(scarce)).toList(),
                scarce.stream().map(StockPile::available).toList(),
                bags.stream().mapToLong(SearchBag::leastClosed).sum());
    }
}
