package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;

/** Sorts a golfer's shots into those that count for a club and those that do not, and says why. */
final class ShotSorter {
    private final ShotChecks checks;
    private final Golfer golfer;
    private final PlainGolfer plain;
    private final List<Message> messages = new ArrayList<>();

    ShotSorter(ShotChecks checks, Golfer golfer, List<ClubToday> clubs) {
        this.checks = checks;
        this.golfer = golfer;
        this.plain = new PlainGolfer(HeadSpeeds.of(
                golfer, clubs, clubs.stream().map(club -> List.<Shot>of()).toList()));
    }

    List<Message> messages() {
        return messages;
    }

    /** The shots with this club that are possible, flew, and belong with the others. */
    List<Shot> good(ClubToday club, List<Shot> shots) {
        ClubShots usable = new ClubShots(shots.stream()
                .filter(shot -> shot.club().equalsIgnoreCase(club.club().name()))
                .filter(this::flew)
                .filter(shot -> possible(shot, club))
                .toList());
        usable.stray()
                .forEach(shot -> messages.add(Message.warning(
                        shot.cell(), "This shot is far from the others with " + shot.club() + " and does not count.")));
        return usable.withoutStray();
    }

    /** Warns of shots with a putter or with a club that the bag does not hold. */
    void noteShotsOfNoClub(List<Club> bag, List<Shot> shots) {
        for (Shot shot : shots) {
            boolean carries = bag.stream()
                    .anyMatch(club -> club.kind().carries() && club.name().equalsIgnoreCase(shot.club()));
            if (!carries) {
                messages.add(Message.warning(
                        shot.cell(),
                        "This shot does not count: the bag has no " + shot.club() + " that flies a ball."));
            }
        }
    }

    private boolean flew(Shot shot) {
        boolean flew = shot.measured().launchDeg().orElse(1) > 0;
        if (!flew) {
            messages.add(Message.warning(
                    shot.cell(),
                    "This shot does not count: it never rose, at launch "
                            + FitterUnits.angle(shot.measured().launchDeg().getAsDouble()) + "."));
        }
        return flew;
    }

    private boolean possible(Shot shot, ClubToday club) {
        OptionalDouble stated = club.kind() == ClubKind.DRIVER ? golfer.speeds().driverMps() : OptionalDouble.empty();
        OptionalDouble known =
                shot.measured().headSpeedMps().isPresent() ? shot.measured().headSpeedMps() : stated;
        List<Message> problems = checks.problems(shot, club, plain.delivery(club), known);
        messages.addAll(problems);
        return problems.isEmpty();
    }
}
