package org.bagwright.flight.golfer;

import java.util.OptionalDouble;
import org.bagwright.flight.Launch;
import org.bagwright.flight.PointHead;
import org.bagwright.flight.Rebound;
import org.bagwright.flight.learning.ClubToday;
import org.bagwright.flight.learning.Delivery;

/** One club and what its own shots tell by themselves, without any other club; messages are made of it. */
final class ClubFit {
    private final ClubToday today;
    private final ClubToday hit;
    private final ShotMedians shots;
    private final Delivery plain;
    private final Delivery delivery;

    /**
     * @param today the club
     * @param hit the club as its shots were hit in the mean
     * @param shots the medians of its shots
     * @param plain the delivery that is usual of such a golfer
     */
    ClubFit(ClubToday today, ClubToday hit, ShotMedians shots, Delivery plain) {
        this.today = today;
        this.hit = hit;
        this.shots = shots;
        this.plain = plain;
        this.delivery = told();
    }

    private Delivery told() {
        Delivery told = plain;
        if (shots.headSpeedMps().isPresent()) {
            told = told.withHeadSpeedMps(shots.headSpeedMps().getAsDouble());
        }
        if (shots.attackDeg().isPresent()) {
            told = told.withAttackDeg(shots.attackDeg().getAsDouble());
        }
        OptionalDouble offsetDeg = offsetDeg(told);
        if (offsetDeg.isPresent()) {
            told = told.withOffsetDeg(offsetDeg.getAsDouble());
        }
        Rebound blow = told.blow(hit, hit.loftDeg());
        if (shots.spinRpm().isPresent() && blow.spinRpm() > 0) {
            told = told.withSpinRatio(shots.spinRpm().getAsDouble() / blow.spinRpm());
        }
        return shots.ballSpeedMps().isPresent() && blow.ballSpeedMps() > 0
                ? told.withEfficiencyRatio(shots.ballSpeedMps().getAsDouble() / blow.ballSpeedMps())
                : told;
    }

    private OptionalDouble offsetDeg(Delivery told) {
        if (shots.launchDeg().isEmpty()) {
            return OptionalDouble.empty();
        }
        PointHead head = hit.head(told.headSpeedMps());
        OptionalDouble spinLoftDeg = head.spinLoftDeg(shots.launchDeg().getAsDouble() - told.attackDeg());
        return spinLoftDeg.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(spinLoftDeg.getAsDouble() + told.attackDeg() - hit.loftDeg());
    }

    ClubToday today() {
        return today;
    }

    /** The club as its shots were hit in the mean: presenting the mean of their lofts. */
    ClubToday hit() {
        return hit;
    }

    ShotMedians shots() {
        return shots;
    }

    /** The delivery that is assumed of a plain amateur with this head speed. */
    Delivery plain() {
        return plain;
    }

    /** The delivery that its own shots tell; what they do not tell is plain. */
    Delivery delivery() {
        return delivery;
    }

    String name() {
        return today.club().name();
    }

    Launch todayLaunch() {
        return delivery.launch(hit, hit.loftDeg());
    }
}
