package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Shot.Measured;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.BallFlight;

/**
 * A golfer made ready for the fit: his carrying clubs with head speeds, plain deliveries and the shots that count.
 *
 * @param golfer the golfer
 * @param clubs his carrying clubs
 * @param speeds his head speeds
 * @param messages what was wrong with shots, and which do not count
 */
record FitInput(Golfer golfer, List<ClubFit> clubs, HeadSpeeds speeds, List<Message> messages) {
    static FitInput of(
            BallFlight flights,
            FitterUnits words,
            Golfer golfer,
            List<Club> bag,
            ToDoubleFunction<Club> todayLoftDeg,
            List<Shot> shots) {
        List<ClubToday> today = bag.stream()
                .filter(club -> club.kind().carries())
                .map(club -> ClubToday.of(club, todayLoftDeg.applyAsDouble(club)))
                .toList();
        ShotSorter sorter = new ShotSorter(new ShotChecks(flights, words), golfer, today);
        List<List<Shot>> good =
                today.stream().map(club -> sorter.good(club, shots)).toList();
        sorter.noteShotsOfNoClub(bag, shots);
        HeadSpeeds speeds = speeds(golfer, today, good);
        List<ClubFit> clubs = new ArrayList<>();
        for (int i = 0; i < today.size(); i++) {
            clubs.add(new ClubFit(today.get(i), ShotMedians.of(good.get(i)), plain(today.get(i), speeds)));
        }
        return new FitInput(golfer, List.copyOf(clubs), speeds, sorter.messages());
    }

    /** Head speeds from the golfer's row, his driver's length and his shots, one list of shots for each club. */
    static HeadSpeeds speeds(Golfer golfer, List<ClubToday> clubs, List<List<Shot>> shots) {
        HeadSpeeds speeds = new HeadSpeeds(golfer.speeds(), driver(clubs));
        for (int i = 0; i < clubs.size(); i++) {
            ClubToday club = clubs.get(i);
            OptionalDouble speed = ShotMedians.median(shots.get(i), Measured::headSpeedMps);
            speed.ifPresent(mps -> speeds.measured(club, mps));
        }
        speeds.holdStated(golfer.speeds());
        return speeds;
    }

    /** How a plain amateur with these head speeds brings the club to the ball. */
    static Delivery plain(ClubToday club, HeadSpeeds speeds) {
        return new Delivery(
                speeds.atMps(club),
                DeliveryDefaults.attackDeg(club.kind(), club.loftDeg()),
                DeliveryDefaults.offsetDeg(club.kind(), club.loftDeg(), speeds.driverMps()),
                DeliveryDefaults.efficiencyRatio(club.kind()),
                1,
                1);
    }

    private static Optional<ClubToday> driver(List<ClubToday> clubs) {
        return clubs.stream().filter(club -> club.kind() == ClubKind.DRIVER).findFirst();
    }
}
