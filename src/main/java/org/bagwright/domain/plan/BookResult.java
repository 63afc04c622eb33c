package org.bagwright.domain.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.option.StockLimit;

/**
 * A planned book.
 *
 * @param book what was planned
 * @param bags the bags, in the order of the golfers
 * @param stock what the bags share
 * @param proof how good the plan is
 * @param messages everything a person should know, from reading to planning
 * @param seed the seed of the search
 * @param searchS how long the search took, seconds
 */
public record BookResult(
        Book book,
        List<BagResult> bags,
        List<StockLimit> stock,
        PlanProof proof,
        List<Message> messages,
        long seed,
        double searchS) {

    private static final long BREAK_THOUSANDTHS = 1000;

    public BookResult {
        bags = List.copyOf(bags);
        stock = List.copyOf(stock);
        messages = List.copyOf(messages);
    }

    public BookResult withBags(List<BagResult> computed) {
        return new BookResult(book, computed, stock, proof, messages, seed, searchS);
    }

    public BookResult withMessages(List<Message> all) {
        return new BookResult(book, bags, stock, proof, all, seed, searchS);
    }

    /** No choice that breaks as little has a penalty below this, points. */
    public double boundPoints() {
        return proof.bounds().penaltyPoints();
    }

    /** Whether no choice at all is better than the plan. */
    public boolean proven() {
        return proof.proven();
    }

    /** What is known of the musts and limits. */
    public Verdict verdict() {
        if (plannedBreaks() == 0) {
            return Verdict.MET;
        }
        return proof.bounds().breakSomething() ? Verdict.IMPOSSIBLE : Verdict.NOT_SETTLED;
    }

    public double todayPoints() {
        return points(BagResult::today);
    }

    public double plannedPoints() {
        return points(BagResult::planned);
    }

    /** How many points of a state of all bags are there only because carries are not known exactly. */
    public double doubtPoints(Function<BagResult, BagState> state) {
        return bags.stream()
                .mapToDouble(bag -> bag.terms(state.apply(bag)).doubtPoints())
                .sum();
    }

    public long plannedBreaks() {
        return breaks(BagResult::planned);
    }

    public long todayBreaks() {
        return breaks(BagResult::today);
    }

    /** What the plan breaks, in words, as {@link BagResult#broken} says it for each bag, and the stock. */
    public Set<String> plannedBroken() {
        Set<String> broken = new LinkedHashSet<>();
        bags.forEach(bag -> broken.addAll(bag.broken(bag.planned())));
        if (stockBreaks(BagResult::planned) > 0) {
            broken.add("stock");
        }
        return broken;
    }

    /** Everything that all bags break in a state, by club, figure, limit and cell, and what they take beyond the stock. */
    public List<Broken> broken(Function<BagResult, BagState> state) {
        List<Broken> broken = new ArrayList<>();
        bags.forEach(bag -> broken.addAll(bag.broken(state.apply(bag), book.settings())));
        for (int item = 0; item < stock.size(); item++) {
            if (shortItems(state).contains(item)) {
                broken.add(tooMany(stock.get(item), taken(item, state)));
            }
        }
        return broken;
    }

    private static Broken tooMany(StockLimit limit, int taken) {
        return new Broken(
                Broken.Place.ofBag(""),
                Broken.Kind.STOCK,
                "stock",
                OptionalDouble.of(taken),
                OptionalDouble.of(limit.available()),
                taken + " of " + limit.item().inWords() + " taken, only " + limit.available() + " there",
                limit.item().cell());
    }

    /** The items, by their places in the stock, of which all bags together take more than there is. */
    public Set<Integer> shortItems(Function<BagResult, BagState> state) {
        return IntStream.range(0, stock.size())
                .filter(item -> taken(item, state) > stock.get(item).available())
                .boxed()
                .collect(Collectors.toSet());
    }

    /** How many of an item, by its place in the stock, all bags together take in a state. */
    public int taken(int item, Function<BagResult, BagState> state) {
        return bags.stream()
                .mapToInt(bag -> bag.options().taken(item, state.apply(bag).chosen()))
                .sum();
    }

    private double points(Function<BagResult, BagState> state) {
        return bags.stream()
                .mapToDouble(bag -> state.apply(bag).score().penaltyPoints())
                .sum();
    }

    private long breaks(Function<BagResult, BagState> state) {
        return stockBreaks(state)
                + bags.stream()
                        .mapToLong(bag -> state.apply(bag).score().hardBreaks())
                        .sum();
    }

    private long stockBreaks(Function<BagResult, BagState> state) {
        return BREAK_THOUSANDTHS
                * IntStream.range(0, stock.size())
                        .mapToLong(item ->
                                Math.max(0, taken(item, state) - stock.get(item).available()))
                        .sum();
    }
}
