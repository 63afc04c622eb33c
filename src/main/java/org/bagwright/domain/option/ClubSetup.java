package org.bagwright.domain.option;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.SitsRange;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Targets;

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
        Optional<MatchValue> match) {

    /**
     * How far it is off by every measure of its own for which there is a target, in the measure's unit; sits by how far it is
     * outside the range.
     */
    public Map<Measure, Double> deviations(SitsRange sits) {
        Targets targets = club.targets();
        Map<Measure, Double> off = new EnumMap<>(Measure.class);
        put(off, Measure.LOFT, pose.gaugeLoftDeg(), targets.loftDeg());
        off.put(Measure.LIE, pose.gaugeLieDeg() - club.lieTargetDeg());
        off.put(Measure.SITS, sits.outsideDeg(pose.sitsClosedDeg()));
        shot.ifPresent(flown -> put(off, Measure.CARRY, flown.carryM(), targets.carryM()));
        targets.swingweight()
                .ifPresent(target ->
                        off.put(Measure.SWINGWEIGHT, build.swingweight().scalePoints() - target.scalePoints()));
        return off;
    }

    private static void put(Map<Measure, Double> off, Measure measure, double value, OptionalDouble target) {
        target.ifPresent(wanted -> off.put(measure, value - wanted));
    }
}
