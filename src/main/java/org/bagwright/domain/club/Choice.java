package org.bagwright.domain.club;

import java.util.Optional;

/**
 * What a fitter sets on one club.
 *
 * @param setting the mark of the setting, where there is a sleeve
 * @param weighting the weighting, where there is a kit of weights
 * @param bend the bend
 */
public record Choice(Optional<String> setting, Optional<String> weighting, Bend bend) {
    public static final String FIXED = "fixed";
    public static final String NO_KIT = "none";

    /** A choice for a head without a kit of weights. */
    public Choice(Optional<String> setting, Bend bend) {
        this(setting, Optional.empty(), bend);
    }

    /** The setting as sheets and keys show it: its mark, or {@code fixed} for a glued shaft. */
    public String settingText() {
        return setting.orElse(FIXED);
    }

    /** The weighting as sheets and keys show it: its name, or {@code none} without a kit. */
    public String weightingText() {
        return weighting.orElse(NO_KIT);
    }

    /** How many items differ: the setting, the weighting, the loft bend, the lie bend. */
    public int itemsThatDiffer(Choice other) {
        int items = setting.equals(other.setting) ? 0 : 1;
        items += weighting.equals(other.weighting) ? 0 : 1;
        items += same(bend.loftDeg(), other.bend.loftDeg()) ? 0 : 1;
        items += same(bend.lieDeg(), other.bend.lieDeg()) ? 0 : 1;
        return items;
    }

    private static boolean same(double oneDeg, double otherDeg) {
        return Math.abs(oneDeg - otherDeg) < 1e-6;
    }
}
