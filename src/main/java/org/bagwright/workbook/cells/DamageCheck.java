package org.bagwright.workbook.cells;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.extensions.XSSFCellFill;
import org.apache.xmlbeans.impl.values.XmlValueOutOfRangeException;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTSheet;

/**
 * What the library does not notice when it opens a book: another kind of file, a wrong name, missing or doubled content.
 *
 * @param workbook the book as the library has opened it
 * @param file its file
 */
record DamageCheck(XSSFWorkbook workbook, Path file) {
    private static final Set<String> WORKBOOKS = Set.of(
            XSSFRelation.WORKBOOK.getContentType(),
            XSSFRelation.MACROS_WORKBOOK.getContentType(),
            XSSFRelation.TEMPLATE_WORKBOOK.getContentType(),
            XSSFRelation.MACRO_TEMPLATE_WORKBOOK.getContentType());

    /** @throws UnreadableBookException for the first thing that is wrong */
    void check() throws UnreadableBookException {
        if (!WORKBOOKS.contains(workbook.getPackagePart().getContentType())) {
            throw UnreadableBookException.otherKind(file);
        }
        checkKinds();
        workbook.getProperties();
        checkPart("xl/workbook.xml", this::readBook);
        checkPart("xl/styles.xml", this::readStyles);
        checkName();
        for (Sheet sheet : workbook) {
            checkPlaces((XSSFSheet) sheet);
        }
    }

    /** The library leaves out sheets of kinds that it does not know, and would then count the others wrongly. */
    private void checkKinds() throws UnreadableBookException {
        for (CTSheet sheet : workbook.getCTWorkbook().getSheets().getSheetArray()) {
            if (workbook.getSheet(sheet.getName()) == null) {
                throw bad("its sheet \"" + sheet.getName()
                        + "\" is a macro sheet or a dialog of an old kind, which cannot"
                        + " be kept in a result. Delete it, or move it to another book.");
            }
        }
    }

    private interface Values {
        void read() throws UnreadableBookException;
    }

    /** The library looks at many values only when it writes the book. */
    private void checkPart(String part, Values values) throws UnreadableBookException {
        try {
            values.read();
        } catch (XmlValueOutOfRangeException wrong) {
            throw UnreadableBookException.damagedPart(file, part, "has a value that is not possible there");
        }
    }

    private void readBook() {
        for (CTSheet sheet : workbook.getCTWorkbook().getSheets().getSheetArray()) {
            sheet.getSheetId();
            sheet.getState();
        }
        for (Name name : workbook.getAllNames()) {
            name.getSheetIndex();
        }
    }

    private void readStyles() throws UnreadableBookException {
        StylesTable styles = workbook.getStylesSource();
        if (styles.getNumCellStyles() == 0
                || styles.getFonts().isEmpty()
                || styles.getFills().isEmpty()
                || styles.getNumberFormats().containsValue(null)) {
            throw UnreadableBookException.damagedPart(file, "xl/styles.xml", "has gaps");
        }
        for (XSSFFont font : styles.getFonts()) {
            Optional.ofNullable(font.getXSSFColor()).ifPresent(XSSFColor::getRGB);
            font.getFontHeightInPoints();
        }
        for (int style = 0; style < styles.getNumCellStyles(); style++) {
            styles.getStyleAt(style).getDataFormat();
            styles.getStyleAt(style).getFontIndex();
        }
        for (XSSFCellFill fill : styles.getFills()) {
            Optional.ofNullable(fill.getFillForegroundColor()).ifPresent(XSSFColor::getRGB);
            Optional.ofNullable(fill.getFillBackgroundColor()).ifPresent(XSSFColor::getRGB);
        }
    }

    /** Spreadsheet programs refuse a book with macros under the name of one without, the other way round, or as binary. */
    private void checkName() throws UnreadableBookException {
        String name = String.valueOf(file.getFileName());
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        boolean macros = workbook.getPackagePart().getContentType().contains("macroEnabled");
        if (!ending.matches(macros ? "xlsx|xltx|xlsb" : "xlsm|xltm|xlsb")) {
            return;
        }
        String right = ending.substring(0, 3) + (macros ? "m" : "x");
        String renamed = name.substring(0, name.length() - ending.length()) + right;
        throw bad("this is a workbook " + (macros ? "with" : "without") + " macros; spreadsheet programs refuse to open"
                + " it under a name ending in ." + ending + ". Rename it " + renamed + ".");
    }

    /** POI takes rows and columns beyond the last, and of two rows or cells in one place it drops the first. */
    private void checkPlaces(XSSFSheet sheet) throws UnreadableBookException {
        if (sheet.getFirstRowNum() < -1 || sheet.getLastRowNum() > SpreadsheetVersion.EXCEL2007.getLastRowIndex()) {
            throw damaged(sheet, "a row outside the limits of a sheet");
        }
        if (sheet.getCTWorksheet().getSheetData().sizeOfRowArray() > sheet.getPhysicalNumberOfRows()) {
            throw damaged(sheet, "a row twice");
        }
        for (Row row : sheet) {
            boolean before = row.getFirstCellNum() < 0 && row.getPhysicalNumberOfCells() > 0;
            if (before || row.getLastCellNum() > SpreadsheetVersion.EXCEL2007.getMaxColumns()) {
                throw damaged(sheet, "a column outside the limits of a sheet");
            }
            if (((XSSFRow) row).getCTRow().sizeOfCArray() > row.getPhysicalNumberOfCells()) {
                throw damaged(sheet, "a cell twice in row " + (row.getRowNum() + 1));
            }
            for (Cell cell : row) {
                checkFormat(sheet, (XSSFCell) cell);
            }
        }
    }

    private void checkFormat(XSSFSheet sheet, XSSFCell cell) throws UnreadableBookException {
        try {
            long style = cell.getCTCell().getS();
            if (style < 0 || style >= workbook.getNumCellStyles()) {
                throw damaged(sheet, "the damaged cell " + cell.getAddress());
            }
        } catch (XmlValueOutOfRangeException wrong) {
            throw damaged(sheet, "the damaged cell " + cell.getAddress());
        }
    }

    private UnreadableBookException damaged(Sheet sheet, String has) {
        return bad("the file is damaged: its sheet \"" + sheet.getSheetName() + "\" has " + has
                + "; use an earlier copy.");
    }

    private UnreadableBookException bad(String text) {
        return new UnreadableBookException(file, text);
    }
}
