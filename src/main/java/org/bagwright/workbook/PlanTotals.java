package org.bagwright.workbook;

import static org.bagwright.workbook.BookStyles.Role;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bagwright.domain.BagResult;
import org.bagwright.domain.BagState;
import org.bagwright.domain.BookResult;
import org.bagwright.domain.GapTerm;
import org.bagwright.domain.Option;
import org.bagwright.domain.OwnTerms;

/** The totals under the clubs of the sheet Plan: points by measure, today, planned and live. */
final class PlanTotals {
    private static final int STATE_COLUMN = 2;
    private static final int FIRST_TERM_COLUMN = 3;
    private static final int TOTAL_COLUMN = FIRST_TERM_COLUMN + PlanSheet.TERMS.size();
    private static final int ITEMS_COLUMN = TOTAL_COLUMN + 1;

    private final SheetPen pen;
    private int row;

    private PlanTotals(SheetPen pen, int row) {
        this.pen = pen;
        this.row = row;
    }

    /** Writes the totals from a row on and gives the last row used. */
    static int write(SheetPen pen, BookResult result, int row) {
        PlanTotals totals = new PlanTotals(pen, row);
        totals.headings();
        int first = PlanSheet.FIRST_ROW;
        for (BagResult bag : result.bags()) {
            int last = first + bag.options().slots().size() - 1;
            for (String state : PlanSheet.STATES) {
                totals.state(bag, state, first, last);
            }
            first = last + 1;
        }
        return totals.row;
    }

    /** The points of one term of one club in one state. */
    static double points(Option option, Optional<GapTerm> gap, String term) {
        OwnTerms terms = option.terms();
        return switch (term) {
            case "LOFT" -> terms.loftPoints();
            case "LIE" -> terms.liePoints();
            case "SITS" -> terms.sitsPoints();
            case "CARRY" -> terms.carryPoints();
            case "GAP" -> gap.map(GapTerm::penaltyPoints).orElse(0.0);
            case "CHANGE" -> terms.changePoints();
            default -> throw new IllegalArgumentException(term);
        };
    }

    private void headings() {
        pen.text(row++, 0, Role.GROUP, "Penalty points by measure");
        List<String> headings = List.of(
                "Golfer", "", "State", "Loft", "Lie", "Sits", "Carry", "Gap", "Change", "Total", "Items changed");
        for (int column = 0; column < headings.size(); column++) {
            pen.text(row, column, Role.HEADING, headings.get(column));
        }
        pen.height(row, 28);
    }

    private void state(BagResult bag, String state, int first, int last) {
        row++;
        pen.text(row, 0, Role.TEXT, bag.golfer().name());
        pen.blank(row, 1, Role.TEXT);
        pen.text(row, STATE_COLUMN, Role.TEXT, state.toLowerCase(Locale.ROOT));
        double total = 0;
        for (int index = 0; index < PlanSheet.TERMS.size(); index++) {
            String term = PlanSheet.TERMS.get(index);
            double points = points(bag, state, term);
            total += points;
            pen.formula(
                    row,
                    FIRST_TERM_COLUMN + index,
                    Role.NUMBER,
                    "0.00",
                    sum(state, PlanColumn.of(state, term + "_TERM"), first, last),
                    points);
        }
        pen.formula(
                row, TOTAL_COLUMN, Role.TOTAL, "0.00", sum(state, PlanColumn.of(state, "PENALTY"), first, last), total);
        items(bag, state, first, last);
    }

    private static double points(BagResult bag, String state, String term) {
        BagState chosen = state.equals("TODAY") ? bag.today() : bag.planned();
        if (term.equals("GAP")) {
            return chosen.gaps().stream().mapToDouble(GapTerm::penaltyPoints).sum();
        }
        return bag.optionsOf(chosen).stream()
                .mapToDouble(option -> points(option, Optional.empty(), term))
                .sum();
    }

    private void items(BagResult bag, String state, int first, int last) {
        BagState chosen = state.equals("TODAY") ? bag.today() : bag.planned();
        int items = bag.optionsOf(chosen).stream().mapToInt(Option::changes).sum();
        String divided = PlanFormulas.importance("change") + "/" + PlanFormulas.tolerance("change") + "^2";
        String formula = state.equals("LIVE")
                ? sum(state, PlanColumn.LIVE_CHANGES, first, last)
                : "IF(" + PlanFormulas.importance("change") + "=0,0,"
                        + sum(state, PlanColumn.of(state, "CHANGE_TERM"), first, last) + "/(" + divided + "))";
        pen.formula(row, ITEMS_COLUMN, Role.NUMBER, "0", formula, items);
    }

    /** The sum over a golfer's rows, or a question mark where a choice is no option. */
    private static String sum(String state, PlanColumn column, int first, int last) {
        String rows = PlanColumn.of(state, "ROW").at(first) + ":"
                + PlanColumn.of(state, "ROW").at(last);
        return "IF(COUNTIF(" + rows + ",0)>0,\"?\",SUM(" + column.at(first) + ":" + column.at(last) + "))";
    }
}
