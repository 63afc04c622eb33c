package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Club;

/** What the flight of one club takes from elsewhere than the book and its own shots, one message for each cause. */
final class AssumedParts {
    /** What shots tell of a blow. */
    private enum Part {
        LOFT("delivered loft", shots -> shots.launchDeg().isPresent()),
        SPIN("spin", shots -> shots.spinRpm().isPresent()),
        BALL_SPEED(
                "ball speed",
                shots -> shots.ballSpeedMps().isPresent() || shots.carryM().isPresent());

        private final String label;
        private final Predicate<ShotMedians> told;

        Part(String label, Predicate<ShotMedians> told) {
            this.label = label;
            this.told = told;
        }
    }

    private final FitterUnits words;
    private final ClubFit club;
    private final List<ClubFit> all;
    private final List<Message> messages = new ArrayList<>();

    /**
     * @param club the club
     * @param all all clubs of the golfer
     */
    AssumedParts(FitterUnits words, ClubFit club, List<ClubFit> all) {
        this.words = words;
        this.club = club;
        this.all = all;
        addUnstated();
        addUntold();
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
        if (club.shots().attackDeg().isEmpty()) {
            messages.add(assumed(
                    "Attack is not measured, so the path of the head is assumed: ",
                    FitterUnits.angle(club.delivery().attackDeg())));
        }
    }

    /** What its own shots do not tell is judged by other clubs where they tell it, else it is what is usual. */
    private void addUntold() {
        List<String> usual = new ArrayList<>();
        List<String> byOthers = new ArrayList<>();
        Map<Part, String> values = values();
        Arrays.stream(Part.values())
                .filter(part -> !part.told.test(club.shots()))
                .forEach(part -> {
                    boolean told = all.stream().anyMatch(other -> part.told.test(other.shots()));
                    (told ? byOthers : usual).add(told ? part.label : part.label + " " + values.get(part));
                });
        if (!usual.isEmpty()) {
            messages.add(assumed("No shot tells how the ball leaves, so it is assumed: ", String.join(", ", usual)));
        }
        if (!byOthers.isEmpty()) {
            messages.add(assumed(
                    "Its own shots do not tell all, so the shots with the other clubs tell the rest: ",
                    FitterUnits.list(byOthers)));
        }
    }

    private Map<Part, String> values() {
        double deliveredDeg = club.hit().loftDeg() + club.delivery().offsetDeg();
        Map<Part, String> values = new EnumMap<>(Part.class);
        values.put(Part.LOFT, FitterUnits.angle(deliveredDeg));
        values.put(Part.SPIN, FitterUnits.spin(club.todayLaunch().spinRpm()));
        values.put(Part.BALL_SPEED, words.speed(club.todayLaunch().ballSpeedMps()));
        return values;
    }
}
