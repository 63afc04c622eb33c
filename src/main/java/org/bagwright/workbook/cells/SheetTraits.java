package org.bagwright.workbook.cells;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTColor;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTSheetPr;

/**
 * What a result sheet keeps when it is replaced: the name by which macros know it, the colour of its tab, and whether it
 * is hidden.
 */
public record SheetTraits(Optional<String> codeName, Optional<CTColor> tabColour, SheetVisibility visibility) {

    /** The traits of the sheets of these names that a book has. */
    public static Map<String, SheetTraits> of(XSSFWorkbook workbook, List<String> names) {
        Map<String, SheetTraits> traits = new LinkedHashMap<>();
        names.stream()
                .filter(name -> workbook.getSheet(name) != null)
                .forEach(name -> traits.put(name, of(workbook.getSheet(name))));
        return traits;
    }

    private static SheetTraits of(XSSFSheet sheet) {
        Optional<CTSheetPr> properties =
                Optional.ofNullable(sheet.getCTWorksheet().getSheetPr());
        XSSFWorkbook workbook = sheet.getWorkbook();
        return new SheetTraits(
                properties.map(CTSheetPr::getCodeName),
                properties.map(CTSheetPr::getTabColor).map(colour -> (CTColor) colour.copy()),
                workbook.getSheetVisibility(workbook.getSheetIndex(sheet)));
    }

    /** Gives them to the sheet of the same name; what is shown first cannot be hidden. */
    public void giveTo(XSSFSheet sheet, boolean shownFirst) {
        CTSheetPr properties = sheet.getCTWorksheet().isSetSheetPr()
                ? sheet.getCTWorksheet().getSheetPr()
                : sheet.getCTWorksheet().addNewSheetPr();
        codeName.ifPresent(properties::setCodeName);
        tabColour.ifPresent(properties::setTabColor);
        if (!shownFirst) {
            XSSFWorkbook workbook = sheet.getWorkbook();
            workbook.setSheetVisibility(workbook.getSheetIndex(sheet), visibility);
        }
    }
}
