package org.bagwright.learning;

import java.util.Optional;

/**
 * Which golfers are drawn.
 *
 * @param ball the ball that they play
 * @param moreSetups whether some of their shots may be hit with another set-up than today's, and on dates
 * @param strayRatio share of the usual strays
 * @param scatterRatio share of the usual scatter of shots
 * @param shotsRatio share of the usual number of shots
 * @param dayRatio share of the usual difference between days; above 1 every club is hit on one of two days
 * @param device what all monitors tell; empty where each golfer has his own
 */
record Population(
        HiddenGolfer.Ball ball,
        boolean moreSetups,
        double strayRatio,
        double scatterRatio,
        int shotsRatio,
        double dayRatio,
        Optional<Device> device) {
    static final Population USUAL = new Population(HiddenGolfer.Ball.BLEND, true, 1, 1, 1, 1, Optional.empty());
    static final Population TODAY_ONLY = new Population(HiddenGolfer.Ball.BLEND, false, 1, 1, 1, 1, Optional.empty());

    Population ofBall(HiddenGolfer.Ball other) {
        return new Population(other, moreSetups, strayRatio, scatterRatio, shotsRatio, dayRatio, device);
    }

    Population strays(double ratio) {
        return new Population(ball, moreSetups, ratio, scatterRatio, shotsRatio, dayRatio, device);
    }

    Population scatter(double ratio) {
        return new Population(ball, moreSetups, strayRatio, ratio, shotsRatio, dayRatio, device);
    }

    Population shots(int ratio) {
        return new Population(ball, moreSetups, strayRatio, scatterRatio, ratio, dayRatio, device);
    }

    Population days(double ratio) {
        return new Population(ball, moreSetups, strayRatio, scatterRatio, shotsRatio, ratio, device);
    }

    Population with(Device other) {
        return new Population(ball, moreSetups, strayRatio, scatterRatio, shotsRatio, dayRatio, Optional.of(other));
    }
}
