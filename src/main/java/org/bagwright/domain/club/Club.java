package org.bagwright.domain.club;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

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
 * @param parts what else is known of its balance
 * @param kit the kit of weights that fits its head; empty for a head without ports
 * @param weighting today's weighting, present exactly when there is a kit
 * @param inBag whether it is the club in the bag today, not another one that might take its slot
 * @param optional whether its slot may stay empty
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
        ClubParts parts,
        Optional<String> kit,
        Optional<String> weighting,
        boolean inBag,
        boolean optional,
        String cell) {
    public Club {
        Checks.named(golfer, "golfer");
        Checks.that(slot >= 1, "slot must be 1 or more");
        Checks.named(name, "club");
        lengthM.ifPresent(value -> Checks.within(Limit.CLUB_LENGTH_M, value, "length"));
        Checks.that(sleeve.isPresent() == setting.isPresent(), "a setting needs a sleeve, and a sleeve a setting");
        Checks.that(kind.bendable() || bendRange.limitDeg() == 0, "only irons and wedges are bent");
        Checks.that(kit.isPresent() == weighting.isPresent(), "a weighting needs a kit, and a kit a weighting");
        allowed = List.copyOf(allowed);
        golferLieDeg.ifPresent(value -> Checks.within(Limit.LIE_DEG, value, "golfer lie"));
    }

    /** A club in the bag without a kit of weights, its parts assumed. */
    public Club(
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
        this(
                golfer,
                slot,
                name,
                kind,
                head,
                lengthM,
                sleeve,
                setting,
                todayBend,
                bendRange,
                pinned,
                allowed,
                targets,
                golferLieDeg,
                form,
                ClubParts.ASSUMED,
                Optional.empty(),
                Optional.empty(),
                true,
                false,
                cell);
    }

    /** The lie at which the golfer holds the shaft, degrees: as stated, else the lie target, else the stated lie. */
    public double addressLieDeg() {
        return golferLieDeg.orElseGet(() -> targets.lieDeg().orElse(head.lieDeg()));
    }

    /** The lie that the club should have, degrees: as asked for, else the golfer's lie. */
    public double lieTargetDeg() {
        return targets.lieDeg().orElseGet(this::addressLieDeg);
    }

    /** The same club set up today in another way, in the bag or not. */
    public Club withToday(Choice today, boolean nowInBag) {
        return new Club(
                golfer,
                slot,
                name,
                kind,
                head,
                lengthM,
                sleeve,
                today.setting(),
                today.bend(),
                bendRange,
                pinned,
                allowed,
                targets,
                golferLieDeg,
                form,
                parts,
                kit,
                today.weighting(),
                nowInBag,
                optional,
                cell);
    }

    /** The same row of the book as the club in the bag today, or as another that might take its slot. */
    public Club withInBag(boolean other) {
        return withToday(new Choice(setting, weighting, todayBend), other);
    }
}
