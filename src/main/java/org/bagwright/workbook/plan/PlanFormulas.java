package org.bagwright.workbook.plan;

import java.util.List;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.Option;
import org.bagwright.workbook.settings.SettingsColumn;
import org.bagwright.workbook.settings.SettingsSheet;

/** The formulas of the sheet Plan that look numbers up; a choice that is no option gives a question mark. */
final class PlanFormulas {
    /** Up to so many tolerances a miss is inside, with a hair for the noise of the arithmetic. */
    static final double INSIDE = 1.0000001;

    /** Up to so many it is close. */
    static final double CLOSE = 2.0000001;

    /** Misses that differ by less are alike. */
    static final double HAIR = 0.0000001;

    private static final String HAIR_TEXT = "0.0000001";

    private final SettingsSheet settings;
    private final boolean hasWildcards;

    /** @param hasWildcards whether a name in the book holds a character that lookups would take as a wildcard */
    PlanFormulas(SettingsSheet settings, boolean hasWildcards) {
        this.settings = settings;
        this.hasWildcards = hasWildcards;
    }

    /** The place of the live club among those of its slot; the first where it is none of them. */
    String liveList(PlanPlace place) {
        String club = sought(place.at(PlanColumn.LIVE_CLUB) + "&\"\"");
        return "IFERROR(MATCH(" + club + "," + settings.lists().clubs(place.slot()) + ",0),1)";
    }

    /** The row of the state's choice on the sheet Settings; 0 if it is no option. */
    String lookupRow(PlanState state, PlanPlace place) {
        return "IFERROR(MATCH(" + sought(key(state, place)) + "," + settings.lookup(SettingsColumn.KEY) + ",0),0)";
    }

    private String key(PlanState state, PlanPlace place) {
        String golfer = place.at(PlanColumn.GOLFER);
        String slot = place.at(PlanColumn.SLOT);
        String club = place.at(state, PlanQuantity.CLUB);
        String carried = SettingsSheet.key(
                golfer,
                slot,
                club,
                chosen(state, place, PlanQuantity.SETTING),
                chosen(state, place, PlanQuantity.WEIGHTING),
                chosen(state, place, PlanQuantity.LOFT_BEND),
                chosen(state, place, PlanQuantity.LIE_BEND));
        return place.mayBeEmpty()
                ? "IF(" + isLeftOut(club) + "," + SettingsSheet.key(golfer, slot, quoted(Option.LEFT_OUT)) + ","
                        + carried + ")"
                : carried;
    }

    /** A choice cell; a blank one in the live choice of a slot with candidates means what the club has in the book. */
    private String chosen(PlanState state, PlanPlace place, PlanQuantity choice) {
        String cell = place.at(state, choice);
        if (state != PlanState.LIVE || place.fixed()) {
            return cell;
        }
        return "IF(" + cell + "=\"\",INDEX("
                + settings.lists().own(place.slot(), choice.source().orElseThrow()) + ","
                + place.at(PlanColumn.LIVE_LIST) + ")," + cell + ")";
    }

    private static String isLeftOut(String club) {
        return club + "=" + quoted(Option.LEFT_OUT);
    }

    private static String quoted(String text) {
        return "\"" + text + "\"";
    }

    private String sought(String text) {
        return hasWildcards
                ? "SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(" + text + ",\"~\",\"~~\"),\"*\",\"~*\"),\"?\",\"~?\")"
                : text;
    }

    /** A number or text of the state's option. */
    String looked(PlanState state, SettingsColumn column, PlanPlace place) {
        String found = place.at(state, PlanQuantity.ROW);
        String value = index(state, column, place);
        String shown = place.fixed() ? value : "IF(" + value + "=\"\",\"\"," + value + ")";
        return "IF(" + found + "=0,\"?\"," + shown + ")";
    }

    /** As {@link #looked}, for use where the option is known to be found. */
    String index(PlanState state, SettingsColumn column, PlanPlace place) {
        return "INDEX(" + settings.lookup(column) + "," + place.at(state, PlanQuantity.ROW) + ")";
    }

