package org.bagwright.domain;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One club of a golfer's bag as it is today, with what may be changed and what is wanted.
 *
 * @param golfer whose club
 * @param slot its place in the bag, 1 the longest
 * @param name how the book calls it
 * @param kind its kind
 * @param head what a gauge reads on it
 * @param lengthM club length, metres; empty is assumed from kind and loft
 * @param sleeve the sleeve's name; empty for a glued shaft
 * @param setting today's setting, present exactly when there is a sleeve
 * @param todayBend today's bend
 * @param bendRange the bends that may be planned
 * @param pinned whether the club stays as it is today
 * @param allowed marks of the settings that may be planned; empty allows all
 * @param targets what it should have
 * @param golferLieDeg the lie at which the golfer holds the shaft with this club, degrees
 * @param form the form of its head
 * @param cell where the book names it
 */
public record Club(
        String golfer,
        int slot,
        String name,
        ClubKind kind,
        StatedHead head,
        OptionalDouble lengthM,
        Optional<String> sleeve,
        Optional<String> setting,
        Bend todayBend,
        BendRange bendRange,
        boolean pinned,
        List<String> allowed,
        Targets targets,
        OptionalDouble golferLieDeg,
        HeadForm form,
        String cell) {
    public Club {
        Checks.named(golfer, "golfer");
        Checks.that(slot >= 1, "slot must be 1 or more");
        Checks.named(name, "club");
        lengthM.ifPresent(value -> Checks.within(Limit.CLUB_LENGTH_M, value, "length"));
        Checks.that(sleeve.isPresent() == setting.isPresent(), "a setting needs a sleeve, and a sleeve a setting");
        Checks.that(kind.bendable() || bendRange.limitDeg() == 0, "only irons and wedges are bent");
        allowed = List.copyOf(allowed);
        golferLieDeg.ifPresent(value -> Checks.within(Limit.LIE_DEG, value, "golfer lie"));
    }

    /** The lie at which the golfer holds the shaft, degrees: as stated, else the lie target, else the stated lie. */
    public double addressLieDeg() {
        return golferLieDeg.orElseGet(() -> targets.lieDeg().orElse(head.lieDeg()));
    }

    /** The lie that the club should have, degrees: as asked for, else the golfer's lie. */
    public double lieTargetDeg() {
        return targets.lieDeg().orElseGet(this::addressLieDeg);
    }
}
