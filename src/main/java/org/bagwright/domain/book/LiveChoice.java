package org.bagwright.domain.book;

import java.util.Optional;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Checks;

/**
 * What a person has chosen for one slot on the sheet Plan of an earlier run, in the words of the sheet.
 *
 * @param golfer whose slot
 * @param slot its number
 * @param club the club's name, or {@code left out}
 * @param written how the club is set up
 * @param pinned whether the next plan keeps this choice
 * @param cell where it may be pinned
 */
public record LiveChoice(String golfer, int slot, String club, Written written, boolean pinned, String cell) {

    public LiveChoice {
        Checks.named(golfer, "golfer");
        Checks.named(cell, "cell");
    }

    /**
     * A set-up in the words of the sheet; an empty item is as the row of the club has it.
     *
     * @param setting the setting's mark
     * @param weighting the weighting
     * @param loftBend the loft bend as {@link Numbers#trimmed(double)} shows it
     * @param lieBend the lie bend, in the same form
     */
    public record Written(
            Optional<String> setting, Optional<String> weighting, Optional<String> loftBend, Optional<String> lieBend) {

        private boolean means(Choice own, Choice choice) {
            return setting.orElse(own.settingText()).equalsIgnoreCase(choice.settingText())
                    && weighting.orElse(own.weightingText()).equalsIgnoreCase(choice.weightingText())
                    && same(loftBend, own.bend().loftDeg(), choice.bend().loftDeg())
                    && same(lieBend, own.bend().lieDeg(), choice.bend().lieDeg());
        }

        private static boolean same(Optional<String> chosen, double ownDeg, double bendDeg) {
            return chosen.orElse(Numbers.trimmed(ownDeg)).equals(Numbers.trimmed(bendDeg));
        }

        private String inWords() {
            return part(", setting ", setting)
                    + part(", weighting ", weighting)
                    + part(", loft bend ", loftBend)
                    + part(", lie bend ", lieBend);
        }

        private static String part(String what, Optional<String> value) {
            return value.filter(text -> !text.equals(Choice.FIXED) && !text.equals(Choice.NO_KIT))
                    .map(text -> what + text)
                    .orElse("");
        }
    }

    /** Whether this is the choice for a golfer's slot. */
    public boolean isFor(String otherGolfer, int otherSlot) {
        return slot == otherSlot && golfer.equalsIgnoreCase(otherGolfer);
    }

    /** Whether a club of this slot set up in one way is what was chosen. */
    public boolean means(Club other, Choice choice) {
        return club.equalsIgnoreCase(other.name()) && written.means(other.today(), choice);
    }

    /** The choice as people read it, such as {@code Driver, setting 2}. */
    public String inWords() {
        return club.isEmpty() ? "no club" : club + written.inWords();
    }
}
