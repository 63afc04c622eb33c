package org.bagwright.domain.plan;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bagwright.domain.units.Checks;

/**
 * A rule that a state of a bag breaks.
 *
 * @param place where
 * @param kind what sort of rule
 * @param what what is limited, in a word or two, such as {@code sits}, {@code lie} or {@code stock}
 * @param figureMeasureUnits what was found, in the unit in which the book shows it; empty for a closed option
 * @param limitMeasureUnits what is accepted, in the same unit
 * @param words all of it in words, without the cell
 * @param cell where the book makes the rule
 */
public record Broken(
        Place place,
        Kind kind,
        String what,
        OptionalDouble figureMeasureUnits,
        OptionalDouble limitMeasureUnits,
        String words,
        String cell) {
    /** What is limited where a carry must fall from one club to the next. */
    public static final String ORDER = "order of carries";

    /** What sort of rule is broken, in the order in which a row of the sheet Plan tells them. */
    public enum Kind {
        /** An option that no plan may take. */
        CLOSED,
        /** More pieces than there are. */
        STOCK,
        /** A limit of a golfer or a club, the most changes, or the clubs in a bag. */
        LIMIT,
        /** A measure that may not be missed, or a carry that must fall from club to club. */
        MUST;

        public String label() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Where a rule is broken.
     *
     * @param golfer whose bag; blank for what all bags share
     * @param index position of the slot in the bag; empty for a whole bag
     * @param slot its number
     * @param club the club; for a gap the longer one; blank for a whole bag
     */
    public record Place(String golfer, OptionalInt index, OptionalInt slot, String club) {
        static Place ofBag(String golfer) {
            return new Place(golfer, OptionalInt.empty(), OptionalInt.empty(), "");
        }
    }

    public Broken {
        Checks.named(what, "rule");
        Checks.named(cell, "cell");
    }

    /** Such as {@code 4 hybrid sits 1.6 closed, at most 0 accepted: Golfers!I6}. */
    public String inWords() {
        return words + ": " + cell;
    }

    /** Whether it is broken in the slot at this position of a bag. */
    public boolean isAt(String golfer, int index) {
        return place.golfer().equals(golfer)
                && place.index().isPresent()
                && place.index().getAsInt() == index;
    }
}
