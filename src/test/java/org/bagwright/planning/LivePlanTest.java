package org.bagwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.bagwright.Spreadsheet;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.SpreadTerm;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.options.BuildBook;
import org.bagwright.search.BagSearch;
import org.bagwright.workbook.result.ResultBook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A book with candidates, slots that may stay empty, a sleeve, weightings, bends and swingweight targets: LibreOffice
 * calculates the result sheets again, as they are and after live choices are changed.
 */
@Tag("analytic")
class LivePlanTest {
    private static final int RANDOM_BAGS = 3;
    private static final int CHOICES = 2 + RANDOM_BAGS;
    /** The row of a slot with two clubs. */
    private static final int CANDIDATES = 1;

    @TempDir
    static Path folder;

    private static BookResult result;
    private static Path planned;

    @BeforeAll
    static void plan() throws Exception {
        result = BuildBook.planned();
        Path source = folder.resolve("source.xlsx");
        try (XSSFWorkbook empty = new XSSFWorkbook();
                OutputStream output = Files.newOutputStream(source)) {
            empty.createSheet("Mine");
            empty.write(output);
        }
        planned = folder.resolve("planned.xlsx");
        try (OutputStream output = Files.newOutputStream(planned)) {
            new ResultBook(new SourceFile(source), result).write(output);
        }
        recalculateAll();
    }

    /** All books that the tests look at in one run of the spreadsheet program, which is slow to start. */
    private static void recalculateAll() throws Exception {
        List<Path> bare = new ArrayList<>();
        bare.add(bare("same", book -> {}));
        for (int index = 0; index < CHOICES; index++) {
            List<List<Integer>> chosen = choices().get(index);
            bare.add(bare("live" + index, book -> choose(book, chosen)));
        }
        bare.add(bare("blank", LivePlanTest::takeTheOtherClubWithItsChoicesBlank));
        bare.add(bare("wrong", book -> ResultCells.set(book, CANDIDATES, "Live setting", "no such mark")));
        for (Club club : result.bags().get(0).options().slots().get(CANDIDATES).clubs()) {
            bare.add(bare("list " + club.name(), book -> list(book, club.name())));
        }
        Spreadsheet.recalculated(bare, folder.resolve("calc"));
    }

    private static XSSFWorkbook recalculated(String name) throws Exception {
        return ResultCells.open(folder.resolve("calc").resolve(name + ".xlsx"));
    }

    private static Path bare(String name, Edit edit) throws Exception {
        try (XSSFWorkbook book = ResultCells.open(planned)) {
            edit.on(book);
            return ResultCells.writeBare(book, folder.resolve(name + ".xlsx"));
        }
    }

    private interface Edit {
        void on(XSSFWorkbook book);
    }

    @Test
    void everyFormula_recalculatesToTheProgramsOwnNumbers() throws Exception {
        try (XSSFWorkbook own = ResultCells.open(planned);
                XSSFWorkbook other = recalculated("same")) {
            int compared = ResultCells.compare(own, other);
            assertTrue(compared > 800, "only " + compared + " formulas compared");
        }
    }

    @Test
    void everyKindOfChoice_givesTheOptionsNumbersAndTheSearchsPenalty() throws Exception {
        for (int index = 0; index < CHOICES; index++) {
            try (XSSFWorkbook live = recalculated("live" + index)) {
                expect(live, choices().get(index));
            }
        }
    }

    /** All clubs as they are today, all slots empty that may be, and a few at random, candidates and all. */
    private static List<List<List<Integer>>> choices() {
        List<List<List<Integer>>> choices = new ArrayList<>();
        choices.add(result.bags().stream().map(bag -> bag.today().chosen()).toList());
        choices.add(result.bags().stream().map(LivePlanTest::fewest).toList());
        Random random = new Random(5);
        for (int bag = 0; bag < RANDOM_BAGS; bag++) {
            choices.add(result.bags().stream()
                    .map(made -> made.options().slots().stream()
                            .map(slot -> random.nextInt(slot.options().size()))
                            .toList())
                    .toList());
        }
        return choices;
    }

    private static List<Integer> fewest(BagResult bag) {
        return bag.options().slots().stream()
                .map(slot -> IntStream.range(0, slot.options().size())
                        .filter(index -> slot.options().get(index).isEmpty())
                        .findFirst()
                        .orElse(slot.todayIndex()))
                .toList();
    }

    private static void choose(XSSFWorkbook book, List<List<Integer>> chosen) {
        int row = 0;
        for (int bag = 0; bag < chosen.size(); bag++) {
            BagOptions options = result.bags().get(bag).options();
            for (int slot = 0; slot < chosen.get(bag).size(); slot++) {
                Option option =
                        options.slots().get(slot).options().get(chosen.get(bag).get(slot));
                ResultCells.set(book, row, "Live club", option.clubText());
                if (!option.isEmpty()) {
                    choose(book, row, option.choice());
                }
                row++;
            }
        }
    }

    private static void choose(XSSFWorkbook book, int row, Choice choice) {
        ResultCells.set(book, row, "Live setting", choice.settingText());
        ResultCells.set(book, row, "Live weighting", choice.weightingText());
        ResultCells.set(book, row, "Live loft bend [deg]", choice.bend().loftDeg());
        ResultCells.set(book, row, "Live lie bend [deg]", choice.bend().lieDeg());
    }

