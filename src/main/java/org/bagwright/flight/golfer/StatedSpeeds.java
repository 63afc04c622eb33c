package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Limit;
import org.bagwright.flight.learning.ClubToday;
import org.bagwright.flight.learning.Delivery;

/** The head speeds that a golfer's row states, against what his shots tell. The limits are assumed. */
final class StatedSpeeds {
    private static final double LEAST_RATIO = 0.87;
    private static final double MOST_RATIO = 1.15;
    private static final double LEAST_OF_ONE_RATIO = 0.75;
    private static final double MOST_OF_ONE_RATIO = 1.3;

    /**
     * How far head speeds measured with the very club may be from the stated one, over it. Sessions and monitors differ by a
     * few percent: assumed.
     */
    private static final double MOST_OFF_RATIO = 0.07;

    private static final double LIKE_LENGTH_M = LengthUnit.INCH.toM(1.1);

    private static final Set<ClubKind> LONG = Set.of(ClubKind.DRIVER, ClubKind.WOOD);
    private static final Set<ClubKind> SHORT = Set.of(ClubKind.IRON, ClubKind.WEDGE);

    private final FitterUnits words;
    private final Golfer golfer;
    private final List<ClubToday> clubs;
    private final List<List<Shot>> shots;
    private final PlainGolfer plain;
    private final List<Message> messages = new ArrayList<>();
    private final Golfer.HeadSpeeds credible;

    /** @param shots the golfer's shots, one list for each club */
    StatedSpeeds(FitterUnits words, Golfer golfer, List<ClubToday> clubs, List<List<Shot>> shots) {
        this.words = words;
        this.golfer = golfer;
        this.clubs = clubs;
        this.shots = shots;
        this.plain = PlainGolfer.of(golfer.speeds(), clubs);
        OptionalDouble driver = golfer.speeds().driverMps();
        OptionalDouble iron = golfer.speeds().ironMps();
        boolean both = driver.isPresent() && iron.isPresent();
        credible = new Golfer.HeadSpeeds(
                credible(driver, "Driver speed", kind -> !both || LONG.contains(kind)),
                credible(iron, "Iron speed", kind -> !both || SHORT.contains(kind)));
    }

    /** What is stated, without a speed that none of his shots agrees with. */
    Golfer.HeadSpeeds credible() {
        return credible;
    }

    List<ClubToday> clubs() {
        return clubs;
    }

    /**
     * What his row states and his shots do not deny. Where that is nothing, what his shots with long and short clubs tell;
     * empty where nothing does. One stated speed is enough to expect the other of him, so that no shot tells it twice.
     */
    Golfer.HeadSpeeds likely() {
        if (credible.driverMps().isPresent() || credible.ironMps().isPresent()) {
            return credible;
        }
        return new Golfer.HeadSpeeds(
                told(plain.speeds().driverMps(), LONG), told(plain.speeds().ironMps(), SHORT));
    }

    private OptionalDouble told(double plainMps, Set<ClubKind> about) {
        OptionalDouble ratio = ShotMedians.median(IntStream.range(0, clubs.size())
                .filter(index -> about.contains(clubs.get(index).kind()))
                .mapToObj(this::toldRatio)
                .flatMapToDouble(OptionalDouble::stream)
                .toArray());
        double toldMps = plainMps * ratio.orElse(1);
        return ratio.isPresent() && Limit.HEAD_SPEED_MPS.holds(toldMps)
                ? OptionalDouble.of(toldMps)
                : OptionalDouble.empty();
    }

    /** Whether his shots tell a head speed. */
    boolean toldByShots() {
        return IntStream.range(0, clubs.size())
                .anyMatch(index -> toldRatio(index).isPresent());
    }

    List<Message> messages() {
        return messages;
    }

