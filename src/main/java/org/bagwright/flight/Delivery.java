package org.bagwright.flight;

/**
 * How one golfer brings one club to the ball, and how his ball answers.
 *
 * @param headSpeedMps head speed, m/s
 * @param attackDeg head path above the horizontal, degrees
 * @param offsetDeg delivered loft above presented loft, degrees
 * @param efficiencyRatio ball speed over that of the impact formulas
 * @param spinRatio spin over that of the impact formulas
 * @param carryRatio carry over that of the flight model
 */
record Delivery(
        double headSpeedMps,
        double attackDeg,
        double offsetDeg,
        double efficiencyRatio,
        double spinRatio,
        double carryRatio) {
    private static final double MOST_SPIN_LOFT_DEG = 85;

    /** The launch of a club that presents this loft at address. */
    Launch launch(ClubToday club, double presentedLoftDeg) {
        Impact.Rebound blow = blow(club, presentedLoftDeg);
        return new Impact.Rebound(
                        blow.ballSpeedMps() * efficiencyRatio, blow.launchFromPathDeg(), blow.spinRpm() * spinRatio)
                .along(attackDeg);
    }

    /** The same before efficiency and spin ratio, and seen from the path. */
    Impact.Rebound blow(ClubToday club, double presentedLoftDeg) {
        double spinLoftDeg = presentedLoftDeg + offsetDeg - attackDeg;
        double boundedDeg = Math.max(0, Math.min(MOST_SPIN_LOFT_DEG, spinLoftDeg));
        return Impact.strike(club.head(headSpeedMps), Ball.STANDARD, boundedDeg);
    }

    Delivery withHeadSpeedMps(double mps) {
        return new Delivery(mps, attackDeg, offsetDeg, efficiencyRatio, spinRatio, carryRatio);
    }

    Delivery withEfficiencyRatio(double ratio) {
        return new Delivery(headSpeedMps, attackDeg, offsetDeg, ratio, spinRatio, carryRatio);
    }

    Delivery withSpinRatio(double ratio) {
        return new Delivery(headSpeedMps, attackDeg, offsetDeg, efficiencyRatio, ratio, carryRatio);
    }

    Delivery withCarryRatio(double ratio) {
        return new Delivery(headSpeedMps, attackDeg, offsetDeg, efficiencyRatio, spinRatio, ratio);
    }

    Delivery withAttackDeg(double deg) {
        return new Delivery(headSpeedMps, deg, offsetDeg, efficiencyRatio, spinRatio, carryRatio);
    }

    Delivery withOffsetDeg(double deg) {
        return new Delivery(headSpeedMps, attackDeg, deg, efficiencyRatio, spinRatio, carryRatio);
    }
}
