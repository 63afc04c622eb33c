package org.bagwright.planning.options;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.text.Numbers;
import org.bagwright.geometry.ClubGeometry;

/** How far a sleeve's own table and the geometry are apart on one club. */
record RatedMessages(SlotClub made) {
    private static final double SHAFT_DEG = 0.3;
    private static final double FACE_DEG = 1;

    List<Message> all() {
        Club club = made.club();
        Optional<Sleeve> sleeve = made.sleeve();
        ClubGeometry geometry = made.geometry();
        List<Message> messages = new ArrayList<>();
        for (SleeveSetting setting : sleeve.map(Sleeve::settings).orElse(List.of())) {
            List<String> off = new ArrayList<>();
            add(off, "loft", geometry.ratedLoftMisfitDeg(setting.mark()), SHAFT_DEG, "the rings");
            add(off, "lie", geometry.ratedLieMisfitDeg(setting.mark()), SHAFT_DEG, "the rings");
            add(off, "face", geometry.ratedFaceMisfitDeg(setting.mark()), FACE_DEG, "the geometry");
            if (!off.isEmpty()) {
                messages.add(Message.warning(
                        club.cell(),
                        "sleeve " + sleeve.orElseThrow().name() + ", setting " + setting.mark() + " on " + club.name()
                                + ": the table's " + String.join(", ", off) + "; the table is used"));
            }
        }
        if (sleeve.isPresent() && hasTableOnly(sleeve.get())) {
            geometry.ratedFit()
                    .ifPresent(fit -> messages.add(Message.assumed(
                            club.cell(),
                            "sleeve " + sleeve.get().name() + " on " + club.name()
                                    + ": read as one ring, the table means a bend of "
                                    + Numbers.fixed(fit.commonBendDeg(), 1) + " degrees, misfit "
                                    + Numbers.fixed(fit.misfitDeg(), 1))));
        }
        return messages;
    }

    private static boolean hasTableOnly(Sleeve sleeve) {
        return sleeve.settings().stream().anyMatch(setting -> setting.rings().isEmpty());
    }

    private static void add(List<String> off, String what, OptionalDouble misfitDeg, double mostDeg, String than) {
        if (misfitDeg.isPresent() && Math.abs(misfitDeg.getAsDouble()) > mostDeg) {
            off.add(what + " change is " + Numbers.signed(misfitDeg.getAsDouble(), 2) + " degrees off " + than);
        }
    }
}
