package org.bagwright.workbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.PlannedDemos;
import org.bagwright.ResultCells;
import org.bagwright.workbook.Contrast;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCfRule;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;

/**
 * Which measure is off is seen on the sheet Plan, in grey too. Contrast as in WCAG 2.1 [memory]: 4.5 for letters; 1.5 for
 * fills that may touch is the design's own figure.
 */
@Tag("regression")
class MissColoursTest {
    private static final double LETTERS = 4.5;
    private static final double FILLS = 1.5;
    private static final String PAPER = "FFFFFF";

    private static XSSFWorkbook book;

    @BeforeAll
    static void plan() throws Exception {
        book = PlannedDemos.open("full");
    }

    @AfterAll
    static void close() throws Exception {
        book.close();
    }

    private static double contrast(String one, String other) {
        return new Contrast(one, other).inColour();
    }

    private static Map<String, String> lettersByFill() {
        Map<String, String> letters = new HashMap<>();
        for (CTConditionalFormatting rules :
                book.getSheet("Plan").getCTWorksheet().getConditionalFormattingArray()) {
            for (CTCfRule rule : rules.getCfRuleArray()) {
                CTDxf format = book.getStylesSource().getDxfAt((int) rule.getDxfId());
                letters.put(
                        hex(format.getFill().getPatternFill().getBgColor().getRgb()),
                        hex(format.getFont().getColorArray(0).getRgb()));
            }
        }
        return letters;
    }

    private static String hex(byte[] argb) {
        return String.format("%02X%02X%02X", argb[1], argb[2], argb[3]);
    }

    @Test
    void contrast_isTheKnownOneOfBlackAndWhite() {
        assertEquals(21, contrast("000000", PAPER), 1e-9);
    }

    @Test
    void fills_differFromEachOtherAndFromPaperAndLettersFromThem() {
        Map<String, String> letters = lettersByFill();
        assertEquals(2, letters.size(), "close and off: " + letters);
        letters.forEach((fill, ink) -> {
            assertTrue(contrast(fill, ink) >= LETTERS, fill + " under " + ink);
            assertTrue(contrast(fill, PAPER) >= FILLS, fill);
        });
        List<String> fills = List.copyOf(letters.keySet());
        assertTrue(contrast(fills.get(0), fills.get(1)) >= FILLS, fills.toString());
    }

    @Test
    void cellsOfThePlan_haveLettersThatCanBeRead() {
        Set<String> seen = new HashSet<>();
        book.getSheet("Plan")
                .forEach(row -> row.forEach(cell -> {
                    var style = ((XSSFCell) cell).getCellStyle();
                    var fill = style.getFillForegroundXSSFColor();
                    String ground = fill == null ? PAPER : fill.getARGBHex().substring(2);
                    String ink = style.getFont().getXSSFColor().getARGBHex().substring(2);
                    if (seen.add(ground + ink)) {
                        assertTrue(contrast(ground, ink) >= LETTERS, cell.getAddress() + ": " + ink + " on " + ground);
                    }
                }));
        assertTrue(seen.size() >= 4, seen.toString());
    }

    /** The rules are evaluated where the miss is written into the sheet as a plain number. */
    @Test
    void figureOfTheMeasureThatIsOff_isColouredAndNoOther() {
        XSSFSheet plan = book.getSheet("Plan");
        Map<String, String> headings = Map.of(
                "Live loft miss [tolerances]", "Live loft [deg]",
                "Live lie miss [tolerances]", "Live lie [deg]",
                "Live sits miss [tolerances]", "Live sits [deg]",
                "Live carry miss [tolerances]", "Live carry [yd]",
                "Live gap miss [tolerances]", "Live gap [yd]");
        for (double miss : new double[] {1.0, 1.5, 2.5}) {
            headings.forEach((from, to) -> {
                headings.keySet().forEach(other -> write(other, other.equals(from) ? miss : 0));
                headings.values().forEach(figure -> {
                    int expected = figure.equals(to) && miss > 1 ? 1 : 0;
                    assertEquals(expected, holding(plan, figure, miss > 2), figure + " with " + from + " " + miss);
                });
            });
        }
    }

    /** Puts a number where the sixth row has a formula. */
    private static void write(String heading, double value) {
        ResultCells.plan(book, 5, heading).setBlank();
        ResultCells.set(book, 5, heading, value);
    }

    /** How many of the rules of a figure that go by tolerances hold in the sixth row: those for close, or for off. */
    private static int holding(XSSFSheet plan, String figure, boolean off) {
        int column = ResultCells.column(plan, figure);
        int holding = 0;
        for (int index = 0; index < plan.getSheetConditionalFormatting().getNumConditionalFormattings(); index++) {
            var formatting = plan.getSheetConditionalFormatting().getConditionalFormattingAt(index);
            String formula = formatting.getRule(0).getFormula1();
            boolean mine = formatting.getFormattingRanges()[0].getFirstColumn() == column
                    && formula.contains(off ? ">2.0000001" : ">1.0000001");
            holding += mine && holds(plan, formula) ? 1 : 0;
        }
        return holding;
    }

    private static boolean holds(XSSFSheet plan, String formula) {
        int row = ResultCells.slot(plan, 5).getRowNum() + 1;
        int first = ResultCells.slot(plan, 0).getRowNum() + 1;
        var scratch = plan.getRow(0).createCell(16_000);
        scratch.setCellFormula(formula.replaceAll("(?<=\\$[A-Z]{1,3})" + first + "\\b", String.valueOf(row)));
        var evaluator = plan.getWorkbook().getCreationHelper().createFormulaEvaluator();
        boolean holds = evaluator.evaluate(scratch).getBooleanValue();
        plan.getRow(0).removeCell(scratch);
        return holds;
    }
}