    private OptionalDouble credible(OptionalDouble statedMps, String column, Predicate<ClubKind> about) {
        List<Integer> telling = IntStream.range(0, clubs.size())
                .filter(index -> about.test(clubs.get(index).kind()))
                .filter(index -> toldRatio(index).isPresent())
                .boxed()
                .toList();
        double[] ratios = telling.stream()
                .mapToDouble(index -> toldRatio(index).getAsDouble())
                .toArray();
        if (statedMps.isEmpty()) {
            return statedMps;
        }
        if (agrees(ratios)) {
            checkOwn(column, statedMps.getAsDouble());
            return statedMps;
        }
        List<String> names =
                telling.stream().map(index -> clubs.get(index).club().name()).toList();
        int nearest = nearest(telling, column.equals("Driver speed") ? HeadSpeeds.DRIVER_M : HeadSpeeds.SEVEN_IRON_M);
        doubt(column, statedMps.getAsDouble(), toldRatio(nearest).getAsDouble(), names);
        return OptionalDouble.empty();
    }

    /** A warning where shots with the driver, or with an iron of about the length of a 7 iron, have another head speed. */
    private void checkOwn(String column, double statedMps) {
        boolean driver = column.equals("Driver speed");
        ClubKind kind = driver ? ClubKind.DRIVER : ClubKind.IRON;
        double lengthM = driver ? HeadSpeeds.DRIVER_M : HeadSpeeds.SEVEN_IRON_M;
        List<Integer> measured = IntStream.range(0, clubs.size())
                .filter(index -> clubs.get(index).kind() == kind)
                .filter(index -> ShotMedians.of(shots.get(index)).headSpeedMps().isPresent())
                .filter(index -> Math.abs(clubs.get(index).lengthM() - lengthM) < LIKE_LENGTH_M)
                .boxed()
                .toList();
        if (!measured.isEmpty()) {
            int index = nearest(measured, lengthM);
            double ratio = toldRatio(index).getAsDouble();
            if (Math.abs(ratio - 1) > MOST_OFF_RATIO) {
                warn(
                        column,
                        column + " far from the head speed of the golfer's shots: ",
                        words.speed(statedMps) + ", about " + words.speed(statedMps * ratio) + " by the shots with "
                                + clubs.get(index).club().name(),
                        "it is mistyped, or of another day");
            }
        }
    }

    /** The club whose length is nearest to that of the club to which the stated speed belongs. */
    private int nearest(List<Integer> telling, double lengthM) {
        return telling.stream()
                .min(Comparator.comparingDouble(
                        index -> Math.abs(clubs.get(index).lengthM() - lengthM)))
                .orElseThrow();
    }

    private static boolean agrees(double[] ratios) {
        double least = ratios.length == 1 ? LEAST_OF_ONE_RATIO : LEAST_RATIO;
        double most = ratios.length == 1 ? MOST_OF_ONE_RATIO : MOST_RATIO;
        return ratios.length == 0
                || Arrays.stream(ratios).anyMatch(ratio -> ratio >= least && ratio <= most)
                || (Arrays.stream(ratios).anyMatch(ratio -> ratio < 1)
                        && Arrays.stream(ratios).anyMatch(ratio -> ratio > 1));
    }

    /** The head speed that a club's shots tell, over the one that follows from the golfer's row. */
    private OptionalDouble toldRatio(int index) {
        ShotMedians told = ShotMedians.of(shots.get(index));
        Delivery stated = plain.delivery(clubs.get(index).stated());
        if (told.headSpeedMps().isPresent()) {
            return OptionalDouble.of(told.headSpeedMps().getAsDouble() / stated.headSpeedMps());
        }
        return told.ballSpeedMps().isPresent()
                ? OptionalDouble.of(told.ballSpeedMps().getAsDouble() / stated.ballMps(clubs.get(index)))
                : OptionalDouble.empty();
    }

    private void doubt(String column, double statedMps, double toldRatio, List<String> names) {
        double toldMps = statedMps * toldRatio;
        String maybe = words.otherUnit(statedMps, toldMps)
                .map(unit -> "it is in " + unit)
                .orElse("it is of another club, or mistyped");
        warn(
                column,
                column + " that none of the golfer's shots agrees with: ",
                words.speed(statedMps) + ", about " + words.speed(toldMps) + " by the shots with "
                        + FitterUnits.list(names),
                maybe);
    }

    private void warn(String column, String lead, String detail, String maybe) {
        Wording wording = Wording.ofGolfer(lead, golfer.name(), detail, ". Maybe " + maybe + ".");
        messages.add(Message.warning(golfer.cell(), wording).in(column));
    }
}
