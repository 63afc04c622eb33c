package org.bagwright.workbook.shots;

import java.util.Optional;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Row.MissingCellPolicy;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.schema.StartSetting;
import org.bagwright.workbook.text.CellContent;

/** The cell of the sheet Start that remembers what headings of files of shots mean. */
final class LearntCell {
    private static final int LABEL_COLUMNS = 5;

    private final XSSFWorkbook workbook;
    private final BookContext context;

    LearntCell(XSSFWorkbook workbook, BookContext context) {
        this.workbook = workbook;
        this.context = context;
    }

    /** Writes them behind the label, which is added below all that the sheet holds where it is missing. */
    void write(String headings) {
        XSSFSheet sheet = start();
        cellOf(sheet, StartSetting.SHOT_HEADINGS)
                .orElseGet(() -> newCell(sheet))
                .setCellValue(headings);
    }

    private XSSFSheet start() {
        for (Sheet sheet : workbook) {
            if (CloseNames.key(sheet.getSheetName()).equals(CloseNames.key(StartSetting.SHEET))) {
                return (XSSFSheet) sheet;
            }
        }
        return workbook.createSheet(StartSetting.SHEET);
    }

    private Optional<XSSFCell> cellOf(XSSFSheet sheet, StartSetting setting) {
        for (Row row : sheet) {
            for (int column = 0; column < LABEL_COLUMNS; column++) {
                if (context.contents().of(row.getCell(column)) instanceof CellContent.Words words
                        && StartSetting.labelled(words.text().replaceAll("\\s*:$", ""))
                                .filter(setting::equals)
                                .isPresent()) {
                    return Optional.of((XSSFCell) row.getCell(column + 1, MissingCellPolicy.CREATE_NULL_AS_BLANK));
                }
            }
        }
        return Optional.empty();
    }

    /** In the column of another label, in its look. */
    private XSSFCell newCell(XSSFSheet sheet) {
        Optional<XSSFCell> other = cellOf(sheet, StartSetting.DISTANCE).or(() -> cellOf(sheet, StartSetting.SPEED));
        int column = other.map(cell -> cell.getColumnIndex() - 1).orElse(0);
        Row row = sheet.createRow(sheet.getPhysicalNumberOfRows() == 0 ? 0 : sheet.getLastRowNum() + 1);
        row.createCell(column).setCellValue(StartSetting.SHOT_HEADINGS.label());
        XSSFCell cell = (XSSFCell) row.createCell(column + 1);
        other.ifPresent(found -> {
            cell.setCellStyle(found.getCellStyle());
            row.getCell(column).setCellStyle(found.getRow().getCell(column).getCellStyle());
        });
        return cell;
    }
}
