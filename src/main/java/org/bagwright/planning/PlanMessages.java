package org.bagwright.planning;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.BagResult;
import org.bagwright.domain.BagState;
import org.bagwright.domain.BookResult;
import org.bagwright.domain.Club;
import org.bagwright.domain.DistanceUnit;
import org.bagwright.domain.GapTerm;
import org.bagwright.domain.Golfer;
import org.bagwright.domain.Message;
import org.bagwright.domain.Numbers;
import org.bagwright.domain.Option;
import org.bagwright.domain.SlotOptions;

/** What a person should know about a finished plan: broken limits, gaps out of their limits, rules to check. */
final class PlanMessages {
    private static final int MOST_CLUBS = 14;

    private final List<Message> messages = new ArrayList<>();
    private final DistanceUnit distance;
    private final double lengthLimitM;
    private final EquipmentRules rules;

    PlanMessages(BookResult result) {
        this.distance = result.book().settings().units().distance();
        this.lengthLimitM = result.book().settings().lengthLimitM();
        this.rules = new EquipmentRules(lengthLimitM);
        result.bags().forEach(this::bag);
    }

    List<Message> messages() {
        return messages;
    }

    private void bag(BagResult bag) {
        breaks(bag);
        gapLimits(bag);
        rules(bag);
    }

    private void breaks(BagResult bag) {
        if (bag.planned().score().hardBreaks() == 0) {
            return;
        }
        Golfer golfer = bag.golfer();
        messages.add(Message.warning(
                golfer.cell(), "not every must of " + golfer.name() + " can be met; the plan breaks them least"));
        List<Option> planned = bag.optionsOf(bag.planned());
        int items = 0;
        for (int index = 0; index < planned.size(); index++) {
            items += planned.get(index).changes();
            if (planned.get(index).isEmpty()) {
                continue;
            }
            Club club = planned.get(index).club();
            long breaks = planned.get(index).terms().hardBreaks();
            if (breaks > 0) {
                messages.add(Message.warning(
                        club.cell(),
                        club.name() + " misses a must by " + Numbers.fixed(breaks / 1000.0, 2)
                                + " tolerances beyond the one that is allowed"));
            }
        }
        bag.planned().gaps().stream().filter(gap -> gap.hardBreaks() > 0).forEach(gap -> brokenGap(bag, gap));
        if (golfer.mostChanges().isPresent() && items > golfer.mostChanges().getAsInt()) {
            messages.add(Message.warning(
                    golfer.cell(),
                    "the plan changes " + items + " items, more than the "
                            + golfer.mostChanges().getAsInt() + " that " + golfer.name() + " allows"));
        }
    }

    private void brokenGap(BagResult bag, GapTerm gap) {
        String pair = pair(bag, gap);
        String text = gap.gapM() <= 0
                ? pair + ": the carry does not fall from one club to the next (" + shown(gap.gapM()) + ")"
                : pair + ": the gap of " + shown(gap.gapM()) + " misses the must of " + shown(gap.wishM());
        messages.add(Message.warning(cell(bag, gap), text));
    }

    private void gapLimits(BagResult bag) {
        Golfer.GapAims limits = bag.golfer().gaps();
        BagState planned = bag.planned();
        for (GapTerm gap : planned.gaps()) {
            if (gap.gapM() < limits.leastM().orElse(Double.NEGATIVE_INFINITY)
                    || gap.gapM() > limits.mostM().orElse(Double.POSITIVE_INFINITY)) {
                messages.add(Message.warning(
                        cell(bag, gap),
                        pair(bag, gap) + ": the planned gap of " + shown(gap.gapM()) + " is outside "
                                + bag.golfer().name() + "'s limits"));
            }
        }
    }

    private void rules(BagResult bag) {
        long carried = bag.optionsOf(bag.planned()).stream()
                .filter(option -> !option.isEmpty())
                .count();
        if (carried > MOST_CLUBS) {
            messages.add(new Message(
                    bag.golfer().cell(),
                    Message.Severity.CHECK,
                    bag.golfer().name() + " has " + carried
                            + " clubs; rule 4.1b allows 14 in a round: check with the governing body"));
        }
        for (SlotOptions slot : bag.options().slots()) {
            slot.clubs().forEach(club -> rules(club, slot.optionsOf(club)));
        }
    }

    private void rules(Club club, List<Option> options) {
        double lengthM = options.get(0).build().lengthM();
        if (!rules.lengthIsInside(options.get(0).setup().orElseThrow())) {
            messages.add(new Message(
                    club.cell(),
                    Message.Severity.CHECK,
                    club.name() + " is " + Numbers.trimmed(lengthM / 0.0254, 2)
                            + " in long; the limits are 18 in and "
                            + Numbers.trimmed(lengthLimitM / 0.0254, 2)
                            + " in (putters: no longest): check with the governing body"));
        }
        double uprightest = options.stream()
                .mapToDouble(option -> option.pose().gaugeLieDeg())
                .max()
                .orElseThrow();
        if (90 - uprightest < EquipmentRules.LEAST_SHAFT_FROM_VERTICAL_DEG) {
            messages.add(new Message(
                    club.cell(),
                    Message.Severity.CHECK,
                    club.name() + " can be set to a lie of " + Numbers.fixed(uprightest, 1)
                            + " degrees; the shaft must lean at least 10 degrees from vertical:"
                            + " check with the governing body"));
        }
    }

    private String shown(double valueM) {
        return Numbers.fixed(distance.fromM(valueM), 1) + " " + distance.label();
    }

    private static String pair(BagResult bag, GapTerm gap) {
        List<Option> planned = bag.optionsOf(bag.planned());
        return planned.get(gap.fromIndex()).clubText() + " to "
                + planned.get(gap.toIndex()).clubText();
    }

    private static String cell(BagResult bag, GapTerm gap) {
        return bag.optionsOf(bag.planned()).get(gap.fromIndex()).club().cell();
    }
}
