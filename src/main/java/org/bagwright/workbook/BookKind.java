package org.bagwright.workbook;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Whether a book's name says, as it must, if there may be macros in it: spreadsheet programs refuse one that does not. */
final class BookKind {
    private BookKind() {}

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
                "this is a workbook " + (macros ? "with" : "without") + " macros, which spreadsheet programs refuse"
                        + " under a name that ends in ." + ending + "; rename it " + renamed + ".");
    }
}
