package org.bagwright.domain;

import java.util.Optional;

/** What a fitter sets on one club: the mark of the setting, where there is a sleeve, and the bend. */
public record Choice(Optional<String> setting, Bend bend) {
    private static final String FIXED = "fixed";

    /** The setting as sheets and keys show it: its mark, or {@code fixed} for a glued shaft. */
    public String settingText() {
        return setting.orElse(FIXED);
    }

    /** How many items differ: the setting, the loft bend, the lie bend. */
    public int itemsThatDiffer(Choice other) {
        int items = setting.equals(other.setting) ? 0 : 1;
        items += same(bend.loftDeg(), other.bend.loftDeg()) ? 0 : 1;
        items += same(bend.lieDeg(), other.bend.lieDeg()) ? 0 : 1;
        return items;
    }

    private static boolean same(double oneDeg, double otherDeg) {
        return Math.abs(oneDeg - otherDeg) < 1e-6;
    }
}
