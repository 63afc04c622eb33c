package org.bagwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookFiller;
import org.bagwright.ResultCells;
import org.bagwright.Spreadsheet;
import org.bagwright.cli.text.Terminal;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.files.SourceFile;
import org.bagwright.search.BagSearch;
import org.bagwright.workbook.plan.PlanRow;
import org.bagwright.workbook.plan.PlanSheet;
import org.bagwright.workbook.plan.PlanVerdict;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The full demo with limits, musts, a short stock and closed settings: what LibreOffice calculates of each of 200 random
 * live choices must be the program's own verdict.
 */
@Tag("analytic")
class LiveVerdictTest {
    private static final int CHOICES = 200;
    private static final int SHEETS = 50;
    private static final int VERDICT_ROW = 1;
    private static final int FIRST_ROW = PlanSheet.FIRST_ROW;

    @TempDir
    static Path folder;

    private static Path planned;
    private static BookResult result;

    @BeforeAll
    static void plan() throws Exception {
        assertEquals(0, Terminal.run("demo", "full", "-o", folder).code());
        Path book = folder.resolve("ruled.xlsx");
        try (XSSFWorkbook ruled = ResultCells.open(folder.resolve("full.xlsx"));
                OutputStream output = Files.newOutputStream(book)) {
            rule(ruled);
            ruled.write(output);
        }
        planned = folder.resolve("ruled-plan.xlsx");
        result = new Planning(1, 3).plan(book);
        Planning.write(new SourceFile(book), result, List.of(), planned);
    }

    /** Limits of every kind, three musts, settings that turn the shaft closed, and the short stock of the demo. */
    private static void rule(XSSFWorkbook book) {
        new BookFiller(book, "Golfers")
                .change("Golfer A", "Most open", 1)
                .change("Golfer A", "Most closed", "1 closed")
                .change("Golfer A", "Gap most", 22)
                .change("Golfer A", "Keep shaft turned", "no")
                .change("Golfer A", "Most changes", 14);
        BookFiller clubs = new BookFiller(book, "Clubs");
        clubs.changeClub("Driver", "Carry least", 205);
        clubs.changeClub("3 wood", "Gap least", 9);
        clubs.changeClub("7 iron", "Landing least", 47);
        clubs.changeClub("8 iron", "Carry most", 140);
        new BookFiller(book, "Aims")
                .change("lie", "Must", "yes")
                .change("reach", "Must", "yes")
                .change("swingweight", "Must", "yes");
    }

    /** Many copies of the sheet Plan in a book, since the spreadsheet program is slow to open one. */
    @Test
    void twoHundredRandomChoices_areToldAsTheProgramTellsThem() throws Exception {
        Random random = new Random(11);
        List<List<List<Integer>>> choices = new ArrayList<>();
        List<Path> bare = new ArrayList<>();
        for (int first = 0; first < CHOICES; first += SHEETS) {
            try (XSSFWorkbook book = ResultCells.open(withoutCharts())) {
                book.getSheet("Plan").getCTWorksheet().unsetDrawing();
                for (int index = first; index < first + SHEETS; index++) {
                    choices.add(choice(random, index));
                    choose(book.cloneSheet(book.getSheetIndex("Plan"), "Live " + index), choices.get(index));
                }
                bare.add(ResultCells.writeBare(book, folder.resolve("live" + first + ".xlsx")));
            }
        }
        Path calculated = folder.resolve("calc");
        Spreadsheet.texts(bare, calculated);
        Set<String> words = new HashSet<>();
        for (int index = 0; index < CHOICES; index++) {
            String file = "live" + index / SHEETS * SHEETS + "-Live " + index + ".csv";
            words.addAll(expect(rows(calculated.resolve(file)), choices.get(index)));
        }
        for (String word : List.of(
                "limit: sits",
                "limit: gap",
                "limit: carry",
                "limit: landing",
                "must: lie",
                "must: swingweight",
                "not in stock",
                "closed: shaft alignment",
                "left out",
                "far: gap",
                "inside")) {
            assertTrue(words.contains(word), word + " never came up: " + words);
        }
    }

