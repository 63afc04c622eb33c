package org.bagwright.learning;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.Launch;
import org.bagwright.flight.golfer.GolferFlight;
import org.bagwright.geometry.ClubGeometry;

/**
 * What is true of a hidden golfer: everything that his shots do not tell outright, drawn. All spreads are assumed, as the
 * manual has them; they are typed in here once more, so that the fit is not judged by its own constants.
 */
final class HiddenTruth {
    private static final double MIDDLE_LENGTH_M = 39 * HiddenBag.M_PER_IN;
    private static final double LENGTH_STEP_M = 4 * HiddenBag.M_PER_IN;
    private static final double RESPONSE_SD = 0.15;

    private record TrueClub(ClubGeometry geometry, double todayLoftDeg, TrueDelivery delivery, double carryRatio) {}

    private final Golfer golfer;
    private final TrueBall ball;
    private final double responseRatio;
    private final Map<String, TrueClub> clubs = new TreeMap<>();

    HiddenTruth(HiddenBag bag, TrueBall ball, Dice dice) {
        this.golfer = bag.golfer();
        this.ball = ball;
        this.responseRatio = 1 + dice.normal(RESPONSE_SD);
        Map<String, ClubGeometry> geometries = new TreeMap<>();
        bag.clubs().forEach(club -> geometries.put(club.name(), ClubGeometry.of(club, bag.sleeveOf(club), golfer)));
        GolferFlight assumed = GolferFlight.fit(
                BookSettings.DEFAULT,
                golfer,
                bag.clubs(),
                (club, choice) -> loftDeg(geometries.get(club.name()), choice),
                List.of());
        Shared shared = Shared.drawn(dice);
        for (Club club : bag.clubs()) {
            ClubGeometry geometry = geometries.get(club.name());
            double todayLoftDeg = loftDeg(geometry, club.today());
            TrueDelivery plain = TrueDelivery.assumed(
                    club, assumed.headSpeedMps(club), loftDeg -> assumed.predict(club, loftDeg), todayLoftDeg);
            clubs.put(
                    club.name(),
                    new TrueClub(geometry, todayLoftDeg, shared.own(plain, dice), Math.exp(dice.normal(0.02))));
        }
    }

    /** What the clubs of a golfer have in common: logarithms of ratios, and degrees. */
    private record Shared(
            double speed,
            double speedByLength,
            double strike,
            double strikeByLoft,
            double loftDeg,
            double loftByLoftDeg,
            double spin,
            double spinByLoft) {
        static Shared drawn(Dice dice) {
            return new Shared(
                    dice.normal(0.015),
                    dice.normal(0.01),
                    dice.normal(0.025),
                    dice.normal(0.01),
                    dice.normal(2),
                    dice.normal(1.5),
                    dice.normal(0.12),
                    dice.normal(0.03));
        }

        /** The delivery of one club, with what is its own: speed, strike, loft delivered and loft of the head, spin, path. */
        TrueDelivery own(TrueDelivery plain, Dice dice) {
            Club club = plain.club();
            boolean driver = club.kind() == ClubKind.DRIVER;
            double longer = (club.parts().lengthM().orElseThrow() - MIDDLE_LENGTH_M) / LENGTH_STEP_M;
            double weaker = (club.head().loftDeg() - 30) / 15;
            return plain.changed(
                    speed + speedByLength * longer + dice.normal(0.008),
                    strike + strikeByLoft * weaker + dice.normal(0.012),
                    loftDeg + loftByLoftDeg * weaker + dice.normal(driver ? 1.5 : 1.2) + dice.normal(0.6),
                    dice.normal(driver ? 2 : 1.2),
                    spin + spinByLoft * weaker + dice.normal(0.035));
        }
    }

    private double loftDeg(ClubGeometry geometry, Choice choice) {
        return geometry.pose(choice).presentedLoftDeg(golfer);
    }

    /** How the ball really leaves a club in a set-up. */
    Launch launch(String club, Choice choice) {
        TrueClub struck = clubs.get(club);
        return struck.delivery().launch(loftMoreDeg(struck, choice));
    }

    private double loftMoreDeg(TrueClub struck, Choice choice) {
        return loftDeg(struck.geometry(), new Choice(choice.setting(), choice.bend())) - struck.todayLoftDeg();
    }

    /** The delivery of a club on one day: its head speed times a ratio. */
    Launch launch(String club, Choice choice, double headRatio) {
        TrueClub struck = clubs.get(club);
        return struck.delivery().changed(Math.log(headRatio), 0, 0, 0, 0).launch(loftMoreDeg(struck, choice));
    }

    TrueDelivery delivery(String club) {
        return clubs.get(club).delivery();
    }

    /** The true carry of a club in a set-up, m. */
    double carryM(String club, Choice choice) {
        return carryM(club, launch(club, choice));
    }

    /** {@code [F(today) + (1 + R) (F(launch) - F(today))] exp(q)}, m. */
    double carryM(String club, Launch launch) {
        TrueClub struck = clubs.get(club);
        double todayM = ball.carryM(struck.delivery().launch(0));
        return (todayM + responseRatio * (ball.carryM(launch) - todayM)) * struck.carryRatio();
    }
}
