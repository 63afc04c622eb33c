package org.bagwright.balance;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.PortPiece;

/**
 * A head with its pieces as one rigid body, in the head frame of the package description.
 *
 * @param massKg head with its pieces, kilograms
 * @param shiftM from the centre of gravity of the head with empty ports to that of this one, metres
 * @param aboutCentreKgM2 3 x 3 tensor of inertia about its own centre of gravity, rows and columns x, y, z, kg m2; a copy is
 *     for the caller to keep
 */
public record HeadInertia(double massKg, Vector3D shiftM, RealMatrix aboutCentreKgM2) {

    public HeadInertia {
        aboutCentreKgM2 = aboutCentreKgM2.copy();
    }

    @Override
    public RealMatrix aboutCentreKgM2() {
        return aboutCentreKgM2.copy();
    }

    /**
     * A head with empty ports. Only the inertia about the vertical axis is known or assumed as a whole; the two others are
     * assumed shares of it, by kind, and the axes of the head frame are assumed to be its principal ones.
     */
    static HeadInertia bare(ClubKind kind, double massKg, double verticalKgM2) {
        double[] diagonalKgM2 = {rollRatio(kind) * verticalKgM2, pitchRatio(kind) * verticalKgM2, verticalKgM2};
        return new HeadInertia(massKg, Vector3D.ZERO, MatrixUtils.createRealDiagonalMatrix(diagonalKgM2));
    }

    /** This head with pieces added as points; exact by the parallel-axis rule. */
    HeadInertia with(List<PortPiece> pieces) {
        double allKg = massKg;
        Vector3D momentKgM = shiftM.scalarMultiply(massKg);
        for (PortPiece piece : pieces) {
            allKg += piece.massKg();
            momentKgM = momentKgM.add(piece.massKg(), placeM(piece));
        }
        Vector3D centreM = momentKgM.scalarMultiply(1 / allKg);
        RealMatrix tensor = aboutCentreKgM2.add(ofPoint(massKg, shiftM.subtract(centreM)));
        for (PortPiece piece : pieces) {
            tensor = tensor.add(ofPoint(piece.massKg(), placeM(piece).subtract(centreM)));
        }
        return new HeadInertia(allKg, centreM, tensor);
    }

    /** Inertia about the vertical axis through the centre of gravity, kg m2. */
    public double verticalKgM2() {
        return aboutCentreKgM2.getEntry(2, 2);
    }

    /** Inertia about an axis through the centre of gravity along this unit vector, kg m2. */
    double aboutKgM2(Vector3D axis) {
        return new Vector3D(aboutCentreKgM2.operate(axis.toArray())).dotProduct(axis);
    }

    /** Where a piece sits in the head frame, metres. */
    static Vector3D placeM(PortPiece piece) {
        return new Vector3D(piece.xMm() / 1000, piece.yMm() / 1000, piece.zMm() / 1000);
    }

    /** Inertia about the axis toward the target, as a share of that about the vertical axis: common practice. */
    private static double rollRatio(ClubKind kind) {
        return switch (kind) {
            case DRIVER -> 0.60;
            case WOOD -> 0.70;
            case HYBRID -> 0.80;
            case IRON, WEDGE -> 1.10;
            case PUTTER -> 0.90;
        };
    }

    /** Inertia about the axis from toe to heel, as a share of that about the vertical axis: common practice. */
    private static double pitchRatio(ClubKind kind) {
        return switch (kind) {
            case DRIVER -> 0.65;
            case WOOD -> 0.45;
            case HYBRID -> 0.40;
            case IRON -> 0.25;
            case WEDGE -> 0.30;
            case PUTTER -> 0.35;
        };
    }

    private static RealMatrix ofPoint(double massKg, Vector3D r) {
        double x = r.getX();
        double y = r.getY();
        double z = r.getZ();
        return MatrixUtils.createRealMatrix(new double[][] {
                    {y * y + z * z, -x * y, -x * z},
                    {-x * y, x * x + z * z, -y * z},
                    {-x * z, -y * z, x * x + y * y}
                })
                .scalarMultiply(massKg);
    }
}
