package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.flight.BallStart;
import org.bagwright.flight.GolferBall;
import org.bagwright.flight.Launch;

/**
 * Whether all carries of a golfer are as much too short or too long for their own ball speed, launch and spin as metres are
 * against yards. Measured carries are 1.00 to 1.09 of the published ball of Bearman and Harvey, mostly 1.04 (the demo books,
 * made after averages of launch monitors); metres read as yards make that 0.91 to 0.99, yards read as metres 1.09 to 1.19.
 */
final class CarryUnits {
    private static final double SHORT_RATIO = 0.985;
    private static final double SHORT_OF_ONE_RATIO = 0.97;
    private static final double LONG_RATIO = 1.085;
    private static final double LONG_OF_ONE_RATIO = 1.1;
    private static final double APART_RATIO = 0.05;
    private static final double LEAST_RATIO = 0.85;
    private static final double MOST_RATIO = 1.22;

    private final FitterUnits words;
    private final GolferBall published;
    private final FitInput input;

    /** @param published flights of the ball of Bearman and Harvey in the air of the book */
    CarryUnits(FitterUnits words, GolferBall published, FitInput input) {
        this.words = words;
        this.published = published;
        this.input = input;
    }

    /** One message, at the carry of every shot; none where some carry fits its launch. */
    Optional<Message> message() {
        List<Integer> telling = new ArrayList<>();
        List<Double> ratios = new ArrayList<>();
        for (int index = 0; index < input.clubs().size(); index++) {
            OptionalDouble ratio = ratio(input.clubs().get(index).shots());
            if (ratio.isPresent()) {
                telling.add(index);
                ratios.add(ratio.getAsDouble());
            }
        }
        return areShort(ratios) || areLong(ratios) ? Optional.of(message(telling, areShort(ratios))) : Optional.empty();
    }

    /** Carry over the flight of the published ball from the same launch. */
    private OptionalDouble ratio(ShotMedians shots) {
        return shots.fullLaunch() && shots.carryM().isPresent()
                ? OptionalDouble.of(shots.carryM().getAsDouble() / flownM(shots))
                : OptionalDouble.empty();
    }

    private double flownM(ShotMedians shots) {
        Launch launch = new Launch(
                shots.ballSpeedMps().getAsDouble(),
                shots.launchDeg().getAsDouble(),
                shots.spinRpm().getAsDouble());
        return published.fly(BallStart.of(launch)).carryM();
    }

    private static boolean areShort(List<Double> ratios) {
        double most = ratios.size() == 1 ? SHORT_OF_ONE_RATIO : SHORT_RATIO;
        return areWithin(ratios, LEAST_RATIO, most + APART_RATIO) && median(ratios) < most;
    }

    private static boolean areLong(List<Double> ratios) {
        double least = ratios.size() == 1 ? LONG_OF_ONE_RATIO : LONG_RATIO;
        return areWithin(ratios, least - APART_RATIO, MOST_RATIO) && median(ratios) > least;
    }

    private static boolean areWithin(List<Double> ratios, double least, double most) {
        return !ratios.isEmpty() && ratios.stream().allMatch(ratio -> ratio > least && ratio < most);
    }

    private static double median(List<Double> ratios) {
        return ShotMedians.median(
                        ratios.stream().mapToDouble(Double::doubleValue).toArray())
                .orElseThrow();
    }

    private Message message(List<Integer> telling, boolean areShort) {
        List<Wording.Place> places = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        for (int index : telling) {
            ClubFit club = input.clubs().get(index);
            places.add(new Wording.Place(
                    input.golfer().name(),
                    club.name(),
                    words.distance(club.shots().carryM().getAsDouble()) + ", flies about "
                            + words.distance(flownM(club.shots()))));
            input.shots().get(index).stream()
                    .filter(shot -> shot.measured().carryM().isPresent())
                    .map(Shot::cell)
                    .forEach(cells::add);
        }
        String lead = "Carries that are all too " + (areShort ? "short" : "long")
                + " for their own ball speed, launch and spin: ";
        Wording wording = new Wording(lead, places, ". Maybe " + maybe(areShort) + ".");
        return Message.warning(cells.get(0), wording).at(cells).in("Carry");
    }

    private String maybe(boolean areShort) {
        boolean yards = words.units().distance() == LengthUnit.YARD;
        if (areShort) {
            return yards
                    ? "they are in metres, while the sheet Start says yards; or the balls were range balls"
                    : "the balls were range balls, or the air on the sheet Start is not that of the shots";
        }
        return yards
                ? "they are total distances with the roll, or the air on the sheet Start is not that of the shots"
                : "they are in yards, while the sheet Start says metres";
    }
}
