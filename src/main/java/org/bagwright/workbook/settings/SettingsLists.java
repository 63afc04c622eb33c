package org.bagwright.workbook.settings;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.SheetPen;

/**
 * The lists for the choice cells of the sheet Plan, to the right of the options. Each slot has four blocks: settings,
 * weightings, loft bends and lie bends. A block has a row for each club that may fill the slot, and one for none where it
 * may stay empty: the club, what it has in the book, how many choices, the choices.
 */
public final class SettingsLists {
    static final List<SettingsColumn> LISTED = List.of(
            SettingsColumn.SETTING, SettingsColumn.WEIGHTING, SettingsColumn.LOFT_BEND, SettingsColumn.LIE_BEND);

    private final SheetPen pen;
    private final Units units;
    private final Map<String, Block> blocks = new HashMap<>();
    private final int firstRow;
    private final int clubColumn;
    private final int ownColumn;
    private final int countColumn;
    private final int firstChoiceColumn;
    private final List<ListRow> rows = new ArrayList<>();

    /** What one club of a slot may have of one thing. */
    private record ListRow(String club, List<Object> choices, Object own) {}

    /** Where a block is, and how many choices its first club has. */
    private record Block(int firstRow, int lastRow, int firstChoices) {}

    /** @param clubColumn the first column that is free for them */
    SettingsLists(SheetPen pen, Units units, int headingRow, int clubColumn) {
        this.pen = pen;
        this.units = units;
        this.clubColumn = clubColumn;
        ownColumn = clubColumn + 1;
        countColumn = clubColumn + 2;
        firstChoiceColumn = clubColumn + 3;
        List<String> headings = List.of("Club", "In the book", "Choices", "1", "2", "3");
        pen.text(headingRow - 1, clubColumn, Role.FAINT, "Lists for the choice cells of the sheet Plan");
        for (int column = 0; column < headings.size(); column++) {
            pen.text(headingRow, clubColumn + column, Role.HEADING, headings.get(column));
        }
        pen.width(clubColumn, 16);
        firstRow = headingRow + 1;
    }

    /** Plans the lists of a slot; {@link #write} writes them. */
    void add(SlotOptions slot) {
        for (SettingsColumn column : LISTED) {
            int first = lastRow() + 1;
            for (Club club : slot.clubs()) {
                rows.add(new ListRow(club.name(), choices(slot.optionsOf(club), column), own(slot, club, column)));
            }
            if (slot.options().stream().anyMatch(Option::isEmpty)) {
                rows.add(new ListRow(Option.LEFT_OUT, List.of(), ""));
            }
            int count = choices(slot.optionsOf(slot.clubs().get(0)), column).size();
            blocks.put(key(slot, column), new Block(first, lastRow(), count));
        }
    }

    /** What a club has in the book, which an empty choice cell means. */
    private Object own(SlotOptions slot, Club club, SettingsColumn column) {
        List<Option> options = slot.optionsOf(club);
        int least = options.stream().mapToInt(Option::changes).min().orElseThrow();
        return options.stream()
                .filter(option -> option.changes() == least)
                .map(option -> value(option, column))
                .findFirst()
                .orElseThrow();
    }

    /** The last row that the lists take. */
    int lastRow() {
        return firstRow + rows.size() - 1;
    }

    /** Writes the part of the lists that is in a row, if there is any. */
    void write(int row) {
        if (row > lastRow()) {
            return;
        }
        ListRow list = rows.get(row - firstRow);
        pen.text(row, clubColumn, Role.FAINT, list.club());
        value(row, ownColumn, list.own());
        pen.number(row, countColumn, Role.FAINT, "0", Math.max(1, list.choices().size()));
        for (int index = 0; index < list.choices().size(); index++) {
            value(row, firstChoiceColumn + index, list.choices().get(index));
        }
    }

    private void value(int row, int column, Object value) {
        if (value instanceof Double number) {
            pen.number(row, column, Role.FAINT, "0.0##", number);
        } else {
            pen.mark(row, column, Role.FAINT, (String) value);
        }
    }

    /** The different settings, weightings or bends of some options in their order. */
    List<Object> choices(List<Option> options, SettingsColumn column) {
        Set<Object> distinct = new LinkedHashSet<>();
        options.forEach(option -> distinct.add(value(option, column)));
        return new ArrayList<>(distinct);
    }

    private Object value(Option option, SettingsColumn column) {
        return switch (column) {
            case SETTING -> option.choice().settingText();
            case WEIGHTING -> option.choice().weightingText();
            default -> column.number.of(option, units).orElseThrow();
        };
    }

    /** Whether a person may choose among several. */
    public boolean isChoice(SlotOptions slot, SettingsColumn column) {
        return slot.hasCandidates() || choices(slot.options(), column).size() > 1;
    }

    /** The cells that name what may fill a slot. */
    public String clubs(SlotOptions slot) {
        return column(block(slot, SettingsColumn.SETTING), clubColumn);
    }

    /** What the clubs of a slot have in the book, in the order of {@link #clubs}. */
    public String own(SlotOptions slot, SettingsColumn column) {
        return column(block(slot, column), ownColumn);
    }

    /**
     * The cells that list the choices of a club.
     *
     * @param place the cell with the place of the club in {@link #clubs}, counted from 1
     */
    public String list(SlotOptions slot, SettingsColumn column, String place) {
        Block block = block(slot, column);
        String first = cell(block.firstRow(), firstChoiceColumn);
        if (!slot.hasCandidates()) {
            return first + ":" + SheetPen.held(block.firstRow(), firstChoiceColumn + block.firstChoices() - 1);
        }
        return "OFFSET(" + first + "," + place + "-1,0,1,INDEX(" + column(block, countColumn) + "," + place + "))";
    }

    private String column(Block block, int column) {
        return cell(block.firstRow(), column) + ":" + SheetPen.held(block.lastRow(), column);
    }

    private String cell(int row, int column) {
        return pen.sheet().getSheetName() + "!" + SheetPen.held(row, column);
    }

    private Block block(SlotOptions slot, SettingsColumn column) {
        return blocks.get(key(slot, column));
    }

    private static String key(SlotOptions slot, SettingsColumn column) {
        return slot.options().get(0).key() + column;
    }
}
