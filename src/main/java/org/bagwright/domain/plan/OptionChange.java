package org.bagwright.domain.plan;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.text.Numbers;

/**
 * What is done to one slot of a bag on the way from one option to another.
 *
 * @param from what fills the slot before
 * @param to what fills it after
 */
public record OptionChange(Option from, Option to) {

    /** Whether nothing is done. */
    public boolean isNone() {
        return from.key().equals(to.key());
    }

    /** Whether another club takes the slot, or one where there was none. */
    public boolean putsClubIn() {
        return !to.isEmpty() && (from.isEmpty() || !from.club().equals(to.club()));
    }

    /**
     * How the club that fills the slot in the end is set up at first: as before, or as its own row of the book says where
     * it is new in the bag.
     *
     * @throws IllegalStateException if the slot is left empty
     */
    public Choice choiceBefore() {
        Club club = to.club();
        return putsClubIn() ? club.today() : from.choice();
    }

    /** Everything that is done, one item a text, such as {@code setting 1 -> 4} or {@code leave out}. */
    public List<String> items() {
        if (isNone()) {
            return List.of();
        }
        if (to.isEmpty()) {
            return List.of("leave out");
        }
        List<String> items = new ArrayList<>();
        if (putsClubIn()) {
            items.add(from.isEmpty() ? "put in" : "in place of " + from.clubText());
        }
        addSetUp(items, choiceBefore(), to.choice());
        return items;
    }

    private static void addSetUp(List<String> items, Choice before, Choice after) {
        Bend bent = before.bend();
        Bend toBend = after.bend();
        add(items, "setting", before.settingText(), after.settingText());
        add(items, "weighting", before.weightingText(), after.weightingText());
        add(items, "loft bend", bendText(bent.loftDeg()), bendText(toBend.loftDeg()));
        add(items, "lie bend", bendText(bent.lieDeg()), bendText(toBend.lieDeg()));
    }

    /** The club and everything that is done to it, such as {@code Driver: setting 1 -> 4, weighting even -> heel}. */
    public String inWords() {
        return (to.isEmpty() ? from : to).clubText() + ": " + String.join(", ", items());
    }

    /** A bend with its sign and without trailing zeros, degrees, such as {@code +0.5}. */
    public static String bendText(double bendDeg) {
        String text = Numbers.trimmed(bendDeg);
        return text.startsWith("-") || text.equals("0") ? text : "+" + text;
    }

    private static void add(List<String> items, String what, String before, String after) {
        if (!before.equalsIgnoreCase(after)) {
            items.add(what + " " + before + " -> " + after);
        }
    }
}
