package org.bagwright.flight.golfer;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Wording;

/**
 * Head speeds of shots that are off what the golfer's other clubs lead one to expect at this length, while the ball tells that
 * the head was not faster or slower: its speed over that of the head is off to the other side. Head speed grows evenly with
 * length, within a few percent (Kenny, Wallace and Otto 2008: about 1 mph an inch). The limits are assumed.
 *
 * @param clubs all clubs of a golfer with shots
 * @param shots the shots of each
 */
record StrayHeadSpeeds(FitterUnits words, List<ClubFit> clubs, List<List<Shot>> shots) {
    private static final double MOST_OFF_RATIO = 0.07;
    private static final double MOST_SMASH_OFF_RATIO = 0.06;
    private static final int FEWEST_OTHERS = 2;

    /** One message for the club that is farthest off; the others are judged with its figure in their midst. */
    Optional<Message> message() {
        List<ClubFit> measured = clubs.stream()
                .filter(club -> club.shots().headSpeedMps().isPresent()
                        && club.shots().ballSpeedMps().isPresent())
                .toList();
        if (measured.size() <= FEWEST_OTHERS) {
            return Optional.empty();
        }
        return measured.stream()
                .filter(club -> isStray(club, measured))
                .max((one, two) -> Double.compare(Math.abs(speedOff(one, measured)), Math.abs(speedOff(two, measured))))
                .map(club -> message(club, measured));
    }

    private static boolean isStray(ClubFit club, List<ClubFit> measured) {
        double speed = speedOff(club, measured);
        double smash = new OtherClubs(measured, StrayHeadSpeeds::smashRatio).offRatio(club);
        return speed * smash < 0 && Math.abs(speed) > MOST_OFF_RATIO && Math.abs(smash) > MOST_SMASH_OFF_RATIO;
    }

    private static double speedOff(ClubFit club, List<ClubFit> measured) {
        return new OtherClubs(measured, StrayHeadSpeeds::speedRatio).offRatio(club);
    }

    private static double speedRatio(ClubFit club) {
        return club.shots().headSpeedMps().getAsDouble() / club.plain().headSpeedMps();
    }

    private static double smashRatio(ClubFit club) {
        return club.delivery().efficiencyRatio() / club.plain().efficiencyRatio();
    }

    private Message message(ClubFit club, List<ClubFit> measured) {
        double headMps = club.shots().headSpeedMps().getAsDouble();
        double usualMps = headMps / (1 + speedOff(club, measured));
        List<String> cells = shots.get(clubs.indexOf(club)).stream()
                .filter(shot -> shot.measured().headSpeedMps().isPresent())
                .map(Shot::cell)
                .toList();
        String detail =
                words.speed(headMps) + ", about " + words.speed(usualMps) + " by his other clubs and its ball speed";
        Wording wording = Wording.ofClub(
                "Head speed that does not fit the golfer's other clubs: ",
                club.today().club().golfer(),
                club.name(),
                detail,
                ". Maybe it is mistyped.");
        return Message.warning(cells.get(0), wording).at(cells).in("Head speed");
    }
}
