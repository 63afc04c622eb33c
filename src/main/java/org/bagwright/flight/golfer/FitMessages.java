package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.golfer.ClubFit.Part;

/** What a fitter should know of a fit, in plain words. */
final class FitMessages {
    private final FitterUnits words;
    private final BallFlight flights;
    private final BallModelKind model;
    private final FitInput input;
    private final List<Message> messages = new ArrayList<>();

    FitMessages(FitterUnits words, BallFlight flights, BallModelKind model, FitInput input) {
        this.words = words;
        this.flights = flights;
        this.model = model;
        this.input = input;
    }

    List<Message> all(double dragRatio) {
        messages.addAll(input.messages());
        noteSpeeds();
        noteDrag(dragRatio);
        input.clubs().forEach(this::noteAssumed);
        input.clubs().forEach(this::noteUnusual);
        noteExtension();
        return messages;
    }

    private void noteSpeeds() {
        Golfer golfer = input.golfer();
        OptionalDouble driver = golfer.speeds().driverMps();
        OptionalDouble iron = golfer.speeds().ironMps();
        boolean driverMeasured = measured(true);
        if (driver.isEmpty() && !driverMeasured && !input.clubs().isEmpty()) {
            messages.add(Message.assumed(
                    golfer.cell(),
                    "Driver speed is not given: " + words.speed(input.speeds().driverMps()) + " is assumed."));
        }
        if (iron.isEmpty() && !measured(false) && !input.clubs().isEmpty()) {
            messages.add(Message.assumed(
                    golfer.cell(),
                    "Iron speed is not given: " + words.speed(input.speeds().ironMps())
                            + " with a 7 iron is assumed, 0.8 of the driver speed."));
        }
        if (driver.isPresent() && iron.isPresent()) {
            noteSpeedRatio(iron.getAsDouble() / driver.getAsDouble());
        }
    }

    private boolean measured(boolean withDriver) {
        return input.clubs().stream()
                .filter(club -> (club.today().kind() == ClubKind.DRIVER) == withDriver)
                .anyMatch(club -> club.shots().headSpeedMps().isPresent());
    }

    private void noteSpeedRatio(double ratio) {
        if (ratio < 0.65 || ratio > 0.95) {
            warn(
                    input.golfer().cell(),
                    "Iron speed is " + percent(ratio) + " of driver speed; usual is 75 to 85 %. Maybe one of them is in"
                            + " another unit or of another club.");
        }
    }

    private void noteDrag(double dragRatio) {
        if (dragRatio < 0.75 || dragRatio > 1.25) {
            warn(
                    input.golfer().cell(),
                    "The measured carries need " + percent(dragRatio)
                            + " of the drag of the published ball; usual is"
                            + " 85 to 115 %. Maybe carry is total distance, or the air on the sheet Start is not that of"
                            + " the shots.");
        }
    }

    private void noteAssumed(ClubFit club) {
        List<String> parts = new AssumedParts(words, club).inWords();
        if (!parts.isEmpty()) {
            messages.add(Message.assumed(
                    club.today().club().cell(),
                    "Assumed for the flight of " + club.name() + ": " + String.join("; ", parts) + "."));
        }
    }

    private void noteUnusual(ClubFit club) {
        noteBallSpeed(club);
        noteLoft(club);
        noteRatio(club, Part.SPIN, club.delivery().spinRatio(), 0.6, 1.6, "spin", "its launch predicts");
        noteRatio(
                club,
                Part.CARRY,
                club.delivery().carryRatio(),
                0.85,
                1.15,
                "carry",
                "its launch and the golfer's other shots predict");
    }

    private void noteBallSpeed(ClubFit club) {
        double efficiency = club.delivery().efficiencyRatio() / club.plain().efficiencyRatio();
        if (!club.borrows(Part.BALL_SPEED) && (efficiency < 0.85 || efficiency > 1.12)) {
            warn(
                    club.today().club().cell(),
                    "The shots with " + club.name() + " need " + percent(efficiency)
                            + " of the ball speed expected at head speed "
                            + words.speed(club.delivery().headSpeedMps()) + ".");
        }
    }

    private void noteLoft(ClubFit club) {
        double offsetDeg = club.delivery().offsetDeg();
        double plainDeg = club.plain().offsetDeg();
        if (!club.borrows(Part.LOFT) && Math.abs(offsetDeg - plainDeg) > 8) {
            double presentedDeg = club.today().loftDeg();
            warn(
                    club.today().club().cell(),
                    "The launch with " + club.name() + " needs a delivered loft of "
                            + FitterUnits.angle(presentedDeg + offsetDeg) + ", "
                            + FitterUnits.angle(presentedDeg + plainDeg) + " would be usual.");
        }
    }

    private void noteRatio(
            ClubFit club, Part part, double ratio, double least, double most, String what, String expected) {
        if (!club.borrows(part) && (ratio < least || ratio > most)) {
            warn(
                    club.today().club().cell(),
                    "The " + what + " with " + club.name() + " is " + percent(ratio) + " of what " + expected + ".");
        }
    }

    private void noteExtension() {
        List<String> names = input.clubs().stream()
                .filter(club -> flights.leansOnExtension(club.todayLaunch()))
                .map(ClubFit::name)
                .toList();
        if (!names.isEmpty()) {
            String range = model == BallModelKind.BEARMAN_HARVEY ? "2000 to 6000 rpm" : "driver shots";
            messages.add(Message.assumed(
                    input.golfer().cell(),
                    "The ball model " + model.label() + " was measured for " + range
                            + "; it is extended beyond that for " + FitterUnits.list(names) + "."));
        }
    }

    private void warn(String cell, String text) {
        messages.add(Message.warning(cell, text));
    }

    private static String percent(double ratio) {
        return Math.round(100 * ratio) + " %";
    }
}
