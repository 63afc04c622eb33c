package org.bagwright.workbook.settings;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.poi.ss.util.CellRangeAddress;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.ClosedReason;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.units.Swingweight;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.PageSetup;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.SwingweightCell;
import org.bagwright.workbook.schema.ResultSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;

/** The sheet Settings: every option of every slot with its numbers, which the sheet Plan looks up. */
public final class SettingsSheet {
    public static final String NAME = "Settings";
    private static final int HEADING_ROW = 3;
    private static final int FIRST_ROW = HEADING_ROW + 1;

    private final SheetPen pen;
    private final Units units;
    private final Matching matching;
    private final List<StockLimit> stock;
    private final SettingsLists lists;
    private final Map<String, Integer> rows = new HashMap<>();
    /** The options of today of the clubs of the slot that is written. */
    private int nextRow = FIRST_ROW;

    private SettingsSheet(SheetPen pen, BookResult result) {
        this.pen = pen;
        this.units = result.book().settings().units();
        this.matching = result.book().settings().matching();
        this.stock = result.stock();
        this.lists = new SettingsLists(pen, units, HEADING_ROW, SettingsColumn.values().length + stock.size() + 1);
    }

    public static SettingsSheet write(SheetPen pen, BookResult result) {
        SettingsSheet settings = new SettingsSheet(pen, result);
        settings.headings();
        result.bags().forEach(bag -> bag.options().slots().forEach(settings.lists::add));
        for (BagResult bag : result.bags()) {
            for (SlotOptions slot : bag.options().slots()) {
                slot.options().forEach(option -> settings.option(bag.options(), slot, option));
            }
        }
        settings.finish();
        return settings;
    }

    /** The place of an option among the rows that Plan looks up, counted from 1. */
    public int lookupRow(Option option) {
        return rows.get(option.key()) - FIRST_ROW + 1;
    }

    /** The whole column that Plan looks up, such as {@code Settings!$H$5:$H$90}. */
    public String lookup(SettingsColumn column) {
        return lookup(column.index());
    }

    /** As {@link #lookup(SettingsColumn)} for how many pieces of an item of the stock an option takes. */
    public String lookupTaken(int item) {
        return lookup(takenIndex(item));
    }

    private static int takenIndex(int item) {
        return SettingsColumn.values().length + item;
    }

    private String lookup(int index) {
        return NAME + "!" + SheetPen.held(FIRST_ROW, index) + ":" + SheetPen.held(nextRow - 1, index);
    }

    /** The columns that Plan looks up from one to another. */
    public String lookup(SettingsColumn first, SettingsColumn last) {
        return NAME + "!" + SheetPen.held(FIRST_ROW, first.index()) + ":" + SheetPen.held(nextRow - 1, last.index());
    }

    /** What the choice cells of Plan may hold. */
    public SettingsLists lists() {
        return lists;
    }

    private void headings() {
        pen.text(0, 0, Role.TITLE, "Settings");
        pen.height(0, SheetPen.TITLE_ROW_POINTS);
        pen.text(
                1,
                0,
                Role.FAINT,
                "Every option of every slot. The sheet Plan looks its numbers up here. " + ResultSheet.REBUILT);
        for (SettingsColumn column : SettingsColumn.values()) {
            pen.heading(HEADING_ROW, column.index(), heading(column), column.widthChars());
        }
        for (int item = 0; item < stock.size(); item++) {
            pen.heading(
                    HEADING_ROW,
                    takenIndex(item),
                    "Takes " + stock.get(item).item().inWords(),
                    10);
        }
        pen.height(HEADING_ROW, 54);
    }

    private String heading(SettingsColumn column) {
        return column.heading()
                .replace("SPEED", units.speed().label())
                .replace("DIST", units.distance().label())
                .replace("LEN", units.length().label())
                .replace("MATCH", matching.by().unitLabel());
    }

