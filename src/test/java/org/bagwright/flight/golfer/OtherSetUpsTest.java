package org.bagwright.flight.golfer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.CarryOrigin;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.flight.golfer.TestBags.ShotOf;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Shots with a club bent, of another length, or on another day, tell of the club as it is today. */
@Tag("analytic")
class OtherSetUpsTest {
    private static final List<Club> BAG = TestBags.genericBag();
    private static final Club IRON = TestBags.find(BAG, "7 iron");
    private static final SetUps BENT =
            (club, choice) -> club.head().loftDeg() + choice.bend().loftDeg();
    private static final GolferFlight PLAIN = fit(List.of());

    private static GolferFlight fit(List<Shot> shots) {
        return GolferFlight.fit(BookSettings.DEFAULT, TestBags.golfer(95), BAG, BENT, shots);
    }

    private static Shot with(Shot shot, Shot.Setup setup, Optional<LocalDate> date) {
        Shot.Series series = new Shot.Series(date, 1, OptionalDouble.empty());
        return new Shot(shot.golfer(), shot.club(), shot.measured(), setup, series, shot.cell());
    }

    private static Shot.Setup bent(double deg) {
        return new Shot.Setup(
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(deg),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static Shot shot(ShotPrediction model, double ratio) {
        return new ShotOf("7 iron")
                .ballMph(ratio * model.ballSpeedMps() / TestBags.MPS_PER_MPH)
                .launch(model.launchDeg())
                .spin(model.spinRpm())
                .carryYd(ratio * ratio * model.carryM() / TestBags.M_PER_YD)
                .shot();
    }

    private static List<Shot> ten(Shot shot) {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            shots.add(shot);
        }
        return shots;
    }

    /** Exact shots of the model with 3 degrees less loft change nothing at today's loft, though they differ from today's. */
    @Test
    void bentClub_isTheModelThere() {
        ShotPrediction strong = PLAIN.predict(IRON, 27);
        GolferFlight flight = fit(ten(with(shot(strong, 1), bent(-3), Optional.empty())));
        assertEquals(PLAIN.predict(IRON, 30).carryM(), flight.predict(IRON, 30).carryM(), 1e-6);
        assertEquals(CarryOrigin.OWN_ELSEWHERE, flight.origin(IRON, 30));
    }

    /** 3 % more ball speed with the club bent is 2 to 3 % more as it is today. */
    @Test
    void bentClub_tellsOfToday() {
        GolferFlight flight = fit(ten(with(shot(PLAIN.predict(IRON, 27), 1.03), bent(-3), Optional.empty())));
        double ratio = flight.predict(IRON, 30).ballSpeedMps()
                / PLAIN.predict(IRON, 30).ballSpeedMps();
        assertTrue(ratio > 1.02 && ratio < 1.03, "ratio " + ratio);
    }

    /** A club that was an inch longer had 0.45 m/s more ball speed: such shots change nothing today. */
    @Test
    void longerClub_isTheModelThere() {
        ShotPrediction today = PLAIN.predict(IRON, 30);
        ShotPrediction longer = PLAIN.predictAtSpeed(IRON, 30, 1 + 0.45 / today.ballSpeedMps());
        Shot.Setup setup = new Shot.Setup(
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(38 * 0.0254));
        GolferFlight flight = fit(ten(with(shot(longer, 1), setup, Optional.empty())));
        assertEquals(today.carryM(), flight.predict(IRON, 30).carryM(), 1e-6);
    }

    /** Ten quick shots of one day may be a good day; five on each of two days tell more. */
    @Test
    void secondDay_tellsMoreThanMoreShotsOfOne() {
        Optional<LocalDate> first = Optional.of(LocalDate.of(2026, 5, 2));
        Optional<LocalDate> second = Optional.of(LocalDate.of(2026, 6, 3));
        Shot shot = new ShotOf("7 iron").headMph(78).shot();
        List<Shot> oneDay = ten(with(shot, Shot.Setup.TODAY, first));
        List<Shot> twoDays = new ArrayList<>(oneDay.subList(0, 5));
        twoDays.addAll(ten(with(shot, Shot.Setup.TODAY, second)).subList(0, 5));
        double plainMps = PLAIN.headSpeedMps(IRON);
        double oneMps = fit(oneDay).headSpeedMps(IRON);
        double twoMps = fit(twoDays).headSpeedMps(IRON);
        assertTrue(plainMps < oneMps && oneMps < twoMps, plainMps + ", " + oneMps + ", " + twoMps);
        assertTrue(twoMps < 78 * TestBags.MPS_PER_MPH);
    }
}
