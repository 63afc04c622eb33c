package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import org.bagwright.workbook.settings.SheetColumn;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.workbook.pen.SheetPen;

/** The totals under the slots of the sheet Plan: points by measure, today, planned and live. */
final class PlanTotals {
    private static final int FIRST_TERM_PLACE = 3;
    private static final int TOTAL_PLACE = FIRST_TERM_PLACE + Measure.values().length;
    private static final int MISS_PLACE = TOTAL_PLACE + 1;
    private static final int DOUBT_PLACE = TOTAL_PLACE + 2;
    private static final int ITEMS_PLACE = TOTAL_PLACE + 3;

    private static final int PLACES = ITEMS_PLACE + 1;

    private final SheetPen pen;
    private final PlanLayout layout;
    private int row;

    /** @param row the first row of the totals */
    PlanTotals(SheetPen pen, PlanLayout layout, int row) {
        this.pen = pen;
        this.layout = layout;
        this.row = row;
    }

    /**
     * Writes the totals and gives the last row used.
     *
     * @param firstSlotRow the row of the first slot of the first bag
     */
    int write(List<BagResult> bags, int firstSlotRow) {
        headings();
        int first = firstSlotRow;
        for (BagResult bag : bags) {
            int last = first + bag.options().slots().size() - 1;
            for (PlanState state : PlanState.values()) {
                state(bag, state, first, last);
            }
            first = last + 1;
        }
        return row;
    }

    private void headings() {
        for (int place = 0; place < PLACES; place++) {
            pen.blank(row, layout.shown(place), Role.GROUP);
        }
        pen.text(row++, 0, Role.GROUP, "Penalty by measure [points]");
        pen.text(row, 0, Role.HEADING, "Golfer");
        pen.blank(row, 1, Role.HEADING);
        pen.text(row, 2, Role.HEADING, "State");
        for (Measure measure : Measure.values()) {
            String heading = measure.heading().replace("Swingweight", "Swing- weight");
            pen.text(row, termColumn(measure), Role.HEADING, heading);
        }
        pen.text(row, layout.shown(TOTAL_PLACE), Role.HEADING, "Total");
        pen.text(row, layout.shown(MISS_PLACE), Role.HEADING, "of it miss");
        pen.text(row, layout.shown(DOUBT_PLACE), Role.HEADING, "of it doubt");
        pen.text(row, layout.shown(ITEMS_PLACE), Role.HEADING, "Items changed");
        pen.height(row, 28);
    }

    private int termColumn(Measure measure) {
        return layout.shown(FIRST_TERM_PLACE + measure.ordinal());
    }

    private void state(BagResult bag, PlanState state, int first, int last) {
        row++;
        pen.text(row, 0, Role.TEXT, bag.golfer().name());
        pen.blank(row, 1, Role.TEXT);
        pen.text(row, 2, Role.TEXT, state.label());
        Terms terms = bag.terms(state.of(bag));
        for (Measure measure : Measure.values()) {
            String formula = sum(state, new TermColumn(state, measure), first, last);
            pen.formula(row, termColumn(measure), Role.NUMBER, "0.00", formula, terms.points(measure));
        }
        mustAgree(bag, state, terms.totalPoints());
        String total = sum(state, PlanColumn.of(state, PlanQuantity.PENALTY), first, last);
        pen.formula(row, layout.shown(TOTAL_PLACE), Role.TOTAL, "0.00", total, terms.totalPoints());
        parts(terms, total, sum(state, PlanColumn.of(state, PlanQuantity.DOUBT), first, last));
        String items = sum(state, PlanColumn.of(state, PlanQuantity.CHANGES), first, last);
        pen.formula(row, layout.shown(ITEMS_PLACE), Role.NUMBER, "0", items, bag.changesOf(state.of(bag)));
    }

    /** What the best guess misses, and what is there only because carries are not known exactly. */
    private void parts(Terms terms, String total, String doubt) {
        double missPoints = terms.totalPoints() - terms.doubtPoints();
        String miss = "IFERROR(" + total + "-" + doubt + ",\"?\")";
        pen.formula(row, layout.shown(MISS_PLACE), Role.NUMBER, "0.00", miss, missPoints);
        pen.formula(row, layout.shown(DOUBT_PLACE), Role.NUMBER, "0.00", doubt, terms.doubtPoints());
    }

    /** Better no book than one whose saved figures are not those of the plan. */
    private static void mustAgree(BagResult bag, PlanState state, double shownPoints) {
        double plannedPoints = state.of(bag).score().penaltyPoints();
        if (!(Math.abs(shownPoints - plannedPoints) <= 1e-9 * Math.max(1, plannedPoints))) {
            throw new IllegalStateException(bag.golfer().name() + ": the sheet Plan would show " + shownPoints
                    + " points " + state.label() + " where the plan has " + plannedPoints + "; nothing was written");
        }
    }

    /** The sum over a golfer's rows, or a question mark where a choice is no option. */
    private static String sum(PlanState state, SheetColumn column, int first, int last) {
        return "IF(COUNTIF(" + PlanColumn.of(state, PlanQuantity.ROW).from(first, last) + ",0)>0,\"?\",SUM("
                + column.from(first, last) + "))";
    }
}
