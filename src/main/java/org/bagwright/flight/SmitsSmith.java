package org.bagwright.flight;

/**
 * Smits and Smith 1994, Science and Golf II, 340-347: {@code CD = 0.24 + 0.18 S + 0.06 sin(pi (Re - 90000) / 200000)},
 * {@code CL = 0.54 S^0.4}. Fitted to driver shots, 70000 < Re < 210000 and 0.08 < S < 0.2; beyond that the formulas are
 * used unchanged, which is smooth and keeps the drag positive.
 */
final class SmitsSmith implements BallModel {
    static final SmitsSmith MODEL = new SmitsSmith();

    private SmitsSmith() {}

    @Override
    public double drag(double spinRatio, double reynolds) {
        return 0.24 + 0.18 * spinRatio + 0.06 * Math.sin(Math.PI * (reynolds - 90000) / 200000);
    }

    @Override
    public double lift(double spinRatio, double reynolds) {
        return 0.54 * Math.pow(spinRatio, 0.4);
    }

    @Override
    public boolean extendedFor(double spinRatio, double reynolds) {
        return !(spinRatio > 0.08 && spinRatio < 0.2 && reynolds > 70000 && reynolds < 210000);
    }
}
