package org.bagwright.workbook.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.plan.BookResult;

/** What all result sheets share: their names and the mark by which they are known again. */
public final class ResultSheets {
    public static final String MADE_ANEW = "Made anew on each run: keep your own notes on your own sheets.";
    /** Every result sheet that a book may have, in order. */
    public static final List<String> NAMES =
            List.of("Plan", "Settings", "Ladder", "Steps", "Others", "Bench card", "Team", "Messages");

    /** A name that each result sheet has to itself. A sheet without it is the fitter's own. */
    public static final String MARK = "BW_made_by_the_tool";

    public static final String NAME_PREFIX = "BW_";
    /** The names that a plan gives to cells of its own, as the formulas of the sheet Plan use them. */
    private static final Pattern OWN_NAME = Pattern.compile(NAME_PREFIX + "[a-z]+_(tolerance|importance)");

    private ResultSheets() {}

    /** The result sheets of one book, in order: a single golfer needs no sheet of his team. */
    public static List<String> namesFor(BookResult result) {
        boolean team = result.bags().size() > 1;
        return NAMES.stream().filter(name -> team || !name.equals("Team")).toList();
    }

    public static void mark(XSSFWorkbook workbook, List<String> names) {
        for (String name : names) {
            XSSFName mark = workbook.createName();
            mark.setSheetIndex(workbook.getSheetIndex(name));
            mark.setNameName(MARK);
            mark.setRefersToFormula("'" + name + "'!$A$1");
        }
    }

    /** A problem for every sheet of the fitter's own that has the name of a result sheet. */
    public static List<Message> clashes(XSSFWorkbook workbook) {
        return NAMES.stream()
                .filter(name -> workbook.getSheet(name) != null && !isMarked(workbook, name))
                .map(
                        name -> Message.problem(
                                name,
                                "this sheet is your own, but the plan needs its name for a result sheet. Rename it, then plan again"))
                .toList();
    }

    public static boolean isMarked(XSSFWorkbook workbook, String sheetName) {
        int index = workbook.getSheetIndex(sheetName);
        return workbook.getAllNames().stream()
                .anyMatch(name -> name.getSheetIndex() == index && MARK.equals(name.getNameName()));
    }

    /** Whether a name of the book is one that the tool makes. */
    public static boolean isTools(Name name) {
        return MARK.equals(name.getNameName())
                || OWN_NAME.matcher(name.getNameName()).matches();
    }

    /** Takes the result sheets of an earlier run and their names out of the book. */
    public static void remove(XSSFWorkbook workbook) {
        List<String> earlier =
                NAMES.stream().filter(name -> workbook.getSheet(name) != null).toList();
        for (Name name : List.copyOf(workbook.getAllNames())) {
            if (name.getSheetIndex() < 0 && OWN_NAME.matcher(name.getNameName()).matches()) {
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
