package org.bagwright.planning.options;

import java.util.EnumSet;
import java.util.Set;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.ClosedReason;
import org.bagwright.domain.option.ClubSetup;

/**
 * Why a plan may not take an option.
 *
 * @param golfer whose club it is
 * @param rules the equipment rules
 */
record ClosedReasons(Golfer golfer, EquipmentRules rules) {

    /** Everything that closes a set-up; empty if a plan may take it. */
    Set<ClosedReason> of(ClubSetup setup, SlotPin pin) {
        Club club = setup.club();
        boolean held = pin.allows(club, setup.choice());
        Set<ClosedReason> reasons = EnumSet.noneOf(ClosedReason.class);
        addUnless(held, reasons, ClosedReason.PIN);
        if (!held || pin.isFree()) {
            addUnless(isAllowed(club, setup.choice()), reasons, ClosedReason.SETTING);
            addUnless(!golfer.address().keepsShaftAligned() || !setup.turnsShaft(), reasons, ClosedReason.SHAFT);
            addUnless(rules.allow(setup), reasons, ClosedReason.RULE);
        }
        return reasons;
    }

    private static void addUnless(boolean free, Set<ClosedReason> reasons, ClosedReason reason) {
        if (!free) {
            reasons.add(reason);
        }
    }

    private static boolean isAllowed(Club club, Choice choice) {
        return club.freedom().allowed().isEmpty()
                || choice.setting()
                        .map(mark -> club.freedom().allowed().stream().anyMatch(mark::equalsIgnoreCase))
                        .orElse(true);
    }
}
