package org.bagwright.planning;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.SpreadTerm;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/** What a person should know about a finished plan: broken limits, gaps out of their limits, rules to check. */
final class PlanMessages {

    private final List<Message> messages = new ArrayList<>();
    private final LengthUnit distance;

    PlanMessages(BookResult result) {
        this.distance = result.book().settings().units().distance();
        result.bags().forEach(this::bag);
        stock(result);
        messages.addAll(BuildMessages.of(result));
        messages.addAll(RuleMessages.of(result));
    }

    List<Message> messages() {
        return messages;
    }

    private void bag(BagResult bag) {
        breaks(bag);
        gapLimits(bag);
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
        for (SpreadTerm spread : bag.planned().spreads()) {
            if (spread.hardBreaks() > 0) {
                Club club = planned.get(spread.index()).club();
                messages.add(Message.warning(
                        club.cell(),
                        club.name() + " is " + Numbers.signed(spread.deviationMeasureUnits(), 1)
                                + " from the mean of its group (" + spread.group()
                                + "), which misses the must of spread"));
            }
        }
        if (golfer.mostChanges().isPresent() && items > golfer.mostChanges().getAsInt()) {
            messages.add(Message.warning(
                    golfer.cell(),
                    "the plan changes " + items + " items, more than the "
                            + golfer.mostChanges().getAsInt() + " that " + golfer.name() + " allows"));
        }
    }

    private void stock(BookResult result) {
        for (int item = 0; item < result.stock().size(); item++) {
            StockLimit limit = result.stock().get(item);
            int taken = result.taken(item, BagResult::planned);
            if (taken > limit.available()) {
                messages.add(Message.warning(
                        limit.item().cell(),
                        "the plan takes " + taken + " of " + limit.item().inWords() + ", of which there are "
                                + limit.available() + ": no choice that is open takes fewer"));
            }
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
