package org.bagwright.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.option.Terms;
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
    }

    private void breaks(BagResult bag) {
        if (bag.planned().score().hardBreaks() == 0) {
            return;
        }
        Golfer golfer = bag.golfer();
        messages.add(Message.warning(
                golfer.cell(),
                "not every must of " + golfer.name() + " can be met (" + String.join(", ", bag.broken(bag.planned()))
                        + "); the plan misses by the least"));
        List<Option> planned = bag.optionsOf(bag.planned());
        planned.stream().filter(option -> option.terms().totalBreaks() > 0).forEach(this::brokenClub);
        bag.planned().gaps().stream()
                .filter(gap -> gap.mustBreaks() + gap.orderBreaks() > 0)
                .forEach(gap -> brokenGap(bag, gap));
        bag.planned().spreads().stream()
                .filter(spread -> spread.mustBreaks() > 0)
                .forEach(spread -> brokenSpread(planned.get(spread.index()).club(), spread));
        tooManyChanges(golfer, bag.changesOf(bag.planned()));
    }

    private void brokenClub(Option option) {
        Terms terms = option.terms();
        String missed = terms.broken().stream()
                .map(measure -> measure.label() + " by " + Numbers.fixed(terms.breaks(measure) / 1000.0, 2))
                .collect(Collectors.joining(" and "));
        messages.add(Message.warning(
                option.club().cell(),
                option.clubText() + " misses the must of " + missed + " tolerances beyond the one allowed"));
    }

    private void brokenSpread(Club club, SpreadTerm spread) {
        messages.add(Message.warning(
                club.cell(),
                club.name() + " is " + Numbers.signed(spread.deviationMeasureUnits(), 1)
                        + " from the mean of its group (" + spread.group() + "), which misses the must of spread"));
    }

    private void tooManyChanges(Golfer golfer, int items) {
        if (items > golfer.mostChanges().orElse(Integer.MAX_VALUE)) {
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
                        "the plan uses " + taken + " of " + limit.item().inWords() + ", but there are only "
                                + limit.available() + ": no allowed choice uses fewer"));
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
