package org.bagwright.search;

import java.util.List;
import org.bagwright.domain.Aim;

/** What a whole choice for one bag costs, summed term by term. */
final class ChoiceValue {
    private ChoiceValue() {}

    static Value of(ExactBag bag, List<ExactOption> chosen) {
        Value value = Value.NONE;
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

    static Value own(ExactOption option) {
        return new Value(option.breaks(), Value.weight(option.micropoints(), option.changes()));
    }

    static Value gap(Aim aim, ExactOption before, ExactOption after) {
        double gapM = before.carryM() - after.carryM();
        long must = PenaltyRules.gapMustBreaks(aim, gapM, before.wishM());
        long micropoints = PenaltyRules.gapMicropoints(aim, gapM, before.wishM());
        return new Value(must + PenaltyRules.carryBreaks(gapM), Value.weight(micropoints, 0));
    }

    private static Value spread(Aim aim, List<ExactOption> chosen) {
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
                .reduce(Value.NONE, Value::plus);
    }

    /** What the clubs of one group cost that differ from their mean. */
    static Value spread(Aim aim, double[] members) {
        double sum = 0;
        for (double member : members) {
            sum += member;
        }
        double mean = sum / members.length;
        Value value = Value.NONE;
        for (double member : members) {
            value = value.plus(new Value(
                    PenaltyRules.breaks(aim.hardBreakThousandths(member - mean)),
                    Value.weight(PenaltyRules.micropoints(aim.penaltyPoints(member - mean)), 0)));
        }
        return value;
    }
}
