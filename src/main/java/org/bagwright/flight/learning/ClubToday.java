package org.bagwright.flight.learning;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
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
public record ClubToday(Club club, double loftDeg, double lengthM, double headMassKg) {
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

    /**
     * The clubs of a bag that fly a ball. A club with the head of today's club of its slot has that club's head mass where its
     * own is blank: a longer shaft makes no head lighter.
     *
     * @param todayLoftDeg for each club the loft that today's set-up presents at address, degrees
     */
    public static List<ClubToday> bag(List<Club> bag, ToDoubleFunction<Club> todayLoftDeg) {
        List<ClubToday> clubs = bag.stream()
                .filter(club -> club.kind().carries())
                .map(club -> of(club, todayLoftDeg.applyAsDouble(club)))
                .toList();
        return clubs.stream()
                .map(club -> club.inSlotToday(clubs).map(club::withHeadMassOf).orElse(club))
                .toList();
    }

    private ClubToday withHeadMassOf(ClubToday other) {
        return sameHead(other) && club.form().massKg().isEmpty()
                ? new ClubToday(club, loftDeg, lengthM, other.headMassKg())
                : this;
    }

    /** Among the golfer's clubs the one that is in the bag today at this club's slot and of its kind. */
    public Optional<ClubToday> inSlotToday(List<ClubToday> clubs) {
        return clubs.stream()
                .filter(other -> other.club().inBag() && other.kind() == kind())
                .filter(other -> other.club().slot() == club.slot())
                .findFirst();
    }

    /** Whether another is the same row of the book, maybe set up in another way. */
    public boolean sameRow(ClubToday other) {
        return club.slot() == other.club().slot()
                && club.name().equalsIgnoreCase(other.club().name());
    }

    /** Whether another club is built on the same head, as far as the book tells. */
    public boolean sameHead(ClubToday other) {
        return kind() == other.kind()
                && club.head().equals(other.club().head())
                && club.sleeve().equals(other.club().sleeve())
                && club.kit().equals(other.club().kit());
    }

    public ClubKind kind() {
        return club.kind();
    }

    /** The same club presenting its stated loft. */
    public ClubToday stated() {
        return presenting(club.head().loftDeg());
    }

    /** The same club in a set-up that presents another loft, degrees. */
    public ClubToday presenting(double otherDeg) {
        return new ClubToday(club, otherDeg, lengthM, headMassKg);
    }

    /** The same club with a shaft of another length, m. */
    public ClubToday ofLength(double otherM) {
        return new ClubToday(club, loftDeg, otherM, headMassKg);
    }

    public PointHead head(double speedMps) {
        return new PointHead(speedMps, headMassKg, Restitution.of(kind()));
    }

    /** The place of the club among the others: by length, clubs of one length by loft, then by slot. */
    public double placeM() {
        return lengthM - 1e-4 * loftDeg - 1e-9 * club.slot();
    }
}
