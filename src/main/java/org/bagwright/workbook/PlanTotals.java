package org.bagwright.workbook;

import static org.bagwright.workbook.BookStyles.Role;

import org.bagwright.domain.BagResult;
import org.bagwright.domain.BookResult;

/** The totals under the slots of the sheet Plan: points by measure, today, planned and live. */
final class PlanTotals {
    private static final int FIRST_TERM_PLACE = 3;
    private static final int TOTAL_PLACE = FIRST_TERM_PLACE + PlanTerm.values().length;
    private static final int ITEMS_PLACE = TOTAL_PLACE + 1;

    private static final int PLACES = ITEMS_PLACE + 1;

    private final SheetPen pen;
    private final PlanLayout layout;
    private int row;

    private PlanTotals(SheetPen pen, PlanLayout layout, int row) {
        this.pen = pen;
        this.layout = layout;
        this.row = row;
    }

    /** Writes the totals from a row on and gives the last row used. */
    static int write(SheetPen pen, BookResult result, PlanLayout layout, int row) {
        PlanTotals totals = new PlanTotals(pen, layout, row);
        totals.headings();
        int first = PlanSheet.FIRST_ROW;
        for (BagResult bag : result.bags()) {
            int last = first + bag.options().slots().size() - 1;
            for (PlanState state : PlanState.values()) {
                totals.state(bag, state, first, last);
            }
            first = last + 1;
        }
        return totals.row;
    }

    private void headings() {
        for (int place = 0; place < PLACES; place++) {
            pen.blank(row, layout.shown(place), Role.GROUP);
        }
        pen.text(row++, 0, Role.GROUP, "Penalty by measure [points]");
        pen.text(row, 0, Role.HEADING, "Golfer");
        pen.blank(row, 1, Role.HEADING);
        pen.text(row, 2, Role.HEADING, "State");
        for (PlanTerm term : PlanTerm.values()) {
            String heading = term == PlanTerm.SWINGWEIGHT ? "Swing- weight" : term.heading();
            pen.text(row, layout.shown(FIRST_TERM_PLACE + term.ordinal()), Role.HEADING, heading);
        }
        pen.text(row, layout.shown(TOTAL_PLACE), Role.HEADING, "Total");
        pen.text(row, layout.shown(ITEMS_PLACE), Role.HEADING, "Items changed");
        pen.height(row, 28);
    }

    private void state(BagResult bag, PlanState state, int first, int last) {
        row++;
        pen.text(row, 0, Role.TEXT, bag.golfer().name());
        pen.blank(row, 1, Role.TEXT);
        pen.text(row, 2, Role.TEXT, state.label());
        double total = 0;
        for (PlanTerm term : PlanTerm.values()) {
            double points = points(bag, state, term);
            total += points;
            pen.formula(
                    row,
                    layout.shown(FIRST_TERM_PLACE + term.ordinal()),
                    Role.NUMBER,
                    "0.00",
                    sum(state, term.column(state), first, last),
                    points);
        }
        mustAgree(bag, state, total);
        PlanColumn penalty = PlanColumn.of(state, "PENALTY");
        pen.formula(row, layout.shown(TOTAL_PLACE), Role.TOTAL, "0.00", sum(state, penalty, first, last), total);
        items(bag, state, first, last);
    }

    /** Better no book than one whose saved figures are not those of the plan. */
    private static void mustAgree(BagResult bag, PlanState state, double shownPoints) {
        double plannedPoints = state.of(bag).score().penaltyPoints();
        if (!(Math.abs(shownPoints - plannedPoints) <= 1e-9 * Math.max(1, plannedPoints))) {
            throw new IllegalStateException(bag.golfer().name() + ": the sheet Plan would show " + shownPoints
                    + " points " + state.label() + " where the plan has " + plannedPoints + "; nothing was written");
        }
    }

    private static double points(BagResult bag, PlanState state, PlanTerm term) {
        double points = 0;
        for (int index = 0; index < bag.options().slots().size(); index++) {
            points += new PlanRow(bag, index).points(state, term);
        }
        return points;
    }

    private void items(BagResult bag, PlanState state, int first, int last) {
        String formula = sum(state, PlanColumn.of(state, "CHANGES"), first, last);
        pen.formula(row, layout.shown(ITEMS_PLACE), Role.NUMBER, "0", formula, bag.changesOf(state.of(bag)));
    }

    /** The sum over a golfer's rows, or a question mark where a choice is no option. */
    private static String sum(PlanState state, PlanColumn column, int first, int last) {
        return "IF(COUNTIF(" + PlanColumn.of(state, "ROW").from(first, last) + ",0)>0,\"?\",SUM("
                + column.from(first, last) + "))";
    }
}
