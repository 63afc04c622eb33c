package org.bagwright.workbook.plan;

import java.util.Optional;
import org.bagwright.workbook.settings.SettingsColumn;

/** What the sheet Plan has in a column for each state of a slot. */
public enum PlanQuantity {
    CLUB(SettingsColumn.CLUB),
    SETTING(SettingsColumn.SETTING),
    WEIGHTING(SettingsColumn.WEIGHTING),
    LOFT_BEND(SettingsColumn.LOFT_BEND),
    LIE_BEND(SettingsColumn.LIE_BEND),
    LOFT(SettingsColumn.LOFT),
    CARRY(SettingsColumn.CARRY),
    CARRY_SPREAD(SettingsColumn.CARRY_SPREAD),
    GAP,
    /** Half of the range that holds the gap in 80 of 100 cases. */
    GAP_SPREAD,
    PENALTY,
    /** The row of the option on the sheet Settings. */
    ROW,
    /** The carry of the next club that flies. */
    NEXT,
    /** The row of that club's option on the sheet Settings. */
    NEXT_ROW,
    /** The variance of the gap. */
    GAP_VARIANCE,
    /** What of the penalty is doubt. */
    DOUBT,
    /** The group with which the club is matched. */
    GROUP(SettingsColumn.MATCH_GROUP),
    /** The number by which it is matched. */
    MATCH(SettingsColumn.MATCH_VALUE),
    CHANGES(SettingsColumn.CHANGES),
    /** The gap less its wish, as far as the chart shows. */
    OFF_WISH,
    /** The height in the chart of the mark for it; out of sight where there is no gap. */
    LINE;

    private final Optional<SettingsColumn> source;

    PlanQuantity() {
        source = Optional.empty();
    }

    PlanQuantity(SettingsColumn source) {
        this.source = Optional.of(source);
    }

    /** The column of the sheet Settings that has it for each option; empty if the sheet Plan computes it itself. */
    Optional<SettingsColumn> source() {
        return source;
    }
}
