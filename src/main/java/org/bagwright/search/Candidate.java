package org.bagwright.search;

import org.bagwright.domain.ClubKind;
import org.bagwright.domain.Option;

/**
 * An option as the search sees it: whole numbers, and its carry.
 *
 * @param index its place among the options of its club
 * @param own its own penalty by measure
 * @param mustBreaks the musts it breaks by itself, thousandths
 * @param closedBreaks 1000 if a plan may not take it, else 0
 * @param changes items that differ from today
 * @param carryM carry, metres; 0 for a club without one
 */
record Candidate(int index, OwnMicropoints own, long mustBreaks, long closedBreaks, int changes, double carryM) {
    static Candidate of(ClubKind kind, int index, Option option) {
        if (kind.carries() && !Double.isFinite(option.carryM().orElse(Double.NaN))) {
            throw new IllegalArgumentException("option " + option.key() + " needs a carry");
        }
        return new Candidate(
                index,
                OwnMicropoints.of(option),
                PenaltyRules.breaks(option.terms().hardBreaks()),
                option.open() ? 0 : PenaltyRules.BREAK_THOUSANDTHS,
                option.changes(),
                option.carryM().orElse(0));
    }

    Cost ownCost() {
        return new Cost(mustBreaks + closedBreaks, own.total());
    }

    /** The own penalty of an option, each measure in millionths of a point. */
    record OwnMicropoints(long loft, long lie, long sits, long carry, long change) {
        static OwnMicropoints of(Option option) {
            return new OwnMicropoints(
                    PenaltyRules.micropoints(option.terms().loftPoints()),
                    PenaltyRules.micropoints(option.terms().liePoints()),
                    PenaltyRules.micropoints(option.terms().sitsPoints()),
                    PenaltyRules.micropoints(option.terms().carryPoints()),
                    PenaltyRules.micropoints(option.terms().changePoints()));
        }

        long total() {
            return loft + lie + sits + carry + change;
        }
    }
}
