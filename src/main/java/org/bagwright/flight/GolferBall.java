package org.bagwright.flight;

import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BallModelKind;

/**
 * Flights of one golfer's own ball in one air: the two published balls mixed, both with the same factors on drag and lift.
 *
 * <pre>
 * F = (1 - b) F_BearmanHarvey + b F_SmitsSmith
 * </pre>
 *
 * Safe to share between threads.
 */
public final class GolferBall {
    private final BallFlight bearmanHarvey;
    private final BallFlight smitsSmith;
    private final double smitsShare;
    private final double dragRatio;
    private final double liftRatio;

    private GolferBall(
            BallFlight bearmanHarvey, BallFlight smitsSmith, double smitsShare, double dragRatio, double liftRatio) {
        this.bearmanHarvey = bearmanHarvey;
        this.smitsSmith = smitsSmith;
        this.smitsShare = smitsShare;
        this.dragRatio = dragRatio;
        this.liftRatio = liftRatio;
    }

    /** The published ball of Bearman and Harvey in an air. */
    public static GolferBall in(AirConditions air) {
        return new GolferBall(
                new BallFlight(air, BallModelKind.BEARMAN_HARVEY),
                new BallFlight(air, BallModelKind.SMITS_SMITH),
                0,
                1,
                1);
    }

    /**
     * Another ball in the same air.
     *
     * @param share how much of it is the ball of Smits and Smith, 1 for that ball alone; below 0 and above 1 lie beyond the two
     * @param drag factor on the drag of both
     * @param lift factor on the lift of both
     */
    public GolferBall with(double share, double drag, double lift) {
        return new GolferBall(bearmanHarvey, smitsSmith, share, drag, lift);
    }

    /** Flies one ball until it comes down to the height at which it started. */
    public Flight fly(BallStart start) {
        if (smitsShare == 0) {
            return flyAs(BallModelKind.BEARMAN_HARVEY, start);
        }
        Flight smits = flyAs(BallModelKind.SMITS_SMITH, start);
        return smitsShare == 1 ? smits : flyAs(BallModelKind.BEARMAN_HARVEY, start).mixed(smits, smitsShare);
    }

    /** The flight of one of the two published balls with this ball's factors. */
    public Flight flyAs(BallModelKind kind, BallStart start) {
        BallFlight flights = kind == BallModelKind.SMITS_SMITH ? smitsSmith : bearmanHarvey;
        return flights.fly(start, dragRatio, liftRatio);
    }

    /** Whether the launch is beyond what the ball model that counts most was published for. */
    public boolean leansOnExtension(Launch launch) {
        return (smitsShare > 0.5 ? smitsSmith : bearmanHarvey).leansOnExtension(launch);
    }
}
