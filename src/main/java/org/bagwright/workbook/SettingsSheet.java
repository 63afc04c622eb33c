package org.bagwright.workbook;

import static org.bagwright.workbook.BookStyles.Role;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.BagResult;
import org.bagwright.domain.BookResult;
import org.bagwright.domain.Option;
import org.bagwright.domain.SlotOptions;
import org.bagwright.domain.Units;

/** The sheet Settings: every option of every club with its numbers, which the sheet Plan looks up. */
final class SettingsSheet {
    static final String NAME = "Settings";
    private static final int HEADING_ROW = 3;
    private static final int FIRST_ROW = HEADING_ROW + 1;
    private static final int LISTS_COLUMN = Column.values().length + 1;

    /** The columns, in order. */
    enum Column {
        GOLFER("Golfer", 14, "", null),
        SLOT("Slot", 6, "0", null),
        CLUB("Club", 16, "", null),
        SETTING("Setting", 9, "", null),
        WEIGHTING("Weighting", 10, "", null),
        LOFT_BEND(
                "Loft bend [deg]", 9, "0.0##", option -> option.choice().bend().loftDeg()),
        LIE_BEND("Lie bend [deg]", 9, "0.0##", option -> option.choice().bend().lieDeg()),
        LOFT("Gauge loft [deg]", 9, "0.00", option -> option.pose().gaugeLoftDeg()),
        LIE("Gauge lie [deg]", 9, "0.00", option -> option.pose().gaugeLieDeg()),
        ADDRESS_LOFT("Address loft [deg]", 9, "0.00", option -> option.pose().addressLoftDeg()),
        START_LINE("Face heading at address [deg closed]", 11, "0.00", option -> option.pose()
                .faceHeadingDeg()),
        DELIVERED_FACE("Delivered face [deg closed]", 11, "0.00", option -> option.setup()
                .orElseThrow()
                .deliveredFaceDeg()),
        SOLE_TILT("Toe up [deg]", 9, "0.00", option -> option.pose().soleTiltDeg()),
        TOE_GAP("Gap at the toe [mm]", 9, "0.0", option -> option.pose().toeGapMm()),
        SITS("Sits closed [deg]", 9, "0.00", option -> option.pose().sitsClosedDeg()),
        LOFT_SITS("Loft as it sits [deg]", 9, "0.00", option -> option.pose().loftAsItSitsDeg()),
        CONTACT("Contact shift [mm forward]", 10, "0.0", option -> option.pose().contactShiftMm()),
        SHAFT_TURN("Shaft turn [deg]", 9, "0", option -> option.pose().shaftTurnDeg()),
        LAUNCH("Launch [deg]", 9, "0.0", option -> option.shot().orElseThrow().launchDeg()),
        SPIN("Spin [rpm]", 9, "0", option -> option.shot().orElseThrow().spinRpm()),
        BALL_SPEED("Ball speed", 9, "0.0", null),
        CARRY("Carry", 9, "0.0", null),
        LANDING("Landing angle [deg]", 9, "0.0", option -> option.shot()
                .orElseThrow()
                .landingDeg()),
        START("Start line [deg closed]", 9, "0.00", option -> option.shot()
                .orElseThrow()
                .startClosedDeg()),
        SIDEWAYS("Sideways, closed +", 9, "0.0", null),
        CHANGES("Changes", 9, "0", option -> option.changes()),
        OWN_PENALTY("Own penalty [points]", 10, "0.00", option -> option.terms().totalPoints()),
        OPEN("May be planned", 9, "", null),
        KEY("Option", 38, "", null);

        final String heading;
        final double widthChars;
        final String format;
        final Function<Option, Number> value;

        Column(String heading, double widthChars, String format, Function<Option, Number> value) {
            this.heading = heading;
            this.widthChars = widthChars;
            this.format = format;
            this.value = value;
        }
    }

    private final SheetPen pen;
    private final Units units;
    private final Map<String, Integer> rows = new HashMap<>();
    private final Map<String, String> lists = new HashMap<>();
    private int nextRow = FIRST_ROW;
    private int nextList = HEADING_ROW;

    private SettingsSheet(SheetPen pen, Units units) {
        this.pen = pen;
        this.units = units;
    }

    static SettingsSheet write(XSSFWorkbook workbook, BookStyles styles, BookResult result) {
        SheetPen pen = new SheetPen(workbook.getSheet(NAME), styles);
        SettingsSheet settings = new SettingsSheet(pen, result.book().settings().units());
        settings.headings();
        for (BagResult bag : result.bags()) {
            bag.options().slots().forEach(settings::club);
        }
        settings.finish();
        return settings;
    }

    /** The place of an option among the rows that Plan looks up, counted from 1. */
    int lookupRow(Option option) {
        return rows.get(option.key()) - FIRST_ROW + 1;
    }

    /** The whole column that Plan looks up, such as {@code Settings!$H$5:$H$90}. */
    String lookup(Column column) {
        int index = column.ordinal();
        return NAME + "!" + SheetPen.held(FIRST_ROW, index) + ":" + SheetPen.held(nextRow - 1, index);
    }