    /** Live less today; blank where either has no such number. */
    String change(SettingsColumn column, PlanPlace place) {
        String live = index(PlanState.LIVE, column, place);
        String today = index(PlanState.TODAY, column, place);
        String found = place.at(PlanColumn.LIVE_ROW) + "*" + place.at(PlanColumn.TODAY_ROW);
        return "IF(" + found + "=0,\"?\",IF(OR(" + live + "=\"\"," + today + "=\"\"),\"\"," + live + "-" + today + "))";
    }

    /** What the first row further down has whose club carries, or blank. */
    String next(PlanState state, PlanColumn wanted, PlanColumn here, PlanPlace place) {
        int below = place.row() + 1;
        String carry = PlanColumn.of(state, PlanQuantity.CARRY).at(below);
        String further = below == place.lastRow() ? "\"\"" : here.at(below);
        return "IF(ISNUMBER(" + carry + ")," + wanted.at(below) + ",IF(" + carry + "=\"?\",\"?\"," + further + "))";
    }

    String gap(PlanState state, PlanPlace place) {
        String carry = place.at(state, PlanQuantity.CARRY);
        String next = place.at(state, PlanQuantity.NEXT);
        String between = "IF(" + next + "=\"\",\"\",IFERROR(" + carry + "-" + next + ",\"?\"))";
        return place.fixed() ? between : "IF(" + carry + "=\"\",\"\"," + between + ")";
    }

    /** The variance of the carry of a state's option, where it is known to be found. */
    String carryVariance(PlanState state, PlanPlace place) {
        String row = place.at(state, PlanQuantity.ROW);
        return "(SUMSQ(" + factors(row) + ")+" + ownVariance(row) + ")";
    }

    /** The variance of a state's gap, or blank: what both carries share alike moves them together and drops out. */
    String gapVariance(PlanState state, PlanPlace place) {
        String row = place.at(state, PlanQuantity.ROW);
        String next = place.at(state, PlanQuantity.NEXT_ROW);
        return "IF(ISNUMBER(" + place.at(state, PlanQuantity.GAP) + "),SUMXMY2(" + factors(row) + "," + factors(next)
                + ")+" + ownVariance(row) + "+" + ownVariance(next) + ",\"\")";
    }

    private String factors(String row) {
        return "INDEX(" + settings.lookup(SettingsColumn.DOUBT_1, SettingsColumn.DOUBT_8) + "," + row + ",0)";
    }

    private String ownVariance(String row) {
        return "INDEX(" + settings.lookup(SettingsColumn.OWN_VARIANCE) + "," + row + ")";
    }

    /** Half of the range that holds a state's gap in 80 of 100 cases, or blank. */
    static String gapSpread(PlanState state, PlanPlace place) {
        String variance = place.at(state, PlanQuantity.GAP_VARIANCE);
        return "IF(" + variance + "=\"\",\"\"," + CarryDoubt.HALF_80_SDS + "*SQRT(" + variance + "))";
    }

    /** The beginning of a choice of words: the carry does not fall to the next club. */
    String order(PlanPlace place) {
        String gap = place.at(PlanColumn.LIVE_GAP);
        return "IF(AND(ISNUMBER(" + gap + ")," + gap + "<=0),\"out of order\",";
    }

    /** How far the live choice is off, in a word, and by which measure. */
    String miss(PlanPlace place) {
        String worst = place.at(PlanColumn.LIVE_WORST);
        String measure = "\"\"";
        List<MissColumn> misses = MissColumn.all();
        for (int index = misses.size() - 1; index >= 0; index--) {
            MissColumn miss = misses.get(index);
            measure = "IF(" + place.at(miss) + ">=" + worst + "-" + HAIR_TEXT + ","
                    + quoted(miss.measure().label()) + "," + measure + ")";
        }
        return "IF(ISNUMBER(" + worst + "),IF(" + worst + "<=" + INSIDE + ",\"inside\",IF(" + worst + "<=" + CLOSE
                + ",\"close: \",\"far: \")&" + measure + "),\"?\")";
    }

    /** A formula for a club; an empty slot says that it is left out. */
    String unlessLeftOut(PlanPlace place, String formula) {
        return place.mayBeEmpty()
                ? "IF(" + isLeftOut(place.at(PlanColumn.LIVE_CLUB)) + "," + quoted(Option.LEFT_OUT) + "," + formula
                        + ")"
                : formula;
    }
}
