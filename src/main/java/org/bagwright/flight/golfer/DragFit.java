package org.bagwright.flight.golfer;

import java.util.List;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.Launch;

/**
 * One factor on the drag of the ball model for one golfer: least squares in log carry over his measured flights, a flight
 * more than 3 % off counting only linearly (Huber).
 */
final class DragFit {
    static final double LEAST_RATIO = 0.5;
    static final double MOST_RATIO = 1.5;
    private static final int GRID = 20;
    private static final double HUBER = 0.03;

    private final BallFlight flights;
    private final List<Measured> flown;

    /**
     * The fit of these flights; one that the ball model does not let fly counts for nothing.
     *
     * @param flights the air and the ball model
     * @param measured the measured flights
     */
    DragFit(BallFlight flights, List<Measured> measured) {
        this.flights = flights;
        flown = measured.stream()
                .filter(one -> flights.fly(one.launch(), 1).carryM() > 1)
                .toList();
    }

    /**
     * A measured flight.
     *
     * @param launch how it started
     * @param carryM how far it carried, m
     */
    public record Measured(Launch launch, double carryM) {}

    /** The factor, from {@link #LEAST_RATIO} to {@link #MOST_RATIO}; 1 without a flight. */
    double ratio() {
        if (flown.isEmpty()) {
            return 1;
        }
        double best = LEAST_RATIO;
        double step = (MOST_RATIO - LEAST_RATIO) / GRID;
        for (int i = 1; i <= GRID; i++) {
            double ratio = LEAST_RATIO + i * step;
            best = misfit(ratio) < misfit(best) ? ratio : best;
        }
        return new BrentOptimizer(1e-10, 1e-10)
                .optimize(
                        new MaxEval(500),
                        GoalType.MINIMIZE,
                        new SearchInterval(Math.max(LEAST_RATIO, best - step), Math.min(MOST_RATIO, best + step), best),
                        new UnivariateObjectiveFunction(ratio -> misfit(ratio)))
                .getPoint();
    }

    private double misfit(double ratio) {
        double sum = 0;
        for (Measured one : flown) {
            double off = Math.abs(Math.log(flights.fly(one.launch(), ratio).carryM() / one.carryM()));
            sum += off <= HUBER ? off * off : HUBER * (2 * off - HUBER);
        }
        return sum;
    }
}
