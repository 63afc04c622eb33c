package org.bagwright.search.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.option.WantedRange;
import org.bagwright.domain.plan.ReachTerm;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.LexCost;
import org.bagwright.search.score.WholeTerms;

/**
 * An option as the search sees it: whole numbers, its carry, and what it shares with others.
 *
 * @param index its place among the options of its slot
 * @param own what it costs by itself
 * @param closed whether a plan may not take it
 * @param changes items that differ from today
 * @param carry whether a club is carried, and how far it flies
 * @param match by what it is matched to other clubs
 * @param taken what it takes of the stock, only items of which it takes a piece
 */
public record Candidate(
        int index,
        WholeTerms own,
        boolean closed,
        int changes,
        Carry carry,
        Optional<MatchValue> match,
        List<Taken> taken) {

    /**
     * Whether a club is in the slot, and how far it flies.
     *
     * @param carried whether there is a club at all
     * @param flies whether it is a club that carries
     * @param carryM carry, metres; 0 for what does not fly
     * @param wishM the gap wanted to the next club that flies, metres
     * @param gapLimitsM the gaps to it that keep their limits, metres
     * @param doubt how far the carry may be off; nothing where that costs nothing
     * @param first what it costs if no club before it flies
     */
    public record Carry(
            boolean carried,
            boolean flies,
            double carryM,
            double wishM,
            WantedRange gapLimitsM,
            CarryDoubt doubt,
            WholeTerms first) {}

    /**
     * Pieces of the stock.
     *
     * @param item the item's place in the stock
     * @param pieces how many of it, above 0
     */
    public record Taken(int item, int pieces) {}

    /** @param bag the bag in which it is */
    static Candidate of(int index, Option option, BagOptions bag) {
        boolean flies = !option.isEmpty() && option.club().kind().carries();
        if (flies && !Double.isFinite(option.carryM().orElse(Double.NaN))) {
            throw new IllegalArgumentException("option " + option.key() + " needs a carry");
        }
        return new Candidate(
                index,
                WholeTerms.of(option.terms()),
                !option.open(),
                option.changes(),
                carry(option, flies, bag),
                option.setup().flatMap(ClubSetup::match),
                taken(option.takes()));
    }

    private static Carry carry(Option option, boolean flies, BagOptions bag) {
        double carryM = option.carryM().orElse(0);
        OptionalDouble todayM = bag.longestTodayM();
        Terms first = flies && todayM.isPresent()
                ? ReachTerm.of(0, bag.reachAim(), carryM, todayM.getAsDouble()).terms()
                : Terms.NONE;
        double wishM = option.isEmpty() ? 0 : bag.wishAfterM(option);
        CarryDoubt doubt = bag.gapAim().onWhatIsLikely() ? option.doubt() : CarryDoubt.NONE;
        return new Carry(!option.isEmpty(), flies, carryM, wishM, option.gapLimitsM(), doubt, WholeTerms.of(first));
    }

    private static List<Taken> taken(List<Integer> takes) {
        return IntStream.range(0, takes.size())
                .filter(item -> takes.get(item) > 0)
                .mapToObj(item -> new Taken(item, takes.get(item)))
                .toList();
    }

    public boolean carried() {
        return carry.carried();
    }

    public boolean flies() {
        return carry.flies();
    }

    /** Carry, metres; 0 for what does not fly. */
    public double carryM() {
        return carry.carryM();
    }

    /** The gap wanted to the next club that flies, metres. */
    public double wishM() {
        return carry.wishM();
    }

    /** The gaps to the next club that flies inside their limits, metres. */
    public WantedRange gapLimitsM() {
        return carry.gapLimitsM();
    }

    /** How far its carry may be off; nothing where that costs nothing. */
    public CarryDoubt doubt() {
        return carry.doubt();
    }

    /** What it costs if no club before it flies. */
    public WholeTerms first() {
        return carry.first();
    }

    /** Whether it makes no difference to any plan which of the two it takes. */
    boolean isAsGoodAs(Candidate other) {
        return own.cost().equals(other.own.cost())
                && changes == other.changes
                && closed == other.closed
                && carry.equals(other.carry)
                && match.equals(other.match)
                && taken.equals(other.taken);
    }

    /** How many pieces of an item of the stock it takes. */
    public int pieces(int item) {
        for (Taken some : taken) {
            if (some.item() == item) {
                return some.pieces();
            }
        }
        return 0;
    }

    /**
     * The option for the exact search.
     *
     * @param piles the items that are counted
     * @param groups the names of the groups of its bag
     */
    ExactOption exact(List<StockPile> piles, List<String> groups) {
        List<Integer> takes = piles.stream().map(pile -> pieces(pile.item())).toList();
        return new ExactOption(
                index,
                own.cost().breaks(),
                own.cost().micropoints(),
                new ExactOption.Needs(changes, carried(), takes),
                flies() ? Optional.of(flight()) : Optional.empty(),
                match.map(value -> new ExactOption.Match(groups.indexOf(value.group()), value.valueMeasureUnits())));
    }

    private ExactOption.Flight flight() {
        Cost cost = first().cost();
        LexCost asFirst = new LexCost(cost.breaks(), LexCost.weight(cost.micropoints(), 0));
        return new ExactOption.Flight(carryM(), wishM(), gapLimitsM(), doubt(), asFirst);
    }
}
