package org.bagwright.workbook.shots;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.bagwright.domain.session.PlainTable;
import org.bagwright.domain.text.Numbers;
import org.bagwright.files.SourceFile;
import org.bagwright.workbook.cells.BookFile;
import org.bagwright.workbook.cells.UnreadableBookException;

/**
 * The sheets of any .xlsx or .xls workbook as plain tables of texts. A formula counts as the value that is saved with it: it
 * is never calculated.
 *
 * @param file the workbook
 */
public record PlainSheets(Path file) {
    private static final long MOST_OLD_BYTES = 64L << 20;
    private static final int MOST_ROWS = 50_000;
    private static final int MOST_CELLS = 200;
    private static final int MOST_DECIMALS = 8;

    /** Whether the file begins as a workbook does, whatever its name. */
    public boolean isWorkbook() throws IOException {
        if (!Files.isRegularFile(file) || Files.size(file) == 0) {
            return false;
        }
        FileMagic kind = FileMagic.valueOf(file.toFile());
        return kind == FileMagic.OOXML || kind == FileMagic.OLE2;
    }

    /**
     * Every sheet in order.
     *
     * @throws UnreadableBookException if the file is protected, damaged or too large
     */
    public List<PlainTable> tables() throws UnreadableBookException {
        try (Workbook workbook = open()) {
            List<PlainTable> tables = new ArrayList<>();
            for (Sheet sheet : workbook) {
                tables.add(table(sheet));
            }
            return tables;
        } catch (IOException closing) {
            throw new UncheckedIOException(closing);
        }
    }

    private Workbook open() throws UnreadableBookException {
        try {
            if (FileMagic.valueOf(file.toFile()) != FileMagic.OLE2) {
                return BookFile.open(new SourceFile(file));
            }
            if (Files.size(file) > MOST_OLD_BYTES) {
                throw new UnreadableBookException(file, "the file is larger than 64 MB; expected a smaller workbook.");
            }
            return new HSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)));
        } catch (EncryptedDocumentException locked) {
            throw new UnreadableBookException(
                    file, "the workbook is protected by a password; save a copy of it without a password.");
        } catch (IOException | RuntimeException damaged) {
            throw UnreadableBookException.damaged(file);
        }
    }

    private PlainTable table(Sheet sheet) throws UnreadableBookException {
        List<PlainTable.Row> rows = new ArrayList<>();
        for (Row row : sheet) {
            if (rows.size() > MOST_ROWS) {
                throw new UnreadableBookException(file, "a sheet has more than " + MOST_ROWS + " rows; split it.");
            }
            rows.add(new PlainTable.Row(row.getRowNum() + 1, cells(row)));
        }
        return new PlainTable(nameOf(file, sheet.getSheetName()), rows);
    }

    /** What the table of a sheet is called. */
    public static String nameOf(Path file, String sheet) {
        return file.getFileName() + " sheet " + sheet;
    }

    private static List<String> cells(Row row) {
        List<String> cells = new ArrayList<>();
        for (Cell cell : row) {
            if (cell.getColumnIndex() < MOST_CELLS) {
                while (cells.size() <= cell.getColumnIndex()) {
                    cells.add("");
                }
                cells.set(cell.getColumnIndex(), text(cell));
            }
        }
        return cells;
    }

    private static String text(Cell cell) {
        try {
            CellType type =
                    cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
            return switch (type) {
                case STRING -> cell.getStringCellValue();
                case NUMERIC -> number(cell);
                case BOOLEAN -> cell.getBooleanCellValue() ? "true" : "false";
                case ERROR -> "#N/A";
                default -> "";
            };
        } catch (RuntimeException damaged) {
            return "#damaged";
        }
    }

    /** A number with a decimal point that cannot be taken for a separator of thousands. */
    private static String number(Cell cell) {
        double value = cell.getNumericCellValue();
        if (DateUtil.isCellDateFormatted(cell) && value >= 1) {
            return cell.getLocalDateTimeCellValue().toLocalDate().toString();
        }
        String text = Double.isFinite(value)
                ? Numbers.trimmed(value, MOST_DECIMALS)
                : String.format(Locale.ROOT, "%s", value);
        return text.matches(".*\\.\\d{3}") ? text + "0" : text;
    }
}