    /** The cells that list the settings, or the bends, of a club. */
    String list(SlotOptions club, Column column) {
        return lists.get(listKey(club, column));
    }

    private void headings() {
        pen.text(0, 0, Role.TITLE, "Settings");
        pen.text(
                1,
                0,
                Role.FAINT,
                "Every option of every club. The sheet Plan looks its numbers up here. " + ResultSheets.MADE_ANEW);
        for (Column column : Column.values()) {
            pen.heading(HEADING_ROW, column.ordinal(), heading(column), column.widthChars);
        }
        pen.text(HEADING_ROW - 1, LISTS_COLUMN, Role.FAINT, "Lists for the choice cells of the sheet Plan");
        pen.height(HEADING_ROW, 42);
    }

    private String heading(Column column) {
        return switch (column) {
            case BALL_SPEED -> column.heading + " [" + units.speed().label() + "]";
            case CARRY, SIDEWAYS -> column.heading + " [" + units.distance().label() + "]";
            default -> column.heading;
        };
    }

    private void club(SlotOptions club) {
        for (Option option : club.options()) {
            option(option);
        }
        addList(club, Column.SETTING);
        addList(club, Column.LOFT_BEND);
        addList(club, Column.LIE_BEND);
    }

    private void option(Option option) {
        int row = nextRow++;
        rows.put(option.key(), row);
        pen.formula(row, Column.KEY.ordinal(), Role.FAINT, keyFormula(row), option.key());
        pen.text(row, Column.GOLFER.ordinal(), Role.TEXT, option.club().golfer());
        pen.number(row, Column.SLOT.ordinal(), Role.COUNT, "0", option.club().slot());
        pen.text(row, Column.CLUB.ordinal(), Role.TEXT, option.club().name());
        pen.mark(row, Column.SETTING.ordinal(), Role.NUMBER, option.choice().settingText());
        pen.mark(row, Column.WEIGHTING.ordinal(), Role.NUMBER, option.choice().weightingText());
        for (Column column : Column.values()) {
            if (column.value != null && (column.ordinal() < Column.LAUNCH.ordinal() || flies(option, column))) {
                number(row, column, column.value.apply(option).doubleValue());
            }
        }
        option.shot().ifPresent(shot -> {
            number(row, Column.BALL_SPEED, units.speed().fromMps(shot.ballSpeedMps()));
            number(row, Column.CARRY, units.distance().fromM(shot.carryM()));
            number(row, Column.SIDEWAYS, units.distance().fromM(shot.sidewaysClosedM()));
        });
        pen.text(row, Column.OPEN.ordinal(), Role.TEXT, option.open() ? "yes" : "no");
    }

    private static boolean flies(Option option, Column column) {
        return option.shot().isPresent() || column == Column.CHANGES || column == Column.OWN_PENALTY;
    }

    private void number(int row, Column column, double value) {
        pen.number(row, column.ordinal(), Role.NUMBER, column.format, value);
    }

    private static String keyFormula(int row) {
        return key(
                SheetPen.ref(row, Column.GOLFER.ordinal()),
                SheetPen.ref(row, Column.SLOT.ordinal()),
                SheetPen.ref(row, Column.CLUB.ordinal()),
                SheetPen.ref(row, Column.SETTING.ordinal()),
                SheetPen.ref(row, Column.WEIGHTING.ordinal()),
                SheetPen.ref(row, Column.LOFT_BEND.ordinal()),
                SheetPen.ref(row, Column.LIE_BEND.ordinal()));
    }

    /** The formula that joins its parts the way {@link Option#key} is written. */
    static String key(String... references) {
        return String.join("&\"|\"&", references);
    }

    /** The different settings, or bends, of a club in the order of its options. */
    static List<Object> choices(SlotOptions club, Column column) {
        Set<Object> distinct = new LinkedHashSet<>();
        for (Option option : club.options()) {
            distinct.add(column == Column.SETTING ? option.choice().settingText() : column.value.apply(option));
        }
        return List.copyOf(distinct);
    }

    private void addList(SlotOptions club, Column column) {
        List<Object> sorted = choices(club, column);
        int row = nextList++;
        for (int index = 0; index < sorted.size(); index++) {
            if (sorted.get(index) instanceof Double number) {
                pen.number(row, LISTS_COLUMN + index, Role.FAINT, "0.0##", number);
            } else {
                pen.mark(row, LISTS_COLUMN + index, Role.FAINT, (String) sorted.get(index));
            }
        }
        lists.put(
                listKey(club, column),
                NAME + "!" + SheetPen.held(row, LISTS_COLUMN) + ":"
                        + SheetPen.held(row, LISTS_COLUMN + sorted.size() - 1));
    }

    private static String listKey(SlotOptions club, Column column) {
        return club.options().get(0).key() + column;
    }

    private void finish() {
        int last = Column.values().length - 1;
        pen.sheet().setAutoFilter(new CellRangeAddress(HEADING_ROW, nextRow - 1, 0, last));
        pen.sheet().createFreezePane(Column.SETTING.ordinal(), FIRST_ROW);
        ResultSheets.printLandscape(pen.sheet(), HEADING_ROW, nextRow - 1, last);
    }
}
