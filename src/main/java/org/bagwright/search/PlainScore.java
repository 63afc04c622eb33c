package org.bagwright.search;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.BagScore;
import org.bagwright.domain.GapTerm;
import org.bagwright.domain.Option;
import org.bagwright.domain.OwnTerms;

/** The score of one choice for one bag, summed without the planner: what its constraints are checked against. */
final class PlainScore {
    private PlainScore() {}

    static Cost cost(BagOptions bag, List<Integer> chosen) {
        List<Option> options = chosenOptions(bag, chosen);
        Cost cost = new Cost(countBreaks(bag, options), 0);
        for (Option option : options) {
            cost = cost.plus(ownCost(option));
        }
        for (GapTerm gap : gaps(bag, chosen)) {
            cost = cost.plus(new Cost(gap.hardBreaks(), PenaltyRules.micropoints(gap.penaltyPoints())));
        }
        return cost;
    }

    /** The score as it is told: the penalty as the plain sum of its terms, without the rounding that decides. */
    static BagScore score(BagOptions bag, List<Integer> chosen) {
        double penaltyPoints = chosenOptions(bag, chosen).stream()
                .mapToDouble(option -> option.terms().totalPoints())
                .sum();
        for (GapTerm gap : gaps(bag, chosen)) {
            penaltyPoints += gap.penaltyPoints();
        }
        return new BagScore(cost(bag, chosen).breaks(), penaltyPoints);
    }

    static List<GapTerm> gaps(BagOptions bag, List<Integer> chosen) {
        List<Option> options = chosenOptions(bag, chosen);
        List<Integer> carrying = bag.carryingIndexes();
        List<GapTerm> terms = new ArrayList<>();
        for (int gap = 0; gap + 1 < carrying.size(); gap++) {
            int from = carrying.get(gap);
            int to = carrying.get(gap + 1);
            double gapM = carryM(options.get(from)) - carryM(options.get(to));
            terms.add(gapTerm(bag, from, to, gapM, bag.gapWishesM().get(gap)));
        }
        return terms;
    }

    private static GapTerm gapTerm(BagOptions bag, int from, int to, double gapM, double wishM) {
        double penaltyPoints = bag.gapAim().penaltyPoints(gapM - wishM);
        long breaks = PenaltyRules.gapMustBreaks(bag.gapAim(), gapM, wishM) + PenaltyRules.carryBreaks(gapM);
        return new GapTerm(from, to, gapM, wishM, penaltyPoints, breaks);
    }

    private static Cost ownCost(Option option) {
        OwnTerms terms = option.terms();
        long micropoints = PenaltyRules.micropoints(terms.loftPoints())
                + PenaltyRules.micropoints(terms.liePoints())
                + PenaltyRules.micropoints(terms.sitsPoints())
                + PenaltyRules.micropoints(terms.carryPoints())
                + PenaltyRules.micropoints(terms.changePoints());
        long closed = option.open() ? 0 : PenaltyRules.BREAK_THOUSANDTHS;
        return new Cost(PenaltyRules.breaks(terms.hardBreaks()) + closed, micropoints);
    }

    private static long countBreaks(BagOptions bag, List<Option> options) {
        int changes = options.stream().mapToInt(Option::changes).sum();
        long tooMany = bag.mostChanges().isPresent()
                ? PenaltyRules.changeCountBreaks(changes, bag.mostChanges().getAsInt())
                : 0;
        return tooMany + PenaltyRules.clubCountBreaks(options.size());
    }

    private static List<Option> chosenOptions(BagOptions bag, List<Integer> chosen) {
        if (chosen.size() != bag.clubs().size()) {
            throw new IllegalArgumentException("a choice needs one option for each club of the bag");
        }
        List<Option> options = new ArrayList<>();
        for (int club = 0; club < chosen.size(); club++) {
            options.add(bag.clubs().get(club).options().get(chosen.get(club)));
        }
        return options;
    }

    private static double carryM(Option option) {
        return option.carryM()
                .orElseThrow(() -> new IllegalArgumentException("option " + option.key() + " needs a carry"));
    }
}
