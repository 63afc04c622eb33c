package org.bagwright.domain.club;

import java.util.Optional;
import org.bagwright.domain.units.Checks;

/**
 * One club of a golfer's bag as it is today, with what may be changed and what is wanted.
 *
 * @param identity which club it is
 * @param head what a gauge reads on it
 * @param form the form of its head
 * @param parts what else it is built of
 * @param today how it is set up today; it has a setting exactly when there is a sleeve, a weighting when there is a kit
 * @param inBag whether it is the club in the bag today, not another one that might take its slot
 * @param freedom what a plan may do with it
 * @param targets what it should have
 */
public record Club(
        ClubIdentity identity,
        StatedHead head,
        HeadForm form,
        ClubParts parts,
        Choice today,
        boolean inBag,
        Freedom freedom,
        Targets targets) {
    public Club {
        Checks.that(
                parts.sleeve().isPresent() == today.setting().isPresent(),
                "a setting needs a sleeve, and a sleeve a setting");
        Checks.that(
                parts.kit().isPresent() == today.weighting().isPresent(),
                "a weighting needs a kit, and a kit a weighting");
        Checks.that(
                identity.kind().bendable() || freedom.bendRange().limitDeg() == 0, "only irons and wedges are bent");
    }

    /** Whose club. */
    public String golfer() {
        return identity.golfer();
    }

    /** Its place in the bag, 1 the longest. */
    public int slot() {
        return identity.slot();
    }

    /** What the book calls it. */
    public String name() {
        return identity.name();
    }

    public ClubKind kind() {
        return identity.kind();
    }

    /** Where the book names it. */
    public String cell() {
        return identity.cell();
    }

    /** The sleeve's name; empty for a glued shaft. */
    public Optional<String> sleeve() {
        return parts.sleeve();
    }

    /** The name of its kit of weights; empty for a head without ports. */
    public Optional<String> kit() {
        return parts.kit();
    }

    /** Whether the club stays as it is today. */
    public boolean pinned() {
        return freedom.pinned();
    }

    /** The lie at which the golfer holds the shaft, degrees: as stated, else the lie target, else the stated lie. */
    public double addressLieDeg() {
        return targets.golferLieDeg().orElseGet(() -> targets.lieDeg().orElse(head.lieDeg()));
    }

    /** The lie that the club should have, degrees: the lie target, else the golfer's lie. */
    public double lieTargetDeg() {
        return targets.lieDeg().orElseGet(this::addressLieDeg);
    }

    /** The same club set up today in another way, in the bag or not. */
    public Club withToday(Choice other, boolean nowInBag) {
        return new Club(identity, head, form, parts, other, nowInBag, freedom, targets);
    }

    /** The same row of the book as the club in the bag today, or as another that might take its slot. */
    public Club withInBag(boolean nowInBag) {
        return withToday(today, nowInBag);
    }

    /** Its choice of today with the bends tidied, as those of its options are. */
    public Choice tidiedToday() {
        return new Choice(today.setting(), today.weighting(), today.bend().tidied());
    }
}
