package org.bagwright.search.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.PenaltyRules;

/**
 * An option as the search sees it: whole numbers, its carry, and what it shares with others.
 *
 * @param index its place among the options of its slot
 * @param own its own penalty by measure
 * @param mustBreaks the musts it breaks by itself, thousandths
 * @param closed whether a plan may not take it
 * @param changes items that differ from today
 * @param carried whether there is a club at all
 * @param flies whether it is a club that carries
 * @param carryM carry, metres; 0 for what does not fly
 * @param wishM the gap wanted to the next club that flies, metres
 * @param match by what it is matched to other clubs
 * @param taken what it takes of the stock, only items of which it takes a piece
 */
public record Candidate(
        int index,
        OwnMicropoints own,
        long mustBreaks,
        boolean closed,
        int changes,
        boolean carried,
        boolean flies,
        double carryM,
        double wishM,
        Optional<MatchValue> match,
        List<Taken> taken) {

    /** @param wishM the gap wanted from it to the next club that flies, metres */
    static Candidate of(int index, Option option, double wishM) {
        boolean flies = !option.isEmpty() && option.club().kind().carries();
        if (flies && !Double.isFinite(option.carryM().orElse(Double.NaN))) {
            throw new IllegalArgumentException("option " + option.key() + " needs a carry");
        }
        return new Candidate(
                index,
                OwnMicropoints.of(option),
                PenaltyRules.breaks(option.terms().hardBreaks()),
                !option.open(),
                option.changes(),
                !option.isEmpty(),
                flies,
                option.carryM().orElse(0),
                wishM,
                option.setup().flatMap(ClubSetup::match),
                taken(option.takes()));
    }

    private static List<Taken> taken(List<Integer> takes) {
        return IntStream.range(0, takes.size())
                .filter(item -> takes.get(item) > 0)
                .mapToObj(item -> new Taken(item, takes.get(item)))
                .toList();
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

    public Cost ownCost() {
        return new Cost(closed ? 1 : 0, mustBreaks, own.total());
    }

    /**
     * Pieces of the stock.
     *
     * @param item the item's place in the stock
     * @param pieces how many of it, above 0
     */
    public record Taken(int item, int pieces) {}

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
                mustBreaks,
                own.total(),
                new ExactOption.Needs(changes, carried, takes),
                flies ? Optional.of(new ExactOption.Flight(carryM, wishM)) : Optional.empty(),
                match.map(value -> new ExactOption.Match(groups.indexOf(value.group()), value.valueMeasureUnits())));
    }

    /** The own penalty of an option, each measure in millionths of a point. */
    public record OwnMicropoints(long loft, long lie, long sits, long carry, long swingweight, long change) {

        static OwnMicropoints of(Option option) {
            return new OwnMicropoints(
                    PenaltyRules.micropoints(option.terms().loftPoints()),
                    PenaltyRules.micropoints(option.terms().liePoints()),
                    PenaltyRules.micropoints(option.terms().sitsPoints()),
                    PenaltyRules.micropoints(option.terms().carryPoints()),
                    PenaltyRules.micropoints(option.terms().swingweightPoints()),
                    PenaltyRules.micropoints(option.terms().changePoints()));
        }

        long total() {
            return loft + lie + sits + carry + swingweight + change;
        }
    }
}
