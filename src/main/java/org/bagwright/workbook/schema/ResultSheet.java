package org.bagwright.workbook.schema;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** Every result sheet that a book may have, in order, and the names by which formulas and later runs find them. */
public enum ResultSheet {
    PLAN("Plan"),
    SETTINGS("Settings"),
    LADDER("Ladder"),
    STEPS("Steps"),
    OTHERS("Others"),
    MEASURE_NEXT("Measure next"),
    SESSIONS("Sessions"),
    BENCH_CARD("Bench card"),
    GOLFER_CARD("Golfer card"),
    TEAM("Team"),
    MESSAGES("Messages");

    public static final String REBUILT = "Rebuilt on every run: keep your own notes on your own sheets.";
    public static final List<String> NAMES =
            Arrays.stream(values()).map(ResultSheet::sheetName).toList();

    /** A defined name that each result sheet has to itself. A sheet without it is the fitter's own. */
    public static final String MARK = "BW_made_by_the_tool";

    public static final String NAME_PREFIX = "BW_";
    /** The names that a plan gives to cells of its own, as the formulas of the sheet Plan use them. */
    private static final Pattern CELL_NAME = Pattern.compile(NAME_PREFIX
            + "([a-z]+_(tolerance|importance|must|doubt|filled)" + "|(today|planned|live)_points(_[\\p{L}\\p{N}_]*)?)");

    private final String sheetName;

    ResultSheet(String sheetName) {
        this.sheetName = sheetName;
    }

    public String sheetName() {
        return sheetName;
    }

    /** The result sheets of a book, in order: a single golfer needs no sheet of his team, shots without dates none of sessions. */
    public static List<String> namesFor(int golfers, boolean sessions) {
        return NAMES.stream()
                .filter(name -> golfers > 1 || !name.equals(TEAM.sheetName))
                .filter(name -> sessions || !name.equals(SESSIONS.sheetName))
                .toList();
    }

    /** Whether a defined name of a book is one that a plan gives to a cell of its own. */
    public static boolean isCellName(String name) {
        return CELL_NAME.matcher(name).matches();
    }

    /** Whether a defined name of a book is one that the tool makes. */
    public static boolean isToolsName(String name) {
        return MARK.equals(name) || isCellName(name);
    }
}
