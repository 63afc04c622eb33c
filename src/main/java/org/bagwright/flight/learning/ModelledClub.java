package org.bagwright.flight.learning;

import org.bagwright.flight.GolferBall;

/**
 * A club as the fit sees it.
 *
 * @param club the club with its stated loft
 * @param head the number of its head
 * @param usual its arguments as they are usual of such a golfer
 * @param design how its arguments depend on the unknowns
 * @param referenceLoftDeg the presented loft about which the response to a change of set-up turns, degrees
 */
public record ModelledClub(ClubToday club, int head, double[] usual, double[][] design, double referenceLoftDeg) {
    /** Its arguments for a golfer. */
    public double[] arguments(double[] unknowns) {
        double[] arguments = usual.clone();
        for (int row = 0; row < arguments.length; row++) {
            arguments[row] += product(design[row], unknowns);
        }
        return arguments;
    }

    /** Its model near a golfer. */
    ClubModel near(GolferBall air, double[] unknowns) {
        return ClubModel.near(club, referenceLoftDeg, air, arguments(unknowns));
    }

    /** How something that depends on its arguments depends on the unknowns. */
    public double[] byUnknowns(double[] byArguments) {
        double[] slopes = new double[design[0].length];
        for (int row = 0; row < byArguments.length; row++) {
            for (int column = 0; column < slopes.length; column++) {
                slopes[column] += byArguments[row] * design[row][column];
            }
        }
        return slopes;
    }

    private static double product(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
