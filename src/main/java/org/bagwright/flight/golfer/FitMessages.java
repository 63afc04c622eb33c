package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.BallStart;
import org.bagwright.flight.GolferBall;
import org.bagwright.flight.Launch;
import org.bagwright.flight.learning.ShotGroup;

/** What a fitter should know of a fit, in plain words. */
final class FitMessages {
    /** A shot of a smaller weight is named. */
    private static final double LITTLE = 0.25;

    /** Carry over that of its launch, off that of the other clubs; of few clubs none can be told. Assumed. */
    private static final double MOST_CARRY_OFF_RATIO = 0.065;

    private static final int FEWEST_FLOWN = 3;

    private final FitterUnits words;
    private final BallModelKind model;
    private final GolferBall ball;
    private final FitInput input;
    private final List<ShotGroup> groups;
    private final boolean speedsDoubted;
    private final Optional<Message> carryUnits;
    private final List<Message> messages = new ArrayList<>();

    /**
     * @param model the ball model of the book
     * @param learned the golfer, with what each of his shots counts
     * @param published the ball of Bearman and Harvey in the air of the book
     */
    FitMessages(FitterUnits words, BallModelKind model, LearnedGolfer learned, GolferBall published, FitInput input) {
        this.words = words;
        this.model = model;
        this.ball = learned.ball();
        this.groups = learned.groups();
        this.input = input;
        this.speedsDoubted = !input.stated().messages().isEmpty();
        this.carryUnits = new CarryUnits(words, published, input).message();
    }

    List<Message> all() {
        messages.addAll(input.stated().messages());
        carryUnits.ifPresent(messages::add);
        messages.addAll(input.messages());
        groups.forEach(this::noteFarShots);
        noteSpeeds();
        new StrayHeadSpeeds(words, input.clubs(), input.shots()).message().ifPresent(messages::add);
        messages.addAll(new StatedLofts(input).messages());
        input.clubs().forEach(this::noteUnusual);
        input.clubs().forEach(club -> messages.addAll(new AssumedParts(words, club, input.clubs()).messages()));
        noteExtension();
        return messages;
    }

    private void noteSpeeds() {
        Golfer golfer = input.golfer();
        OptionalDouble driver = golfer.speeds().driverMps();
        OptionalDouble iron = golfer.speeds().ironMps();
        if (driver.isEmpty() && !measured(true) && !input.clubs().isEmpty()) {
            noteAssumedSpeed(
                    "Driver speed",
                    "Driver speed is not given, so it is assumed: ",
                    input.plain().speeds().driverMps());
        }
        if (iron.isEmpty() && !measured(false) && !input.clubs().isEmpty()) {
            noteAssumedSpeed(
                    "Iron speed",
                    "Iron speed is not given: 0.8 of the driver speed is assumed with a 7 iron: ",
                    input.plain().speeds().ironMps());
        }
        if (driver.isPresent() && iron.isPresent() && !speedsDoubted) {
            noteSpeedRatio(iron.getAsDouble() / driver.getAsDouble());
        }
    }

    private void noteAssumedSpeed(String column, String lead, double speedMps) {
        Golfer golfer = input.golfer();
        messages.add(Message.assumed(golfer.cell(), Wording.ofGolfer(lead, golfer.name(), words.speed(speedMps), "."))
                .in(column));
    }

    private boolean measured(boolean withDriver) {
        return input.clubs().stream()
                .filter(club -> (club.today().kind() == ClubKind.DRIVER) == withDriver)
                .anyMatch(club -> club.shots().headSpeedMps().isPresent()
                        || club.shots().ballSpeedMps().isPresent());
    }

    private void noteSpeedRatio(double ratio) {
        if (ratio < 0.65 || ratio > 0.95) {
            messages.add(Message.warning(
                            input.golfer().cell(),
                            "Iron speed is " + percent(ratio)
                                    + " of driver speed; usual is 75 to 85 %. Maybe one of them is in another unit or of"
                                    + " another club.")
                    .in("Iron speed"));
        }
    }

    /** Names the shots that count little; a shot that is alone was judged by what is known without it. */
    private void noteFarShots(ShotGroup group) {
        String from = group.shots().size() == 1
                ? "what the golfer's row and other clubs tell"
                : "the other shots with the same club";
        for (int i = 0; i < group.shots().size(); i++) {
            if (group.weights()[i] < LITTLE) {
                Shot shot = group.shots().get(i);
                String lead = "Far from " + from + ", so it counts little: ";
                messages.add(Message.warning(shot.cell(), Wording.ofClub(lead, shot.golfer(), shot.club(), "", ".")));
            }
        }
    }

