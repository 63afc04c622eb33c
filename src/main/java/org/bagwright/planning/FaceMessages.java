package org.bagwright.planning;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.ClubKind;
import org.bagwright.domain.Golfer;
import org.bagwright.domain.Message;
import org.bagwright.domain.Numbers;
import org.bagwright.domain.Option;
import org.bagwright.domain.PoseNumbers;
import org.bagwright.domain.SlotOptions;

/** What it means for a golfer that he squares the face at address, or lets the head sit, told on one of his clubs. */
final class FaceMessages {
    private FaceMessages() {}

    /** One message on the driver, or on the first other club with a sleeve; none without a sleeve. */
    static Optional<Message> of(Golfer golfer, List<SlotOptions> slots) {
        return slots.stream()
                .filter(made -> made.main().sleeve().isPresent())
                .min(Comparator.comparing(made -> made.main().kind() != ClubKind.DRIVER))
                .flatMap(made -> strongest(made).map(option -> message(golfer, made, option)));
    }

    /** The setting, with today's bends, that changes the squared loft most; empty when none changes anything. */
    private static Optional<Option> strongest(SlotOptions made) {
        if (made.today().isEmpty()) {
            return Optional.empty();
        }
        Option today = made.today();
        return made.optionsOf(made.main()).stream()
                .filter(option -> option.choice().bend().equals(today.choice().bend()))
                .filter(option ->
                        option.choice().weighting().equals(today.choice().weighting()))
                .filter(option -> option.changes() > 0)
                .max(Comparator.comparingDouble(option ->
                        Math.abs(option.pose().addressLoftDeg() - today.pose().addressLoftDeg())));
    }

    private static Message message(Golfer golfer, SlotOptions made, Option option) {
        PoseNumbers now = made.today().pose();
        PoseNumbers then = option.pose();
        String squared =
                changes(then.faceHeadingDeg() - now.faceHeadingDeg(), then.addressLoftDeg() - now.addressLoftDeg());
        String sitting =
                changes(then.sitsClosedDeg() - now.sitsClosedDeg(), then.loftAsItSitsDeg() - now.loftAsItSitsDeg());
        String setting = "setting " + option.choice().settingText() + " of "
                + made.main().name() + " changes ";
        return Message.assumed(
                golfer.cell(),
                golfer.squaresFace()
                        ? golfer.name() + " squares the face: " + setting + squared
                                + "; if the head is left to sit, it would change " + sitting
                        : golfer.name() + " lets the head sit: " + setting + sitting + "; if squared, it would change "
                                + squared);
    }

    private static String changes(double faceDeg, double loftDeg) {
        return "the face by " + Numbers.signed(faceDeg, 1) + " degrees (closed is positive) and the loft by "
                + Numbers.signed(loftDeg, 1);
    }
}
