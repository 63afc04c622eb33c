package org.bagwright.workbook.read;

import static org.bagwright.workbook.TestClubs.clubs;
import static org.bagwright.workbook.TestClubs.column;
import static org.bagwright.workbook.TestClubs.driverWith;
import static org.bagwright.workbook.TestClubs.row;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.club.Club;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class ClubSleevesTest {
    @Test
    void sleeveCells_areReadInTheSleevesSpelling() {
        Club club = clubs(row("Ann", 1, "Driver", "driver", 10.5, 58, 0, "n", 45.5, "TWO  degree", "h"))
                .set("Clubs!" + column("Allowed") + "2", "n; L,h N")
                .book()
                .clubs()
                .get(0);
        assertEquals(Optional.of("Two degree"), club.sleeve());
        assertEquals(Optional.of("H"), club.today().setting());
        assertEquals(Optional.of("N"), club.head().statedAt());
        assertEquals(List.of("N", "L", "H"), club.freedom().allowed());
    }

    @Test
    void marksWithSpaces_areFoundInAnAllowedList() {
        Club club = driverWith("Allowed", "high draw, N L")
                .set("Sleeves!B3", "High draw")
                .book()
                .clubs()
                .get(0);
        assertEquals(List.of("High draw", "N", "L"), club.freedom().allowed());
    }

    @Test
    void sleeveCellsThatDoNotFit_areProblemsAtTheirCells() {
        String expected = "; expected \"N\", \"H\" or \"L\".";
        assertEquals(
                List.of("Clubs!K2: setting must be a mark of the sleeve \"Two degree\", found \"X\"" + expected),
                driverWith("Setting", "X").problems());
        assertEquals(
                List.of("Clubs!K2: setting must be filled in for a club with a sleeve, found nothing" + expected),
                driverWith("Setting", null).problems());
        assertEquals(
                List.of("Clubs!H2: stated at must be a mark of the sleeve \"Two degree\", found \"9\"" + expected),
                driverWith("Stated at", 9).problems());
        assertEquals(
                List.of("Clubs!S2: allowed must be a mark of the sleeve \"Two degree\", found \"Q\"" + expected),
                driverWith("Allowed", "N, Q").problems());
        assertEquals(
                List.of("Clubs!J2: sleeve must be a name on the sheet Sleeves, found \"Three degree\"."),
                driverWith("Sleeve", "Three degree").problems());
    }

    @Test
    void settingWithoutASleeve_isAProblem() {
        assertEquals(
                List.of(
                        "Clubs!K2: setting needs a sleeve, found \"N\" and no Sleeve; expected a sleeve's name in this row,"
                                + " or nothing here.",
                        "Clubs!H2: stated at needs a sleeve, found \"N\" and no Sleeve; expected a sleeve's name in this"
                                + " row, or nothing here."),
                driverWith("Sleeve", null).problems());
    }
}
