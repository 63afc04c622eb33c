package org.bagwright.planning;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bagwright.domain.Club;
import org.bagwright.domain.ClubKind;
import org.bagwright.domain.Golfer;
import org.bagwright.domain.HeadForm;
import org.bagwright.domain.Message;
import org.bagwright.domain.Numbers;
import org.bagwright.geometry.SoleForm;

/** Says which forms of soles were assumed, since how a club sits follows from them. */
final class SoleMessages {
    private SoleMessages() {}

    /** One message for a bag; empty when every club states its form. */
    static Optional<Message> of(Golfer golfer, List<Club> clubs) {
        List<ClubKind> kinds = clubs.stream()
                .filter(club -> assumes(club.form()))
                .map(Club::kind)
                .distinct()
                .toList();
        if (kinds.isEmpty()) {
            return Optional.empty();
        }
        String forms = kinds.stream().map(SoleMessages::form).collect(Collectors.joining("; "));
        return Optional.of(Message.assumed(
                golfer.cell(),
                "Assumed by kind for how clubs sit, where Sole radius or CG height is blank: sole radius fore-aft and"
                        + " heel-toe, and CG height: " + forms + "."));
    }

    private static boolean assumes(HeadForm form) {
        return form.soleForeAftRadiusMm().isEmpty()
                || form.soleHeelToeRadiusMm().isEmpty()
                || form.centreOfGravityHeightMm().isEmpty();
    }

    private static String form(ClubKind kind) {
        SoleForm form = SoleForm.assumedFor(kind);
        return kind.label() + " " + Numbers.trimmed(form.foreAftRadiusMm()) + " and "
                + Numbers.trimmed(form.heelToeRadiusMm()) + " mm, "
                + Numbers.trimmed(form.centreOfGravityHeightMm()) + " mm";
    }
}
