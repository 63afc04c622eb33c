package org.bagwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.bagwright.Spreadsheet;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.options.BuildBook;
import org.bagwright.search.BagSearch;
import org.bagwright.workbook.result.ResultBook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan whose carries are in doubt: LibreOffice calculates the same expected penalty, whatever is chosen. */
@Tag("analytic")
class DoubtfulPlanTest {
    private static final double EXACT = 1e-9;
    private static final double YD_PER_M = 1 / 0.9144;
    private static final int CHOICES = 4;

    @TempDir
    static Path folder;

    private static BookResult likely;
    private static BookResult guessed;

    @BeforeAll
    static void plan() throws Exception {
        likely = BuildBook.doubtful(true);
        guessed = BuildBook.doubtful(false);
        Path first = written("likely", likely);
        List<Path> bare = new ArrayList<>();
        bare.add(bare(first, "likely-same", List.of()));
        bare.add(bare(written("guessed", guessed), "guessed-same", List.of()));
        for (int choice = 0; choice < CHOICES; choice++) {
            bare.add(bare(first, "live" + choice, chosen(choice)));
        }
        Spreadsheet.recalculated(bare, folder.resolve("calc"));
    }

    private static Path written(String name, BookResult result) throws IOException {
        Path source = folder.resolve("source.xlsx");
        try (XSSFWorkbook empty = new XSSFWorkbook();
                OutputStream output = Files.newOutputStream(source)) {
            empty.createSheet("Mine");
            empty.write(output);
        }
        Path written = folder.resolve(name + ".xlsx");
        try (OutputStream output = Files.newOutputStream(written)) {
            new ResultBook(new SourceFile(source), result).write(output);
        }
        return written;
    }

    private static Path bare(Path planned, String name, List<List<Integer>> chosen) throws Exception {
        try (XSSFWorkbook book = ResultCells.open(planned)) {
            int row = 0;
            for (int bag = 0; bag < chosen.size(); bag++) {
                for (Option option : likely.bags().get(bag).options().chosen(chosen.get(bag))) {
                    choose(book, row++, option);
                }
            }
            return ResultCells.writeBare(book, folder.resolve(name + ".xlsx"));
        }
    }

    private static void choose(XSSFWorkbook book, int row, Option option) {
        ResultCells.set(book, row, "Live club", option.clubText());
        if (!option.isEmpty()) {
            ResultCells.set(book, row, "Live setting", option.choice().settingText());
            ResultCells.set(book, row, "Live weighting", option.choice().weightingText());
            ResultCells.set(
                    book, row, "Live loft bend [deg]", option.choice().bend().loftDeg());
            ResultCells.set(
                    book, row, "Live lie bend [deg]", option.choice().bend().lieDeg());
        }
    }

    /** Any options, empty slots and candidates too. */
    private static List<List<Integer>> chosen(int choice) {
        Random random = new Random(30 + choice);
        return likely.bags().stream()
                .map(bag -> bag.options().slots().stream()
                        .map(slot -> random.nextInt(slot.options().size()))
                        .toList())
                .toList();
    }

    private static XSSFWorkbook recalculated(String name) throws Exception {
        return ResultCells.open(folder.resolve("calc").resolve(name + ".xlsx"));
    }

    @Test
    void everyFormula_recalculatesToTheProgramsOwnNumbers() throws Exception {
        for (String name : List.of("likely", "guessed")) {
            try (XSSFWorkbook own = ResultCells.open(folder.resolve(name + ".xlsx"));
                    XSSFWorkbook other = recalculated(name + "-same")) {
                assertTrue(ResultCells.compare(own, other) > 800);
                XSSFSheet plan = own.getSheet("Plan");
                int compared = 0;
                for (int row = 0; row <= plan.getLastRowNum(); row++) {
                    for (int column = 0;
                            plan.getRow(row) != null
                                    && column < plan.getRow(row).getLastCellNum();
                            column++) {
                        compared += compared(plan, other.getSheet("Plan"), row, column);
                    }
                }
                assertTrue(compared > 300, name + ": numbers compared on Plan: " + compared);
            }
        }
    }

    private static int compared(XSSFSheet own, XSSFSheet other, int row, int column) {
        Cell cell = own.getRow(row).getCell(column);
        if (cell == null
                || cell.getCellType() != CellType.FORMULA
                || cell.getCachedFormulaResultType() != CellType.NUMERIC) {
            return 0;
        }
        double told = cell.getNumericCellValue();
        double found = other.getRow(row).getCell(column).getNumericCellValue();
        assertEquals(
                told,
                found,
                EXACT * Math.max(1, Math.abs(told)),
                cell.getAddress().formatAsString());
        return 1;
    }

    @Test
    void everyChoice_givesTheExpectedPenaltyOfThePlainScore() throws Exception {
        for (int choice = 0; choice < CHOICES; choice++) {
            try (XSSFWorkbook live = recalculated("live" + choice)) {
                int row = 0;
                for (int index = 0; index < likely.bags().size(); index++) {
                    BagOptions bag = likely.bags().get(index).options();
                    BagState state = BagSearch.state(bag, chosen(choice).get(index));
                    row = expect(live, row, bag, state);
                }
            }
        }
    }

    private static int expect(XSSFWorkbook live, int firstRow, BagOptions bag, BagState state) {
        double penalty = 0;
        double doubt = 0;
        int row = firstRow;
        for (int slot = 0; slot < bag.slots().size(); slot++) {
            penalty += ResultCells.plan(live, row, "Live penalty").getNumericCellValue();
            doubt += ResultCells.plan(live, row, "Live doubt [points]").getNumericCellValue();
            int place = row;
            state.gapAfter(slot)
                    .map(GapTerm::sdM)
                    .ifPresent(sdM -> assertEquals(
                            CarryDoubt.HALF_80_SDS * sdM * YD_PER_M,
                            ResultCells.plan(live, place, "Live gap +- [yd]").getNumericCellValue(),
                            EXACT));
            row++;
        }
        double expected = bag.chosen(state.chosen()).stream()
                        .mapToDouble(option -> option.terms().doubtPoints())
                        .sum()
                + state.gaps().stream()
                        .mapToDouble(gap -> gap.terms().doubtPoints())
                        .sum();
        assertEquals(state.score().penaltyPoints(), penalty, EXACT * Math.max(1, penalty));
        assertEquals(expected, doubt, EXACT * Math.max(1, doubt));
        assertTrue(doubt > 0);
        return row;
    }

    @Test
    void bestGuess_givesTheNumbersOfABookWithoutDoubt() {
        BookResult certain = BuildBook.planned();
        for (int bag = 0; bag < certain.bags().size(); bag++) {
            assertEquals(
                    certain.bags().get(bag).planned().chosen(),
                    guessed.bags().get(bag).planned().chosen());
            assertEquals(
                    certain.bags().get(bag).planned().score(),
                    guessed.bags().get(bag).planned().score());
            assertEquals(
                    certain.bags().get(bag).today().score(),
                    guessed.bags().get(bag).today().score());
        }
        assertTrue(likely.plannedPoints() > guessed.plannedPoints());
    }
}
