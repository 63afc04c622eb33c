package org.bagwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookFiller;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits and reach as a fitter meets them: the demo trio with cells filled in, planned from the command line. */
@Tag("analytic")
class LimitsPlanTest {
    @TempDir
    Path folder;

    private Path book(Consumer<XSSFWorkbook> edit) throws Exception {
        Path file = folder.resolve("book.xlsx");
        try (XSSFWorkbook book = ResultCells.open(Path.of("demo-data", "trio.xlsx"));
                OutputStream output = Files.newOutputStream(file)) {
            edit.accept(book);
            book.write(output);
        }
        return file;
    }

    private static void golfer(XSSFWorkbook book, String heading, Object value) {
        new BookFiller(book, "Golfers").change("Golfer A", heading, value);
    }

    private static void club(XSSFWorkbook book, String club, String heading, Object value) {
        new BookFiller(book, "Clubs").changeClub(club, heading, value);
    }

    /** Every shot with the driver carries this far, yd. */
    private static void driverCarries(XSSFWorkbook book, double carry) {
        int club = -1;
        int column = -1;
        for (Row row : book.getSheet("Shots")) {
            for (Cell cell : row) {
                club = cell.toString().equals("Club") ? cell.getColumnIndex() : club;
                column = cell.toString().startsWith("Carry") ? cell.getColumnIndex() : column;
            }
            if (club >= 0
                    && row.getCell(club) != null
                    && row.getCell(club).toString().equals("Driver")) {
                row.getCell(column).setCellValue(carry);
            }
        }
    }

    private Terminal plan(Path file) {
        return Terminal.run("plan", file, "-o", folder.resolve("out.xlsx"), "--json");
    }

    private static double sits(JsonNode plan, Path book, int club) throws IOException {
        String option = plan.get("golfers")
                .get(0)
                .get("choices")
                .get(club)
                .get("option")
                .asText();
        for (JsonNode clubs : Terminal.run("chart", book, "--json").json().get("clubs")) {
            for (JsonNode made : clubs.get("options")) {
                if (made.get("option").asText().equals(option)) {
                    return made.get("sitsClosedDeg").asDouble();
                }
            }
        }
        throw new AssertionError("no option " + option);
    }

    @ParameterizedTest
    @CsvSource({"1", "-1", "1 open", "1\u00b0", "1 deg open"})
    void oneDegreeOpen_isTheSameHoweverItIsWritten(String written) throws Exception {
        Object value = written.matches("-?[0-9]+") ? Double.valueOf(written) : written;
        Path file = book(book -> golfer(book, "Most open", value));
        Terminal plan = plan(file);
        assertEquals(0, plan.code(), plan.err());
        for (int club = 0; club < 3; club++) {
            assertTrue(sits(plan.json(), file, club) >= -1);
        }
    }

    @Test
    void noPlanSitsClosed_whereItMayNotAndOneCanKeepThat() throws Exception {
        Path file = book(book -> {
            golfer(book, "Most open", 4);
            golfer(book, "Most closed", 0);
        });
        Terminal plan = plan(file);
        assertEquals(0, plan.code(), plan.err());
        assertEquals(0, plan.json().get("broken").size());
        for (int club = 0; club < 3; club++) {
            assertTrue(sits(plan.json(), file, club) <= 1e-9);
        }
        JsonNode today = plan.json().get("today").get("broken").get(0);
        assertEquals("5 wood", today.get("club").asText());
        assertEquals("limit", today.get("kind").asText());
        assertEquals(
                1,
                plan.err()
                        .lines()
                        .filter(line -> line.contains("Today's bag: "))
                        .count());
    }

    @Test
    void limitThatNoPlanKeeps_isNamedEverywhere() throws Exception {
        Path file = book(book -> {
            golfer(book, "Most open", "3 closed");
            golfer(book, "Most closed", 5);
        });
        Terminal plan = plan(file);
        assertEquals(4, plan.code(), plan.err());
        JsonNode broken = plan.json().get("broken").get(0);
        assertEquals("sits", broken.get("what").asText());
        assertEquals(3, broken.get("limit").asDouble());
        String cell = broken.get("cell").asText();
        assertTrue(cell.startsWith("Golfers!"), cell);
        String words = broken.get("text").asText() + ": " + cell;
        assertTrue(
                words.matches("Driver sits [0-9.]+ (open|closed), at least 3 closed accepted: Golfers![A-Z]+[0-9]+"),
                words);
        assertTrue(plan.err().contains("Not kept: " + words), plan.err());
        assertTrue(text("Messages").contains("Most open (" + cell + ") for Driver"), text("Messages"));
        for (String name : new String[] {"Plan", "Steps", "Others", "Bench card"}) {
            assertTrue(text(name).contains(words), name + " does not say " + words);
        }
        assertTrue(text("Messages").contains(broken.get("text").asText()));
        assertTrue(text("Plan").contains("limit: sits"));
        assertTrue(text("Plan").contains("limits broken: "));
        for (JsonNode step : plan.json().get("steps")) {
            assertFalse(step.get("broken").isEmpty());
        }
    }

