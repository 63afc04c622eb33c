package org.bagwright.flight.learning;

import org.bagwright.flight.GolferBall;

/**
 * A club as the fit sees it.
 */
public final class ModelledClub {
    private final ClubToday club;
    private final int head;
    private final double[] usual;
    private final double[][] design;
    private final double referenceLoftDeg;

    public ModelledClub(ClubToday club, int head, double[] usual, double[][] design, double referenceLoftDeg) {
        this.club = club;
        this.head = head;
        this.usual = usual;
        this.design = design;
        this.referenceLoftDeg = referenceLoftDeg;
    }

    /** The club with its stated loft. */
    public ClubToday club() {
        return club;
    }

    /** The number of its head. */
    public int head() {
        return head;
    }

    /** Its arguments as they are usual of such a golfer. */
    public double[] usual() {
        return usual;
    }

    /** How its arguments depend on the unknowns. */
    public double[][] design() {
        return design;
    }

    /** The presented loft about which the response to a change of set-up turns, degrees. */
    public double referenceLoftDeg() {
        return referenceLoftDeg;
    }

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
