package org.bagwright.search.exact;

import java.util.List;
import org.bagwright.domain.book.Aim;
import org.bagwright.search.score.LexCost;
import org.bagwright.search.score.PenaltyRules;

/** What a whole choice for one bag costs, summed term by term. */
public final class ChoiceValue {
    private ChoiceValue() {}

    public static LexCost of(ExactBag bag, List<ExactOption> chosen) {
        LexCost value = LexCost.NONE;
        ExactOption before = null;
        for (ExactOption option : chosen) {
            value = value.plus(own(option));
            if (option.flies()) {
                value = before == null ? value : value.plus(gap(bag.gapAim(), before, option));
                before = option;
            }
        }
        return bag.matches() ? value.plus(spread(bag.spreadAim(), chosen)) : value;
    }

    static LexCost own(ExactOption option) {
        return new LexCost(option.breaks(), LexCost.weight(option.micropoints(), option.changes()));
    }

    static LexCost gap(Aim aim, ExactOption before, ExactOption after) {
        double gapM = before.carryM() - after.carryM();
        long must = PenaltyRules.gapMustBreaks(aim, gapM, before.wishM());
        long micropoints = PenaltyRules.gapMicropoints(aim, gapM, before.wishM());
        return new LexCost(must + PenaltyRules.carryBreaks(gapM), LexCost.weight(micropoints, 0));
    }

    private static LexCost spread(Aim aim, List<ExactOption> chosen) {
        return chosen.stream()
                .mapToInt(ExactOption::group)
                .filter(group -> group >= 0)
                .distinct()
                .mapToObj(group -> spread(
                        aim,
                        chosen.stream()
                                .filter(option -> option.group() == group)
                                .mapToDouble(ExactOption::matchMeasureUnits)
                                .toArray()))
                .reduce(LexCost.NONE, LexCost::plus);
    }

    /** What the clubs of one group cost that differ from their mean. */
    static LexCost spread(Aim aim, double[] members) {
        double sum = 0;
        for (double member : members) {
            sum += member;
        }
        double mean = sum / members.length;
        LexCost value = LexCost.NONE;
        for (double member : members) {
            value = value.plus(new LexCost(
                    PenaltyRules.breaks(aim.hardBreakThousandths(member - mean)),
                    LexCost.weight(PenaltyRules.micropoints(aim.penaltyPoints(member - mean)), 0)));
        }
        return value;
    }
}
