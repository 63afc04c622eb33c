package org.bagwright;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bagwright.domain.book.GapWish;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Golfer.Address;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.club.StatedLimit;

/** A golfer for tests while he is made: right-handed, squares the face, no limits where none is set. */
public final class GolferSketch {
    private final String name;
    private Hand hand = Hand.RIGHT;
    private Golfer.HeadSpeeds speeds = new Golfer.HeadSpeeds(OptionalDouble.empty(), OptionalDouble.empty());
    private Address address = new Address(0, true, false);
    private GapWish gapWish = GapWish.EVEN;
    private Limits limits = Limits.NONE;
    private OptionalInt mostChanges = OptionalInt.empty();
    private String cell = "Golfers!A2";

    public GolferSketch(String name) {
        this.name = name;
    }

    /** Another golfer who is like this one where nothing else is set. */
    public static GolferSketch like(Golfer golfer) {
        GolferSketch sketch = new GolferSketch(golfer.name());
        sketch.hand = golfer.hand();
        sketch.speeds = golfer.speeds();
        sketch.address = golfer.address();
        sketch.gapWish = golfer.gapWish();
        sketch.limits = golfer.limits();
        sketch.mostChanges = golfer.mostChanges();
        sketch.cell = golfer.cell();
        return sketch;
    }

    public GolferSketch hand(Hand other) {
        hand = other;
        return this;
    }

    public GolferSketch speeds(OptionalDouble driverMps, OptionalDouble ironMps) {
        speeds = new Golfer.HeadSpeeds(driverMps, ironMps);
        return this;
    }

    public GolferSketch leanDeg(double leanDeg) {
        address = new Address(leanDeg, address.squaresFace(), address.keepsShaftAligned());
        return this;
    }

    public GolferSketch squaresFace(boolean squares) {
        address = new Address(address.leanDeg(), squares, address.keepsShaftAligned());
        return this;
    }

    public GolferSketch keepsShaftAligned(boolean keeps) {
        address = new Address(address.leanDeg(), address.squaresFace(), keeps);
        return this;
    }

    /** The looks he accepts, degrees closed. */
    public GolferSketch sits(double mostOpenDeg, double mostClosedDeg) {
        return limits(Limits.of(List.of(
                new StatedLimit(LimitKind.MOST_OPEN, mostOpenDeg, "Golfers!H2"),
                new StatedLimit(LimitKind.MOST_CLOSED, mostClosedDeg, "Golfers!I2"))));
    }

    public GolferSketch limits(Limits other) {
        limits = other;
        return this;
    }

    public GolferSketch mostChanges(OptionalInt most) {
        mostChanges = most;
        return this;
    }

    public GolferSketch cell(String other) {
        cell = other;
        return this;
    }

    public Golfer golfer() {
        return new Golfer(name, hand, speeds, address, gapWish, limits, mostChanges, cell);
    }
}
