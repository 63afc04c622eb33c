package org.bagwright.workbook.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("regression")
class CalculatorTest {
    /** A text made of twenty million letters one by one, to be thrown away as too long. */
    private static final String LONG = "LEN(REPT(\"x\",20000000))";

    private final XSSFWorkbook book = new XSSFWorkbook();
    private final XSSFSheet sheet = book.createSheet("A");

    @AfterEach
    void close() throws IOException {
        book.close();
    }

    private XSSFCell formula(int row, String text) {
        XSSFCell cell = sheet.createRow(row).createCell(0);
        cell.setCellFormula(text);
        return cell;
    }

    @Test
    void ordinaryFormula_hasItsValueAndCanBeSaved() {
        Cell cell = formula(0, "2*21");
        Calculator calculator = new Calculator(book);
        assertEquals(42, calculator.value(cell).orElseThrow().getNumberValue());
        calculator.save(cell);
        assertEquals(42, cell.getNumericCellValue());
    }

    @Test
    void formulaThatTakesTooLong_hasNoValue_andStopsTheOthers() {
        Cell endless = formula(0, LONG);
        Cell quick = formula(1, "2*21");
        Calculator hasty = new Calculator(book, 1);
        assertTrue(hasty.value(endless).isEmpty());
        assertTrue(hasty.value(quick).isEmpty());
        hasty.save(quick);
        assertEquals(0, quick.getNumericCellValue());
    }

    @Test
    void formulaTooDeepForTheLibrary_hasNoValue_othersHave() {
        XSSFCell deep = formula(0, "1");
        deep.getCTCell().getF().setStringValue("(".repeat(50_000) + "1" + ")".repeat(50_000));
        Calculator calculator = new Calculator(book);
        assertTrue(calculator.value(deep).isEmpty());
        assertEquals(42, calculator.value(formula(1, "2*21")).orElseThrow().getNumberValue());
    }
}
