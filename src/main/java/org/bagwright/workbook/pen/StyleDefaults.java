package org.bagwright.workbook.pen;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCellStyle;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCellStyles;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTFontScheme;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTStylesheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTXf;

/**
 * What readers expect of a book besides its formats, and the library leaves out: a theme, the style Normal, and styles with
 * names. What a book has already stays.
 */
final class StyleDefaults {
    private static final String THEME = "theme.xml";
    private static final String NORMAL = "Normal";
    private static final long NORMAL_ID = 0;

    private final XSSFWorkbook workbook;
    private final StylesTable styles;

    StyleDefaults(XSSFWorkbook workbook) {
        this.workbook = workbook;
        this.styles = workbook.getStylesSource();
    }

    /**
     * Adds the theme and the style Normal where they are missing. The letters by which a book measures the widths of its columns
     * become the tool's in a book without sheets: the library's are not on every machine, and others are up to a third wider. So are those of
     * Normal, where a book has no such style.
     */
    void add(String fontName, double heightPoints, XSSFFont normalFont) {
        if (workbook.getNumberOfSheets() == 0) {
            XSSFFont usual = workbook.getFontAt(0);
            usual.getCTFont().setSchemeArray(new CTFontScheme[0]);
            usual.setFontName(fontName);
            usual.setFontHeight(heightPoints);
        }
        if (styles.getTheme() == null) {
            styles.ensureThemesTable();
            try (InputStream theme = StyleDefaults.class.getResourceAsStream(THEME)) {
                styles.getTheme().readFrom(theme);
            } catch (IOException broken) {
                throw new UncheckedIOException("The program's own theme cannot be read.", broken);
            }
        }
        if (named().noneMatch(style -> style.isSetBuiltinId() && style.getBuiltinId() == NORMAL_ID)) {
            if (styles._getStyleXfsSize() == 0) {
                styles.putCellStyleXf(CTXf.Factory.newInstance());
            }
            styles.getCellStyleXfAt(0).setFontId(normalFont.getIndex());
            CTCellStyle normal = name(NORMAL, 0);
            normal.setBuiltinId(NORMAL_ID);
        }
    }

    /** The number of the look with a name; it is added if there is none. */
    int named(String name, CTXf look) {
        OptionalInt known = named().filter(style -> name.equals(style.getName()))
                .mapToInt(style -> (int) style.getXfId())
                .findFirst();
        return known.orElseGet(() -> {
            CTXf own = (CTXf) look.copy();
            own.setNumFmtId(0);
            if (own.isSetXfId()) {
                own.unsetXfId();
            }
            int id = styles.putCellStyleXf(own) - 1;
            name(name, id);
            return id;
        });
    }

    private Stream<CTCellStyle> named() {
        return Optional.ofNullable(sheet().getCellStyles())
                .map(CTCellStyles::getCellStyleArray)
                .map(Arrays::stream)
                .orElseGet(Stream::empty);
    }

    private CTCellStyle name(String name, int id) {
        CTCellStyles all = sheet().isSetCellStyles() ? sheet().getCellStyles() : sheet().addNewCellStyles();
        CTCellStyle style = all.addNewCellStyle();
        style.setName(name);
        style.setXfId(id);
        all.setCount(all.sizeOfCellStyleArray());
        return style;
    }

    private CTStylesheet sheet() {
        return styles.getCTStylesheet();
    }
}
