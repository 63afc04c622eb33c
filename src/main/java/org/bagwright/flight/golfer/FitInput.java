package org.bagwright.flight.golfer;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
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
        HeadSpeeds speeds = HeadSpeeds.of(golfer, today, good);
        PlainGolfer plain = new PlainGolfer(speeds);
        List<ClubFit> clubs = IntStream.range(0, today.size())
                .mapToObj(i -> new ClubFit(today.get(i), ShotMedians.of(good.get(i)), plain.delivery(today.get(i))))
                .toList();
        return new FitInput(golfer, clubs, speeds, sorter.messages());
    }
}
