package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Club;
import org.bagwright.flight.golfer.ClubFit.Part;

/** What the flight of one club takes from elsewhere than the book and its own shots, one message for each cause. */
final class AssumedParts {
    private final FitterUnits words;
    private final ClubFit club;
    private final List<Message> messages = new ArrayList<>();

    AssumedParts(FitterUnits words, ClubFit club) {
        this.words = words;
        this.club = club;
        addUnstated();
        addPlain();
        addBorrowed();
    }

    List<Message> messages() {
        return messages;
    }

    private Message assumed(String lead, String detail) {
        Club stated = club.today().club();
        return Message.assumed(stated.cell(), Wording.ofClub(lead, stated.golfer(), stated.name(), detail, "."));
    }

    private void addUnstated() {
        Club stated = club.today().club();
        if (stated.parts().lengthM().isEmpty() && !club.shots().fullLaunch()) {
            messages.add(assumed(
                            "Length is blank, so it is assumed for the flight: ",
                            words.length(club.today().lengthM()))
                    .in("Length"));
        }
        if (stated.form().massKg().isEmpty() && club.shots().ballSpeedMps().isEmpty()) {
            String mass = Math.round(1000 * club.today().headMassKg()) + " g";
            messages.add(assumed("Head mass is blank, so it is assumed for the flight: ", mass)
                    .in("Head mass"));
        }
        if (club.shots().attackDeg().isEmpty() && !club.borrows(Part.ATTACK)) {
            messages.add(assumed(
                    "Attack is not measured, so the path of the head is assumed: ",
                    FitterUnits.angle(club.delivery().attackDeg())));
        }
    }

    /** The parts that neither its own shots nor another club's give. */
    private void addPlain() {
        List<String> parts = new ArrayList<>();
        if (club.shots().launchDeg().isEmpty() && !club.borrows(Part.LOFT)) {
            double deliveredDeg = club.today().loftDeg() + club.delivery().offsetDeg();
            parts.add("delivered loft " + FitterUnits.angle(deliveredDeg));
        }
        if (club.shots().spinRpm().isEmpty() && !club.borrows(Part.SPIN)) {
            parts.add("spin " + FitterUnits.spin(club.todayLaunch().spinRpm()));
        }
        boolean known =
                club.shots().ballSpeedMps().isPresent() || club.shots().carryM().isPresent();
        if (!known && !club.borrows(Part.BALL_SPEED)) {
            parts.add("ball speed " + words.speed(club.todayLaunch().ballSpeedMps()));
        }
        if (!parts.isEmpty()) {
            messages.add(assumed("No shot tells how the ball leaves, so it is assumed: ", String.join(", ", parts)));
        }
    }

    private void addBorrowed() {
        List<Part> borrowed = new ArrayList<>();
        for (Part part : Part.values()) {
            if (club.borrows(part)
                    && !(part == Part.CARRY && club.shots().carryM().isPresent())) {
                borrowed.add(part);
            }
        }
        List<String> parts = borrowed.stream()
                .map(club::lenders)
                .distinct()
                .map(lenders -> {
                    List<String> labels = borrowed.stream()
                            .filter(part -> club.lenders(part).equals(lenders))
                            .map(Part::label)
                            .toList();
                    return FitterUnits.list(labels) + " borrowed from " + FitterUnits.list(lenders);
                })
                .toList();
        if (!parts.isEmpty()) {
            messages.add(assumed(
                    "Its own shots do not tell all, so the clubs next to it lend it: ", String.join("; ", parts)));
        }
    }
}
