package org.bagwright.flight.golfer;

import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.PointHead;
import org.bagwright.flight.Restitution;

/**
 * A club as it is today, with what the book leaves out filled in.
 *
 * @param club the club
 * @param loftDeg the loft that today's set-up presents at address, degrees
 * @param lengthM its length, stated or assumed, m
 * @param headMassKg its head mass, stated or assumed, kg
 */
record ClubToday(Club club, double loftDeg, double lengthM, double headMassKg) {
    public ClubToday {
        if (!(Math.abs(loftDeg) <= 90)) {
            throw new IllegalArgumentException(club.name() + " presents " + loftDeg + " degrees of loft today");
        }
    }

    public static ClubToday of(Club club, double todayLoftDeg) {
        double lengthM = club.parts().lengthM().orElseGet(() -> club.kind()
                .usualLengthM(club.head().loftDeg()));
        double massKg = club.form().massKg().orElseGet(() -> club.kind().usualHeadMassKg(lengthM));
        return new ClubToday(club, todayLoftDeg, lengthM, massKg);
    }

    ClubKind kind() {
        return club.kind();
    }

    PointHead head(double speedMps) {
        return new PointHead(speedMps, headMassKg, Restitution.of(kind()));
    }

    /** The place of the club among the others: by length, clubs of one length by loft, then by slot. */
    double placeM() {
        return lengthM - 1e-4 * loftDeg - 1e-9 * club.slot();
    }
}
