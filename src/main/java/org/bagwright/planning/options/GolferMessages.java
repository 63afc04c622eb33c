package org.bagwright.planning.options;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bagwright.balance.BalanceParts;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.HeadForm;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.text.Numbers;
import org.bagwright.flight.golfer.WeightedHead;
import org.bagwright.geometry.SoleForm;

/**
 * What was assumed of one golfer: what it means that he squares the face at address or lets the head sit, and the forms of
 * soles from which follows how his clubs sit.
 *
 * @param golfer whom the messages are about
 */
record GolferMessages(Golfer golfer) {
    private static final double G_CM2_PER_KG_M2 = 1e7;

    /** One message on the driver, or on the first other club with a sleeve; none without a sleeve. */
    Optional<Message> face(List<SlotOptions> slots) {
        return slots.stream()
                .filter(made -> made.main().sleeve().isPresent())
                .min(Comparator.comparing(made -> made.main().kind() != ClubKind.DRIVER))
                .flatMap(made -> strongest(made).map(option -> message(made, option)));
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
                .max(Comparator.comparingDouble(
                        option -> Math.abs(option.pose().address().loftDeg()
                                - today.pose().address().loftDeg())));
    }

    private Message message(SlotOptions made, Option option) {
        PoseNumbers now = made.today().pose();
        PoseNumbers then = option.pose();
        String squared = changes(
                then.address().faceHeadingDeg() - now.address().faceHeadingDeg(),
                then.address().loftDeg() - now.address().loftDeg());
        String sitting = changes(
                then.sitsClosedDeg() - now.sitsClosedDeg(),
                then.resting().loftDeg() - now.resting().loftDeg());
        String setting = "setting " + option.choice().settingText() + " of "
                + made.main().name() + " changes ";
        boolean squares = golfer.address().squaresFace();
        return Message.assumed(
                        golfer.cell(),
                        Wording.ofGolfer(
                                squares
                                        ? "What a setting changes, since the golfer squares the face: "
                                        : "What a setting changes, since the golfer lets the head sit: ",
                                golfer.name(),
                                squares
                                        ? setting + squared + "; if the head is left to sit, it would change " + sitting
                                        : setting + sitting + "; if squared, it would change " + squared,
                                "."))
                .in("Squares face");
    }

    private static String changes(double faceDeg, double loftDeg) {
        return "the face by " + Numbers.signed(faceDeg, 1) + " degrees (closed is positive) and the loft by "
                + Numbers.signed(loftDeg, 1);
    }

    /** One message for a bag; empty when every club states its form. */
    Optional<Message> soles(List<Club> clubs) {
        List<Club> assumed = clubs.stream().filter(club -> assumes(club.form())).toList();
        List<Wording.Place> kinds = assumed.stream()
                .map(Club::kind)
                .distinct()
                .map(kind -> new Wording.Place("", kind.label(), form(kind)))
                .toList();
        if (kinds.isEmpty()) {
            return Optional.empty();
        }
        Wording wording = new Wording(
                "Assumed by kind for how clubs sit, where Sole radius or CG height is blank: sole radius fore-aft and"
                        + " heel-toe, and CG height: ",
                kinds,
                ".");
        return Optional.of(Message.assumed(golfer.cell(), wording)
                .at(assumed.stream().map(Club::cell).toList()));
    }

    /** What is assumed of clubs with a kit and of the lies at which the golfer holds them, one message for each club. */
    List<Message> heads(List<Club> clubs) {
        List<Message> messages = new ArrayList<>();
        for (Club club : clubs) {
            if (club.kit().isPresent() && club.form().centreOfGravityDepthMm().isEmpty()) {
                String depth = Numbers.trimmed(1000 * WeightedHead.assumedDepthM(club.kind())) + " mm";
                messages.add(assumed(club, "CG depth", "for what weights do to the shot: ", depth));
            }
            if (club.kit().isPresent() && club.form().inertiaKgM2().isEmpty()) {
                double inertiaKgM2 = BalanceParts.of(club).headInertiaKgM2();
                String inertia = Numbers.fixed(inertiaKgM2 * G_CM2_PER_KG_M2, 0) + " g cm2";
                messages.add(assumed(club, "Head inertia", "for what weights do to the shot: ", inertia));
            }
            if (club.targets().golferLieDeg().isEmpty()
                    && club.targets().lieDeg().isEmpty()) {
                String lie = Numbers.trimmed(club.head().lieDeg(), 2) + " degrees";
                messages.add(assumed(club, "Golfer lie", "from the lie of the club, as is its target: ", lie));
            }
        }
        return messages;
    }

    private static Message assumed(Club club, String column, String what, String value) {
        return Message.assumed(
                        club.cell(),
                        Wording.ofClub(
                                column + " is blank, so it is assumed " + what, club.golfer(), club.name(), value, "."))
                .in(column);
    }

    private static boolean assumes(HeadForm form) {
        return form.soleForeAftRadiusMm().isEmpty()
                || form.soleHeelToeRadiusMm().isEmpty()
                || form.centreOfGravityHeightMm().isEmpty();
    }

    private static String form(ClubKind kind) {
        SoleForm form = SoleForm.assumedFor(kind);
        return Numbers.trimmed(form.foreAftRadiusMm()) + " and "
                + Numbers.trimmed(form.heelToeRadiusMm()) + " mm, "
                + Numbers.trimmed(form.centreOfGravityHeightMm()) + " mm";
    }
}
