package org.bagwright.workbook.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bagwright.domain.units.Limit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("analytic")
class NumberTyposTest {
    @ParameterizedTest
    @CsvSource({
        "158,40,80,' Maybe 58?'",
        "585,40,80,' Maybe 58.5?'",
        "5.8,40,80,' Maybe 58?'",
        "-95,18,179,' Maybe 95?'",
        "99,40,80,''",
        "4444,40,80,''",
        "1000,1,10,''"
    })
    void slip_isGuessedOnlyWhenOneExplainsIt(double found, double least, double most, String expected) {
        assertEquals(expected, new NumberTypos(new Limit(least, most, ""), Unit.of("", 1)).maybe(found));
    }
}
