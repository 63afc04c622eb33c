package org.bagwright.flight;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.MatrixUtils;

/** An off-centre blow of a driver in space. */
public final class BenchBlow {
    private final RigidHead head = new RigidHead(
            0.2,
            MatrixUtils.createRealDiagonalMatrix(new double[] {2.8e-4, 5e-4, 3e-4}),
            new Vector3D(45, 0, 0),
            Vector3D.ZERO,
            Restitution.PENNER_DRIVER);
    private final RigidHead.Contact contact =
            new RigidHead.Contact(new Vector3D(Math.cos(0.2), Math.sin(0.2), 0), new Vector3D(0.035, 0.005, 0.01));

    public double ballMps() {
        return head.strike(Ball.STANDARD, contact).ball().ballMps().getNorm();
    }
}
