package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.Limits;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Kinds and ranges as fitters write them; the words for kinds are common practice, from memory. */
@Tag("analytic")
class RangesAndKindsTest {
    private static final double M_PER_YD = 0.9144;

    @ParameterizedTest
    @CsvSource({
        "rescue,HYBRID", "Utility,HYBRID", "hybrids,HYBRID", "Fairway,WOOD", "fairway-wood,WOOD", "metal,WOOD",
        "Fairway Metal,WOOD", "woods,WOOD", "Sand wedge,WEDGE", "PW,WEDGE", "wedges,WEDGE", "driving iron,IRON",
        "Irons,IRON", "DRIVER,DRIVER"
    })
    void kind_isUnderstood(String written, ClubKind kind) {
        TestBook book = TestBook.sound().set("Clubs!J4", null).set("Clubs!D4", written);
        assertEquals(kind, book.book().clubs().get(2).kind());
    }

    private static TestBook wished(Object wish) {
        return TestBook.sound()
                .set("Golfers!G2", wish)
                .set("Golfers!H1", "Gap least")
                .set("Golfers!I1", "Gap most");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"18-22", "18 - 22", "18 to 22", "18\u201322", "22-18", "18-22 yd", "18..22", "18 yd - 22 yd"})
    void rangeOfTheGap_isLeastAndMost(String written) {
        for (String cell : List.of("Golfers!G2", "Golfers!H2", "Golfers!I2")) {
            Golfer golfer = wished(null).set(cell, written).book().golfers().get(0);
            assertEquals(
                    18 * M_PER_YD,
                    golfer.limits().valueMeasureUnits(LimitKind.GAP_LEAST).orElseThrow(),
                    1e-12,
                    cell);
            assertEquals(
                    22 * M_PER_YD,
                    golfer.limits().valueMeasureUnits(LimitKind.GAP_MOST).orElseThrow(),
                    1e-12,
                    cell);
        }
    }

    @Test
    void rangeWithAUnitAtItsEnd_isInThatUnit() {
        Golfer golfer = wished("16-20 m").book().golfers().get(0);
        assertEquals(16, golfer.limits().valueMeasureUnits(LimitKind.GAP_LEAST).orElseThrow(), 1e-12);
        assertEquals(20, golfer.limits().valueMeasureUnits(LimitKind.GAP_MOST).orElseThrow(), 1e-12);
    }

    @Test
    void rangeWithoutColumnsForItsEnds_countsToo() {
        Golfer golfer =
                TestBook.sound().set("Golfers!G2", "18-22").book().golfers().get(0);
        assertEquals(
                22 * M_PER_YD,
                golfer.limits().valueMeasureUnits(LimitKind.GAP_MOST).orElseThrow(),
                1e-12);
    }

    @Test
    void rangeOfAClub_isItsLimits() {
        TestBook book = TestBook.sound()
                .set("Clubs!K1", "Gap wish")
                .set("Clubs!K2", "18-22")
                .set("Clubs!L1", "Carry most");
        book.set("Clubs!L2", "210 to 240");
        Limits limits = book.book().clubs().get(0).freedom().limits();
        assertEquals(
                18 * M_PER_YD, limits.valueMeasureUnits(LimitKind.GAP_LEAST).orElseThrow(), 1e-12);
        assertEquals(22 * M_PER_YD, limits.valueMeasureUnits(LimitKind.GAP_MOST).orElseThrow(), 1e-12);
        assertEquals(
                210 * M_PER_YD, limits.valueMeasureUnits(LimitKind.CARRY_LEAST).orElseThrow(), 1e-12);
    }

    @Test
    void rangeNextToALimit_isAProblemAtItsCell() {
        assertEquals(
                List.of("Golfers!G2: gap wish must be one number where gap least is given too, found \"18-22\"."),
                wished("18-22").set("Golfers!H2", 10).problems());
    }

    @Test
    void endThatCannotBe_isAProblemAtTheCellOfTheRange() {
        assertEquals(List.of("Golfers!G2"), wished("18-900").problemCells());
    }

    private static TestBook allowed(String written) {
        TestBook book = TestBook.sound().without("Sleeves").sheet("Sleeves").row("Sleeve", "Setting", "Clock", "Bend");
        for (String mark : List.of("1", "2", "3", "4", "5", "A", "B", "C", "D", "Up-1", "STD")) {
            book.row("Two degree", mark, 12, 1.7);
        }
        return book.set("Clubs!I2", "1")
                .set("Clubs!I3", "A")
                .set("Clubs!K1", "Allowed")
                .set("Clubs!K2", written);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '=',
            value = {
                "1-4=1 2 3 4",
                "1 to 4=1 2 3 4",
                "1 - 3, 5=1 2 3 5",
                "A-D=A B C D",
                "a to c=A B C",
                "1-2 A-B=1 2 A B",
                "Up-1=Up-1",
                "D-STD=D Up-1 STD",
                "2, 2-3=2 3"
            })
    void rangeOfSettings_isItsMarks(String written, String marks) {
        assertEquals(
                List.of(marks.split(" ")),
                allowed(written).book().clubs().get(0).freedom().allowed());
    }

    @Test
    void rangeToAMarkThatIsNot_isAProblem() {
        assertEquals(List.of("Clubs!K2"), allowed("1-9").problemCells());
        assertEquals(List.of("Clubs!K2"), allowed("4-1").problemCells());
    }
}
