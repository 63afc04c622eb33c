package org.bagwright.domain.option;

import java.util.Arrays;
import org.bagwright.domain.units.Checks;

/**
 * How far an expected carry may be off, in factors: what it shares with every option of the golfer's bag, and what it shares
 * with the other options of its own club alone. Each factor is the change of carry, in metres, for one standard deviation of
 * something unknown; the unknown things are normal and independent of each other. It cannot change.
 */
public final class CarryDoubt {
    /** How many shared factors there are; those that are not needed are 0. */
    public static final int SHARED = 8;

    /** Half of the range that holds a normal number in 80 of 100 cases, in standard deviations. */
    public static final double HALF_80_SDS = 1.2815515655446004;

    /** A carry that is certain. */
    public static final CarryDoubt NONE = new CarryDoubt(new double[SHARED], new double[0]);

    private final double[] sharedM;
    private final double[] ownM;
    private final double ownVarianceM2;

    private CarryDoubt(double[] sharedM, double[] ownM) {
        this.sharedM = sharedM;
        this.ownM = ownM;
        this.ownVarianceM2 = square(ownM);
    }

    /**
     * A doubt.
     *
     * @param sharedM at most {@link #SHARED} factors shared with all clubs of the bag, m
     * @param ownM the factors shared with the options of the same club alone, m; as many for all of them
     */
    public static CarryDoubt of(double[] sharedM, double[] ownM) {
        Checks.that(sharedM.length <= SHARED, "a carry has at most " + SHARED + " shared factors");
        for (double factor : sharedM) {
            Checks.finite(factor, "shared factor");
        }
        for (double factor : ownM) {
            Checks.finite(factor, "own factor");
        }
        return new CarryDoubt(Arrays.copyOf(sharedM, SHARED), ownM.clone());
    }

    /** A shared factor, m. */
    public double sharedM(int factor) {
        return sharedM[factor];
    }

    /** How many factors it shares with the options of its own club alone. */
    public int ownCount() {
        return ownM.length;
    }

    /** A factor that it shares with the options of its own club alone, m; 0 beyond the last. */
    public double ownM(int factor) {
        return factor < ownM.length ? ownM[factor] : 0;
    }

    /** The variance that it shares with no other club, m2. */
    public double ownVarianceM2() {
        return ownVarianceM2;
    }

    /** The variance of the carry, m2. */
    public double varianceM2() {
        return square(sharedM) + ownVarianceM2;
    }

    /** The variance of the gap between this carry and that of another club, m2. */
    public double gapVarianceM2(CarryDoubt next) {
        double sum = 0;
        for (int factor = 0; factor < SHARED; factor++) {
            double apartM = sharedM[factor] - next.sharedM[factor];
            sum += apartM * apartM;
        }
        return sum + ownVarianceM2 + next.ownVarianceM2;
    }

    /** The variance of the change of carry from another option of the same club to this one, m2. */
    public double changeVarianceM2(CarryDoubt from) {
        double sum = 0;
        for (int factor = 0; factor < SHARED; factor++) {
            double apartM = sharedM[factor] - from.sharedM[factor];
            sum += apartM * apartM;
        }
        for (int factor = 0; factor < Math.max(ownM.length, from.ownM.length); factor++) {
            double apartM = ownM(factor) - from.ownM(factor);
            sum += apartM * apartM;
        }
        return sum;
    }

    private static double square(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value * value;
        }
        return sum;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CarryDoubt doubt
                && Arrays.equals(sharedM, doubt.sharedM)
                && Arrays.equals(ownM, doubt.ownM);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(sharedM) + Arrays.hashCode(ownM);
    }

    @Override
    public String toString() {
        return "shared " + Arrays.toString(sharedM) + ", own " + Arrays.toString(ownM);
    }
}
