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
import org.bagwright.domain.gauge.Repeatability;
import org.bagwright.domain.text.Numbers;
import org.bagwright.geometry.GaugeFit;

/** Fits every club of a book that has gauge readings. */
public final class BookFits {
    private static final int MOST_TURNS = 5;
    private static final double SETTLED_RATIO = 1e-6;

    private final Book book;
    private Repeatability repeatability;
    private final List<GaugedClub> fits = new ArrayList<>();
    private final List<Message> messages = new ArrayList<>();

    /**
     * @param book a book without problems
     * @param gauge how well the gauge repeats a reading, as far as it is known beforehand; all readings tell more of it
     */
    public BookFits(Book book, Repeatability gauge) {
        this.book = book;
        this.repeatability = gauge;
        fitAll();
        for (int turn = 0; turn < MOST_TURNS && !settledOn(gauge.shownBy(fits)); turn++) {
            fitAll();
        }
        if (repeatability.coarse()) {
            warnOfScatter();
        }
    }

    /** Takes what the fits show; whether they were made with it already. Which readings are left out depends on it. */
    private boolean settledOn(Repeatability shown) {
        boolean settled = Math.abs(shown.scatterDeg() / repeatability.scatterDeg() - 1) < SETTLED_RATIO;
        repeatability = shown;
        return settled;
    }

    private void fitAll() {
        fits.clear();
        messages.clear();
        book.clubs().forEach(this::fit);
    }

    private void warnOfScatter() {
        messages.add(Message.warning(
                book.readings().get(0).cell(),
                "the readings scatter more than those of a usual gauge, which repeats to "
                        + Numbers.trimmed(Repeatability.USUAL_DEG) + " degrees: this one repeats to "
                        + repeatability.inWords() + ". Clamp the clubs alike and read again, or find the cause"));
    }

    Book book() {
        return book;
    }

    /** How well the gauge repeats a reading, for the errors of {@link #fits}. */
    public Repeatability repeatability() {
        return repeatability;
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
            GaugedClub found = GaugeFit.fit(club, book.sleeveOf(club), readings, repeatability.scatterDeg());
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