    private String text(String sheet) throws Exception {
        StringBuilder text = new StringBuilder();
        try (XSSFWorkbook book = ResultCells.open(folder.resolve("out.xlsx"))) {
            for (Row row : book.getSheet(sheet)) {
                for (Cell cell : row) {
                    switch (cell.getCellType()) {
                        case STRING -> text.append(cell.getStringCellValue()).append('\n');
                        case FORMULA ->
                            text.append(cell.toString().isEmpty() ? "" : ((XSSFCell) cell).getRawValue())
                                    .append('\n');
                        default -> {}
                    }
                }
            }
        }
        return text.toString();
    }

    @Test
    void gapCarryAndLandingLimits_areKept() throws Exception {
        Path file = book(book -> {
            golfer(book, "Most open", 6);
            golfer(book, "Most closed", 6);
            golfer(book, "Gap most", 24);
            club(book, "5 wood", "Gap least", 21.5);
            club(book, "Driver", "Carry most", 222);
            club(book, "4 hybrid", "Carry least", 176);
            club(book, "5 wood", "Landing least", 30);
        });
        JsonNode plan = plan(file).json();
        assertEquals(0, plan.get("broken").size(), plan.get("broken").toString());
        JsonNode gaps = plan.get("golfers").get(0).get("gaps");
        assertTrue(gaps.get(0).get("gap").asDouble() <= 24);
        assertTrue(gaps.get(1).get("gap").asDouble() >= 21.5);
        assertTrue(plan.get("golfers").get(0).get("reach").get("carry").asDouble() <= 222);
    }

    @Test
    void limitThatHoldsAPlanBack_isSaidWithWhatItCosts() throws Exception {
        Terminal plan = plan(book(book -> golfer(book, "Most open", "square")));
        boolean told = false;
        for (JsonNode relaxation : plan.json().get("relaxations")) {
            told |= relaxation.get("what").asText().equals("without Most open")
                    && relaxation.get("cell").asText().startsWith("Golfers!");
        }
        assertTrue(told, plan.json().get("relaxations").toString());
    }

    /** A golfer with a driver of 232 yd: shortening it must pay for itself, and then the terminal says so. */
    @Test
    void driverThatIsShortened_isSaidWithWhatItCosts() throws Exception {
        Path file = book(book -> driverCarries(book, 232));
        Terminal plan = Terminal.run("plan", file, "-o", folder.resolve("out.xlsx"));
        assertEquals(0, plan.code(), plan.err());
        JsonNode reach = plan(file).json().get("golfers").get(0).get("reach");
        double lost = reach.get("short").asDouble();
        assertEquals(Math.pow(lost / 3, 2), reach.get("penalty").asDouble(), 1e-9);
        assertEquals(lost >= 0.05, plan.out().contains("The longest club carries "), plan.out());
    }

    @Test
    void evenWishOfNothing_isAProblemAtTheCarry() throws Exception {
        Path file = book(book -> driverCarries(book, 120));
        Terminal plan = plan(file);
        assertEquals(3, plan.code(), plan.err());
        assertTrue(
                plan.err().matches("(?s).*Shots![A-Z]+[0-9]+: carry of Driver cannot be right, found .*"), plan.err());
    }

    @Test
    void limitOfAClubAgainstThatOfItsGolfer_isAProblemAtTheClub() throws Exception {
        Path file = book(book -> {
            golfer(book, "Gap most", 15);
            club(book, "5 wood", "Gap least", 18);
        });
        Terminal plan = plan(file);
        assertEquals(3, plan.code());
        assertTrue(
                plan.err()
                        .matches("(?s).*Clubs![A-Z]+[0-9]+: gap least of 5 wood leaves no gap with gap most of Golfer A"
                                + " \\(Golfers![A-Z]+[0-9]+\\), found 18 yd against 15 yd\\..*"),
                plan.err());
    }

    @Test
    void contradictingLimits_areProblemsAtTheCell() throws Exception {
        Path file = book(book -> {
            golfer(book, "Most open", "2 closed");
            golfer(book, "Most closed", 1);
            club(book, "5 wood", "Carry least", 200);
            club(book, "5 wood", "Carry most", 190);
        });
        Terminal plan = plan(file);
        assertEquals(3, plan.code());
        assertTrue(plan.err().contains("most open must not be more closed than most closed, found"), plan.err());
        assertTrue(plan.err().contains("carry least must not be above carry most, found 200 against 190."), plan.err());
    }
}
