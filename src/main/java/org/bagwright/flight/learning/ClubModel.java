package org.bagwright.flight.learning;

import java.util.Arrays;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.flight.GolferBall;
import org.bagwright.flight.Launch;

/**
 * What one club's shots are, given its {@link Argument}s, near the golfer that they belong to.
 *
 * @param club the club with its stated loft
 * @param referenceLoftDeg the presented loft about which the golfer's response to a change of set-up turns, degrees
 * @param bearmanHarvey carries of that ball
 * @param smitsSmith carries of that ball
 */
public record ClubModel(ClubToday club, double referenceLoftDeg, CarrySurface bearmanHarvey, CarrySurface smitsSmith) {
    private static final double LEAST_SPIN_RPM = 1;

    /** The model near these arguments. */
    static ClubModel near(ClubToday club, double referenceLoftDeg, GolferBall air, double[] arguments) {
        double[] centre = flightPoint(launch(club, arguments, Presented.of(referenceLoftDeg)), arguments);
        return new ClubModel(
                club,
                referenceLoftDeg,
                new CarrySurface(air, BallModelKind.BEARMAN_HARVEY, centre),
                new CarrySurface(air, BallModelKind.SMITS_SMITH, centre));
    }

    /** How a club with these arguments is delivered. */
    public static Delivery delivery(double[] arguments) {
        return new Delivery(
                Math.exp(arguments[Argument.LN_HEAD_SPEED.ordinal()]),
                arguments[Argument.ATTACK_DEG.ordinal()],
                arguments[Argument.OFFSET_DEG.ordinal()],
                Math.exp(arguments[Argument.LN_EFFICIENCY.ordinal()]),
                Math.exp(arguments[Argument.LN_SPIN.ordinal()]),
                Math.exp(arguments[Argument.LN_CARRY.ordinal()]));
    }

    /** The ln ball speed, launch and ln spin of a blow. */
    private static double[] launch(ClubToday club, double[] arguments, Presented presented) {
        Launch launch = delivery(arguments).launch(club, presented.loftDeg());
        return new double[] {
            Math.log(launch.ballSpeedMps()) + presented.lnBallSpeedRatio(),
            launch.launchDeg() + presented.launchDeg(),
            Math.log(Math.max(LEAST_SPIN_RPM, launch.spinRpm())) + presented.lnSpinRatio()
        };
    }

    private static double[] flightPoint(double[] launch, double[] arguments) {
        double[] point = Arrays.copyOf(launch, CarrySurface.DIMENSIONS);
        point[3] = arguments[Argument.LN_DRAG.ordinal()];
        point[4] = arguments[Argument.LN_LIFT.ordinal()];
        return point;
    }

    /** What a device would read without noise, in the order of {@link Quantity}. */
    double[] quantities(double[] arguments, Presented presented) {
        double[] launch = launch(club, arguments, presented);
        return new double[] {
            arguments[Argument.LN_HEAD_SPEED.ordinal()],
            launch[0],
            launch[1],
            launch[2],
            arguments[Argument.ATTACK_DEG.ordinal()],
            Math.log(carryM(arguments, launch))
        };
    }

    /** Carry, m. */
    double carryM(double[] arguments, Presented presented) {
        return carryM(arguments, launch(club, arguments, presented));
    }

    private double carryM(double[] arguments, double[] launch) {
        double here = mixedM(arguments, launch);
        double reference = mixedM(arguments, launch(club, arguments, Presented.of(referenceLoftDeg)));
        double response = 1 + arguments[Argument.RESPONSE.ordinal()];
        double carryM = (reference + response * (here - reference)) * Math.exp(arguments[Argument.LN_CARRY.ordinal()]);
        return Math.max(1, carryM);
    }

    private double mixedM(double[] arguments, double[] launch) {
        double[] point = flightPoint(launch, arguments);
        double share = arguments[Argument.BALL.ordinal()];
        return (1 - share) * bearmanHarvey.carryM(point) + share * smitsSmith.carryM(point);
    }

    /** How the quantities change with the arguments: a row for each {@link Quantity}, a column for each {@link Argument}. */
    double[][] slopes(double[] arguments, Presented presented) {
        double[][] slopes = new double[Quantity.COUNT][Argument.COUNT];
        for (Argument argument : Argument.values()) {
            int column = argument.ordinal();
            double[] above = quantities(stepped(arguments, argument, 1), presented);
            double[] below = quantities(stepped(arguments, argument, -1), presented);
            for (int row = 0; row < Quantity.COUNT; row++) {
                slopes[row][column] = (above[row] - below[row]) / (2 * argument.step());
            }
        }
        return slopes;
    }

    /** How ln carry changes with ln ball speed, launch and ln spin, all else equal. */
    double[] carrySlopes(double[] arguments, Presented presented) {
        double[] launch = launch(club, arguments, presented);
        double[] steps = {1e-3, 0.05, 0.01};
        double[] slopes = new double[steps.length];
        for (int i = 0; i < steps.length; i++) {
            double[] above = launch.clone();
            double[] below = launch.clone();
            above[i] += steps[i];
            below[i] -= steps[i];
            slopes[i] = Math.log(carryM(arguments, above) / carryM(arguments, below)) / (2 * steps[i]);
        }
        return slopes;
    }

    /** How the carry changes with the arguments, m. */
    public double[] carrySlopesM(double[] arguments, Presented presented) {
        double[] slopes = new double[Argument.COUNT];
        for (Argument argument : Argument.values()) {
            slopes[argument.ordinal()] = (carryM(stepped(arguments, argument, 1), presented)
                            - carryM(stepped(arguments, argument, -1), presented))
                    / (2 * argument.step());
        }
        return slopes;
    }

    private static double[] stepped(double[] arguments, Argument argument, int steps) {
        double[] stepped = arguments.clone();
        stepped[argument.ordinal()] += steps * argument.step();
        return stepped;
    }
}
