package org.bagwright.search.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.OwnTerms;
import org.bagwright.domain.plan.BagScore;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.SpreadTerm;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.PenaltyRules;

/** The score of one choice for one bag, summed without the planner: what its constraints are checked against. */
public final class PlainScore {
    private PlainScore() {}

    public static Cost cost(BookOptions book, List<List<Integer>> chosen) {
        Cost cost = Cost.NONE;
        for (int bag = 0; bag < chosen.size(); bag++) {
            cost = cost.plus(cost(book.bags().get(bag), chosen.get(bag)));
        }
        for (int item = 0; item < book.stock().size(); item++) {
            int taken = 0;
            for (int bag = 0; bag < chosen.size(); bag++) {
                taken += book.bags().get(bag).taken(item, chosen.get(bag));
            }
            int excess = Math.max(0, taken - book.stock().get(item).available());
            cost = cost.plus(new Cost(excess, 0, 0));
        }
        return cost;
    }

    static Cost cost(BagOptions bag, List<Integer> chosen) {
        List<Option> options = bag.chosen(chosen);
        Cost cost = new Cost(excess(bag, options), 0, 0);
        for (Option option : options) {
            cost = cost.plus(ownCost(option));
        }
        for (GapTerm gap : gaps(bag, chosen)) {
            cost = cost.plus(new Cost(0, gap.hardBreaks(), PenaltyRules.micropoints(gap.penaltyPoints())));
        }
        for (SpreadTerm spread : spreads(bag, chosen)) {
            cost = cost.plus(new Cost(0, spread.hardBreaks(), PenaltyRules.micropoints(spread.penaltyPoints())));
        }
        return cost;
    }

    /** The score as it is told: the penalty as the plain sum of its terms, without the rounding that decides. */
    public static BagScore score(BagOptions bag, List<Integer> chosen) {
        double penaltyPoints = bag.chosen(chosen).stream()
                .mapToDouble(option -> option.terms().totalPoints())
                .sum();
        for (GapTerm gap : gaps(bag, chosen)) {
            penaltyPoints += gap.penaltyPoints();
        }
        for (SpreadTerm spread : spreads(bag, chosen)) {
            penaltyPoints += spread.penaltyPoints();
        }
        return new BagScore(cost(bag, chosen).toldBreaks(), penaltyPoints);
    }

    /** The gaps between neighbouring clubs that are carried and fly. */
    public static List<GapTerm> gaps(BagOptions bag, List<Integer> chosen) {
        List<Option> options = bag.chosen(chosen);
        List<GapTerm> terms = new ArrayList<>();
        int from = -1;
        for (int to = 0; to < options.size(); to++) {
            if (flies(options.get(to))) {
                if (from >= 0) {
                    double gapM = carryM(options.get(from)) - carryM(options.get(to));
                    terms.add(gapTerm(bag, from, to, gapM, bag.wishAfterM(options.get(from))));
                }
                from = to;
            }
        }
        return terms;
    }

    private static boolean flies(Option option) {
        return !option.isEmpty() && option.club().kind().carries();
    }

    private static GapTerm gapTerm(BagOptions bag, int from, int to, double gapM, double wishM) {
        double penaltyPoints = bag.gapAim().penaltyPoints(gapM - wishM);
        long breaks = PenaltyRules.gapMustBreaks(bag.gapAim(), gapM, wishM) + PenaltyRules.carryBreaks(gapM);
        return new GapTerm(from, to, gapM, wishM, penaltyPoints, breaks);
    }

    /** How each club differs from the mean of its group. */
    public static List<SpreadTerm> spreads(BagOptions bag, List<Integer> chosen) {
        List<Option> options = bag.chosen(chosen);
        Map<String, List<Double>> groups = new HashMap<>();
        for (Option option : options) {
            match(option).ifPresent(match -> groups.computeIfAbsent(match.group(), group -> new ArrayList<>())
                    .add(match.valueMeasureUnits()));
        }
        List<SpreadTerm> terms = new ArrayList<>();
        for (int index = 0; index < options.size(); index++) {
            int slot = index;
            match(options.get(index))
                    .ifPresent(match -> terms.add(
                            spreadTerm(bag.spreadAim(), slot, match, PenaltyRules.mean(groups.get(match.group())))));
        }
        return terms;
    }

    private static SpreadTerm spreadTerm(Aim aim, int index, MatchValue match, double mean) {
        double deviation = match.valueMeasureUnits() - mean;
        return new SpreadTerm(
                index,
                match.group(),
                deviation,
                aim.penaltyPoints(deviation),
                PenaltyRules.breaks(aim.hardBreakThousandths(deviation)));
    }

    private static Optional<MatchValue> match(Option option) {
        return option.setup().flatMap(ClubSetup::match);
    }

    private static Cost ownCost(Option option) {
        OwnTerms terms = option.terms();
        long micropoints = PenaltyRules.micropoints(terms.loftPoints())
                + PenaltyRules.micropoints(terms.liePoints())
                + PenaltyRules.micropoints(terms.sitsPoints())
                + PenaltyRules.micropoints(terms.carryPoints())
                + PenaltyRules.micropoints(terms.swingweightPoints())
                + PenaltyRules.micropoints(terms.changePoints());
        return new Cost(option.open() ? 0 : 1, PenaltyRules.breaks(terms.hardBreaks()), micropoints);
    }

    private static long excess(BagOptions bag, List<Option> options) {
        int changes = options.stream().mapToInt(Option::changes).sum();
        int carried = (int) options.stream().filter(option -> !option.isEmpty()).count();
        return (long) PenaltyRules.changesBeyond(changes, bag.mostChanges().orElse(Integer.MAX_VALUE))
                + PenaltyRules.clubsBeyond(carried);
    }

    private static double carryM(Option option) {
        return option.carryM()
                .orElseThrow(() -> new IllegalArgumentException("option " + option.key() + " needs a carry"));
    }
}
