package org.bagwright.workbook.pen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.PlannedDemos;
import org.bagwright.workbook.Contrast;
import org.bagwright.workbook.schema.ResultSheet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every cell and every rule of the result sheets: contrast as in WCAG 2.1 [memory], in colour and printed in grey. */
@Tag("published")
class SheetColoursTest {
    private static final double LETTERS = 4.5;
    private static final double FILLS = 1.5;
    /** Lines of a frame against the fill inside: contrast of graphical objects. */
    private static final double FRAMES = 3;

    private static final String WHITE = "FFFFFFFF";
    private static final String BLACK = "FF000000";

    private final Set<String> pale = new TreeSet<>();
    private final Map<String, String> alike = new TreeMap<>();

    private static String fill(XSSFCellStyle style) {
        return style.getFillPattern() == FillPatternType.SOLID_FOREGROUND
                ? hex(style.getFillForegroundXSSFColor(), WHITE)
                : WHITE;
    }

    private static String hex(XSSFColor colour, String otherwise) {
        return Optional.ofNullable(colour).map(XSSFColor::getARGBHex).orElse(otherwise);
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void lettersAndFills_canBeToldApart(String demo) throws Exception {
        int cells = 0;
        int rules = 0;
        try (XSSFWorkbook book = PlannedDemos.open(demo)) {
            for (String name : ResultSheet.NAMES) {
                XSSFSheet sheet = book.getSheet(name);
                if (sheet != null) {
                    cells += cells(sheet);
                    rules += rules(sheet.getSheetConditionalFormatting(), name);
                }
            }
        }
        assertEquals(Set.of(), pale, "letters too near to their ground");
        assertEquals(Map.of(), alike, "neighbours too near to each other");
        assertTrue(cells > 300, cells + " cells");
        assertTrue(rules > 10, rules + " rules");
    }

    private int cells(XSSFSheet sheet) {
        int seen = 0;
        for (Row row : sheet) {
            for (Cell cell : row) {
                XSSFCellStyle style = (XSSFCellStyle) cell.getCellStyle();
                if (cell.getCellType() != CellType.BLANK) {
                    readable(
                            hex(style.getFont().getXSSFColor(), BLACK),
                            fill(style),
                            sheet.getSheetName() + "!" + cell.getAddress());
                    seen++;
                }
                neighbours(sheet, row.getCell(cell.getColumnIndex() + 1), cell);
                Row below = sheet.getRow(row.getRowNum() + 1);
                neighbours(sheet, below == null ? null : below.getCell(cell.getColumnIndex()), cell);
            }
        }
        return seen;
    }

    private void neighbours(XSSFSheet sheet, Cell other, Cell cell) {
        if (other == null
                || sheet.isColumnHidden(cell.getColumnIndex())
                || sheet.isColumnHidden(other.getColumnIndex())) {
            return;
        }
        if (isFramed(cell) || isFramed(other)) {
            return;
        }
        String one = fill((XSSFCellStyle) cell.getCellStyle());
        String two = fill((XSSFCellStyle) other.getCellStyle());
        if (!one.equals(two) && !differ(one, two, FILLS)) {
            alike.putIfAbsent(
                    one + " " + two, sheet.getSheetName() + "!" + cell.getAddress() + " and " + other.getAddress());
        }
    }

    /** A cell to choose or fill in has a dark frame, which keeps it apart from any neighbour. */
    private static boolean isFramed(Cell cell) {
        XSSFCellStyle style = (XSSFCellStyle) cell.getCellStyle();
        boolean line = style.getBorderTop() == BorderStyle.MEDIUM || style.getBorderTop() == BorderStyle.THIN;
        return line && differ(hex(style.getTopBorderXSSFColor(), BLACK), fill(style), FRAMES);
    }

    private int rules(XSSFSheetConditionalFormatting formats, String name) {
        int seen = 0;
        for (int index = 0; index < formats.getNumConditionalFormattings(); index++) {
            var format = formats.getConditionalFormattingAt(index);
            for (int rule = 0; rule < format.getNumberOfRules(); rule++) {
                XSSFConditionalFormattingRule each = format.getRule(rule);
                if (each.getPatternFormatting() != null) {
                    String ground = hex(each.getPatternFormatting().getFillBackgroundColorColor(), WHITE);
                    String letters = each.getFontFormatting() == null
                            ? "FF" + BookColour.INK.hex()
                            : hex(each.getFontFormatting().getFontColor(), "FF" + BookColour.INK.hex());
                    readable(letters, ground, name + " rule " + each.getFormula1());
                    seen++;
                }
            }
        }
        return seen;
    }

    private void readable(String letters, String ground, String where) {
        if (!differ(letters, ground, LETTERS)) {
            pale.add(letters + " on " + ground + " at " + where);
        }
    }

    private static boolean differ(String one, String other, double least) {
        Contrast contrast = new Contrast(one.substring(2), other.substring(2));
        return contrast.inColour() >= least && contrast.inGrey() >= least;
    }
}
