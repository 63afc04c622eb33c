package org.bagwright.workbook.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.bagwright.workbook.schema.ResultSheet;

/**
 * The names of cells with totals of the sheet Plan, such as {@code BW_live_points} for the book and
 * {@code BW_live_points_Ann_Lee} for a golfer.
 *
 * @param golfer the part that says whose they are; blank for the whole book
 */
record TotalsName(String golfer) {
    static final TotalsName OF_BOOK = new TotalsName("");

    /** The names of golfers in order: letters and digits stay, anything else becomes a line; alike ones are numbered. */
    static List<TotalsName> of(List<String> golfers) {
        Set<String> taken = new LinkedHashSet<>();
        List<TotalsName> names = new ArrayList<>();
        for (String golfer : golfers) {
            String plain = "_" + golfer.replaceAll("[^\\p{L}\\p{N}]+", "_").replaceAll("^_+|_+$", "");
            String text = plain;
            for (int number = 2; !taken.add(text.toLowerCase(Locale.ROOT)); number++) {
                text = plain + "_" + number;
            }
            names.add(new TotalsName(text));
        }
        return names;
    }

    String text(PlanState state) {
        return ResultSheet.NAME_PREFIX + state.label() + "_points" + golfer;
    }
}
