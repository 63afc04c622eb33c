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

    /** The same club presenting its stated loft. */
    ClubToday stated() {
        return presenting(club.head().loftDeg());
    }

    /** The same club in a set-up that presents another loft, degrees. */
    ClubToday presenting(double otherDeg) {
        return new ClubToday(club, otherDeg, lengthM, headMassKg);
    }

    /** What another length adds to ln head speed: 0.45 m/s of ball speed an inch (Kenny, Wallace and Otto 2008). */
    double lnSpeedRatio(double otherLengthM, double ballMps) {
        return Math.log1p(0.45 * (otherLengthM - lengthM) / 0.0254 / ballMps);
    }

    PointHead head(double speedMps) {
        return new PointHead(speedMps, headMassKg, Restitution.of(kind()));
    }

    /** The place of the club among the others: by length, clubs of one length by loft, then by slot. */
    double placeM() {
        return lengthM - 1e-4 * loftDeg - 1e-9 * club.slot();
    }
}
