package org.bagwright.flight.golfer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.session.ClubSession;
import org.bagwright.domain.session.Forecast;
import org.bagwright.flight.GolferBall;
import org.bagwright.flight.learning.DayForecast;
import org.bagwright.flight.learning.Learning;
import org.bagwright.flight.learning.ModelledClub;
import org.bagwright.flight.learning.ShotGroup;

/** The days on which a golfer hit shots: each is predicted from the shots of the days before it alone. */
final class GolferSessions {
    /** Shots of no stated day come before all others. */
    private static final Comparator<Optional<LocalDate>> IN_ORDER =
            Comparator.comparing(date -> date.orElse(LocalDate.MIN));

    private final GolferBall air;
    private final FitterUnits words;
    private final FitInput input;
    private final SetUps setUps;
    private final double ballShare;

    /**
     * @param air flights in the air of the book
     * @param input his clubs and shots
     * @param setUps what his set-ups present
     * @param ballShare how much of his ball is expected to be that of Smits and Smith, 0 or 1
     */
    GolferSessions(GolferBall air, FitterUnits words, FitInput input, SetUps setUps, double ballShare) {
        this.air = air;
        this.words = words;
        this.input = input;
        this.setUps = setUps;
        this.ballShare = ballShare;
    }

    /** All sessions by club, those of one club by day; none where no shot has a date. */
    List<ClubSession> all() {
        List<Optional<LocalDate>> days = input.shots().stream()
                .flatMap(List::stream)
                .map(shot -> shot.series().date())
                .distinct()
                .sorted(IN_ORDER)
                .toList();
        if (days.stream().allMatch(Optional::isEmpty)) {
            return List.of();
        }
        List<Club> clubs = input.clubs().stream().map(fit -> fit.today().club()).toList();
        return days.parallelStream()
                .flatMap(day -> on(day).stream())
                .sorted(Comparator.comparing(session -> clubs.indexOf(session.club())))
                .toList();
    }

    private List<ClubSession> on(Optional<LocalDate> day) {
        FitInput before = input.of(words, shot -> IN_ORDER.compare(shot.series().date(), day) < 0);
        List<List<Shot>> shots =
                input.of(words, shot -> shot.series().date().equals(day)).shots();
        BagModel bag = new BagModel(before, setUps, ballShare, shots);
        List<Optional<Forecast>> forecasts = bag.groups().isEmpty()
                ? bag.asked().stream().map(any -> Optional.<Forecast>empty()).toList()
                : new DayForecast(new Learning(air, bag.clubs(), bag.unknowns(), bag.groups()), bag.asked())
                        .forecasts();
        List<ClubSession> sessions = new ArrayList<>();
        for (int index = 0; index < forecasts.size(); index++) {
            sessions.add(session(bag, bag.asked().get(index), forecasts.get(index)));
        }
        return sessions;
    }

    private ClubSession session(BagModel bag, ShotGroup group, Optional<Forecast> forecast) {
        Shot first = group.shots().get(0);
        ModelledClub hit = bag.clubs().get(group.club());
        Club club = hit.club().club();
        boolean asToday = bag.places().get(club) == group.club();
        return new ClubSession(
                club,
                first.series().date(),
                first.setup().on(club.today()),
                asToday ? OptionalDouble.empty() : OptionalDouble.of(hit.club().lengthM()),
                group.shots(),
                forecast);
    }
}
