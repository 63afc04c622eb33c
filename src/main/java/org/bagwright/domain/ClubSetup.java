package org.bagwright.domain;

import java.util.Optional;

/**
 * One club set up in one way, with all its numbers.
 *
 * @param club the club
 * @param choice what is set on it
 * @param pose what the geometry says
 * @param deliveredFaceDeg heading of the face that the golfer brings to the ball, closed positive, degrees: with the
 *     leading edge squared the face heading at address, else the heading of the edge as the head sits
 * @param shot the shot it gives; empty for a putter
 * @param build mass and balance
 * @param match by what it is matched to other clubs; empty where it is in no group
 */
public record ClubSetup(
        Club club,
        Choice choice,
        PoseNumbers pose,
        double deliveredFaceDeg,
        Optional<ShotPrediction> shot,
        BuildNumbers build,
        Optional<MatchValue> match) {}
