package org.bagwright.workbook.pen;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The one look of every sheet the tool writes: quiet, printable in grey, input cells apart from computed ones. */
public final class BookStyles {
    public static final String INK = "22313A";
    public static final String SLATE = "3D5A66";
    public static final String MIST = "E4EBED";
    public static final String RULE = "B9C6CB";
    public static final String FAINT = "7C8B92";
    private static final String SAND = "FBF3DC";
    private static final String WHITE = "FFFFFF";
    private static final String FONT = "Arial";
    private static final short TITLE_POINTS = 16;
    private static final short TEXT_POINTS = 10;

    /** What a cell is for. */
    public enum Role {
        TITLE(SLATE, true, look -> {}),
        SUBTITLE(BookStyles.FAINT, false, CellLook::paragraph),
        HEADING(WHITE, true, look -> look.filled(SLATE).wrapped().centred()),
        GROUP(INK, true, look -> look.filled(MIST)),
        PLAIN(INK, false, look -> {}),
        TEXT(INK, false, look -> look.underlined(RULE).indented()),
        WRAPPED(INK, false, CellLook::paragraph),
        FAINT(BookStyles.FAINT, false, look -> {}),
        INPUT(INK, false, look -> look.filled(SAND).framed(RULE).open()),
        CHOICE(INK, false, look -> look.filled(SAND).framed(RULE).open().centred()),
        NUMBER(INK, false, look -> look.right().underlined(RULE)),
        COUNT(INK, false, look -> look.underlined(RULE).centred()),
        TOTAL(INK, true, look -> look.filled(MIST).lineAbove(SLATE)),
        CELL(INK, false, look -> look.underlined(RULE).wrapped().indented()),
        MARKED(INK, true, look -> look.underlined(RULE).wrapped().indented().filled(MIST)),
        GROUP_COUNT(INK, true, look -> look.filled(MIST).centred()),
        BEFORE(INK, false, CellLook::centred),
        AFTER(INK, true, look -> look.filled(MIST).underlined(RULE).centred()),
        STAYS(INK, false, look -> look.underlined(RULE).centred()),
        FILL_IN(INK, false, look -> look.underlined(INK).indented().open()),
        BOX(INK, false, look -> look.framed(INK).open());

        private final String inkRgb;
        private final boolean bold;
        private final Consumer<CellLook> look;

        Role(String inkRgb, boolean bold, Consumer<CellLook> look) {
            this.inkRgb = inkRgb;
            this.bold = bold;
            this.look = look;
        }
    }

    private final XSSFWorkbook workbook;
    private final KnownFormats known;
    private final Map<Role, XSSFFont> fonts = new EnumMap<>(Role.class);
    private final Map<String, XSSFCellStyle> styles = new HashMap<>();

    public BookStyles(XSSFWorkbook workbook) {
        this.workbook = workbook;
        this.known = new KnownFormats(workbook);
    }

    /** The style of a role for text or for whole numbers as they come. */
    public XSSFCellStyle of(Role role) {
        return of(role, "General");
    }

    /** The style of a role with a number format, such as {@code 0.0}. */
    public XSSFCellStyle of(Role role, String format) {
        return styles.computeIfAbsent(role + "|" + format, key -> make(role, format));
    }

    /** The number of the format by which a rule fills cells with a colour. */
    int ruleFill(String rgb) {
        return known.ruleFill(new Rgb(rgb));
    }

    private XSSFCellStyle make(Role role, String format) {
        XSSFCellStyle style = new XSSFCellStyle(workbook.getStylesSource());
        style.setFont(fonts.computeIfAbsent(role, this::font));
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        role.look.accept(new CellLook(style));
        return known.style(style);
    }

    private XSSFFont font(Role role) {
        XSSFFont font = new XSSFFont();
        font.setFontName(FONT);
        font.setFontHeightInPoints(role == Role.TITLE ? TITLE_POINTS : TEXT_POINTS);
        font.setBold(role.bold);
        font.setItalic(role == Role.FAINT);
        font.setColor(new Rgb(role.inkRgb).ofCell());
        return known.font(font);
    }
}
