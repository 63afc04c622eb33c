package org.bagwright.planning.gauge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.StatedHead;
import org.bagwright.domain.gauge.Correction;
import org.bagwright.domain.gauge.Correction.ClubRow;
import org.bagwright.domain.gauge.Correction.Item;
import org.bagwright.domain.gauge.GaugedClub;
import org.bagwright.domain.gauge.GaugedNumber;
import org.bagwright.geometry.GaugeFit;

/**
 * The numbers that a book should state after its gauge readings, to a hundredth of a degree or an hour. What the readings
 * do not tell stays as it is stated.
 */
public final class Corrections {
    private final Book book;
    private final List<Correction> all = new ArrayList<>();
    private final List<Message> messages = new ArrayList<>();
    private final Map<String, Sleeve> correctedSleeves = new LinkedHashMap<>();

    public Corrections(BookFits fits) {
        this.book = fits.book();
        List<Correction> ofSleeves = new ArrayList<>();
        book.sleeves().forEach(sleeve -> ofSleeves.addAll(sleeve(sleeve, fits)));
        fits.fits().forEach(this::club);
        all.addAll(ofSleeves);
    }

    /** All corrections: clubs first, then sleeves, each in the order of the book. */
    public List<Correction> all() {
        return all;
    }

    public List<Message> messages() {
        return messages;
    }

    private List<Correction> sleeve(Sleeve sleeve, BookFits fits) {
        List<GaugedClub> sharing = fits.fits().stream()
                .filter(fit -> book.sleeveOf(fit.club()).equals(Optional.of(sleeve)))
                .toList();
        if (sharing.isEmpty()) {
            return List.of();
        }
        SleeveCorrection correction = new SleeveCorrection(sleeve, sharing);
        correctedSleeves.put(sleeve.name(), correction.corrected());
        messages.addAll(correction.messages());
        if (!correction.corrections().isEmpty()) {
            tellOfOthers(sleeve, sharing);
        }
        return correction.corrections();
    }

    private void tellOfOthers(Sleeve sleeve, List<GaugedClub> sharing) {
        book.clubs().stream()
                .filter(club -> book.sleeveOf(club).equals(Optional.of(sleeve)))
                .filter(club -> sharing.stream().noneMatch(fit -> fit.club().equals(club)))
                .forEach(club -> messages.add(Message.assumed(
                        club.cell(),
                        club.name() + " has the same sleeve " + sleeve.name()
                                + " and no readings of its own: what they show of the sleeve counts for it too")));
    }

    private void club(GaugedClub fit) {
        Club club = fit.club();
        try {
            StatedHead head = GaugeFit.stated(
                    fit, book.sleeveOf(club).map(sleeve -> correctedSleeves.getOrDefault(sleeve.name(), sleeve)));
            StatedHead stated = club.head();
            add(fit, Item.LOFT, fit.design().loft(), fit.gauge().loft(), head.loftDeg(), stated.loftDeg());
            add(fit, Item.LIE, fit.design().lie(), fit.gauge().lie(), head.lieDeg(), stated.lieDeg());
            add(fit, Item.FACE, fit.design().face(), fit.design().face(), head.faceDeg(), stated.faceDeg());
            boolean lieMoves = !fit.design().lie().held()
                    && Correction.rounded(head.lieDeg()) != Correction.rounded(stated.lieDeg());
            if (lieMoves) {
                tellOfGolferLie(club);
            }
        } catch (IllegalArgumentException impossible) {
            messages.add(Message.warning(
                    club.cell(),
                    "the readings of " + club.name() + " give numbers that no club has, so none is used: "
                            + impossible.getMessage()));
        }
    }

    private void tellOfGolferLie(Club club) {
        if (club.targets().golferLieDeg().isEmpty() && club.targets().lieDeg().isEmpty()) {
            messages.add(Message.assumed(
                    club.cell(),
                    "the book gives no golfer's lie for " + club.name()
                            + ", so it is the club's own lie and moves with it: fill in Golfer lie to fix it"));
        }
    }

    private void add(
            GaugedClub fit, Item item, GaugedNumber design, GaugedNumber read, double valueDeg, double statedDeg) {
        if (!design.held()) {
            all.add(new Correction(
                    new ClubRow(fit.club().cell()),
                    item,
                    Correction.rounded(valueDeg),
                    read.standardErrorMeasureUnits().orElseThrow(),
                    statedDeg,
                    "From " + fit.source()));
        }
    }
}
