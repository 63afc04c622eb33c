package org.bagwright.planning.sureness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.plan.ChoiceSureness;

/**
 * In how many of the likely cases each choice of a plan is best: carries are drawn from what is known of the golfer, and the
 * bag is planned for each draw. A limit or must that is broken outranks all points, as in the plan. The spread of groups and
 * the stock are left out.
 *
 * @param bag the bag
 * @param planned for each slot the index of its planned option
 * @param seed the seed of the draws
 */
record ChoiceShares(BagOptions bag, List<Integer> planned, long seed) {
    static final int DRAWS = 500;

    private static final int MOST_OPTIONS = 40;
    private static final int MOST_TOLD = 3;
    /** More than all points together can be. */
    private static final double OUTRANKING_POINTS = 1e6;

    List<ChoiceSureness> all() {
        Chain chain = new Chain(bag, planned, MOST_OPTIONS, OUTRANKING_POINTS);
        ChainSearch search = new ChainSearch(chain);
        CarryDraws draws = new CarryDraws(chain, seed);
        int[] wins = new int[chain.size()];
        for (int draw = 0; draw < DRAWS; draw++) {
            for (int number : search.best(draws.next())) {
                wins[number]++;
            }
        }
        return IntStream.range(0, chain.slotCount())
                .mapToObj(slot -> slot(chain, slot, wins))
                .toList();
    }

    private ChoiceSureness slot(Chain chain, int slot, int[] wins) {
        int ofPlan = chain.numberOf(slot, planned.get(slot));
        List<Integer> numbers = IntStream.range(chain.firstOf(slot), chain.firstOf(slot + 1))
                .boxed()
                .sorted(Comparator.comparing((Integer number) -> number != ofPlan)
                        .thenComparing(number -> -wins[number]))
                .toList();
        List<Integer> leads = new ArrayList<>();
        double[] ratios = new double[chain.size()];
        for (int number : numbers) {
            int lead = leads.stream()
                    .filter(other -> chain.option(other).isAlike(chain.option(number)))
                    .findFirst()
                    .orElse(number);
            if (lead == number) {
                leads.add(number);
            }
            ratios[lead] += (double) wins[number] / DRAWS;
        }
        List<ChoiceSureness.Share> best = leads.stream()
                .filter(lead -> ratios[lead] > 0)
                .sorted(Comparator.comparingDouble(lead -> -ratios[lead]))
                .limit(MOST_TOLD)
                .map(lead -> new ChoiceSureness.Share(chain.option(lead).index(), ratios[lead]))
                .toList();
        return new ChoiceSureness(slot, Math.min(1, ratios[ofPlan]), best);
    }
}
