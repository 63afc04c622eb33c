package org.bagwright.workbook.cells;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** What a file says it holds, and whether its name says so too: spreadsheet programs refuse one whose name does not. */
final class BookKind {
    private static final Set<String> WORKBOOKS = Set.of(
            XSSFRelation.WORKBOOK.getContentType(),
            XSSFRelation.MACROS_WORKBOOK.getContentType(),
            XSSFRelation.TEMPLATE_WORKBOOK.getContentType(),
            XSSFRelation.MACRO_TEMPLATE_WORKBOOK.getContentType());

    private BookKind() {}

    /** Whether it is a workbook or a template, with macros or without. */
    static boolean isWorkbook(XSSFWorkbook workbook) {
        return WORKBOOKS.contains(workbook.getPackagePart().getContentType());
    }

    /** What is wrong with the name of a file, and which one would be right. */
    static Optional<String> wrongName(XSSFWorkbook workbook, Path file) {
        String name = String.valueOf(file.getFileName());
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        boolean macros = workbook.getPackagePart().getContentType().contains("macroEnabled");
        if (!ending.matches(macros ? "xlsx|xltx" : "xlsm|xltm")) {
            return Optional.empty();
        }
        String right = ending.substring(0, 3) + (macros ? "m" : "x");
        String renamed = name.substring(0, name.length() - ending.length()) + right;
        return Optional.of(
                "this is a workbook " + (macros ? "with" : "without") + " macros; spreadsheet programs refuse to open"
                        + " it under a name ending in ." + ending + ". Rename it " + renamed + ".");
    }
}
