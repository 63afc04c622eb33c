package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
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
        List<String> parts = new ArrayList<>();
        Club stated = club.today().club();
        boolean ballKnown = club.shots().ballSpeedMps().isPresent();
        if (stated.parts().lengthM().isEmpty() && !club.shots().fullLaunch()) {
            parts.add("length " + words.length(club.today().lengthM()));
        }
        if (stated.form().massKg().isEmpty() && !ballKnown) {
            parts.add("head mass " + Math.round(1000 * club.today().headMassKg()) + " g");
        }
        if (club.shots().attackDeg().isEmpty() && club.lenders(Part.ATTACK).isEmpty()) {
            parts.add("path of the head " + FitterUnits.angle(club.delivery().attackDeg()));
        }
        addPlain(club, parts);
        addBorrowed(club, parts);
        if (!parts.isEmpty()) {
            messages.add(Message.assumed(
                    stated.cell(), "Assumed for the flight of " + club.name() + ": " + String.join("; ", parts) + "."));
        }
    }

    /** The parts that neither its own shots nor another club's tell. */
    private void addPlain(ClubFit club, List<String> parts) {
        if (club.shots().launchDeg().isEmpty() && club.lenders(Part.LOFT).isEmpty()) {
            double deliveredDeg = club.today().loftDeg() + club.delivery().offsetDeg();
            parts.add("delivered loft " + FitterUnits.angle(deliveredDeg));
        }
        if (club.shots().spinRpm().isEmpty() && club.lenders(Part.SPIN).isEmpty()) {
            parts.add("spin " + FitterUnits.spin(club.todayLaunch().spinRpm()));
        }
        boolean told =
                club.shots().ballSpeedMps().isPresent() || club.shots().carryM().isPresent();
        if (!told && club.lenders(Part.BALL_SPEED).isEmpty()) {
            parts.add("ball speed " + words.speed(club.todayLaunch().ballSpeedMps()));
        }
    }

    private static void addBorrowed(ClubFit club, List<String> parts) {
        List<Part> borrowed = new ArrayList<>();
        for (Part part : Part.values()) {
            if (!club.lenders(part).isEmpty()
                    && !(part == Part.CARRY && club.shots().carryM().isPresent())) {
                borrowed.add(part);
            }
        }
        borrowed.stream().map(club::lenders).distinct().forEach(lenders -> {
            List<String> labels = borrowed.stream()
                    .filter(part -> club.lenders(part).equals(lenders))
                    .map(Part::label)
                    .toList();
            parts.add(FitterUnits.list(labels) + " borrowed from " + FitterUnits.list(lenders));
        });
    }

    private void noteUnusual(ClubFit club) {
        String cell = club.today().club().cell();
        Delivery delivery = club.delivery();
        Delivery plain = club.plain();
        double efficiency = delivery.efficiencyRatio() / plain.efficiencyRatio();
        double offsetDeg = delivery.offsetDeg() - plain.offsetDeg();
        if (own(club, Part.BALL_SPEED) && (efficiency < 0.85 || efficiency > 1.12)) {
            warn(
                    cell,
                    "The shots with " + club.name() + " need " + percent(efficiency)
                            + " of the ball speed expected at head speed " + words.speed(delivery.headSpeedMps())
                            + ".");
        }
        if (own(club, Part.LOFT) && Math.abs(offsetDeg) > 8) {
            warn(
                    cell,
                    "The launch with " + club.name() + " needs a delivered loft of "
                            + FitterUnits.angle(club.today().loftDeg() + delivery.offsetDeg()) + ", "
                            + FitterUnits.angle(club.today().loftDeg() + plain.offsetDeg()) + " would be usual.");
        }
        if (own(club, Part.SPIN) && (delivery.spinRatio() < 0.6 || delivery.spinRatio() > 1.6)) {
            warn(
                    cell,
                    "The spin with " + club.name() + " is " + percent(delivery.spinRatio())
                            + " of what its launch predicts.");
        }
        if (own(club, Part.CARRY) && (delivery.carryRatio() < 0.85 || delivery.carryRatio() > 1.15)) {
            warn(
                    cell,
                    "The carry with " + club.name() + " is " + percent(delivery.carryRatio())
                            + " of what its launch and the golfer's other shots predict.");
        }
    }

    private static boolean own(ClubFit club, Part part) {
        return club.lenders(part).isEmpty();
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
