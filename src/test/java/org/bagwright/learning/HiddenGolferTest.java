package org.bagwright.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.LongStream;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.Launch;
import org.bagwright.flight.TrueFlight;
import org.bagwright.planning.options.BagMaker;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The hidden golfers by whom the program is judged: their truth is what the model says where nothing is drawn. */
@Tag("analytic")
class HiddenGolferTest {
    private static final double CLOSE_M = LengthUnit.YARD.toM(0.05);

    @Test
    void trueFlight_ofAPublishedBall_isTheFlightOfTheProgram() {
        for (BallModelKind ball : BallModelKind.values()) {
            BallFlight program = new BallFlight(AirConditions.DEFAULT, ball);
            for (Launch launch :
                    List.of(new Launch(65, 12, 2600), new Launch(50, 18, 6500), new Launch(35, 30, 9500))) {
                // Other steps of the integration.
                assertEquals(
                        program.fly(launch, 1.05).carryM(),
                        TrueFlight.published(ball, 1.05, 1).carryM(launch),
                        1e-3);
            }
        }
    }

    @Test
    void thirdBall_flies_asFarAsGolfBallsDo() {
        // The range among balls.
        assertEquals(229, TrueFlight.third().carryM(new Launch(70, 11, 2700)), 12);
        assertEquals(157, TrueFlight.third().carryM(new Launch(53.6, 16.3, 7000)), 10);
    }

    @Test
    void exactShots_areReproduced_andEveryOtherSetting() {
        for (long seed = 1; seed <= 6; seed++) {
            HiddenGolfer exact = HiddenGolfer.exact(seed);
            assertTrueCarries(exact, exact.shots());
        }
    }

    @Test
    void withoutShots_whatIsAssumed_isTheTruthOfTheMeans() {
        HiddenGolfer exact = HiddenGolfer.exact(7);
        assertTrueCarries(exact, List.of());
    }

    private static void assertTrueCarries(HiddenGolfer hidden, List<Shot> shots) {
        new BagMaker(hidden.book(shots))
                .bags().bags().get(0).slots().stream()
                        .flatMap(slot -> slot.options().stream())
                        .forEach(option -> assertEquals(
                                hidden.trueCarryM(option), option.carryM().orElseThrow(), CLOSE_M, option.key()));
    }

    @Test
    void bags_have6To14Clubs_threeInTenOfThemWithoutShots() {
        List<HiddenGolfer> many = LongStream.range(1, 200)
                .mapToObj(seed -> HiddenGolfer.drawn(seed, Population.USUAL))
                .toList();
        int clubs = 0;
        int shot = 0;
        for (HiddenGolfer golfer : many) {
            List<Club> bag = golfer.bag().clubs();
            assertTrue(bag.size() >= 6 && bag.size() <= 14, bag.size() + " clubs");
            clubs += bag.size();
            shot += (int) bag.stream().filter(golfer::hasShots).count();
        }
        // Three standard errors of a share among some 1,900 clubs.
        assertEquals(0.7, (double) shot / clubs, 0.032);
        assertEquals(
                6.5 * shot, many.stream().mapToInt(one -> one.shots().size()).sum(), 0.3 * shot);
    }

    @Test
    void untried_isNeitherTodays_norThatOfAShot() {
        HiddenGolfer golfer = HiddenGolfer.drawn(3, Population.TODAY_ONLY);
        for (var slot : new BagMaker(golfer.book()).bags().bags().get(0).slots()) {
            List<Option> tried = slot.options().stream()
                    .filter(option -> !golfer.isUntried(option))
                    .toList();
            assertEquals(List.of(slot.today()), tried);
        }
    }
}
