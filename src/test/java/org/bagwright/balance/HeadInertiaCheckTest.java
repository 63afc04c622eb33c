package org.bagwright.balance;

import static org.bagwright.balance.BalanceBench.DRIVER;
import static org.bagwright.balance.BalanceBench.piece;
import static org.bagwright.balance.BalanceBench.pieces;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.BuildNumbers;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class HeadInertiaCheckTest {
    /** 5900 g cm2 + 100 about the vertical axis for woods, the governing bodies' equipment rules [read]. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({
        "5899.9, false, false",
        "5900, false, false",
        "5900.1, true, false",
        "6000, true, false",
        "6000.1, true, true"
    })
    void inertiaOfAWood_isCheckedAtTheLimit(double gCm2, boolean overLimit, boolean overTolerance) {
        BuildNumbers build = DRIVER.withHeadInertiaGCm2(gCm2).build();
        HeadInertiaCheck check = HeadInertiaCheck.of(ClubKind.DRIVER, build).orElseThrow();
        assertEquals(gCm2, check.figureKgM2() * 1e7, 1e-9);
        assertEquals(5900, check.limitKgM2() * 1e7, 1e-9);
        assertEquals(100, check.toleranceKgM2() * 1e7, 1e-9);
        assertEquals(overLimit, check.overLimit());
        assertEquals(overTolerance, check.overTolerance());
    }

    /** 20 g 60 mm from the centre of a 200 g head add 200 x 20 / 220 x 6^2 = 654.5 g cm2 to 5500. */
    @Tag("analytic")
    @Test
    void pieces_canTakeAHeadOverTheLimit() {
        BuildNumbers build = DRIVER.withHeadInertiaGCm2(5500).balance().build(pieces(piece(20, 0, -60, 0)));
        HeadInertiaCheck check = HeadInertiaCheck.of(ClubKind.DRIVER, build).orElseThrow();
        assertEquals(6154.545, check.figureKgM2() * 1e7, 5e-4);
        assertTrue(check.overTolerance());
    }

    /** The governing bodies' equipment rules limit woods alone [read]. */
    @Tag("published")
    @ParameterizedTest
    @EnumSource(ClubKind.class)
    void inertia_isLimitedForWoodsOnly(ClubKind kind) {
        boolean limited = kind == ClubKind.DRIVER || kind == ClubKind.WOOD || kind == ClubKind.HYBRID;
        assertEquals(limited, HeadInertiaCheck.of(kind, DRIVER.build()).isPresent());
    }
}
