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
import org.bagwright.geometry.Estimate;
import org.bagwright.geometry.FittedClub;
import org.bagwright.planning.gauge.BookFits.ClubFit;

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
        List<ClubFit> sharing = fits.fits().stream()
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

    private void tellOfOthers(Sleeve sleeve, List<ClubFit> sharing) {
        book.clubs().stream()
                .filter(club -> book.sleeveOf(club).equals(Optional.of(sleeve)))
                .filter(club -> sharing.stream().noneMatch(fit -> fit.club().equals(club)))
                .forEach(club -> messages.add(Message.assumed(
                        club.cell(),
                        club.name() + " has the same sleeve " + sleeve.name()
                                + " and no readings of its own: what is learnt of the sleeve counts for it too")));
    }

    private void club(ClubFit fit) {
        Club club = fit.club();
        FittedClub found = fit.found();
        try {
            StatedHead head = found.stated(
                    club, book.sleeveOf(club).map(sleeve -> correctedSleeves.getOrDefault(sleeve.name(), sleeve)));
            StatedHead stated = club.head();
            add(fit, Item.LOFT, found.designLoft(), found.gaugeLoft(), head.loftDeg(), stated.loftDeg());
            add(fit, Item.LIE, found.designLie(), found.gaugeLie(), head.lieDeg(), stated.lieDeg());
            add(fit, Item.FACE, found.designFace(), found.designFace(), head.faceDeg(), stated.faceDeg());
            boolean lieMoves = !found.designLie().held() && Correction.rounded(head.lieDeg()) != Correction.rounded(stated.lieDeg());
            if (lieMoves) {
                tellOfGolferLie(club);
            }
        } catch (IllegalArgumentException impossible) {
            messages.add(Message.warning(
                    club.cell(),
                    "the readings of " + club.name() + " give numbers that no club has, so none is taken from them: "
                            + impossible.getMessage()));
        }
    }

    private void tellOfGolferLie(Club club) {
        if (club.golferLieDeg().isEmpty() && club.targets().lieDeg().isEmpty()) {
            messages.add(Message.assumed(
                    club.cell(),
                    "the book gives no golfer's lie for " + club.name()
                            + ", so it is the club's own and moves with it: fill in Golfer lie to hold it"));
        }
    }

    private void add(ClubFit fit, Item item, Estimate design, Estimate read, double valueDeg, double statedDeg) {
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
