package org.bagwright.domain.option;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.StatedLimit;

/**
 * One club set up in one way, with all its numbers.
 *
 * @param club the club
 * @param wishes what is wanted of it
 * @param choice what is set on it
 * @param pose what the geometry says
 * @param deliveredFaceDeg heading of the face that the golfer brings to the ball, closed positive, degrees: with the
 *     leading edge squared the face heading at address, else the heading of the edge as the head sits
 * @param expected what is expected of its shots; empty for a putter
 * @param build mass and balance
 * @param match by what it is matched to other clubs; empty where it is in no group
 */
public record ClubSetup(
        Club club,
        ClubWishes wishes,
        Choice choice,
        PoseNumbers pose,
        double deliveredFaceDeg,
        Optional<ExpectedShot> expected,
        BuildNumbers build,
        Optional<MatchValue> match) {

    private static final double SAME_TURN_DEG = 1e-6;

    /** The likeliest shot; empty for a putter. */
    public Optional<ShotPrediction> shot() {
        return expected.map(ExpectedShot::shot);
    }

    /** The variance of its carry, m2; 0 for a putter. */
    public double carryVarianceM2() {
        return expected.map(shot -> shot.doubt().varianceM2()).orElse(0.0);
    }

    /** Whether it turns the shaft away from the club's setting of today. */
    public boolean turnsShaft() {
        return Math.abs(pose.shaftTurnDeg()) >= SAME_TURN_DEG;
    }

    /** The value by which a measure judges it by itself, in the measure's unit; empty if it has none. */
    public OptionalDouble value(Measure measure) {
        return switch (measure) {
            case LOFT -> OptionalDouble.of(pose.gaugeLoftDeg());
            case LIE -> OptionalDouble.of(pose.gaugeLieDeg());
            case SITS -> OptionalDouble.of(pose.sitsClosedDeg());
            case CARRY -> shot().map(flown -> OptionalDouble.of(flown.carryM())).orElseGet(OptionalDouble::empty);
            case SWINGWEIGHT -> OptionalDouble.of(build.swingweight().scalePoints());
            case GAP, REACH, SPREAD, CHANGE -> OptionalDouble.empty();
        };
    }

    /** The value that a limit of the club by itself bounds, in the limit's unit; empty if it has none. */
    public OptionalDouble value(LimitKind kind) {
        return switch (kind.quantity()) {
            case SITS -> OptionalDouble.of(pose.sitsClosedDeg());
            case CARRY -> value(Measure.CARRY);
            case LANDING ->
                shot().map(flown -> OptionalDouble.of(flown.landingDeg())).orElseGet(OptionalDouble::empty);
            case GAP -> OptionalDouble.empty();
        };
    }

    /** Its terms with what it breaks of its own limits. */
    public Terms withLimits(Terms terms, Aims aims) {
        Terms with = terms;
        for (StatedLimit limit : wishes.limits().all()) {
            OptionalDouble value = value(limit.kind());
            if (value.isPresent()) {
                with = with.withLimit(limit.kind(), aims.breakThousandths(limit, value.getAsDouble()));
            }
        }
        return with;
    }

    ClubSetup withWishes(ClubWishes other) {
        return new ClubSetup(club, other, choice, pose, deliveredFaceDeg, expected, build, match);
    }

    /** How far it is off by every measure by which anything is wanted of it, in the measure's unit. */
    public Map<Measure, Double> deviations() {
        Map<Measure, Double> off = new EnumMap<>(Measure.class);
        wishes.byMeasure().forEach((measure, wanted) -> value(measure)
                .ifPresent(value -> off.put(measure, wanted.deviationMeasureUnits(value))));
        return off;
    }
}
