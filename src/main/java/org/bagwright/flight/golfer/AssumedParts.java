package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.club.Club;
import org.bagwright.flight.golfer.ClubFit.Part;

/** What the flight of one club takes from elsewhere than the book and its own shots, in plain words. */
final class AssumedParts {
    private final FitterUnits words;
    private final ClubFit club;
    private final List<String> parts = new ArrayList<>();

    AssumedParts(FitterUnits words, ClubFit club) {
        this.words = words;
        this.club = club;
        addUnstated();
        addPlain();
        addBorrowed();
    }

    List<String> inWords() {
        return parts;
    }

    private void addUnstated() {
        Club stated = club.today().club();
        if (stated.parts().lengthM().isEmpty() && !club.shots().fullLaunch()) {
            parts.add("length " + words.length(club.today().lengthM()));
        }
        if (stated.form().massKg().isEmpty() && club.shots().ballSpeedMps().isEmpty()) {
            parts.add("head mass " + Math.round(1000 * club.today().headMassKg()) + " g");
        }
        if (club.shots().attackDeg().isEmpty() && !club.borrows(Part.ATTACK)) {
            parts.add("path of the head " + FitterUnits.angle(club.delivery().attackDeg()));
        }
    }

    /** The parts that neither its own shots nor another club's give. */
    private void addPlain() {
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
    }

    private void addBorrowed() {
        List<Part> borrowed = new ArrayList<>();
        for (Part part : Part.values()) {
            if (club.borrows(part)
                    && !(part == Part.CARRY && club.shots().carryM().isPresent())) {
                borrowed.add(part);
            }
        }
        borrowed.stream().map(club::lenders).distinct().forEach(lenders -> {
            List<String> labels = borrowed.stream()
                    .filter(part -> club.lenders(part).equals(lenders))
                    .map(Part::label)
                    .toList();
            parts.add(FitterUnits.list(labels) + " borrowed from " + FitterUnits.list(lenders));
        });
    }
}
