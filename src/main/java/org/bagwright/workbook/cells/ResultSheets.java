package org.bagwright.workbook.cells;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Message;
import org.bagwright.workbook.schema.ResultSheet;

/**
 * The result sheets of one book: marks new ones, finds and removes those of an earlier run.
 *
 * @param workbook the book
 */
public record ResultSheets(XSSFWorkbook workbook) {
    public void mark(List<String> names) {
        for (String name : names) {
            XSSFName mark = workbook.createName();
            mark.setSheetIndex(workbook.getSheetIndex(name));
            mark.setNameName(ResultSheet.MARK);
            mark.setRefersToFormula("'" + name + "'!$A$1");
        }
    }

    /**
     * A problem for every sheet of the fitter's own that has the name of a result sheet.
     *
     * @param sessions whether the plan writes a sheet of sessions
     */
    public List<Message> clashes(boolean sessions) {
        return ResultSheet.NAMES.stream()
                .filter(name -> sessions || !name.equals(ResultSheet.SESSIONS.sheetName()))
                .filter(name -> workbook.getSheet(name) != null && !isMarked(name))
                .map(
                        name -> Message.problem(
                                name,
                                "this sheet is your own, but the plan needs its name for a result sheet. Rename it, then plan again"))
                .toList();
    }

    /** Whether the book has a sheet of this name that the tool has made. */
    public boolean isMarked(String sheetName) {
        int index = workbook.getSheetIndex(sheetName);
        return workbook.getAllNames().stream()
                .anyMatch(name -> name.getSheetIndex() == index && ResultSheet.MARK.equals(name.getNameName()));
    }

    /** Takes the result sheets of an earlier run and their names out of the book. */
    public void remove() {
        List<String> earlier = ResultSheet.NAMES.stream()
                .filter(name -> workbook.getSheet(name) != null && isMarked(name))
                .toList();
        for (Name name : List.copyOf(workbook.getAllNames())) {
            if (name.getSheetIndex() < 0 && ResultSheet.isCellName(name.getNameName())) {
                workbook.removeName(name);
            }
        }
        for (String name : earlier) {
            XSSFSheet sheet = workbook.getSheet(name);
            List<PackagePartName> parts = parts(sheet);
            workbook.removeSheetAt(workbook.getSheetIndex(sheet));
            parts.forEach(part -> forget(workbook.getPackage(), part));
        }
    }

    /** The charts of a sheet, the drawing that holds them, and the sheet. */
    private static List<PackagePartName> parts(XSSFSheet sheet) {
        List<PackagePartName> parts = new ArrayList<>();
        XSSFDrawing drawing = sheet.getDrawingPatriarch();
        if (drawing != null) {
            drawing.getCharts()
                    .forEach(chart -> parts.add(chart.getPackagePart().getPartName()));
            parts.add(drawing.getPackagePart().getPartName());
        }
        parts.add(sheet.getPackagePart().getPartName());
        return parts;
    }

    /**
     * Without its own removal a chart would stay in the file, seen by nobody, and the list of what a sheet or a drawing
     * holds would be handed on to the next one of the same name.
     */
    private static void forget(OPCPackage file, PackagePartName part) {
        if (file.containPart(part)) {
            file.deletePartRecursive(part);
        }
        PackagePartName list = PackagingURIHelper.getRelationshipPartName(part);
        if (file.containPart(list)) {
            file.removePart(list);
        }
    }
}