    private static void expect(XSSFWorkbook live, List<List<Integer>> chosen) {
        int row = 0;
        for (int index = 0; index < chosen.size(); index++) {
            BagOptions bag = result.bags().get(index).options();
            BagState state = BagSearch.state(bag, chosen.get(index));
            double total = 0;
            for (int slot = 0; slot < bag.slots().size(); slot++) {
                SlotOptions options = bag.slots().get(slot);
                Option option = options.options().get(chosen.get(index).get(slot));
                LiveRow.expect(live, row, option, options.today());
                LiveRow.number(live, row, "Live gap [yd]", state.gapAfter(slot).map(gap -> gap.gapM() / 0.9144));
                double points = option.terms().totalPoints()
                        + state.reachAt(slot)
                                .map(reach -> reach.terms().totalPoints())
                                .orElse(0.0)
                        + state.gapAfter(slot).map(GapTerm::penaltyPoints).orElse(0.0)
                        + state.spreadAt(slot).map(SpreadTerm::penaltyPoints).orElse(0.0);
                LiveRow.number(live, row, "Live penalty", Optional.of(points));
                total += ResultCells.plan(live, row, "Live penalty").getNumericCellValue();
                row++;
            }
            assertEquals(state.score().penaltyPoints(), total, 1e-9 * Math.max(1, total));
            assertEquals(total, totalOf(live, bag.golfer().name()), 1e-9 * Math.max(1, total));
        }
    }

    private static double totalOf(XSSFWorkbook book, String golfer) {
        XSSFSheet plan = book.getSheet("Plan");
        int heading = 0;
        while (!text(plan, heading, 2).equals("Penalty by measure")) {
            heading++;
        }
        int column = 3;
        while (!text(plan, heading, column).equals("Total")) {
            column++;
        }
        int row = heading + 1;
        while (!text(plan, row, 0).equals(golfer) || !text(plan, row, 2).equals("live")) {
            row++;
        }
        return plan.getRow(row).getCell(column).getNumericCellValue();
    }

    private static String text(XSSFSheet sheet, int row, int column) {
        Cell cell = sheet.getRow(row) == null ? null : sheet.getRow(row).getCell(column);
        return cell == null ? "" : cell.toString();
    }

    private static Option otherClub() {
        SlotOptions slot = result.bags().get(0).options().slots().get(CANDIDATES);
        return slot.optionsOf(slot.clubs().get(1)).stream()
                .filter(option -> option.changes() == 1)
                .findFirst()
                .orElseThrow();
    }

    private static void takeTheOtherClubWithItsChoicesBlank(XSSFWorkbook book) {
        ResultCells.set(book, CANDIDATES, "Live club", otherClub().clubText());
        for (String what : List.of("setting", "weighting", "loft bend [deg]", "lie bend [deg]")) {
            ResultCells.plan(book, CANDIDATES, "Live " + what).setBlank();
        }
    }

    @Test
    void anotherClub_isAsInTheBookWhileItsChoicesAreBlank() throws Exception {
        Option today = result.bags().get(0).options().slots().get(CANDIDATES).today();
        try (XSSFWorkbook book = recalculated("blank")) {
            LiveRow.expect(book, CANDIDATES, otherClub(), today);
        }
    }

    @Test
    void noSuchOption_givesQuestionMarks() throws Exception {
        try (XSSFWorkbook book = recalculated("wrong")) {
            assertEquals(
                    "not an option",
                    ResultCells.plan(book, CANDIDATES, "Live fit").getStringCellValue());
            for (String heading : List.of("Live loft [deg]", "Live carry [yd]", "Live gap [yd]", "Live penalty")) {
                assertEquals("?", ResultCells.plan(book, CANDIDATES, heading).getStringCellValue(), heading);
            }
        }
    }

    @Test
    void dropDowns_listWhatTheLiveClubCanHave() throws Exception {
        SlotOptions slot = result.bags().get(0).options().slots().get(CANDIDATES);
        for (Club club : slot.clubs()) {
            List<String> expected = slot.optionsOf(club).stream()
                    .map(option -> option.choice().settingText())
                    .distinct()
                    .toList();
            try (XSSFWorkbook book = recalculated("list " + club.name())) {
                XSSFSheet lists = book.getSheet("Mine");
                assertEquals(expected.size(), lists.getRow(0).getCell(0).getNumericCellValue(), 0);
                for (int index = 0; index < expected.size(); index++) {
                    assertEquals(
                            expected.get(index),
                            lists.getRow(index + 1).getCell(0).getStringCellValue());
                }
            }
        }
    }

    /** Writes down what the drop-down of the live setting in the second slot shows. */
    private static void list(XSSFWorkbook book, String club) {
        ResultCells.set(book, CANDIDATES, "Live club", club);
        Cell cell = ResultCells.plan(book, CANDIDATES, "Live setting");
        String list = book.getSheet("Plan").getDataValidations().stream()
                .filter(validation ->
                        validation.getRegions().getCellRangeAddresses()[0].isInRange(cell))
                .map(validation -> validation.getValidationConstraint().getFormula1())
                .findFirst()
                .orElseThrow()
                .replaceAll("(?<![!A-Z$])\\$(?=[A-Z]+[0-9]+)", "Plan!\\$");
        XSSFSheet lists = book.getSheet("Mine");
        lists.createRow(0).createCell(0).setCellFormula("COLUMNS(" + list + ")");
        for (int index = 0; index < 6; index++) {
            lists.createRow(index + 1).createCell(0).setCellFormula("INDEX(" + list + ",1," + (index + 1) + ")&\"\"");
        }
    }

    @Test
    void book_hasEveryKindOfChoice() {
        List<SlotOptions> slots = result.bags().stream()
                .flatMap(bag -> bag.options().slots().stream())
                .toList();
        assertTrue(slots.stream().filter(slot -> slot.clubs().size() > 1).count() >= 2);
        assertTrue(slots.stream().anyMatch(slot -> slot.today().isEmpty()));
        assertTrue(result.bags().stream()
                .anyMatch(bag -> bag.planned().spreads().stream().anyMatch(spread -> spread.penaltyPoints() > 0)));
    }
}
