package org.bagwright.flight.learning;

/** The numbers on which the shots with one club depend; each is a straight line in the unknowns, see {@link Unknown}. */
public enum Argument {
    LN_HEAD_SPEED(1e-3),
    LN_EFFICIENCY(1e-3),
    OFFSET_DEG(0.05),
    ATTACK_DEG(0.05),
    LN_SPIN(0.01),
    LN_CARRY(1e-3),
    LN_DRAG(0.01),
    LN_LIFT(0.01),
    RESPONSE(0.01),
    BALL(0.01);

    public static final int COUNT = values().length;

    private final double step;

    Argument(double step) {
        this.step = step;
    }

    /** A small step of it, for derivatives. */
    double step() {
        return step;
    }
}