    private void noteUnusual(ClubFit club) {
        noteBallSpeed(club);
        noteLoft(club);
        noteRatio(
                club,
                OptionalDouble.of(club.delivery().spinRatio() / club.plain().spinRatio()),
                0.6,
                1.6,
                "Spin far from what its launch predicts: ");
        if (carryUnits.isEmpty()) {
            noteCarry(club);
        }
    }

    private void noteCarry(ClubFit club) {
        double ratio = carryRatio(club).orElse(1);
        List<ClubFit> flown = input.clubs().stream()
                .filter(other -> carryRatio(other).isPresent())
                .toList();
        boolean known = flown.contains(club) && flown.size() > FEWEST_FLOWN;
        double offRatio =
                known ? new OtherClubs(flown, other -> carryRatio(other).orElseThrow()).offRatio(club) : 0;
        if (ratio < 0.915 || ratio > 1.085 || Math.abs(offRatio) > MOST_CARRY_OFF_RATIO) {
            warn(
                    club,
                    "Carry far from what its launch and the golfer's other shots predict: ",
                    percent(Math.abs(offRatio) > Math.abs(ratio - 1) ? 1 + offRatio : ratio) + " of it");
        }
    }

    private void noteBallSpeed(ClubFit club) {
        double efficiency = club.delivery().efficiencyRatio() / club.plain().efficiencyRatio();
        boolean doubted = speedsDoubted && club.shots().headSpeedMps().isEmpty();
        if (!doubted && (efficiency < 0.85 || efficiency > 1.12)) {
            warn(
                    club,
                    "Ball speed of the shots far from what the head speed gives: ",
                    percent(efficiency) + " of it at head speed "
                            + words.speed(club.delivery().headSpeedMps()));
        }
    }

    private void noteLoft(ClubFit club) {
        double offsetDeg = club.delivery().offsetDeg();
        double plainDeg = club.plain().offsetDeg();
        if (Math.abs(offsetDeg - plainDeg) > 8) {
            double presentedDeg = club.hit().loftDeg();
            warn(
                    club,
                    "Launch far from what the loft gives: ",
                    "needs a delivered loft of " + FitterUnits.angle(presentedDeg + offsetDeg) + ", "
                            + FitterUnits.angle(presentedDeg + plainDeg) + " is usual");
        }
    }

    /** The measured carry over that of the golfer's ball from the measured launch. */
    private OptionalDouble carryRatio(ClubFit club) {
        ShotMedians shots = club.shots();
        if (!shots.fullLaunch() || shots.carryM().isEmpty()) {
            return OptionalDouble.empty();
        }
        Launch launch = new Launch(
                shots.ballSpeedMps().getAsDouble(),
                shots.launchDeg().getAsDouble(),
                shots.spinRpm().getAsDouble());
        return OptionalDouble.of(
                shots.carryM().getAsDouble() / ball.fly(BallStart.of(launch)).carryM());
    }

    private void noteRatio(ClubFit club, OptionalDouble told, double least, double most, String lead) {
        double ratio = told.orElse(1);
        if (ratio < least || ratio > most) {
            warn(club, lead, percent(ratio) + " of it");
        }
    }

    private void noteExtension() {
        String range = model == BallModelKind.BEARMAN_HARVEY ? "2000 to 6000 rpm" : "driver shots";
        String lead =
                "The ball model " + model.label() + " was measured for " + range + "; it is extended beyond that for ";
        input.clubs().stream()
                .filter(club -> ball.leansOnExtension(club.todayLaunch()))
                .map(club -> Message.assumed(club.today().club().cell(), wording(club, lead, "")))
                .forEach(messages::add);
    }

    private void warn(ClubFit club, String lead, String detail) {
        messages.add(Message.warning(club.today().club().cell(), wording(club, lead, detail)));
    }

    private Wording wording(ClubFit club, String lead, String detail) {
        return Wording.ofClub(lead, input.golfer().name(), club.name(), detail, ".");
    }

    private static String percent(double ratio) {
        return Math.round(100 * ratio) + " %";
    }
}
