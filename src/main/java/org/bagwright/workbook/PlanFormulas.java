package org.bagwright.workbook;

/** The formulas of the sheet Plan. Rows count from 0. */
final class PlanFormulas {
    private final SettingsSheet settings;
    private final boolean hasWildcards;

    /** @param hasWildcards whether a name in the book holds a character that lookups would take as a wildcard */
    PlanFormulas(SettingsSheet settings, boolean hasWildcards) {
        this.settings = settings;
        this.hasWildcards = hasWildcards;
    }

    static String tolerance(String measure) {
        return ResultSheets.NAME_PREFIX + measure + "_tolerance";
    }

    static String importance(String measure) {
        return ResultSheets.NAME_PREFIX + measure + "_importance";
    }

    /** Where the state's choice stands in the sheet Settings; 0 if it is no option. */
    String lookupRow(String state, int row) {
        String key = SettingsSheet.key(
                PlanColumn.GOLFER.at(row),
                PlanColumn.SLOT.at(row),
                PlanColumn.CLUB.at(row),
                PlanColumn.of(state, "SETTING").at(row),
                "\"none\"",
                PlanColumn.of(state, "LOFT_BEND").at(row),
                PlanColumn.of(state, "LIE_BEND").at(row));
        String sought = hasWildcards ? escaped(key) : key;
        return "IFERROR(MATCH(" + sought + "," + settings.lookup(SettingsSheet.Column.KEY) + ",0),0)";
    }

    private static String escaped(String key) {
        return "SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(" + key + ",\"~\",\"~~\"),\"*\",\"~*\"),\"?\",\"~?\")";
    }

    String looked(String state, SettingsSheet.Column column, int row) {
        String found = PlanColumn.of(state, "ROW").at(row);
        return "IF(" + found + "=0,\"?\",INDEX(" + settings.lookup(column) + "," + found + "))";
    }

    String gap(String state, int row, int nextRow) {
        PlanColumn carry = PlanColumn.of(state, "CARRY");
        return "IFERROR(" + carry.at(row) + "-" + carry.at(nextRow) + ",\"?\")";
    }

    String changes(String state, int row) {
        return differs(PlanColumn.of(state, "SETTING").at(row) + "<>" + PlanColumn.TODAY_SETTING.at(row))
                + "+" + bendDiffers(state, "LOFT_BEND", row)
                + "+" + bendDiffers(state, "LIE_BEND", row);
    }

    private static String bendDiffers(String state, String bend, int row) {
        return differs("ABS(" + PlanColumn.of(state, bend).at(row) + "-"
                + PlanColumn.of("TODAY", bend).at(row) + ")>0.000001");
    }

    private static String differs(String condition) {
        return "IF(" + condition + ",1,0)";
    }

    String term(String state, String measure, int row) {
        return switch (measure) {
            case "LOFT" -> squared("loft", looked(state, SettingsSheet.Column.LOFT, row), PlanColumn.LOFT_TARGET, row);
            case "LIE" -> squared("lie", looked(state, SettingsSheet.Column.LIE, row), PlanColumn.LIE_TARGET, row);
            case "SITS" -> sits(state, row);
            case "CARRY" -> squared("carry", PlanColumn.of(state, "CARRY").at(row), PlanColumn.CARRY_TARGET, row);
            case "GAP" -> squared("gap", PlanColumn.of(state, "GAP").at(row), PlanColumn.GAP_WISH, row);
            case "CHANGE" -> "(" + changes(state, row) + ")*" + importance("change") + "/" + tolerance("change") + "^2";
            default -> throw new IllegalArgumentException(measure);
        };
    }

    private static String squared(String measure, String value, PlanColumn target, int row) {
        String wanted = target.at(row);
        return "IF(" + wanted + "=\"\",0,IFERROR(" + importance(measure) + "*((" + value + "-" + wanted + ")/"
                + tolerance(measure) + ")^2,\"?\"))";
    }

    private String sits(String state, int row) {
        String value = looked(state, SettingsSheet.Column.SITS, row);
        return "IFERROR(" + importance("sits") + "*(" + outside(value, row) + "/" + tolerance("sits") + ")^2,\"?\")";
    }

    private static String outside(String sits, int row) {
        String open = PlanColumn.MOST_OPEN.at(row);
        String closed = PlanColumn.MOST_CLOSED.at(row);
        return "MAX(0,IF(" + closed + "=\"\",0," + sits + "-" + closed + "),IF(" + open + "=\"\",0," + open + "-" + sits
                + "))";
    }

    String penalty(String state, int row) {
        return "SUM(" + PlanColumn.of(state, "LOFT_TERM").at(row) + ":"
                + PlanColumn.of(state, "CHANGE_TERM").at(row) + ")";
    }

    /** The greatest miss of the live choice, in tolerances. */
    String worst(int row) {
        String sits = outside(PlanColumn.LIVE_SITS.at(row), row);
        return "IFERROR(MAX("
                + String.join(
                        ",",
                        miss("loft", PlanColumn.LIVE_LOFT, PlanColumn.LOFT_TARGET, row),
                        miss("lie", PlanColumn.LIVE_LIE, PlanColumn.LIE_TARGET, row),
                        sits + "/" + tolerance("sits"),
                        miss("carry", PlanColumn.LIVE_CARRY, PlanColumn.CARRY_TARGET, row),
                        miss("gap", PlanColumn.LIVE_GAP, PlanColumn.GAP_WISH, row))
                + "),\"?\")";
    }

    private static String miss(String measure, PlanColumn value, PlanColumn target, int row) {
        return "IF(" + target.at(row) + "=\"\",0,ABS(" + value.at(row) + "-" + target.at(row) + ")/"
                + tolerance(measure) + ")";
    }

    String fit(int row) {
        String worst = PlanColumn.LIVE_WORST.at(row);
        String gap = PlanColumn.LIVE_GAP.at(row);
        return "IF(" + PlanColumn.LIVE_ROW.at(row) + "=0,\"not an option\",IF(AND(ISNUMBER(" + gap + ")," + gap
                + "<=0),\"out of order\",IF(" + worst + "<=1.0000001,\"inside\",IF(" + worst
                + "<=2.0000001,\"close\",\"far\"))))";
    }

    static String fitWord(boolean outOfOrder, double worstTolerances) {
        if (outOfOrder) {
            return "out of order";
        }
        return worstTolerances <= 1.0000001 ? "inside" : worstTolerances <= 2.0000001 ? "close" : "far";
    }
}
