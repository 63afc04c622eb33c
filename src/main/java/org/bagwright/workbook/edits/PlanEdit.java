package org.bagwright.workbook.edits;

import java.util.Optional;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.bagwright.domain.book.CellChange;
import org.bagwright.domain.book.Message;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.text.CellContent;

/**
 * A cell of the sheet Plan that a person changed, and the input cell that takes it.
 *
 * @param planCell the cell on the sheet Plan
 * @param row the row of the input sheet
 * @param column its column
 * @param value what it takes
 */
record PlanEdit(String planCell, InputRow row, Column column, CellContent value) {

    /** Whether the input cell holds a formula, which no edit replaces. */
    boolean meetsFormula() {
        return row.cellToWrite(column)
                .filter(cell -> cell.getCellType() == CellType.FORMULA || cell.isPartOfArrayFormulaGroup())
                .isPresent();
    }

    /** Writes the value only, so that format and note of the cell stay. */
    CellChange write() {
        String before = shown(row.content(column));
        Optional<XSSFCell> cell = row.cellToWrite(column);
        if (value instanceof CellContent.Amount amount) {
            cell.orElseThrow().setCellValue(amount.valueMeasureUnits());
        } else if (value instanceof CellContent.Words words) {
            cell.orElseThrow().setCellValue(words.text());
        } else {
            cell.orElseThrow().setBlank();
        }
        return new CellChange(row.cell(column), column.subject(), before, shown(value));
    }

    /** What the next plan says of it. */
    Message note() {
        return Message.note(
                planCell,
                column.subject() + " " + shown(value) + " from here is now in " + row.cell(column) + ", which was "
                        + shown(row.content(column)));
    }

    static String shown(CellContent content) {
        if (content instanceof CellContent.Words words) {
            return words.text();
        }
        return content.isBlank() ? "blank" : content.shown();
    }
}
