package org.bagwright.workbook.pen;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The one look of every sheet the tool writes: quiet, printable in grey, input cells apart from computed ones. */
public final class BookStyles {
    static final String FONT = "Arial";
    public static final String INK = "22313A";
    public static final String SLATE = "3D5A66";
    public static final String MIST = "E4EBED";
    static final String SAND = "FBF3DC";
    public static final String RULE = "B9C6CB";
    public static final String FAINT = "7C8B92";
    /** The schema of a colour wants its opacity too. */
    private static final byte OPAQUE = (byte) 0xFF;

    /** What a cell is for. */
    public enum Role {
        TITLE,
        SUBTITLE,
        HEADING,
        GROUP,
        PLAIN,
        TEXT,
        WRAPPED,
        FAINT,
        INPUT,
        CHOICE,
        NUMBER,
        COUNT,
        TOTAL,
        CELL,
        MARKED,
        BOX
    }

    private final XSSFWorkbook workbook;
    private final Map<Role, XSSFFont> fonts = new EnumMap<>(Role.class);
    private final Map<String, XSSFCellStyle> styles = new HashMap<>();

    public BookStyles(XSSFWorkbook workbook) {
        this.workbook = workbook;
    }

    /** The style of a role for text or for whole numbers as they come. */
    public XSSFCellStyle of(Role role) {
        return of(role, "General");
    }

    /** The style of a role with a number format, such as {@code 0.0}. */
    public XSSFCellStyle of(Role role, String format) {
        return styles.computeIfAbsent(role + "|" + format, key -> make(role, format));
    }

    static XSSFColor colour(String rgb) {
        byte[] bytes = {
            OPAQUE,
            (byte) Integer.parseInt(rgb.substring(0, 2), 16),
            (byte) Integer.parseInt(rgb.substring(2, 4), 16),
            (byte) Integer.parseInt(rgb.substring(4, 6), 16)
        };
        return new XSSFColor(bytes, null);
    }

    private XSSFCellStyle make(Role role, String format) {
        XSSFCellStyle style = new XSSFCellStyle(workbook.getStylesSource());
        style.setFont(fonts.computeIfAbsent(role, this::font));
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        switch (role) {
            case HEADING -> {
                fill(style, SLATE);
                style.setWrapText(true);
                style.setAlignment(HorizontalAlignment.CENTER);
            }
            case GROUP -> fill(style, MIST);
            case WRAPPED, SUBTITLE -> {
                style.setWrapText(true);
                style.setVerticalAlignment(VerticalAlignment.TOP);
            }
            case INPUT -> input(style);
            case CHOICE -> {
                input(style);
                style.setAlignment(HorizontalAlignment.CENTER);
            }
            case NUMBER -> {
                style.setAlignment(HorizontalAlignment.RIGHT);
                underline(style);
            }
            case TEXT -> {
                underline(style);
                style.setAlignment(HorizontalAlignment.LEFT);
                style.setIndention((short) 1);
            }
            case COUNT -> {
                underline(style);
                style.setAlignment(HorizontalAlignment.CENTER);
            }
            case CELL, MARKED -> {
                underline(style);
                style.setWrapText(true);
                style.setAlignment(HorizontalAlignment.LEFT);
                style.setIndention((short) 1);
                if (role == Role.MARKED) {
                    fill(style, MIST);
                }
            }
            case BOX -> box(style);
            case TOTAL -> {
                fill(style, MIST);
                style.setBorderTop(BorderStyle.THIN);
                style.setTopBorderColor(colour(SLATE));
            }
            default -> {}
        }
        return KnownFormats.of(workbook, style);
    }

    private XSSFFont font(Role role) {
        XSSFFont font = new XSSFFont();
        font.setFontName(FONT);
        font.setFontHeightInPoints((short) (role == Role.TITLE ? 16 : 10));
        font.setBold(role == Role.TITLE
                || role == Role.HEADING
                || role == Role.GROUP
                || role == Role.TOTAL
                || role == Role.MARKED);
        font.setItalic(role == Role.FAINT);
        font.setColor(colour(
                switch (role) {
                    case HEADING -> "FFFFFF";
                    case FAINT, SUBTITLE -> FAINT;
                    case TITLE -> SLATE;
                    default -> INK;
                }));
        return KnownFormats.of(workbook, font);
    }

    private static void fill(XSSFCellStyle style, String rgb) {
        style.setFillForegroundColor(colour(rgb));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }

    private static void input(XSSFCellStyle style) {
        fill(style, SAND);
        frame(style);
        style.setLocked(false);
    }

    private static void frame(XSSFCellStyle style) {
        style.setBorderTop(BorderStyle.THIN);
        style.setBorderBottom(BorderStyle.THIN);
        style.setBorderLeft(BorderStyle.THIN);
        style.setBorderRight(BorderStyle.THIN);
        style.setTopBorderColor(colour(RULE));
        style.setBottomBorderColor(colour(RULE));
        style.setLeftBorderColor(colour(RULE));
        style.setRightBorderColor(colour(RULE));
    }

    private static void box(XSSFCellStyle style) {
        frame(style);
        style.setTopBorderColor(colour(INK));
        style.setBottomBorderColor(colour(INK));
        style.setLeftBorderColor(colour(INK));
        style.setRightBorderColor(colour(INK));
        style.setLocked(false);
    }

    private static void underline(XSSFCellStyle style) {
        style.setBorderBottom(BorderStyle.HAIR);
        style.setBottomBorderColor(colour(RULE));
    }
}
