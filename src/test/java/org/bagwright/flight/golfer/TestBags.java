package org.bagwright.flight.golfer;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.bagwright.ClubSketch;
import org.bagwright.GolferSketch;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.StatedHead;

/** Golfers, bags and shots for tests. */
public final class TestBags {
    public static final double MPS_PER_MPH = 0.44704;
    public static final double M_PER_YD = 0.9144;
    static final double M_PER_IN = 0.0254;

    private TestBags() {}

    public static Golfer golfer(OptionalDouble driverMph, OptionalDouble ironMph) {
        return new GolferSketch("Ann").speeds(mps(driverMph), mps(ironMph)).golfer();
    }

    public static Golfer golfer(double driverMph) {
        return golfer(OptionalDouble.of(driverMph), OptionalDouble.empty());
    }

    private static OptionalDouble mps(OptionalDouble mph) {
        return mph.isPresent() ? OptionalDouble.of(mph.getAsDouble() * MPS_PER_MPH) : mph;
    }

    static Club club(int slot, String name, ClubKind kind, double loftDeg, OptionalDouble lengthIn) {
        return new ClubSketch("Ann", slot, name, kind, "Clubs!C" + (slot + 1))
                .head(loftDeg, 60)
                .lengthM(lengthIn.isPresent() ? OptionalDouble.of(lengthIn.getAsDouble() * M_PER_IN) : lengthIn)
                .made();
    }

    public static Club club(int slot, String name, ClubKind kind, double loftDeg, double lengthIn) {
        return club(slot, name, kind, loftDeg, OptionalDouble.of(lengthIn));
    }

    /** The same club with a face angle by design, degrees, closed positive. */
    public static Club faced(Club club, double faceDeg) {
        StatedHead head = club.head();
        return ClubSketch.like(club)
                .head(new StatedHead(head.loftDeg(), head.lieDeg(), faceDeg, head.statedAt()))
                .made();
    }

    /**
     * A generic bag: irons of the handbook's set, the others as commonly made; wedges without a length, a putter at the end.
     */
    public static List<Club> genericBag() {
        OptionalDouble unknown = OptionalDouble.empty();
        return List.of(
                club(1, "driver", ClubKind.DRIVER, 10.5, 45.25),
                club(2, "3 wood", ClubKind.WOOD, 15, 43),
                club(3, "5 wood", ClubKind.WOOD, 18, 42.25),
                club(4, "3 hybrid", ClubKind.HYBRID, 20, 40.25),
                club(5, "4 hybrid", ClubKind.HYBRID, 22, 39.75),
                club(6, "4 iron", ClubKind.IRON, 20, 38.5),
                club(7, "5 iron", ClubKind.IRON, 23, 38),
                club(8, "6 iron", ClubKind.IRON, 26, 37.5),
                club(9, "7 iron", ClubKind.IRON, 30, 37),
                club(10, "8 iron", ClubKind.IRON, 34.5, 36.5),
                club(11, "9 iron", ClubKind.IRON, 39, 36),
                club(12, "pitching wedge", ClubKind.IRON, 44, 35.5),
                club(13, "gap wedge", ClubKind.WEDGE, 50, unknown),
                club(14, "sand wedge", ClubKind.WEDGE, 54, unknown),
                club(15, "lob wedge", ClubKind.WEDGE, 58, unknown),
                club(16, "putter", ClubKind.PUTTER, 3, unknown));
    }

    public static Club find(List<Club> bag, String name) {
        return bag.stream().filter(club -> club.name().equals(name)).findFirst().orElseThrow();
    }

    public static GolferFlight fit(Golfer golfer, List<Club> bag, List<Shot> shots) {
        return GolferFlight.fit(
                BookSettings.DEFAULT, golfer, bag, (club, choice) -> club.head().loftDeg(), shots);
    }

    public static List<String> texts(GolferFlight flight, Message.Severity severity) {
        return flight.messages().stream()
                .filter(message -> message.severity() == severity)
                .map(message -> message.cell() + ": " + message.text())
                .toList();
    }

    /** A shot under construction; what is not set is not measured. */
    public static final class ShotOf {
        private final String club;
        private final double[] values =
                IntStream.range(0, 6).mapToDouble(i -> Double.NaN).toArray();
        private String cell = "Shots!B2";

        public ShotOf(String club) {
            this.club = club;
        }

        ShotOf at(String where) {
            cell = where;
            return this;
        }

        public ShotOf headMph(double mph) {
            values[0] = mph * MPS_PER_MPH;
            return this;
        }

        public ShotOf ballMph(double mph) {
            values[1] = mph * MPS_PER_MPH;
            return this;
        }

        public ShotOf launch(double deg) {
            values[2] = deg;
            return this;
        }

        public ShotOf spin(double rpm) {
            values[3] = rpm;
            return this;
        }

        public ShotOf attack(double deg) {
            values[4] = deg;
            return this;
        }

        public ShotOf carryYd(double yd) {
            values[5] = yd * M_PER_YD;
            return this;
        }

        public Shot shot() {
            return new Shot("Ann", club, new Shot.Measured(of(0), of(1), of(2), of(3), of(4), of(5)), cell);
        }

        private OptionalDouble of(int index) {
            return Double.isNaN(values[index]) ? OptionalDouble.empty() : OptionalDouble.of(values[index]);
        }
    }
}
