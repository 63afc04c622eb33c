package org.bagwright.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.Book;
import org.bagwright.domain.Club;
import org.bagwright.domain.GaugedClub;
import org.bagwright.domain.GaugedNumber;
import org.bagwright.domain.GaugedReading;
import org.bagwright.domain.Message;
import org.bagwright.domain.Numbers;
import org.bagwright.domain.Reading;
import org.bagwright.geometry.ClubGeometry;
import org.bagwright.geometry.Estimate;
import org.bagwright.geometry.FittedClub;
import org.bagwright.geometry.FittedClub.CheckedReading;
import org.bagwright.geometry.GaugeFit;
import org.bagwright.geometry.HeadDesign;

/** Fits every club of a book that has gauge readings. */
final class BookFits {
    private final Book book;
    private final double repeatabilityDeg;
    private final List<ClubFit> fits = new ArrayList<>();
    private final List<Message> messages = new ArrayList<>();

    /**
     * A club with what its readings told.
     *
     * @param club the club as stated
     * @param found the fit
     */
    record ClubFit(Club club, FittedClub found) {
        /** How many readings the fit used. */
        long used() {
            return found.readings().stream()
                    .filter(reading -> !reading.flagged())
                    .count();
        }
    }

    /**
     * @param book a book without problems
     * @param repeatabilityDeg one standard deviation of the gauge, degrees
     */
    BookFits(Book book, double repeatabilityDeg) {
        this.book = book;
        this.repeatabilityDeg = repeatabilityDeg;
        book.clubs().forEach(this::fit);
    }

    Book book() {
        return book;
    }

    /** The clubs that have readings, in the order of the book. */
    List<ClubFit> fits() {
        return fits;
    }

    /** Readings left out, conflicts, and clubs whose readings could not be fitted. */
    List<Message> messages() {
        return messages;
    }

    private void fit(Club club) {
        List<Reading> readings = book.readingsOf(club);
        if (readings.isEmpty()) {
            return;
        }
        try {
            FittedClub found = GaugeFit.fit(club, book.sleeveOf(club), readings, repeatabilityDeg);
            fits.add(new ClubFit(club, found));
            found.readings().stream().filter(CheckedReading::flagged).forEach(reading -> warnOf(club, reading));
            found.notes().forEach(note -> messages.add(Message.warning(club.cell(), note)));
        } catch (IllegalArgumentException | IllegalStateException cannot) {
            messages.add(Message.warning(
                    readings.get(0).cell(),
                    "the readings of " + club.name() + " fit no possible head: read again, or correct what the book"
                            + " says of it"));
        }
    }

    private void warnOf(Club club, CheckedReading reading) {
        List<String> off = new ArrayList<>();
        addOff(off, "loft", reading.loftResidualDeg());
        addOff(off, "lie", reading.lieResidualDeg());
        addOff(off, "face", reading.faceResidualDeg());
        messages.add(Message.warning(
                reading.reading().cell(),
                "this reading of " + club.name() + " disagrees with the others (" + String.join(", ", off)
                        + " degrees off) and is left out: read again"));
    }

    private static void addOff(List<String> off, String what, OptionalDouble residualDeg) {
        residualDeg.ifPresent(value -> off.add(what + " " + Numbers.signed(value, 2)));
    }

    /** The fits as records for people and programs. */
    List<GaugedClub> gauged() {
        return fits.stream().map(this::gauged).toList();
    }

    private GaugedClub gauged(ClubFit fit) {
        FittedClub found = fit.found();
        HeadDesign stated = ClubGeometry.design(fit.club(), book.sleeveOf(fit.club()));
        return new GaugedClub(
                fit.club(),
                number(found.designLoft(), stated.loftDeg()),
                number(found.designLie(), stated.lieDeg()),
                number(found.designFace(), stated.faceDeg()),
                number(found.gaugeLoft(), fit.club().head().loftDeg()),
                number(found.gaugeLie(), fit.club().head().lieDeg()),
                number(found.bend(), found.statedBendDeg()),
                number(found.clockOffset(), 0),
                found.readings().stream().map(BookFits::reading).toList(),
                found.held(),
                found.notes());
    }

    private static Optional<GaugedNumber> number(Optional<Estimate> found, double stated) {
        return found.map(estimate -> number(estimate, stated));
    }

    private static GaugedNumber number(Estimate found, double stated) {
        return new GaugedNumber(found.valueMeasureUnits(), found.standardErrorMeasureUnits(), stated);
    }

    private static GaugedReading reading(CheckedReading checked) {
        return new GaugedReading(
                checked.reading(),
                checked.loftResidualDeg(),
                checked.lieResidualDeg(),
                checked.faceResidualDeg(),
                checked.flagged());
    }
}
