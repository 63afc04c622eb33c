package org.bagwright.workbook.pen;

import static org.bagwright.workbook.pen.BookColour.BAND;
import static org.bagwright.workbook.pen.BookColour.INK;
import static org.bagwright.workbook.pen.BookColour.PAPER;
import static org.bagwright.workbook.pen.BookColour.RULE;
import static org.bagwright.workbook.pen.BookColour.SAND;
import static org.bagwright.workbook.pen.BookColour.SLATE;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The one look of every sheet the tool writes: quiet, printable in grey, input cells apart from computed ones. */
public final class BookStyles {
    static final String FONT = "Arial";
    private static final String STYLE_PREFIX = "Bag ";
    private static final short TITLE_POINTS = 16;
    private static final short TEXT_POINTS = 10;

    /** What a cell is for. */
    public enum Role {
        TITLE(SLATE, true, look -> {}),
        SUBTITLE(BookColour.FAINT, false, CellLook::paragraph),
        HEADING(PAPER, true, look -> look.filled(SLATE).wrapped().centred()),
        GROUP(INK, true, look -> look.filled(BAND)),
        TERM(INK, false, look -> look.filled(BAND).centred()),
        LABEL(INK, false, look -> look.filled(BAND).right()),
        SUM(INK, true, look -> look.filled(BAND).right()),
        SAYS(INK, false, look -> look.filled(BAND).indented()),
        PLAIN(INK, false, look -> {}),
        TEXT(INK, false, look -> look.underlined(RULE).indented()),
        WRAPPED(INK, false, CellLook::paragraph),
        FAINT(BookColour.FAINT, false, look -> {}),
        INPUT(INK, false, look -> look.filled(SAND).framed(BookColour.FAINT).open()),
        ANSWER(
                INK,
                false,
                look -> look.filled(SAND).framed(BookColour.FAINT).open().centred()),
        CHOICE(INK, true, look -> look.filled(SAND).framedHeavily(SLATE).open().centred()),
        NUMBER(INK, false, look -> look.right().underlined(RULE)),
        COUNT(INK, false, look -> look.underlined(RULE).centred()),
        TOTAL(INK, true, look -> look.filled(BAND).lineAbove(SLATE)),
        IDLE(BookColour.FAINT, false, look -> look.underlined(RULE).centred()),
        SHRUNK(INK, false, look -> look.underlined(RULE).shrunk()),
        SHRUNK_COUNT(INK, false, look -> look.underlined(RULE).centred().shrunk()),
        CELL(INK, false, look -> look.underlined(RULE).wrapped().indented()),
        MARKED(INK, true, look -> look.underlined(RULE).wrapped().indented().filled(BAND)),
        GROUP_COUNT(INK, true, look -> look.filled(BAND).centred()),
        BEFORE(INK, false, CellLook::centred),
        AFTER(INK, true, look -> look.filled(BAND).underlined(RULE).centred()),
        STAYS(INK, false, look -> look.underlined(RULE).centred()),
        FILL_IN(INK, false, look -> look.underlined(INK).indented().open()),
        BOX(INK, false, look -> look.framed(INK).open());

        private final BookColour ink;
        private final boolean bold;
        private final Consumer<CellLook> look;

        Role(BookColour ink, boolean bold, Consumer<CellLook> look) {
            this.ink = ink;
            this.bold = bold;
            this.look = look;
        }

        /** The name of the style in the list of styles of a spreadsheet program. */
        private String styleName() {
            return STYLE_PREFIX + name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    private final XSSFWorkbook workbook;
    private final KnownFormats known;
    private final StyleDefaults defaults;
    private final Map<Role, XSSFFont> fonts = new EnumMap<>(Role.class);
    private final Map<String, XSSFCellStyle> styles = new HashMap<>();

    public BookStyles(XSSFWorkbook workbook) {
        this.workbook = workbook;
        this.known = new KnownFormats(workbook);
        this.defaults = new StyleDefaults(workbook);
        defaults.add(FONT, TEXT_POINTS, fonts.computeIfAbsent(Role.PLAIN, this::font));
    }

    /** The style of a role for text or for whole numbers as they come. */
    public XSSFCellStyle of(Role role) {
        return of(role, "General");
    }

    /** The style of a role with a number format, such as {@code 0.0}. */
    public XSSFCellStyle of(Role role, String format) {
        return styles.computeIfAbsent(role + "|" + format, key -> make(role, format));
    }

    /** The number of the format by which a rule fills cells with a colour, with letters that can be read on it. */
    int ruleFill(BookColour colour) {
        return known.ruleFill(colour);
    }

    private XSSFCellStyle make(Role role, String format) {
        XSSFCellStyle style = new XSSFCellStyle(workbook.getStylesSource());
        style.setFont(fonts.computeIfAbsent(role, this::font));
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        role.look.accept(new CellLook(style));
        style.getCoreXf().setXfId(defaults.named(role.styleName(), style.getCoreXf()));
        return known.style(style);
    }

    private XSSFFont font(Role role) {
        XSSFFont font = new XSSFFont();
        font.setFontName(FONT);
        font.setFontHeightInPoints(role == Role.TITLE ? TITLE_POINTS : TEXT_POINTS);
        font.setBold(role.bold);
        font.setItalic(role == Role.FAINT);
        font.setColor(role.ink.rgb().ofCell());
        return known.font(font);
    }
}
