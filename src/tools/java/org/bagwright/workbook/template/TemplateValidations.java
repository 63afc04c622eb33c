package org.bagwright.workbook.template;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.bagwright.domain.text.ListText;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.text.Quantity;

/** Adds drop-downs and limits to the columns of a template's sheet. */
final class TemplateValidations {
    private static final String TITLE = "Please check";

    private TemplateValidations() {}

    static void add(XSSFSheet sheet, TemplateLayout layout) {
        for (int index = 0; index < layout.columns().size(); index++) {
            CellRangeAddressList cells =
                    new CellRangeAddressList(TemplateLayout.FIRST_ROW, layout.lastCheckedRow(), index, index);
            add(sheet, layout.columns().get(index), cells);
        }
    }

    private static void add(XSSFSheet sheet, Column column, CellRangeAddressList cells) {
        DataValidationHelper helper = sheet.getDataValidationHelper();
        switch (column.kind()) {
            case GOLFER ->
                names(sheet, cells, TemplateLists.GOLFERS, "No golfer of this name is on the sheet Golfers.");
            case SLEEVE ->
                names(sheet, cells, TemplateLists.SLEEVES, "No sleeve of this name is on the sheet Sleeves.");
            case KIT -> names(sheet, cells, TemplateLists.KITS, "No kit of this name is on the sheet Weights.");
            case CHOICE, YES_NO -> words(sheet, cells, column.words(), column.header());
            case DATE ->
                ask(
                        sheet,
                        cells,
                        helper.createDateConstraint(
                                OperatorType.BETWEEN, "DATE(1990,1,1)", "DATE(2099,12,31)", "yyyy-mm-dd"),
                        column.header() + " should be a date such as 2026-05-31.");
            case NUMBER_OR_WORD -> suggestion(sheet, cells, column.words());
            case NUMBER ->
                column.limit().ifPresent(limit -> {
                    String unit = unitName(column.quantity());
                    double scale = unit.isEmpty()
                            ? column.quantity()
                                    .usual(org.bagwright.domain.units.Units.DEFAULT)
                                    .sizeMeasureUnits()
                            : 1;
                    DataValidationConstraint between = helper.createDecimalConstraint(
                            OperatorType.BETWEEN,
                            bound(limit.leastMeasureUnits(), scale, unit),
                            bound(limit.mostMeasureUnits(), scale, unit));
                    stop(
                            sheet,
                            cells,
                            between,
                            column.header() + " must be " + inWords(column.quantity(), limit, unit) + ".");
                });
            case WHOLE ->
                column.limit().ifPresent(limit -> {
                    DataValidationConstraint between = helper.createIntegerConstraint(
                            OperatorType.BETWEEN,
                            Numbers.trimmed(limit.leastMeasureUnits()),
                            Numbers.trimmed(limit.mostMeasureUnits()));
                    stop(
                            sheet,
                            cells,
                            between,
                            column.header() + " must be a whole number, "
                                    + limit.inWords().strip() + ".");
                });
            default -> {}
        }
    }

    /** A drop-down that also takes other text after a question. */
    static void words(XSSFSheet sheet, CellRangeAddressList cells, List<String> words, String header) {
        DataValidationHelper helper = sheet.getDataValidationHelper();
        DataValidationConstraint list = helper.createExplicitListConstraint(words.toArray(String[]::new));
        ask(sheet, cells, list, header + " should be " + ListText.oneOf(words) + ".");
    }

    private static void names(XSSFSheet sheet, CellRangeAddressList cells, String name, String text) {
        ask(sheet, cells, sheet.getDataValidationHelper().createFormulaListConstraint(name), text);
    }

    private static void suggestion(XSSFSheet sheet, CellRangeAddressList cells, List<String> words) {
        if (!words.isEmpty()) {
            DataValidationHelper helper = sheet.getDataValidationHelper();
            DataValidation offered =
                    helper.createValidation(helper.createExplicitListConstraint(words.toArray(String[]::new)), cells);
            offered.setSuppressDropDownArrow(true);
            offered.setShowErrorBox(false);
            sheet.addValidationData(offered);
        }
    }

    private static void ask(XSSFSheet sheet, CellRangeAddressList cells, DataValidationConstraint what, String text) {
        validate(sheet, cells, what, text, DataValidation.ErrorStyle.WARNING);
    }

    private static void stop(XSSFSheet sheet, CellRangeAddressList cells, DataValidationConstraint what, String text) {
        validate(sheet, cells, what, text, DataValidation.ErrorStyle.STOP);
    }

    private static void validate(
            XSSFSheet sheet, CellRangeAddressList cells, DataValidationConstraint what, String text, int style) {
        DataValidation validation = sheet.getDataValidationHelper().createValidation(what, cells);
        validation.setErrorStyle(style);
        validation.createErrorBox(TITLE, text);
        validation.setShowErrorBox(true);
        validation.setSuppressDropDownArrow(true);
        validation.setEmptyCellAllowed(true);
        sheet.addValidationData(validation);
    }

    /** A limit as a formula in the unit that the sheet Start names. */
    private static String bound(double limit, double scale, String unit) {
        String number = Numbers.trimmed(limit / scale);
        return unit.isEmpty() ? number : number + "/" + unit;
    }

    private static String unitName(Quantity quantity) {
        return switch (quantity) {
            case LENGTH -> TemplateLists.LENGTH_UNIT;
            case SPEED -> TemplateLists.SPEED_UNIT;
            case DISTANCE -> TemplateLists.DISTANCE_UNIT;
            default -> "";
        };
    }

    private static String inWords(Quantity quantity, Limit limit, String unit) {
        return unit.isEmpty()
                ? quantity.usual(org.bagwright.domain.units.Units.DEFAULT).inWords(limit)
                : quantity.startUnits().stream()
                        .map(each -> each.inWords(limit))
                        .collect(Collectors.joining(" or "));
    }
}
