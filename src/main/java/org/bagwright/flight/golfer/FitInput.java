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
 * @param shots the shots that count, one list for each club
 * @param speeds his head speeds
 * @param stated the head speeds of his row against his shots
 * @param messages what was wrong with shots, and which do not count
 */
record FitInput(
        Golfer golfer,
        List<ClubFit> clubs,
        List<List<Shot>> shots,
        HeadSpeeds speeds,
        StatedSpeeds stated,
        List<Message> messages) {
    static FitInput of(
            BallFlight flights,
            FitterUnits words,
            Golfer golfer,
            List<Club> bag,
            ToDoubleFunction<Club> todayLoftDeg,
            List<Shot> shots) {
        List<ClubToday> today = ClubToday.bag(bag, todayLoftDeg);
        List<List<Shot>> all = today.stream()
                .map(club -> shots.stream()
                        .filter(shot -> shot.club().equalsIgnoreCase(club.club().name()))
                        .toList())
                .toList();
        StatedSpeeds stated = new StatedSpeeds(words, golfer, today, all);
        ShotSorter sorter = new ShotSorter(new ShotChecks(flights, words), stated.credible(), today);
        List<List<Shot>> good = IntStream.range(0, today.size())
                .mapToObj(index -> sorter.good(today.get(index), all.get(index)))
                .toList();
        sorter.noteShotsOfNoClub(bag, shots);
        HeadSpeeds speeds = HeadSpeeds.of(golfer.speeds(), today, good);
        PlainGolfer plain = new PlainGolfer(speeds);
        List<ClubFit> clubs = IntStream.range(0, today.size())
                .mapToObj(i -> new ClubFit(today.get(i), ShotMedians.of(good.get(i)), plain.delivery(today.get(i))))
                .toList();
        return new FitInput(golfer, clubs, good, speeds, stated, sorter.messages());
    }
}
