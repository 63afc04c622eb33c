package org.bagwright.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.gauge.Correction;
import org.bagwright.domain.gauge.Correction.ClubRow;
import org.bagwright.domain.gauge.Correction.Item;
import org.bagwright.domain.gauge.Correction.SettingRow;
import org.bagwright.domain.gauge.Repeatability;
import org.bagwright.domain.text.Numbers;
import org.bagwright.planning.gauge.BookFits;
import org.bagwright.planning.gauge.Corrections;

/** Which clubs of a book state gauged numbers, which stated ones, and where the readings disagree. */
final class GaugeMessages {
    private static final double LEAST_DEG = 0.3;
    private static final double ERRORS = 2;
    private static final double DEG_PER_H = 30;

    private final Book book;
    private final List<Correction> corrections;
    private final List<Message> messages = new ArrayList<>();

    private GaugeMessages(Book book, Corrections corrections) {
        this.book = book;
        this.corrections = corrections.all();
    }

    static List<Message> of(Book book) {
        BookFits fits = new BookFits(book, Repeatability.USUAL);
        GaugeMessages made = new GaugeMessages(book, new Corrections(fits));
        made.messages.addAll(fits.messages());
        if (!fits.fits().isEmpty()) {
            made.messages.add(Message.assumed(
                    "Readings", "the gauge repeats to " + fits.repeatability().inWords()));
        }
        book.clubs().forEach(made::club);
        boolean stated =
                book.clubs().stream().anyMatch(club -> book.readingsOf(club).isEmpty() && !book.isGauged(club));
        if (stated) {
            made.messages.add(Message.assumed("Clubs", "loft and lie as stated for the clubs without readings"));
        }
        made.onTheBore();
        return made.messages;
    }

    /** Easily overlooked: whoever gauges a club reads it with its sleeve at a setting. */
    private void onTheBore() {
        List<Club> blank = book.clubs().stream()
                .filter(club ->
                        club.sleeve().isPresent() && club.head().statedAt().isEmpty())
                .toList();
        if (!blank.isEmpty()) {
            String names = blank.stream().map(Club::name).distinct().collect(Collectors.joining(", "));
            messages.add(Message.assumed(
                    blank.get(0).cell(),
                    "Stated at is blank, so loft and lie count as those of the bore, without the sleeve's bend: "
                            + names + ". If they were read with the sleeve at a setting, enter that setting there"));
        }
    }

    private void club(Club club) {
        boolean read = !book.readingsOf(club).isEmpty();
        List<Correction> own = read ? ofClub(club) : List.of();
        List<Correction> off = own.stream().filter(this::isOff).toList();
        if (!off.isEmpty()) {
            String text = off.stream().map(GaugeMessages::against).distinct().collect(Collectors.joining("; "));
            messages.add(Message.warning(
                    club.cell(), ofClub("Gauged differently than stated, so run gauge --write: ", club, text, "")));
        } else if (book.isGauged(club)) {
            messages.add(Message.assumed(club.cell(), ofClub("", club, "", ": loft and lie as gauged")));
        } else if (read) {
            String told = own.stream()
                    .filter(correction -> correction.place() instanceof ClubRow)
                    .map(correction -> correction.item().label())
                    .collect(Collectors.joining(" and "));
            messages.add(Message.assumed(
                    club.cell(),
                    ofClub(
                            "",
                            club,
                            "",
                            ": loft and lie as stated; "
                                    + (told.isEmpty()
                                            ? "the readings determine neither"
                                            : "the readings agree on " + told))));
        }
    }

    private static Wording ofClub(String lead, Club club, String detail, String tail) {
        return Wording.ofClub(lead, club.golfer(), club.name(), detail, tail);
    }

    private List<Correction> ofClub(Club club) {
        return corrections.stream()
                .filter(correction -> correction.place() instanceof ClubRow row
                        ? row.clubCell().equals(club.cell())
                        : ((SettingRow) correction.place())
                                .sleeve()
                                .equalsIgnoreCase(club.sleeve().orElse("")))
                .toList();
    }

    /** Beyond what the readings allow and what matters; hours of the clock count by the way of the bend. */
    private boolean isOff(Correction correction) {
        double off = Math.abs(difference(correction));
        double offDeg = correction.isClock() ? Math.toRadians(DEG_PER_H * off) * bendDeg(correction) : off;
        return off > ERRORS * correction.standardErrorMeasureUnits() && offDeg > LEAST_DEG;
    }

    private double bendDeg(Correction clock) {
        SettingRow row = (SettingRow) clock.place();
        int ring = clock.item() == Item.CLOCK ? 0 : 1;
        return book.sleeve(row.sleeve())
                .flatMap(sleeve -> sleeve.setting(row.mark()))
                .map(setting -> setting.rings().get(ring).bendDeg())
                .orElse(0.0);
    }

    private static double difference(Correction correction) {
        double off = correction.valueMeasureUnits() - correction.statedMeasureUnits();
        return correction.isClock() ? off - 12 * Math.rint(off / 12) : off;
    }

    private static String against(Correction correction) {
        String where = correction.place() instanceof SettingRow row ? " of sleeve " + row.sleeve() : "";
        if (correction.isClock()) {
            return "gauged marks" + where + " " + Numbers.signed(difference(correction), 1) + " +- " + error(correction)
                    + " hours off";
        }
        return "gauged " + correction.item().label() + where + " "
                + Numbers.fixed(correction.valueMeasureUnits(), 1) + " +- " + error(correction) + " against the stated "
                + Numbers.trimmed(correction.statedMeasureUnits(), 2);
    }

    private static String error(Correction correction) {
        return Numbers.fixed(correction.standardErrorMeasureUnits(), 1);
    }
}
