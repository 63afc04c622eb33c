package org.bagwright.learning;

import org.bagwright.domain.book.BallModelKind;
import org.bagwright.flight.Launch;
import org.bagwright.flight.TrueFlight;

/** The ball that a hidden golfer really plays: carry of a launch, m. */
@FunctionalInterface
interface TrueBall {
    /** Blends of the two published balls, each as published or with drag and lift of its own. */
    int BLENDS = 6;

    double DRAG_SD = 0.07;
    double LIFT_SD = 0.05;

    double carryM(Launch launch);

    /** {@code (1 - b) F_BearmanHarvey + b F_SmitsSmith}. */
    static TrueBall blend(double share, double lnDrag, double lnLift) {
        TrueFlight bearman = TrueFlight.published(BallModelKind.BEARMAN_HARVEY, Math.exp(lnDrag), Math.exp(lnLift));
        TrueFlight smits = TrueFlight.published(BallModelKind.SMITS_SMITH, Math.exp(lnDrag), Math.exp(lnLift));
        return launch -> (share == 1 ? 0 : (1 - share) * bearman.carryM(launch))
                + (share == 0 ? 0 : share * smits.carryM(launch));
    }

    /** One of the six truths: three blends, with and without drag and lift of their own. */
    static TrueBall ofTruth(int truth, Dice dice) {
        double share = new double[] {0, 1, 0.5}[truth % 3];
        return truth < 3 ? blend(share, 0, 0) : blend(share, dice.normal(DRAG_SD), dice.normal(LIFT_SD));
    }

    /** A ball that is neither of the published ones. */
    static TrueBall third() {
        return TrueFlight.third()::carryM;
    }
}
