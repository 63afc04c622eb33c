package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.text.Numbers;

/**
 * What to turn, bend and swap for a plan, as a terminal shows it.
 *
 * @param bag the planned bag
 */
record WorkText(BagResult bag) {
    private static final int NAME_CHARS = 16;

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        String count = count();
        lines.add(changes().isEmpty() ? count : count + ":");
        changes().forEach(change -> lines.addAll(new WrappedText("  " + line(change), NAME_CHARS + 3).lines()));
        return lines;
    }

    /** How many clubs there is something to do on. */
    int clubs() {
        return changes().size();
    }

    private String count() {
        int clubs = clubs();
        int items = bag.changesOf(bag.planned());
        return clubs == 0
                ? "Nothing to change: today's bag is the plan."
                : "Change " + clubs + (clubs == 1 ? " club (" : " clubs (") + items
                        + (items == 1 ? " item)" : " items)");
    }

    private List<OptionChange> changes() {
        List<Option> today = bag.optionsOf(bag.today());
        List<Option> planned = bag.optionsOf(bag.planned());
        return IntStream.range(0, planned.size())
                .filter(index -> planned.get(index).changes() > 0)
                .mapToObj(index -> new OptionChange(today.get(index), planned.get(index)))
                .toList();
    }

    /** What is done, with what the gauge then reads as far as the line has room for it. */
    private static String line(OptionChange change) {
        String club = (change.to().isEmpty() ? change.from() : change.to()).clubText();
        String work = String.format(
                "%-" + NAME_CHARS + "s %s", WrappedText.shortened(club, NAME_CHARS), String.join(", ", change.items()));
        if (change.to().isEmpty()) {
            return work;
        }
        String gauge = "gauge: loft " + Numbers.fixed(change.to().pose().gaugeLoftDeg(), 1) + ", lie "
                + Numbers.fixed(change.to().pose().gaugeLieDeg(), 1);
        String sits = change.to().club().sleeve().isPresent()
                ? "; sits " + change.to().pose().sitsText()
                : "";
        String all = work + "  (" + gauge + sits + ")";
        if (fits(all)) {
            return all;
        }
        String shorter = work + "  (" + gauge + ")";
        return fits(shorter) ? shorter : work;
    }

    private static boolean fits(String line) {
        return line.length() + 2 <= WrappedText.COLUMNS;
    }
}
