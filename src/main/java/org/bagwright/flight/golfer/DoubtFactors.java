package org.bagwright.flight.golfer;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.bagwright.domain.option.CarryDoubt;

/**
 * Turns what a carry depends on into its doubt in factors. Given the shared unknowns those of different heads are
 * independent, so a carry with slopes g has the shared part {@code g S_.s S_ss^-1/2} and, with the head's own unknowns after
 * the shared ones, a part of its own. Of the shared part the directions that matter most to the bag are kept; the rest is
 * counted as the club's own.
 */
final class DoubtFactors {
    private final Unknowns unknowns;
    private final RealMatrix toShared;
    private final RealMatrix greatest;
    private final RealMatrix[] own;

    /**
     * @param posterior the golfer after his shots
     * @param unknowns what is unknown of him
     * @param heads how many heads
     * @param slopesM for carries all over his bag how they change with the unknowns, m
     */
    DoubtFactors(Posterior posterior, Unknowns unknowns, int heads, List<double[]> slopesM) {
        this.unknowns = unknowns;
        int shared = unknowns.sharedCount();
        int count = unknowns.count();
        RealMatrix all = posterior.covariance();
        RealMatrix ofShared = all.getSubMatrix(0, shared - 1, 0, shared - 1);
        EigenDecomposition eigen = new EigenDecomposition(ofShared);
        RealMatrix rootInverse = MatrixUtils.createRealDiagonalMatrix(Arrays.stream(eigen.getRealEigenvalues())
                .map(value -> 1 / Math.sqrt(value))
                .toArray());
        this.toShared =
                all.getSubMatrix(0, count - 1, 0, shared - 1).multiply(eigen.getV()).multiply(rootInverse);
        this.greatest = greatest(slopesM, shared);
        this.own = new RealMatrix[heads];
        RealMatrix inverse = eigen.getSolver().getInverse();
        for (int head = 0; head < heads; head++) {
            int start = unknowns.headStart(head);
            int end = start + Unknowns.headCount() - 1;
            RealMatrix across = all.getSubMatrix(start, end, 0, shared - 1);
            RealMatrix left = all.getSubMatrix(start, end, start, end)
                    .subtract(across.multiply(inverse).multiply(across.transpose()));
            own[head] = new CholeskyDecomposition(left, 1e-9, 0).getL();
        }
    }

    private RealMatrix greatest(List<double[]> slopesM, int shared) {
        RealMatrix sum = MatrixUtils.createRealMatrix(shared, shared);
        for (double[] slopes : slopesM) {
            RealMatrix part = MatrixUtils.createColumnRealMatrix(toShared.preMultiply(slopes));
            sum = sum.add(part.multiply(part.transpose()));
        }
        EigenDecomposition eigen = new EigenDecomposition(sum);
        int kept = Math.min(CarryDoubt.SHARED, shared);
        return eigen.getV().getSubMatrix(0, shared - 1, 0, kept - 1);
    }

    /**
     * The doubt of a carry.
     *
     * @param head the head of its club
     * @param slopesM how it changes with the unknowns, m
     */
    CarryDoubt of(int head, double[] slopesM) {
        double[] whole = toShared.preMultiply(slopesM);
        double[] kept = greatest.preMultiply(whole);
        int start = unknowns.headStart(head);
        double[] ofHead = own[head].preMultiply(Arrays.copyOfRange(slopesM, start, start + Unknowns.headCount()));
        double[] ownM = Arrays.copyOf(ofHead, ofHead.length + 1);
        ownM[ofHead.length] = Math.sqrt(Math.max(0, square(whole) - square(kept)));
        return CarryDoubt.of(kept, ownM);
    }

    private static double square(double[] values) {
        return Arrays.stream(values).map(value -> value * value).sum();
    }
}
