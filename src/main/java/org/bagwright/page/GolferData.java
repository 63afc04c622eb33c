package org.bagwright.page;

import static org.bagwright.domain.text.Numbers.fixed;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.ChoiceSureness;
import org.bagwright.domain.plan.Step;

/**
 * What the page needs of one golfer.
 *
 * @param result the book
 * @param bag his bag
 */
record GolferData(BookResult result, BagResult bag) {
    private static final int PERCENT = 100;

    ObjectNode node() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        Golfer golfer = bag.golfer();
        node.put("name", golfer.name()).put("cell", golfer.cell());
        node.put("left", golfer.hand() == Hand.LEFT);
        bag.options().mostChanges().ifPresent(most -> node.put("mostChanges", most));
        bag.options().longestTodayM().ifPresent(carryM -> node.put("longestTodayM", carryM));
        chosen(node.putArray("today"), bag.today().chosen());
        chosen(node.putArray("plan"), bag.planned().chosen());
        ArrayNode steps = node.putArray("steps");
        for (Step step : bag.steps()) {
            chosen(
                    steps.addObject().put("changes", step.changes()).putArray("chosen"),
                    step.state().chosen());
        }
        ArrayNode slots = node.putArray("slots");
        for (SlotOptions slot : bag.options().slots()) {
            slots.add(new SlotData(result.book(), bag.options(), slot).node());
        }
        bag.outlook().ifPresent(outlook -> outlook(node, outlook));
        return node;
    }

    private static void chosen(ArrayNode array, List<Integer> chosen) {
        chosen.forEach(array::add);
    }

    private void outlook(ObjectNode node, BagOutlook outlook) {
        ArrayNode choices = node.putArray("sure");
        for (ChoiceSureness choice : outlook.choices()) {
            ObjectNode one = choices.addObject();
            one.put("slot", choice.index()).put("planned", rounded(choice.plannedRatio()));
            ArrayNode best = one.putArray("best");
            choice.best().forEach(share -> best.addArray().add(share.option()).add(rounded(share.caseRatio())));
        }
        ArrayNode next = node.putArray("next");
        outlook.next()
                .advice()
                .forEach(advice ->
                        next.add(advice.inWords() + "; " + advice.worth().words()));
        Optional<String> line = outlook.next().inWords();
        line.ifPresent(words -> node.put("measureNext", words));
    }

    /** Cases of a hundred. */
    private static String rounded(double ratio) {
        return fixed(PERCENT * ratio, 0);
    }
}
