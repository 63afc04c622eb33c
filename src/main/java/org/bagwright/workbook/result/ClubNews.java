package org.bagwright.workbook.result;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.plan.OptionChange;

/**
 * What a golfer reads of a club that was changed: what he will see and feel, not what was done at the bench.
 *
 * @param change from the club before to the club now
 */
record ClubNews(OptionChange change) {
    private static final double WORTH_SAYING_DEG = 0.25;
    private static final double WORTH_SEEING_DEG = 0.5;

    /** A few words such as {@code more loft, more upright, more closed}. */
    String inWords() {
        if (change.isNone()) {
            return "as before";
        }
        if (change.to().isEmpty()) {
            return "no longer in the bag";
        }
        if (change.putsClubIn()) {
            return change.from().isEmpty()
                    ? "new in the bag"
                    : "new, in place of " + change.from().clubText();
        }
        List<String> words = new ArrayList<>(poses());
        if (!change.from()
                .choice()
                .weightingText()
                .equalsIgnoreCase(change.to().choice().weightingText())) {
            words.add("weights moved");
        }
        return words.isEmpty() ? "adjusted" : String.join(", ", words);
    }

    private List<String> poses() {
        PoseNumbers before = change.from().pose();
        PoseNumbers now = change.to().pose();
        List<String> words = new ArrayList<>();
        add(words, now.gaugeLoftDeg() - before.gaugeLoftDeg(), WORTH_SAYING_DEG, "more loft", "less loft");
        add(words, now.gaugeLieDeg() - before.gaugeLieDeg(), WORTH_SAYING_DEG, "more upright", "flatter");
        add(words, now.sitsClosedDeg() - before.sitsClosedDeg(), WORTH_SEEING_DEG, "more closed", "more open");
        return words;
    }

    private static void add(List<String> words, double changeDeg, double leastDeg, String more, String less) {
        if (Math.abs(changeDeg) >= leastDeg) {
            words.add(changeDeg > 0 ? more : less);
        }
    }
}
