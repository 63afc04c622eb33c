package org.bagwright.search.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.option.WantedRange;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BagScore;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.ReachTerm;
import org.bagwright.domain.plan.SpreadTerm;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.PenaltyRules;
import org.bagwright.search.score.WholeTerms;

/** One choice for one bag, its cost summed without the planner: what the planner's constraints are checked against. */
public final class PlainScore {
    private final BagOptions bag;
    private final List<Integer> chosen;
    private final List<Option> options;
    private final Optional<ReachTerm> reach;
    private final List<GapTerm> gaps;
    private final List<SpreadTerm> spreads;

    /**
     * @param chosen for each slot of the bag the index of its option
     * @throws IllegalArgumentException if an option of a club that carries has no carry
     */
    public PlainScore(BagOptions bag, List<Integer> chosen) {
        this.bag = bag;
        this.chosen = chosen;
        options = bag.chosen(chosen);
        reach = reach();
        gaps = gaps();
        spreads = spreads();
    }

    public static Cost cost(BookOptions book, List<List<Integer>> chosen) {
        Cost cost = Cost.NONE;
        for (int bag = 0; bag < chosen.size(); bag++) {
            cost = cost.plus(new PlainScore(book.bags().get(bag), chosen.get(bag)).cost());
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

    Cost cost() {
        Cost cost = new Cost(excess(), 0, 0);
        for (Option option : options) {
            cost = cost.plus(WholeTerms.of(option.terms()).cost());
        }
        cost = cost.plus(reach.map(ReachTerm::terms)
                .map(WholeTerms::of)
                .map(WholeTerms::cost)
                .orElse(Cost.NONE));
        for (GapTerm gap : gaps) {
            cost = cost.plus(WholeTerms.of(gap.terms()).cost()).plus(new Cost(0, gap.orderBreaks(), 0));
        }
        for (SpreadTerm spread : spreads) {
            cost = cost.plus(WholeTerms.of(spread.terms()).cost());
        }
        return cost;
    }

    /** The score that people see: the penalty is the plain sum of its terms, without the rounding of the search. */
    public BagScore score() {
        double penaltyPoints = options.stream()
                .mapToDouble(option -> option.terms().totalPoints())
                .sum();
        penaltyPoints += reach.map(ReachTerm::terms).map(Terms::totalPoints).orElse(0.0);
        for (GapTerm gap : gaps) {
            penaltyPoints += gap.penaltyPoints();
        }
        for (SpreadTerm spread : spreads) {
            penaltyPoints += spread.penaltyPoints();
        }
        return new BagScore(cost().toldBreaks(), penaltyPoints);
    }

    /** The choice with its score. */
    public BagPlan plan() {
        return new BagPlan(chosen, score());
    }

    /** The choice with its score and all that its clubs cost together. */
    public BagState state() {
        return new BagState(chosen, score(), reach, gaps, spreads);
    }

    /** How far the first club that flies does so, against today's first. */
    private Optional<ReachTerm> reach() {
        OptionalDouble todayM = bag.longestTodayM();
        return todayM.isEmpty()
                ? Optional.empty()
                : IntStream.range(0, options.size())
                        .filter(index -> flies(options.get(index)))
                        .mapToObj(index ->
                                ReachTerm.of(index, bag.reachAim(), carryM(options.get(index)), todayM.getAsDouble()))
                        .findFirst();
    }

    /** The gaps between neighbouring clubs that are carried and fly. */
    private List<GapTerm> gaps() {
        List<GapTerm> terms = new ArrayList<>();
        int from = -1;
        for (int to = 0; to < options.size(); to++) {
            if (flies(options.get(to))) {
                if (from >= 0) {
                    terms.add(gap(from, to));
                }
                from = to;
            }
        }
        return terms;
    }

    private static boolean flies(Option option) {
        return !option.isEmpty() && option.club().kind().carries();
    }

    private GapTerm gap(int from, int to) {
        double gapM = carryM(options.get(from)) - carryM(options.get(to));
        double wishM = bag.wishAfterM(options.get(from));
        double varianceM2 =
                options.get(from).doubt().gapVarianceM2(options.get(to).doubt());
        Terms terms = gapTerms(options.get(from), gapM, wishM).plus(Terms.ofDoubt(bag.gapAim(), varianceM2));
        return new GapTerm(from, to, gapM, wishM, Math.sqrt(varianceM2), terms, PenaltyRules.carryBreaks(gapM));
    }

    private Terms gapTerms(Option from, double gapM, double wishM) {
        Aim aim = bag.gapAim();
        Terms terms =
                Terms.of(Measure.GAP, aim.penaltyPoints(gapM - wishM), PenaltyRules.gapMustBreaks(aim, gapM, wishM));
        WantedRange limitsM = from.gapLimitsM();
        LimitKind kind = gapM < limitsM.leastMeasureUnits() ? LimitKind.GAP_LEAST : LimitKind.GAP_MOST;
        return terms.withLimit(kind, PenaltyRules.gapLimitBreaks(aim, gapM, limitsM));
    }

    private static double carryM(Option option) {
        return option.carryM()
                .orElseThrow(() -> new IllegalArgumentException("option " + option.key() + " needs a carry"));
    }

    /** How each club differs from the mean of its group. */
    private List<SpreadTerm> spreads() {
        Map<String, List<Double>> groups = new HashMap<>();
        for (Option option : options) {
            match(option).ifPresent(match -> groups.computeIfAbsent(match.group(), group -> new ArrayList<>())
                    .add(match.valueMeasureUnits()));
        }
        return IntStream.range(0, options.size())
                .boxed()
                .flatMap(index -> match(options.get(index)).stream()
                        .map(match -> spread(index, match, PenaltyRules.mean(groups.get(match.group())))))
                .toList();
    }

    private SpreadTerm spread(int index, MatchValue match, double mean) {
        Aim aim = bag.spreadAim();
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

    /** What no plan trades against anything else: closed options, changes beyond the most, clubs beyond the most. */
    private long excess() {
        long closed = options.stream().filter(option -> !option.open()).count();
        int changes = options.stream().mapToInt(Option::changes).sum();
        int carried = (int) options.stream().filter(option -> !option.isEmpty()).count();
        return closed
                + PenaltyRules.changesBeyond(changes, bag.mostChanges().orElse(Integer.MAX_VALUE))
                + PenaltyRules.clubsBeyond(carried);
    }
}
