package org.bagwright.flight;

import java.util.Arrays;

/**
 * A curve through points that turns only where the points turn: cubic pieces with the slopes of Fritsch and Butland
 * 1984 (SIAM J. Sci. Stat. Comput. 5, 300-304), the chord's slope at the ends. Beyond the ends it goes on with that slope
 * and levels out within the reach. Its slope has no jumps.
 */
final class MonotoneCubic {
    private final double[] xs;
    private final double[] ys;
    private final double[] slopes;
    private final double reach;

    /**
     * A curve through at least two points.
     *
     * @param xs rising
     * @param ys as many
     * @param reach over how much of x the curve levels out beyond its ends, in the unit of x
     */
    MonotoneCubic(double[] xs, double[] ys, double reach) {
        this.xs = xs.clone();
        this.ys = ys.clone();
        this.slopes = slopes(xs, ys);
        this.reach = reach;
    }

    double value(double x) {
        int last = xs.length - 1;
        if (x <= xs[0]) {
            return ys[0] + slopes[0] * reach * Math.tanh((x - xs[0]) / reach);
        }
        if (x >= xs[last]) {
            return ys[last] + slopes[last] * reach * Math.tanh((x - xs[last]) / reach);
        }
        return piece(xs, ys, slopes, interval(xs, x), x);
    }

    /** The interval of a number that is between the first and the last place. */
    private static int interval(double[] xs, double x) {
        int i = 0;
        while (x > xs[i + 1]) {
            i++;
        }
        return i;
    }

    /**
     * The values of curves through points at the same places, to the last bit those of {@link #value}: what is learned of a
     * golfer rests on second differences of flights.
     *
     * @param curves as many as values are wished
     */
    static double[] values(MonotoneCubic[] curves, double x) {
        double[] values = new double[curves.length];
        double[] xs = curves[0].xs;
        if (x <= xs[0] || x >= xs[xs.length - 1]) {
            Arrays.setAll(values, number -> curves[number].value(x));
            return values;
        }
        int i = interval(xs, x);
        double width = xs[i + 1] - xs[i];
        double t = (x - xs[i]) / width;
        double rest = 1 - t;
        double before = 1 + 2 * t;
        double after = 1 + 2 * rest;
        double leaving = t * width;
        double arriving = rest * width;
        for (int number = 0; number < values.length; number++) {
            double[] ys = curves[number].ys;
            double[] slopes = curves[number].slopes;
            values[number] = rest * rest * (before * ys[i] + leaving * slopes[i])
                    + t * t * (after * ys[i + 1] - arriving * slopes[i + 1]);
        }
        return values;
    }

    /** The cubic on interval {@code i} through its two points with the given slopes there. */
    static double piece(double[] xs, double[] ys, double[] slopes, int i, double x) {
        double width = xs[i + 1] - xs[i];
        double t = (x - xs[i]) / width;
        double rest = 1 - t;
        return rest * rest * ((1 + 2 * t) * ys[i] + t * width * slopes[i])
                + t * t * ((1 + 2 * rest) * ys[i + 1] - rest * width * slopes[i + 1]);
    }

    /** The slope at each point. */
    static double[] slopes(double[] xs, double[] ys) {
        int last = xs.length - 1;
        double[] slopes = new double[xs.length];
        double before = chord(xs, ys, 0);
        slopes[0] = before;
        for (int i = 1; i < last; i++) {
            double after = chord(xs, ys, i);
            slopes[i] = between(xs, i, before, after);
            before = after;
        }
        slopes[last] = before;
        return slopes;
    }

    private static double between(double[] xs, int i, double before, double after) {
        if (before * after <= 0) {
            return 0;
        }
        double left = xs[i] - xs[i - 1];
        double right = xs[i + 1] - xs[i];
        return 3 * (left + right) / ((2 * right + left) / before + (right + 2 * left) / after);
    }

    private static double chord(double[] xs, double[] ys, int i) {
        return (ys[i + 1] - ys[i]) / (xs[i + 1] - xs[i]);
    }
}
