package org.bagwright.workbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.club.Club;
import org.bagwright.workbook.KitBook;
import org.bagwright.workbook.TestBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("analytic")
class ClubKitsTest {
    private static TestBook driver(Object kit, Object weighting) {
        return KitBook.sound().set("Clubs!K2", kit).set("Clubs!L2", weighting);
    }

    @ParameterizedTest
    @CsvSource({
        "front,light,Front,Light",
        ",Front: heavy,Front,Heavy",
        ",front:LIGHT,Front,Light",
        "Front,Front: Heavy,Front,Heavy",
        "rear,,Rear,Only",
        ",,,"
    })
    void kitAndWeighting_areReadInTheKitsOwnSpelling(String kit, String weighting, String readKit, String read) {
        Club club = driver(kit, weighting).book().clubs().get(0);
        assertEquals(Optional.ofNullable(readKit), club.kit());
        assertEquals(Optional.ofNullable(read), club.today().weighting());
    }

    @Test
    void namesWithAColon_areFound() {
        TestBook book = driver(null, "Front: two: Light");
        for (int row = 2; row <= 5; row++) {
            book.set("Weights!A" + row, "Front: two");
        }
        Club club = book.set("Stock!A2", "Front: two: 12").book().clubs().get(0);
        assertEquals(Optional.of("Front: two"), club.kit());
        assertEquals(Optional.of("Light"), club.today().weighting());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "Front|-|L2: weighting must say which one of the kit \"Front\" is in the head today, found nothing;"
                        + " expected \"Light\" or \"Heavy\".",
                "Front|Heavi|L2: weighting must be one of the kit \"Front\", found \"Heavi\"; expected \"Light\" or"
                        + " \"Heavy\". Maybe \"Heavy\"?",
                "-|Front: Only|L2: weighting must be one of the kit \"Front\", found \"Only\"; expected \"Light\" or"
                        + " \"Heavy\".",
                "Frnt|Light|K2: kit must be a name on the sheet Weights, found \"Frnt\". Maybe \"Front\"?",
                "-|Frnt: Light|L2: the kit before the colon must be a name on the sheet Weights, found \"Frnt: Light\"."
                        + " Maybe \"Front\"?",
                "-|light|L2: weighting needs its kit, found \"light\" and no kit; expected the kit in the column Kit, or"
                        + " before the weighting as Kit: weighting. Maybe \"Front: Light\"?",
                "Front|Rear: Only|L2: weighting must be of the kit in the column Kit, found \"Rear: Only\" and the kit"
                        + " \"Front\"; expected \"Light\" or \"Heavy\"."
            })
    void wrongKitOrWeighting_isAProblemAtItsCell(String kit, String weighting, String expected) {
        assertEquals(List.of("Clubs!" + expected), driver(kit, weighting).problems());
    }

    @Test
    void weightingOfAKitWhoseRowHasNoName_isNotBlamed() {
        assertEquals(
                List.of("Weights!B3"),
                driver("Front", "Third").set("Weights!B3", null).problemCells());
    }
}
