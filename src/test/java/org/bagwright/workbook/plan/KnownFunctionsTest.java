package org.bagwright.workbook.plan;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.PlannedDemos;
import org.bagwright.workbook.schema.ResultSheet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCfRule;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTConditionalFormatting;

/** The result sheets keep to functions that spreadsheets of 2016 and other programs have known for long [memory]. */
@Tag("regression")
class KnownFunctionsTest {
    private static final Set<String> ALLOWED = Set.of(
            "ABS",
            "AND",
            "AVERAGEIF",
            "CODE",
            "COUNT",
            "COUNTIF",
            "FIND",
            "IF",
            "IFERROR",
            "INDEX",
            "ISNUMBER",
            "LEFT",
            "LEN",
            "MATCH",
            "MAX",
            "MID",
            "MIN",
            "OR",
            "SEARCH",
            "SQRT",
            "SUBSTITUTE",
            "SUBTOTAL",
            "SUM",
            "SUMIF",
            "SUMPRODUCT",
            "SUMSQ",
            "SUMXMY2",
            "UPPER",
            "VALUE");
    /** For the list of a slot with several clubs no plain range serves. */
    private static final Set<String> ALLOWED_IN_LISTS = Set.of("INDEX", "OFFSET");

    private static final Pattern TEXT = Pattern.compile("\"[^\"]*\"");
    private static final Pattern FUNCTION = Pattern.compile("([A-Z_][A-Z0-9_.]*)\\(");

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void everyFunction_isKnownEverywhere(String demo) throws Exception {
        Set<String> found = new TreeSet<>();
        Set<String> inLists = new TreeSet<>();
        try (XSSFWorkbook book = PlannedDemos.open(demo)) {
            for (String name : ResultSheet.NAMES) {
                XSSFSheet sheet = book.getSheet(name);
                if (sheet != null) {
                    cells(sheet, found);
                    rules(sheet, found);
                    lists(sheet, inLists);
                }
            }
            for (Name name : book.getAllNames()) {
                boolean own = ResultSheet.isToolsName(name.getNameName());
                assertFalse(
                        own && FUNCTION.matcher(name.getRefersToFormula()).find(),
                        name.getNameName() + " is a formula where a cell serves");
            }
        }
        assertTrue(found.size() > 15, found.toString());
        found.removeAll(ALLOWED);
        inLists.removeAll(ALLOWED_IN_LISTS);
        assertTrue(found.isEmpty(), "not on the list: " + found);
        assertTrue(inLists.isEmpty(), "not on the list for validations: " + inLists);
    }

    private static void add(String formula, Set<String> found) {
        Matcher function = FUNCTION.matcher(TEXT.matcher(formula).replaceAll(""));
        while (function.find()) {
            found.add(function.group(1));
        }
    }

    private static void cells(XSSFSheet sheet, Set<String> found) {
        sheet.forEach(row -> row.forEach(cell -> {
            if (cell.getCellType() == CellType.FORMULA) {
                add(cell.getCellFormula(), found);
            }
        }));
    }

    private static void rules(XSSFSheet sheet, Set<String> found) {
        for (CTConditionalFormatting rules : sheet.getCTWorksheet().getConditionalFormattingArray()) {
            for (CTCfRule rule : rules.getCfRuleArray()) {
                for (String formula : rule.getFormulaArray()) {
                    add(formula, found);
                }
            }
        }
    }

    private static void lists(XSSFSheet sheet, Set<String> found) {
        for (DataValidation validation : sheet.getDataValidations()) {
            String formula = validation.getValidationConstraint().getFormula1();
            if (formula != null) {
                add(formula, found);
            }
        }
    }
}
