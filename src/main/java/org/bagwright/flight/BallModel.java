package org.bagwright.flight;

/**
 * Drag and lift of a spinning ball, as pure numbers of the spin ratio {@code S = omega r / V} and the Reynolds number
 * {@code Re = 2 r V / nu}. Smooth in both for any values of 0 or more.
 */
interface BallModel {
    /** The drag coefficient on the ball's cross section. */
    double drag(double spinRatio, double reynolds);

    /** The lift coefficient on the ball's cross section, positive for backspin. */
    double lift(double spinRatio, double reynolds);

    /** Whether the model's publication has nothing about a launch, so that its flight rests on our extension. */
    boolean extendedFor(double spinRatio, double reynolds);
}
