package org.bagwright.search;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Bags that must be planned together because the stock could run short between them; a bag that shares nothing scarce is
 * a team by itself, so that its plan depends on no other bag.
 *
 * @param places the places of its bags in the book, ascending
 * @param bags its bags
 * @param scarce the piles of the stock that could run short between them
 */
record Team(List<Integer> places, List<SearchBag> bags, List<StockPile> scarce) {

    /** The teams of a book, in the order of their first bags. */
    static List<Team> of(List<SearchBag> bags, List<StockPile> stock) {
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

    /**
     * Where the search for the team starts: every bag as it would be by itself as far as the stock goes, in the order of
     * the bags, the others with as few changes as they can.
     *
     * @param alone what each bag would choose by itself
     */
    List<List<Integer>> start(List<Start> alone) {
        List<List<Integer>> chosen =
                new ArrayList<>(bags.stream().map(Start::eachOwnBest).toList());
        for (int bag = 0; bag < bags.size(); bag++) {
            List<List<Integer>> tried = new ArrayList<>(chosen);
            tried.set(bag, alone.get(bag).chosen());
            if (excess(tried) <= excess(chosen)) {
                chosen = tried;
            }
        }
        return chosen;
    }

    /** Pieces taken beyond the stock. */
    int excess(List<List<Integer>> chosen) {
        Bench bench = Bench.of(bags, scarce, chosen);
        return scarce.stream()
                .mapToInt(pile -> Math.max(0, bench.taken(pile) - pile.available()))
                .sum();
    }

    /** Whether the bags are chosen as each would be by itself at its exact best, and the stock allows it. */
    boolean isExact(List<Start> alone, List<List<Integer>> chosen) {
        return excess(chosen) == 0
                && IntStream.range(0, bags.size())
                        .allMatch(bag -> alone.get(bag).exact()
                                && alone.get(bag).chosen().equals(chosen.get(bag)));
    }
}