    private void option(BagOptions bag, SlotOptions slot, Option option) {
        int row = nextRow++;
        rows.put(option.key(), row);
        text(row, SettingsColumn.GOLFER, bag.golfer().name());
        pen.number(row, SettingsColumn.SLOT.index(), Role.COUNT, "0", slot.slot());
        text(row, SettingsColumn.CLUB, option.clubText());
        for (SettingsColumn column : SettingsColumn.values()) {
            OptionalDouble number = column.number.of(option, units);
            if (number.isPresent()) {
                pen.number(row, column.index(), Role.NUMBER, column.format, number.getAsDouble());
            }
        }
        slot.changeSdM(option).ifPresent(sdM -> change(row, sdM));
        text(row, SettingsColumn.OPEN, option.open() ? "yes" : "no");
        closed(row, option);
        for (int item = 0; item < stock.size(); item++) {
            pen.number(row, takenIndex(item), Role.NUMBER, "0", option.takes().get(item));
        }
        option.setup().ifPresent(setup -> setup(row, bag, option, setup));
        pen.formula(row, SettingsColumn.KEY.index(), Role.FAINT, keyFormula(row, option), option.key());
        lists.write(row);
    }

    private void change(int row, double sdM) {
        double halfM = CarryDoubt.HALF_80_SDS * sdM;
        SettingsColumn column = SettingsColumn.CHANGE_SPREAD;
        pen.number(
                row,
                column.index(),
                Role.NUMBER,
                column.format,
                units.distance().fromM(halfM));
    }

    private void closed(int row, Option option) {
        if (!option.open()) {
            text(row, SettingsColumn.CLOSED, ClosedReason.labels(option.closedReasons()));
        }
    }

    private void setup(int row, BagOptions bag, Option option, ClubSetup setup) {
        mark(row, SettingsColumn.SETTING, setup.choice().settingText());
        mark(row, SettingsColumn.WEIGHTING, setup.choice().weightingText());
        text(row, SettingsColumn.SWINGWEIGHT_TEXT, setup.build().swingweight().text());
        setup.match().map(MatchValue::group).ifPresent(group -> text(row, SettingsColumn.MATCH_GROUP, group));
        setup.club()
                .targets()
                .swingweight()
                .map(Swingweight::scalePoints)
                .map(SwingweightCell::new)
                .ifPresent(cell -> cell.write(pen, row, SettingsColumn.TARGET_TEXT.index(), Role.NUMBER));
        if (setup.club().kind().carries()) {
            double wish = units.distance().fromM(bag.wishAfterM(option));
            pen.number(row, SettingsColumn.GAP_WISH.index(), Role.NUMBER, SettingsColumn.GAP_WISH.format, wish);
        }
    }

    private void text(int row, SettingsColumn column, String text) {
        pen.text(row, column.index(), Role.TEXT, text);
    }

    private void mark(int row, SettingsColumn column, String mark) {
        pen.mark(row, column.index(), Role.NUMBER, mark);
    }

    private static String keyFormula(int row, Option option) {
        List<SettingsColumn> parts = option.isEmpty()
                ? List.of(SettingsColumn.GOLFER, SettingsColumn.SLOT, SettingsColumn.CLUB)
                : List.of(
                        SettingsColumn.GOLFER,
                        SettingsColumn.SLOT,
                        SettingsColumn.CLUB,
                        SettingsColumn.SETTING,
                        SettingsColumn.WEIGHTING,
                        SettingsColumn.LOFT_BEND,
                        SettingsColumn.LIE_BEND);
        return key(
                parts.stream().map(column -> SheetPen.ref(row, column.index())).toArray(String[]::new));
    }

    /** The formula that joins its parts the way {@link Option#key} is written. */
    public static String key(String... references) {
        return String.join("&\"|\"&", references);
    }

    private void hideFactors() {
        for (CTCol entry : pen.sheet().getCTWorksheet().getColsArray(0).getColList()) {
            int index = (int) entry.getMin() - 1;
            if (index < SettingsColumn.values().length && SettingsColumn.values()[index].isFactor()) {
                entry.setHidden(true);
                entry.setOutlineLevel((short) 1);
            }
        }
        pen.sheet().getCTWorksheet().getSheetFormatPr().setOutlineLevelCol((short) 1);
    }

    private void finish() {
        hideFactors();
        for (int row = nextRow; row <= lists.lastRow(); row++) {
            lists.write(row);
        }
        int last = takenIndex(stock.size()) - 1;
        pen.sheet().setAutoFilter(new CellRangeAddress(HEADING_ROW, nextRow - 1, 0, last));
        pen.sheet().createFreezePane(SettingsColumn.SETTING.index(), FIRST_ROW);
        pen.print(PageSetup.landscape(HEADING_ROW, nextRow - 1, SettingsColumn.SIDEWAYS.index()));
        PageSetup.leaveOut(pen.sheet());
    }
}