    /** The library copies a chart of a sheet slowly, since it calculates all that the chart shows. */
    private static Path withoutCharts() throws Exception {
        Path bare = folder.resolve("no-charts.xlsx");
        if (!Files.exists(bare)) {
            String part;
            try (XSSFWorkbook book = ResultCells.open(planned)) {
                part = book.getSheet("Plan").getPackagePart().getPartName().getName();
            }
            Files.copy(planned, bare);
            try (OPCPackage file = OPCPackage.open(bare.toFile())) {
                PackagePart sheet = file.getPart(PackagingURIHelper.createPartName(part));
                List<String> drawings = new ArrayList<>();
                sheet.getRelationshipsByType(XSSFRelation.DRAWINGS.getRelation())
                        .forEach(drawing -> drawings.add(drawing.getId()));
                drawings.forEach(sheet::removeRelationship);
            }
        }
        return bare;
    }

    /** The plan with some slots changed at random; every tenth one keeps the plan as it is but for one slot. */
    private static List<List<Integer>> choice(Random random, int index) {
        List<List<Integer>> chosen = new ArrayList<>();
        for (BagResult bag : result.bags()) {
            List<Integer> mine = new ArrayList<>(bag.planned().chosen());
            int changes = index % 10 == 0 ? 1 : 1 + random.nextInt(6);
            for (int change = 0; change < changes; change++) {
                int slot = random.nextInt(mine.size());
                mine.set(
                        slot,
                        random.nextInt(bag.options().slots().get(slot).options().size()));
            }
            chosen.add(mine);
        }
        return chosen;
    }

    private static void choose(XSSFSheet plan, List<List<Integer>> chosen) {
        int row = FIRST_ROW;
        for (int bag = 0; bag < chosen.size(); bag++) {
            for (Option option : result.bags().get(bag).options().chosen(chosen.get(bag))) {
                cell(plan, row, "Live club").setCellValue(option.clubText());
                if (!option.isEmpty()) {
                    choose(plan, row, option.choice());
                }
                row++;
            }
        }
    }

    private static void choose(XSSFSheet plan, int row, Choice choice) {
        cell(plan, row, "Live setting").setCellValue(choice.settingText());
        if (choice.settingText().matches("[0-9]+")) {
            cell(plan, row, "Live setting").setCellValue(Double.parseDouble(choice.settingText()));
        }
        cell(plan, row, "Live weighting").setCellValue(choice.weightingText());
        cell(plan, row, "Live loft bend [deg]").setCellValue(choice.bend().loftDeg());
        cell(plan, row, "Live lie bend [deg]").setCellValue(choice.bend().lieDeg());
    }

    private static Cell cell(XSSFSheet plan, int row, String heading) {
        for (Cell cell : plan.getRow(FIRST_ROW - 1)) {
            if (cell.getStringCellValue().equals(heading)) {
                return plan.getRow(row).getCell(cell.getColumnIndex());
            }
        }
        throw new AssertionError("no heading " + heading);
    }

    private static List<CSVRecord> rows(Path sheet) throws IOException {
        return CSVParser.parse(
                        sheet,
                        StandardCharsets.UTF_8,
                        CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(false).get())
                .getRecords();
    }

    /** Checks every row and the line at the top, and gives the words that came up. */
    private static Set<String> expect(List<CSVRecord> plan, List<List<Integer>> chosen) {
        int fit = plan.get(FIRST_ROW - 1).toList().indexOf("Live fit");
        BookResult live = live(chosen);
        PlanVerdict verdict = new PlanVerdict(live);
        Set<String> words = new HashSet<>();
        int row = FIRST_ROW;
        for (BagResult bag : live.bags()) {
            for (int slot = 0; slot < bag.options().slots().size(); slot++) {
                SlotOptions options = bag.options().slots().get(slot);
                String word = verdict.word(new PlanRow(bag, slot));
                words.add(word);
                assertEquals(word, plan.get(row++).get(fit), options.main().name() + " of " + chosen);
            }
        }
        assertEquals(verdict.inWords(), plan.get(VERDICT_ROW).get(fit));
        return words;
    }

    /** The result with these choices in the place of the plan, as which the sheet's live choices start. */
    private static BookResult live(List<List<Integer>> chosen) {
        List<BagResult> bags = new ArrayList<>();
        for (int bag = 0; bag < chosen.size(); bag++) {
            BagResult made = result.bags().get(bag);
            bags.add(BagResult.of(made.options(), made.today(), BagSearch.state(made.options(), chosen.get(bag))));
        }
        return new BookResult(result.book(), bags, result.stock(), result.proof(), List.of(), 1, 1);
    }
}
