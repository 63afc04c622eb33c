package org.bagwright.planning;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.Book;
import org.bagwright.domain.Club;
import org.bagwright.domain.Correction;
import org.bagwright.domain.Correction.ClubRow;
import org.bagwright.domain.Correction.Item;
import org.bagwright.domain.Message;
import org.bagwright.domain.Sleeve;
import org.bagwright.domain.StatedHead;
import org.bagwright.geometry.Estimate;
import org.bagwright.geometry.FittedClub;
import org.bagwright.planning.BookFits.ClubFit;

/**
 * The numbers that a book should state after its gauge readings, to a hundredth of a degree or an hour. What the readings
 * do not tell stays as it is stated.
 */
final class Corrections {
    private final Book book;
    private final List<Correction> all = new ArrayList<>();
    private final List<Message> messages = new ArrayList<>();
    private final Map<String, Sleeve> correctedSleeves = new LinkedHashMap<>();

    Corrections(BookFits fits) {
        this.book = fits.book();
        List<Correction> ofSleeves = new ArrayList<>();
        book.sleeves().forEach(sleeve -> ofSleeves.addAll(sleeve(sleeve, fits)));
        fits.fits().forEach(this::club);
        all.addAll(ofSleeves);
    }

    /** All corrections: clubs first, then sleeves, each in the order of the book. */
    List<Correction> all() {
        return all;
    }

    List<Message> messages() {
        return messages;
    }

    static double rounded(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).doubleValue() + 0.0;
    }

    /** The readings of a club in words. */
    static String source(ClubFit fit) {
        long used = fit.used();
        long out = fit.found().readings().size() - used;
        return used
                + (used == 1 ? " reading of " : " readings of ")
                + fit.club().name()
                + (out == 0 ? "" : " (" + out + " left out)");
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
                                + " and no readings of its own: what they show of the sleeve counts for it too")));
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
            boolean lieMoves = !found.designLie().held() && rounded(head.lieDeg()) != rounded(stated.lieDeg());
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
        if (club.golferLieDeg().isEmpty() && club.targets().lieDeg().isEmpty()) {
            messages.add(Message.assumed(
                    club.cell(),
                    "the book gives no golfer's lie for " + club.name()
                            + ", so it is the club's own lie and moves with it: fill in Golfer lie to fix it"));
        }
    }

    private void add(ClubFit fit, Item item, Estimate design, Estimate read, double valueDeg, double statedDeg) {
        if (!design.held()) {
            all.add(new Correction(
                    new ClubRow(fit.club().cell()),
                    item,
                    rounded(valueDeg),
                    read.standardErrorMeasureUnits().orElseThrow(),
                    statedDeg,
                    "From " + source(fit)));
        }
    }
}
