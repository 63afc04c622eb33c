package org.bagwright.domain.plan;

import java.util.OptionalDouble;
import org.bagwright.domain.option.CarryOrigin;
import org.bagwright.domain.units.Checks;

/**
 * How far one planned club carries, in true averages and in single shots.
 *
 * @param slot the club's place in the bag
 * @param club its name
 * @param lowM the carry that nine in ten single shots exceed, metres
 * @param highM the carry that one in ten exceed, metres
 * @param spreadM the standard deviation of its single shots about their true average, metres
 * @param spreadAssumed whether that is assumed because there are too few shots
 * @param average how well its true average is known
 */
public record CarryBand(
        int slot, String club, double lowM, double highM, double spreadM, boolean spreadAssumed, Average average) {
    /** How many standard deviations each end of a range is from its middle that holds eight of ten values. */
    public static final double EIGHT_OF_TEN = 1.2815515655446004;

    public CarryBand {
        Checks.named(club, "club");
        Checks.that(lowM <= highM, "a band needs its low end first");
        Checks.notNegative(spreadM, "spread");
    }

    /**
     * How well a true average carry is known.
     *
     * @param carrySdM the standard deviation of the carry, metres
     * @param changeSdM that of its change from today; empty where nothing flies in the slot today
     * @param origin where the carry comes from
     * @param extended whether its launch is beyond what the ball model was published for
     */
    public record Average(double carrySdM, OptionalDouble changeSdM, CarryOrigin origin, boolean extended) {
        public Average {
            Checks.notNegative(carrySdM, "spread of a carry");
        }

        /** Where the carry comes from, with the mark of a launch beyond what the ball model was published for. */
        public String originInWords() {
            return origin.words() + (extended ? ", beyond the ball model's tests" : "");
        }
    }
}
