package org.bagwright.planning;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleUnaryOperator;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.DemoBooks;
import org.bagwright.domain.book.Message;

/** A demo book with cells edited as a fitter would. */
final class EditedDemo {
    private static final Map<ShippedBook, byte[]> PLAIN = new ConcurrentHashMap<>();

    private final Path file;
    private final XSSFWorkbook workbook;

    EditedDemo(ShippedBook demo, Path folder) throws IOException {
        file = folder.resolve("edited.xlsx");
        byte[] plain = PLAIN.get(demo);
        if (plain == null) {
            plain = DemoBooks.plain(demo.label());
            PLAIN.put(demo, plain);
        }
        workbook = new XSSFWorkbook(new ByteArrayInputStream(plain));
    }

    /** Writes a value under a heading, in the first row that has this name; gives the cell as messages write it. */
    String put(String sheet, String name, String heading, Object value) {
        Cell edited = cell(sheet, name, heading);
        if (value instanceof Number number) {
            edited.setCellValue(number.doubleValue());
        } else {
            edited.setCellValue((String) value);
        }
        return sheet + "!" + edited.getAddress();
    }

    /** Writes a value under a heading, in a row by its number; an empty text empties the cell. */
    String putAt(String sheet, int row, String heading, Object value) {
        XSSFSheet rows = workbook.getSheet(sheet);
        Cell edited = rows.getRow(row - 1).getCell(column(rows, heading), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
        if (value instanceof Number number) {
            edited.setCellValue(number.doubleValue());
        } else if (value.equals("")) {
            edited.setBlank();
        } else {
            edited.setCellValue((String) value);
        }
        return sheet + "!" + edited.getAddress();
    }

    /** The number under a heading, in the first row that has this name. */
    double number(String sheet, String name, String heading) {
        return cell(sheet, name, heading).getNumericCellValue();
    }

    private Cell cell(String sheet, String name, String heading) {
        XSSFSheet rows = workbook.getSheet(sheet);
        for (Row row : rows) {
            for (Cell cell : row) {
                if (text(cell).equals(name) && !isExample(row)) {
                    return row.getCell(column(rows, heading), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
                }
            }
        }
        throw new IllegalArgumentException("no " + name + " on " + sheet);
    }

    private static boolean isExample(Row row) {
        return row.getCell(0) != null && text(row.getCell(0)).startsWith("Example");
    }

    /** Changes every number under a heading. */
    EditedDemo change(String sheet, String heading, DoubleUnaryOperator changed) {
        XSSFSheet rows = workbook.getSheet(sheet);
        for (Row row : rows) {
            Cell cell = row.getCell(column(rows, heading));
            if (cell != null && cell.getCellType() == CellType.NUMERIC && !isExample(row)) {
                cell.setCellValue(changed.applyAsDouble(cell.getNumericCellValue()));
            }
        }
        return this;
    }

    private static int column(XSSFSheet sheet, String heading) {
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (text(cell).equals(heading)) {
                    return cell.getColumnIndex();
                }
            }
        }
        throw new IllegalArgumentException("no column " + heading + " on " + sheet.getSheetName());
    }

    private static String text(Cell cell) {
        return cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "";
    }

    /** What the command check says of it. */
    List<Message> messages() throws IOException {
        return new Charting(write()).check();
    }

    Path write() throws IOException {
        try (OutputStream output = Files.newOutputStream(file)) {
            workbook.write(output);
        }
        return file;
    }
}
