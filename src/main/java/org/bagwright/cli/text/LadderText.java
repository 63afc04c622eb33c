package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/** Carries and gaps of a bag as a terminal shows them, with a picture of the carries. */
final class LadderText {
    private static final int PICTURE_CHARS = 35;

    private final BagResult bag;
    private final LengthUnit distance;
    private final List<Integer> carrying;

    LadderText(BagResult bag, LengthUnit distance) {
        this.bag = bag;
        this.distance = distance;
        this.carrying = IntStream.range(0, bag.options().slots().size())
                .filter(index -> carryM(bag.today(), index).isPresent()
                        || carryM(bag.planned(), index).isPresent())
                .boxed()
                .toList();
    }

    List<String> lines() {
        Scale scale = new Scale();
        List<String> lines = new ArrayList<>();
        lines.add(String.format(
                "  %-16s %7s %7s   %6s %6s %5s %6s  o today, # plan, @ both",
                "carry and gap, " + distance.label(), "today", "plan", "gap", "plan", "+-", "wish"));
        for (int index : carrying) {
            lines.add(rung(index, scale));
        }
        return lines;
    }

    /** All planned carries in a line, the longest first, without decimals. */
    String inShort() {
        List<String> carries = new ArrayList<>();
        for (int index : carrying) {
            carryM(bag.planned(), index).ifPresent(carryM -> carries.add(Numbers.fixed(distance.fromM(carryM), 0)));
        }
        return String.join(" ", carries) + " " + distance.label();
    }

    private String rung(int index, Scale scale) {
        OptionalDouble todayM = carryM(bag.today(), index);
        OptionalDouble plannedM = carryM(bag.planned(), index);
        String gaps = String.format(
                "%6s %6s %5s %6s",
                gap(bag.today(), index, GapTerm::gapM),
                gap(bag.planned(), index, GapTerm::gapM),
                gap(bag.planned(), index, gap -> gap.sdM() * CarryDoubt.HALF_80_SDS),
                gap(bag.planned(), index, GapTerm::wishM));
        return String.format(
                        "  %-16s %7s %7s   %s  %s",
                        WrappedText.shortened(name(index), 16),
                        shown(todayM),
                        shown(plannedM),
                        gaps,
                        scale.picture(todayM, plannedM))
                .stripTrailing();
    }

    private String name(int index) {
        Option planned = bag.optionsOf(bag.planned()).get(index);
        return planned.isEmpty() ? bag.optionsOf(bag.today()).get(index).clubText() : planned.clubText();
    }

    private String gap(BagState state, int index, ToDoubleFunction<GapTerm> value) {
        return state.gapAfter(index)
                .map(term -> shown(value.applyAsDouble(term)))
                .orElse("");
    }

    private OptionalDouble carryM(BagState state, int index) {
        return bag.optionsOf(state).get(index).carryM();
    }

    private String shown(OptionalDouble valueM) {
        return valueM.isPresent() ? shown(valueM.getAsDouble()) : "-";
    }

    private String shown(double valueM) {
        return Numbers.fixed(distance.fromM(valueM), 1);
    }

    /** Places carries along a line of characters, the longest at the right. */
    private final class Scale {
        private final double leastM;
        private final double mostM;

        Scale() {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int index : carrying) {
                for (BagState state : List.of(bag.today(), bag.planned())) {
                    OptionalDouble carryM = carryM(state, index);
                    least = Math.min(least, carryM.orElse(least));
                    most = Math.max(most, carryM.orElse(most));
                }
            }
            leastM = least;
            mostM = most;
        }

        String picture(OptionalDouble todayM, OptionalDouble plannedM) {
            char[] line = " ".repeat(PICTURE_CHARS).toCharArray();
            todayM.ifPresent(carryM -> line[place(carryM)] = 'o');
            plannedM.ifPresent(carryM -> line[place(carryM)] = line[place(carryM)] == 'o' ? '@' : '#');
            return new String(line);
        }

        private int place(double carryM) {
            double share = mostM > leastM ? (carryM - leastM) / (mostM - leastM) : 0;
            return (int) Math.round(share * (PICTURE_CHARS - 1));
        }
    }
}
