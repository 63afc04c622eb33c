package org.bagwright.workbook.pen;

import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlCursor;
import org.apache.xmlbeans.XmlObject;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTPatternFill;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTXf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STPatternType;

/**
 * Formats that a book already has are used again: the library only ever adds, so that a book planned often would grow with
 * each run until it has more formats than a spreadsheet allows.
 */
final class KnownFormats {
    private final XSSFWorkbook workbook;
    private final StylesTable styles;

    KnownFormats(XSSFWorkbook workbook) {
        this.workbook = workbook;
        this.styles = workbook.getStylesSource();
    }

    /** The format of the book that equals one which is not yet in it; it is added if there is none. */
    XSSFCellStyle style(XSSFCellStyle wanted) {
        CTXf xf = wanted.getCoreXf();
        String text = text(xf);
        int known = IntStream.range(0, workbook.getNumCellStyles())
                .filter(index -> text(styles.getCellXfAt(index)).equals(text))
                .findFirst()
                .orElseGet(() -> styles.putCellXf(xf) - 1);
        return workbook.getCellStyleAt(known);
    }

    /** As {@link #style} for a font. */
    XSSFFont font(XSSFFont wanted) {
        String text = text(wanted.getCTFont());
        return styles.getFonts().stream()
                .filter(font -> text(font.getCTFont()).equals(text))
                .findFirst()
                .orElseGet(() -> {
                    wanted.registerTo(styles, true);
                    return wanted;
                });
    }

    /** The number of the format that a rule gives to cells: a fill of one colour, and letters that can be read on it. */
    int ruleFill(BookColour colour) {
        CTDxf wanted = CTDxf.Factory.newInstance();
        wanted.addNewFont().addNewColor().setRgb(colour.letters().rgb().ofCell().getARGB());
        CTPatternFill fill = wanted.addNewFill().addNewPatternFill();
        fill.setPatternType(STPatternType.SOLID);
        fill.addNewBgColor().setRgb(colour.rgb().ofCell().getARGB());
        String text = text(wanted);
        return IntStream.range(0, styles._getDXfsSize())
                .filter(index -> text(styles.getDxfAt(index)).equals(text))
                .findFirst()
                .orElseGet(() -> styles.putDxf(wanted) - 1);
    }

    /** What an element says, whatever the order of its attributes and the prefixes of its names. */
    private static String text(XmlObject xml) {
        try (XmlCursor cursor = xml.newCursor()) {
            StringBuilder text = new StringBuilder();
            inside(cursor, text);
            return text.toString();
        }
    }

    /** From the start of an element to behind its end. */
    private static void inside(XmlCursor cursor, StringBuilder text) {
        SortedMap<String, String> attributes = new TreeMap<>();
        StringBuilder content = new StringBuilder();
        cursor.toNextToken();
        while (!cursor.isEnd() && !cursor.isEnddoc()) {
            if (cursor.isStart()) {
                content.append(cursor.getName().getLocalPart());
                inside(cursor, content);
                continue;
            }
            if (cursor.isAttr()) {
                attributes.put(cursor.getName().getLocalPart(), cursor.getTextValue());
            } else if (cursor.isText()) {
                content.append(cursor.getChars());
            }
            cursor.toNextToken();
        }
        cursor.toNextToken();
        text.append(attributes).append('<').append(content).append('>');
    }
}
