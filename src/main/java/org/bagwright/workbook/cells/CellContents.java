package org.bagwright.workbook.cells;

import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.xssf.model.SharedStringsTable;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.impl.values.XmlValueOutOfRangeException;
import org.bagwright.workbook.text.CellContent;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;

/** Reads cells; a formula that was saved without its value is calculated. */
public final class CellContents {
    /** What a number in a program may have but none in a book: 10.5d, 0x1p3. */
    private static final Pattern OF_A_PROGRAM = Pattern.compile("[dDfFxXpP]");

    private static final int DAYS_TO_1904 = 1462;

    private final Calculator calculator;
    private final SharedStringsTable sharedTexts;

    public CellContents(XSSFWorkbook workbook) {
        calculator = new Calculator(workbook);
        sharedTexts = workbook.getSharedStringSource();
    }

    public CellContent of(Cell cell) {
        if (cell == null) {
            return CellContent.blank();
        }
        try {
            return read(cell);
        } catch (XmlValueOutOfRangeException damaged) {
            return new CellContent.Broken("a damaged cell");
        }
    }

    private CellContent read(Cell cell) {
        if (cell.getCellType() != CellType.FORMULA) {
            return stored(cell, cell.getCellType());
        }
        return hasValue((XSSFCell) cell) ? stored(cell, cell.getCachedFormulaResultType()) : calculated(cell);
    }

    private static boolean hasValue(XSSFCell cell) {
        if (!cell.getCTCell().isSetV()) {
            return false;
        }
        boolean text = cell.getCTCell().getT() == STCellType.STR;
        return text || !cell.getCTCell().getV().isBlank();
    }

    private CellContent stored(Cell cell, CellType type) {
        return switch (type) {
            case STRING ->
                hasText(((XSSFCell) cell).getCTCell()) && cell.getStringCellValue() != null
                        ? CellContent.words(cell.getStringCellValue())
                        : new CellContent.Broken("a text that is missing from the file");
            case NUMERIC -> savedNumber((XSSFCell) cell);
            case BOOLEAN -> new CellContent.Truth(cell.getBooleanCellValue());
            case ERROR -> savedError((XSSFCell) cell);
            default -> CellContent.blank();
        };
    }

    /** The library gives an empty text for a number beyond the book's list of texts, and none for an entry without one. */
    private boolean hasText(CTCell cell) {
        if (cell.getT() != STCellType.S || !cell.isSetV()) {
            return true;
        }
        try {
            int number = Integer.parseInt(cell.getV());
            return number >= 0 && number < sharedTexts.getSharedStringItems().size();
        } catch (NumberFormatException none) {
            return false;
        }
    }

    private CellContent calculated(Cell cell) {
        return calculator.value(cell).map(value -> content(value, cell)).orElseGet(() -> {
            String text = ((XSSFCell) cell).getCTCell().getF().getStringValue();
            return new CellContent.Broken("a formula without a saved value that cannot be calculated here"
                    + (text.isBlank() ? "" : ", =" + CellContent.shortened(text)));
        });
    }

    private static CellContent content(CellValue value, Cell cell) {
        return switch (value.getCellType()) {
            case STRING -> CellContent.words(value.getStringValue());
            case NUMERIC -> number(value.getNumberValue(), cell);
            case BOOLEAN -> new CellContent.Truth(value.getBooleanValue());
            case ERROR -> broken(value.getErrorValue());
            default -> CellContent.blank();
        };
    }

    /** A file that no spreadsheet program has written may hold anything where the number should be. */
    private static CellContent savedNumber(XSSFCell cell) {
        if (OF_A_PROGRAM
                .matcher(cell.getRawValue() == null ? "" : cell.getRawValue())
                .find()) {
            return new CellContent.Broken("a damaged number");
        }
        try {
            return number(cell.getNumericCellValue(), cell);
        } catch (NumberFormatException | IllegalStateException none) {
            return new CellContent.Broken("a damaged number");
        }
    }

    private static CellContent number(double value, Cell cell) {
        if (Double.isFinite(value)) {
            boolean dated = isDated(cell);
            return new CellContent.Amount(dated && value >= 1 ? since1900(value, cell) : value, dated);
        }
        return new CellContent.Broken(Double.isNaN(value) ? "a damaged number" : "a number that is too large");
    }

    /** The days of a date in a book whose days may be counted from 1904. */
    private static double since1900(double days, Cell cell) {
        boolean from1904 = ((XSSFWorkbook) cell.getSheet().getWorkbook()).isDate1904();
        return from1904 ? days + DAYS_TO_1904 : days;
    }

    /** Spreadsheet programs have more errors than the library knows. */
    private static CellContent savedError(XSSFCell cell) {
        String name = String.valueOf(cell.getErrorCellString()).strip();
        return new CellContent.Broken("the error " + (name.isEmpty() ? "without a name" : CellContent.shortened(name)));
    }

    private static CellContent broken(byte code) {
        return new CellContent.Broken(
                code == (byte) FormulaError.CIRCULAR_REF.getLongCode()
                        ? "a formula that refers to its own cell"
                        : "the error " + errorName(code));
    }

    private static String errorName(byte code) {
        try {
            return FormulaError.forInt(code).getString();
        } catch (IllegalArgumentException unknown) {
            return "number " + code;
        }
    }

    private static boolean isDated(Cell cell) {
        return DateUtil.isADateFormat(
                cell.getCellStyle().getDataFormat(), cell.getCellStyle().getDataFormatString());
    }
}
