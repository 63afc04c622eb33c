package org.bagwright.balance;

import static org.bagwright.balance.BalanceBench.DRIVER;
import static org.bagwright.balance.BalanceBench.G_IN_PER_OZ_IN;
import static org.bagwright.balance.BalanceBench.M_PER_IN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.units.LengthUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BalancePartsTest {
    private static final double BLANK = Double.NaN;

    private static BalanceBench blank(ClubKind kind, double loftDeg) {
        return new BalanceBench(
                kind, loftDeg, 60, BLANK, BLANK, BLANK, BLANK, BLANK, BLANK, Optional.empty(), List.of());
    }

    @Tag("analytic")
    @Test
    void fullyStatedClub_assumesNothing() {
        assertEquals(Set.of(), BalanceParts.of(DRIVER.club()).assumed());
    }

    @Tag("analytic")
    @Test
    void blankClub_assumesEverything_inWords() {
        assertEquals(
                EnumSet.allOf(BalanceFigure.class),
                BalanceParts.of(blank(ClubKind.IRON, 30).club()).assumed());
        BalanceParts iron = BalanceParts.of(blank(ClubKind.IRON, 30).club());
        assertEquals(
                List.of(
                        "length 37 in",
                        "head mass 270 g",
                        "head inertia 2430 g cm2",
                        "shaft mass 110 g",
                        "shaft balance 17.76 in from the butt",
                        "grip mass 50 g"),
                Arrays.stream(BalanceFigure.values())
                        .map(figure -> figure.label() + " " + figure.text(iron.value(figure), LengthUnit.INCH) + " "
                                + figure.unitText(LengthUnit.INCH))
                        .toList());
    }

    /** Common practice: shafts in proportion to their length, a putter's 115 g at 34 in. */
    @Tag("analytic")
    @Test
    void putterShaft_isInProportionToItsLength() {
        BalanceBench putter = blank(ClubKind.PUTTER, 3);
        assertEquals(0.115, BalanceParts.of(putter.withLengthIn(34).club()).shaftMassKg(), 1e-12);
        assertEquals(0.0575, BalanceParts.of(putter.withLengthIn(17).club()).shaftMassKg(), 1e-12);
    }

    @Tag("analytic")
    @Test
    void oneBlankCell_isTheOneAssumed() {
        assertEquals(
                Set.of(BalanceFigure.GRIP_MASS),
                BalanceParts.of(DRIVER.withGripG(BLANK).club()).assumed());
        assertEquals(
                Set.of(BalanceFigure.SHAFT_BALANCE),
                BalanceParts.of(DRIVER.withShaft(70, BLANK).club()).assumed());
        assertEquals(0.07, DRIVER.withShaft(70, BLANK).balance().parts().shaftMassKg(), 1e-12);
    }

    /** Common practice: clubs are built between C7 and D5, men's nearly all between C9 and D4. */
    @Tag("analytic")
    @ParameterizedTest
    @CsvSource({
        "DRIVER, 10",
        "WOOD, 15",
        "WOOD, 18",
        "HYBRID, 20",
        "HYBRID, 24",
        "IRON, 20",
        "IRON, 30",
        "IRON, 44",
        "WEDGE, 56"
    })
    void blankClub_hasAUsualSwingweight(ClubKind kind, double loftDeg) {
        double points = blank(kind, loftDeg).swingweightPoints();
        assertTrue(points > 27 && points < 35, kind + " " + loftDeg + ": " + points);
    }

    /** A handbook's generic iron set (head g / length in) [read in a handbook] with the assumed shaft and grip comes out near D0, and even. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({"249, 38.5", "256, 38", "263, 37.5", "270, 37", "277, 36.5", "284, 36", "291, 35.5"})
    void handbooksIrons_withAssumedShaftAndGrip_areNearD0(double headG, double lengthIn) {
        BalanceBench iron = blank(ClubKind.IRON, 30).withLengthIn(lengthIn).withHeadG(headG);
        double shaftG = 110 * lengthIn / 37;
        double ozIn = (headG * (lengthIn - 14) + shaftG * (0.48 * lengthIn - 14) - 50 * 10.5) / G_IN_PER_OZ_IN;
        assertEquals(ozIn, iron.build().swingweight().momentOzIn(), 1e-9);
        assertEquals(30, iron.swingweightPoints(), 1.5);
    }

    /** The least and most that a head of its mass can have, see {@link ClubKind}, and below the limit for woods. */
    @Tag("analytic")
    @ParameterizedTest
    @EnumSource(ClubKind.class)
    void assumedHeadInertia_isPossible(ClubKind kind) {
        for (double massKg = 0.15; massKg < 0.4; massKg += 0.05) {
            BalanceParts parts =
                    BalanceParts.of(blank(kind, 20).withHeadG(1000 * massKg).club());
            assertTrue(
                    ClubKind.DRIVER.headInertiaLimitKgM2(massKg).holds(parts.headInertiaKgM2()), kind + " " + massKg);
        }
        BalanceBench usual = blank(kind, 20);
        assertTrue(HeadInertiaCheck.of(kind, usual.build()).stream().noneMatch(HeadInertiaCheck::overLimit));
        assertTrue(usual.balance().parts().shaftBalanceM() < 25 * M_PER_IN);
    }
}
