package org.bagwright.domain.option;

/**
 * What is expected of a golfer's shots with one option.
 *
 * @param shot the likeliest shot
 * @param doubt how far its carry may be off
 * @param origin where the carry comes from
 * @param extended whether its launch is beyond what the ball model was published for
 */
public record ExpectedShot(ShotPrediction shot, CarryDoubt doubt, CarryOrigin origin, boolean extended) {
    /** A shot that is taken as certain. */
    public static ExpectedShot certain(ShotPrediction shot) {
        return new ExpectedShot(shot, CarryDoubt.NONE, CarryOrigin.OWN_HERE, false);
    }
}
