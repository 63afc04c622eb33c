package org.bagwright.planning.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.gauge.GaugedClub;
import org.bagwright.domain.gauge.GaugedReading;
import org.bagwright.domain.text.Numbers;
import org.bagwright.geometry.GaugeFit;

/** Fits every club of a book that has gauge readings. */
public final class BookFits {
    private final Book book;
    private final double repeatabilityDeg;
    private final List<GaugedClub> fits = new ArrayList<>();
    private final List<Message> messages = new ArrayList<>();

    /**
     * @param book a book without problems
     * @param repeatabilityDeg one standard deviation of the gauge, degrees
     */
    public BookFits(Book book, double repeatabilityDeg) {
        this.book = book;
        this.repeatabilityDeg = repeatabilityDeg;
        book.clubs().forEach(this::fit);
    }

    Book book() {
        return book;
    }

    /** The clubs that have readings, in the order of the book. */
    public List<GaugedClub> fits() {
        return fits;
    }

    /** Readings left out, conflicts, and clubs whose readings could not be fitted. */
    public List<Message> messages() {
        return messages;
    }

    private void fit(Club club) {
        List<Reading> readings = book.readingsOf(club);
        if (readings.isEmpty()) {
            return;
        }
        try {
            GaugedClub found = GaugeFit.fit(club, book.sleeveOf(club), readings, repeatabilityDeg);
            fits.add(found);
            found.readings().stream().filter(GaugedReading::flagged).forEach(reading -> warnOf(club, reading));
            found.notes().forEach(note -> messages.add(Message.warning(club.cell(), note)));
        } catch (IllegalArgumentException | IllegalStateException cannot) {
            messages.add(Message.warning(
                    readings.get(0).cell(),
                    "the readings of " + club.name() + " fit no possible head: read again, or correct what the book"
                            + " says of it"));
        }
    }

    private void warnOf(Club club, GaugedReading reading) {
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
}
