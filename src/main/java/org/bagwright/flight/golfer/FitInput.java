package org.bagwright.flight.golfer;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.learning.ClubToday;

/**
 * A golfer made ready for the fit: his carrying clubs with head speeds, plain deliveries and the shots that count.
 *
 * @param golfer the golfer
 * @param clubs his carrying clubs
 * @param shots the shots that count, one list for each club
 * @param plain what is usual of such a golfer
 * @param stated the head speeds of his row against his shots
 * @param messages what was wrong with shots, and which do not count
 */
record FitInput(
        Golfer golfer,
        List<ClubFit> clubs,
        List<List<Shot>> shots,
        PlainGolfer plain,
        StatedSpeeds stated,
        List<Message> messages) {
    static FitInput of(
            BallFlight flights, FitterUnits words, Golfer golfer, List<Club> bag, SetUps setUps, List<Shot> shots) {
        List<ClubToday> today = ClubToday.bag(bag, club -> setUps.presentedLoftDeg(club, club.today()));
        List<List<Shot>> all = today.stream()
                .map(club -> shots.stream()
                        .filter(shot -> shot.club().equalsIgnoreCase(club.club().name()))
                        .toList())
                .toList();
        StatedSpeeds stated = new StatedSpeeds(words, golfer, today, all);
        ShotSorter sorter = new ShotSorter(new ShotChecks(flights, words), stated, setUps);
        List<List<Shot>> good = IntStream.range(0, today.size())
                .mapToObj(index -> sorter.good(today.get(index), all.get(index)))
                .toList();
        sorter.noteShotsOfNoClub(bag, shots);
        PlainGolfer plain = PlainGolfer.of(stated.likely(), today);
        List<ClubFit> clubs = IntStream.range(0, today.size())
                .mapToObj(i -> fit(today.get(i), good.get(i), plain, setUps))
                .toList();
        return new FitInput(golfer, clubs, good, plain, stated, sorter.messages());
    }

    /** The same golfer as some of his shots alone show him. */
    FitInput of(FitterUnits words, Predicate<Shot> some) {
        List<List<Shot>> left = shots.stream()
                .map(ofClub -> ofClub.stream().filter(some).toList())
                .toList();
        List<ClubToday> today = clubs.stream().map(ClubFit::today).toList();
        StatedSpeeds byThese = new StatedSpeeds(words, golfer, today, left);
        return new FitInput(golfer, clubs, left, PlainGolfer.of(byThese.likely(), today), byThese, List.of());
    }

    private static ClubFit fit(ClubToday today, List<Shot> shots, PlainGolfer plain, SetUps setUps) {
        double loftDeg = shots.stream()
                .mapToDouble(shot -> setUps.presentedLoftDeg(
                        today.club(), shot.setup().on(today.club().today())))
                .average()
                .orElse(today.loftDeg());
        ClubToday hit = today.presenting(loftDeg);
        return new ClubFit(today, hit, ShotMedians.of(shots), plain.delivery(hit));
    }
}
