package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;

/** Sorts a golfer's shots into those that count for a club and those that do not, and says why. */
final class ShotSorter {
    private final ShotChecks checks;
    private final Golfer.HeadSpeeds stated;
    private final PlainGolfer plain;
    private final SetUps setUps;
    private final List<Message> messages = new ArrayList<>();

    /**
     * @param stated what his row states, against his shots
     * @param setUps what the set-ups of his clubs present
     */
    ShotSorter(ShotChecks checks, StatedSpeeds stated, SetUps setUps) {
        this.checks = checks;
        this.stated = stated.credible();
        this.plain = PlainGolfer.of(stated.likely(), stated.clubs());
        this.setUps = setUps;
    }

    List<Message> messages() {
        return messages;
    }

    /** The shots with this club that are possible, flew, and belong with the others. */
    List<Shot> good(ClubToday club, List<Shot> shotsWithIt) {
        List<Shot> flown = shotsWithIt.stream().filter(this::flew).toList();
        ClubShots usable = new ClubShots(
                flown.stream().filter(shot -> possible(shot, club)).toList());
        usable.stray().forEach(shot -> warn(shot, "Far from the other shots with the same club, so not counted: ", ""));
        usable.disagreement().ifPresent(what -> warnOfTwo(usable.shots(), what));
        List<Shot> good = usable.withoutStray();
        if (good.isEmpty() && !flown.isEmpty()) {
            messages.add(Message.warning(
                    club.club().cell(),
                    Wording.ofClub(
                            "Planned without shots, since none with these clubs counts: ",
                            club.club().golfer(),
                            club.club().name(),
                            "",
                            ".")));
        }
        return good;
    }

    private void warnOfTwo(List<Shot> two, String what) {
        Shot first = two.get(0);
        String lead = "The two shots with a club differ much, and their mean is used: ";
        Wording wording =
                Wording.ofClub(lead, first.golfer(), first.club(), what, ". Maybe one is mistyped; hit a third.");
        messages.add(Message.warning(first.cell(), wording)
                .at(two.stream().map(Shot::cell).toList())
                .in(Character.toUpperCase(what.charAt(0)) + what.substring(1)));
    }

    private void warn(Shot shot, String lead, String detail) {
        messages.add(Message.warning(shot.cell(), Wording.ofClub(lead, shot.golfer(), shot.club(), detail, ".")));
    }

    /** Warns of shots with a putter or with a club that the bag does not hold. */
    void noteShotsOfNoClub(List<Club> bag, List<Shot> shots) {
        for (Shot shot : shots) {
            boolean carries = bag.stream()
                    .anyMatch(club -> club.kind().carries() && club.name().equalsIgnoreCase(shot.club()));
            if (!carries) {
                warn(shot, "Shots that do not count, since the bag has no such club that flies a ball: ", "");
            }
        }
    }

    private boolean flew(Shot shot) {
        boolean flew = shot.measured().launchDeg().orElse(1) > 0;
        if (!flew) {
            warn(
                    shot,
                    "Never rose, so not counted: ",
                    "launch " + FitterUnits.angle(shot.measured().launchDeg().getAsDouble()));
        }
        return flew;
    }

    /** The club as it was set up. */
    private ClubToday hit(ClubToday club, Shot shot) {
        return club.presenting(setUps.presentedLoftDeg(
                club.club(), shot.setup().on(club.club().today())));
    }

    private boolean possible(Shot shot, ClubToday club) {
        OptionalDouble own = shot.measured().headSpeedMps();
        OptionalDouble known = own.isEmpty() && club.kind() == ClubKind.DRIVER ? stated.driverMps() : own;
        Optional<Message> fault = checks.fault(new ShotChecks.Hit(shot, hit(club, shot), plain.delivery(club.stated()), known));
        fault.ifPresent(messages::add);
        return fault.isEmpty();
    }
}
