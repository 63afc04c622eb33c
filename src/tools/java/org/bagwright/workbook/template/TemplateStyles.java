package org.bagwright.workbook.template;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.BookStyles.Role;

/** The looks of {@link BookStyles} with the alignments that cells to be filled in need. */
final class TemplateStyles {
    private final BookStyles styles;
    private final Map<String, XSSFCellStyle> aligned = new HashMap<>();

    TemplateStyles(XSSFWorkbook workbook) {
        this.styles = new BookStyles(workbook);
    }

    XSSFCellStyle of(Role role) {
        return styles.of(role);
    }

    XSSFCellStyle centred(Role role, String format) {
        return aligned.computeIfAbsent("centred " + role + format, key -> {
            XSSFCellStyle style = copy(role, format);
            style.setAlignment(HorizontalAlignment.CENTER);
            return style;
        });
    }

    /** Text kept off the edge of its cell. */
    XSSFCellStyle indented(Role role) {
        return aligned.computeIfAbsent("indented " + role, key -> {
            XSSFCellStyle style = copy(role, "General");
            style.setAlignment(HorizontalAlignment.LEFT);
            style.setIndention((short) 1);
            return style;
        });
    }

    private XSSFCellStyle copy(Role role, String format) {
        return styles.of(role, format).copy();
    }
}
