package org.bagwright.planning.outlook;

import java.util.OptionalDouble;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.plan.LoftAdvice;
import org.bagwright.domain.plan.Sensitivity;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.flight.BestLoft;
import org.bagwright.flight.golfer.GolferFlight;

/**
 * How a club's carry answers to small changes; slopes are central differences over half a degree and half a percent.
 *
 * @param flight the fitted golfer
 * @param club a carrying club of his bag
 */
record Sensitivities(GolferFlight flight, Club club) {
    private static final double STEP_DEG = 0.25;
    private static final double SPEED_STEP_RATIO = 0.0025;
    private static final double SAME_LOFT_DEG = 0.5;
    private static final double SAME_CARRY_M = LengthUnit.YARD.toM(0.3);

    /** @param loftDeg the loft that its planned option presents at address, degrees */
    Sensitivity at(double loftDeg) {
        double carryM = carryM(loftDeg);
        BestLoft best = BestLoft.around(tried -> carryM(tried), loftDeg);
        return new Sensitivity(
                club.slot(),
                club.name(),
                loftDeg,
                carryM,
                (carryM(loftDeg + STEP_DEG) - carryM(loftDeg - STEP_DEG)) / (2 * STEP_DEG),
                perMps(loftDeg),
                new Sensitivity.LoftOptimum(
                        best.atEdgeOfReach() ? OptionalDouble.empty() : OptionalDouble.of(best.loftDeg()),
                        Math.max(carryM, best.carryM()),
                        advice(best, loftDeg, carryM)),
                Math.toDegrees(Math.atan(Math.tan(Math.toRadians(loftDeg)) * Math.sin(Math.toRadians(1)))));
    }

    private double carryM(double loftDeg) {
        return flight.predict(club, loftDeg).carryM();
    }

    private double perMps(double loftDeg) {
        double quickM =
                flight.predictAtSpeed(club, loftDeg, 1 + SPEED_STEP_RATIO).carryM();
        double slowM =
                flight.predictAtSpeed(club, loftDeg, 1 - SPEED_STEP_RATIO).carryM();
        return (quickM - slowM) / (2 * SPEED_STEP_RATIO * flight.headSpeedMps(club));
    }

    private static LoftAdvice advice(BestLoft best, double loftDeg, double carryM) {
        if (Math.abs(best.loftDeg() - loftDeg) <= SAME_LOFT_DEG || best.carryM() - carryM <= SAME_CARRY_M) {
            return LoftAdvice.BEST;
        }
        return best.loftDeg() > loftDeg ? LoftAdvice.MORE : LoftAdvice.LESS;
    }
}
