package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.Terms;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.settings.SheetColumn;

/** Totals on the sheet Plan: a line for the book and one a golfer, and his points by measure under his slots. */
final class PlanTotals {
    /** The points of a measure are under its figures, where the sheet shows them. */
    private static final Map<Measure, PlanColumn> COLUMNS = new EnumMap<>(Map.of(
            Measure.LOFT, PlanColumn.LIVE_LOFT,
            Measure.LIE, PlanColumn.LIVE_LIE,
            Measure.SITS, PlanColumn.LIVE_SITS,
            Measure.CARRY, PlanColumn.LIVE_CARRY,
            Measure.GAP, PlanColumn.LIVE_GAP,
            Measure.REACH, PlanColumn.GAP_WISH,
            Measure.SWINGWEIGHT, PlanColumn.LIVE_FIT,
            Measure.SPREAD, PlanColumn.TODAY_SETUP,
            Measure.CHANGE, PlanColumn.PLANNED_SETUP));

    private static final PlanColumn TOTAL = PlanColumn.LIVE_PENALTY;
    private static final PlanColumn OF_IT_MISS = PlanColumn.TODAY_CARRY;
    private static final PlanColumn OF_IT_DOUBT = PlanColumn.TODAY_GAP;
    private static final PlanColumn ITEMS = PlanColumn.PLANNED_CARRY;

    /** A number of points in a narrow column. */
    static final String NARROW = "[>=1000]0;[>=100]0.0;0.00";

    private final SheetPen pen;
    private final List<PlanBlock> blocks;
    private final VerdictLine line;
    private final PlanVerdict verdict;

    PlanTotals(SheetPen pen, List<PlanBlock> blocks, VerdictLine line, PlanVerdict verdict) {
        this.pen = pen;
        this.blocks = blocks;
        this.line = line;
        this.verdict = verdict;
    }

    void write() {
        book();
        blocks.forEach(this::measures);
        blocks.forEach(this::states);
        List<TotalsName> names =
                TotalsName.of(blocks.stream().map(PlanBlock::golfer).toList());
        if (blocks.size() > 1) {
            blocks.forEach(this::golfer);
            shown();
        } else {
            pen.hide(PlanSheet.GOLFER_ROW);
        }
        for (int index = 0; index < blocks.size(); index++) {
            new TotalsLine(pen, blocks.get(index).totalsRow()).name(names.get(index));
        }
    }

    private void book() {
        TotalsLine totals = new TotalsLine(pen, PlanSheet.BOOK_ROW);
        PlanColumn first = blocks.size() > 1 ? PlanColumn.GOLFER : PlanColumn.SLOT;
        totals.ground();
        totals.owner(first, blocks.size() > 1 ? "Points of the whole book" : "Points");
        for (PlanState state : PlanState.values()) {
            double points = blocks.stream()
                    .mapToDouble(block -> state.of(block.bag()).score().penaltyPoints())
                    .sum();
            totals.points(state, sum(state, PlanSheet.FIRST_ROW, line.lastRow()), points);
        }
        totals.words(line.formula(), verdict.inWords());
        totals.name(TotalsName.OF_BOOK);
        pen.height(PlanSheet.BOOK_ROW, PlanSheet.LINE_POINTS);
    }

    private void golfer(PlanBlock block) {
        TotalsLine totals = new TotalsLine(pen, block.totalsRow());
        totals.ground();
        totals.owner(PlanColumn.GOLFER, block.golfer());
        for (PlanState state : PlanState.values()) {
            double points = state.of(block.bag()).score().penaltyPoints();
            totals.points(state, sum(state, block.firstRow(), block.lastRow()), points);
        }
        totals.words(line.formula(block), verdict.inWords(block.bag()));
        String visible = "SUBTOTAL(103," + PlanColumn.GOLFER.at(block.totalsRow()) + ")";
        pen.formula(block.totalsRow(), PlanColumn.GOLFER_SHOWN.index(), Role.NUMBER, "0", visible, 1);
        pen.height(block.totalsRow(), PlanSheet.LINE_POINTS);
    }

    /** The totals of the first golfer that is shown once more, over the table, which stays on the screen. */
    private void shown() {
        TotalsLine totals = new TotalsLine(pen, PlanSheet.GOLFER_ROW);
        PlanBlock first = blocks.get(0);
        totals.ground();
        totals.owner(PlanColumn.GOLFER, ofShown(PlanColumn.GOLFER), first.golfer());
        for (PlanState state : PlanState.values()) {
            double points = state.of(first.bag()).score().penaltyPoints();
            totals.points(state, ofShown(TotalsLine.points(state)), points);
        }
        totals.words(ofShown(TotalsLine.WORDS), verdict.inWords(first.bag()));
        pen.height(PlanSheet.GOLFER_ROW, PlanSheet.LINE_POINTS);
    }

    private String ofShown(PlanColumn column) {
        return "IFERROR(INDEX(" + column.from(PlanSheet.FIRST_ROW, line.lastRow()) + ",MATCH(1,"
                + PlanColumn.GOLFER_SHOWN.from(PlanSheet.FIRST_ROW, line.lastRow()) + ",0)),\"\")";
    }

    private void measures(PlanBlock block) {
        int row = block.pointsRow();
        fill(row, Role.TERM);
        pen.text(row, PlanColumn.LIVE_CLUB.index(), Role.GROUP, "Penalty by measure");
        COLUMNS.forEach((measure, column) -> pen.text(row, column.index(), Role.TERM, measure.heading()));
        pen.text(row, TOTAL.index(), Role.TERM, "Total");
        pen.text(row, OF_IT_MISS.index(), Role.TERM, "miss");
        pen.text(row, OF_IT_DOUBT.index(), Role.TERM, "doubt");
        pen.text(row, ITEMS.index(), Role.TERM, "Items");
        pen.merge(row, row, ITEMS.index(), ITEMS.index() + 1);
        pen.height(row, PlanSheet.LINE_POINTS);
        pen.text(block.pointsRow(), PlanColumn.GOLFER.index(), Role.SHRUNK, block.golfer());
    }

    private void fill(int row, Role role) {
        for (int column = PlanColumn.SLOT.index(); column < PlanColumn.CHART.index(); column++) {
            pen.blank(row, column, role);
        }
    }

    private void states(PlanBlock block) {
        int row = block.pointsRow();
        for (PlanState state : PlanState.values()) {
            pen.height(++row, PlanSheet.LINE_POINTS);
            fill(row, Role.TEXT);
            pen.text(row, PlanColumn.GOLFER.index(), Role.SHRUNK, block.golfer());
            pen.text(row, PlanColumn.LIVE_CLUB.index(), Role.TEXT, state.label());
            state(block, state, row);
        }
    }

    private void state(PlanBlock block, PlanState state, int row) {
        Terms terms = block.bag().terms(state.of(block.bag()));
        int first = block.firstRow();
        int last = block.lastRow();
        COLUMNS.forEach((measure, column) ->
                number(row, column, sum(state, new TermColumn(state, measure), first, last), terms.points(measure)));
        mustAgree(block, state, terms.totalPoints());
        String total = sum(state, first, last);
        pen.formula(row, TOTAL.index(), Role.TOTAL, "0.00", total, terms.totalPoints());
        String doubt = sum(state, PlanColumn.of(state, PlanQuantity.DOUBT), first, last);
        double missPoints = terms.totalPoints() - terms.doubtPoints();
        number(row, OF_IT_MISS, "IFERROR(" + total + "-" + doubt + ",\"?\")", missPoints);
        number(row, OF_IT_DOUBT, doubt, terms.doubtPoints());
        String items = sum(state, PlanColumn.of(state, PlanQuantity.CHANGES), first, last);
        int changes = block.bag().changesOf(state.of(block.bag()));
        pen.formula(row, ITEMS.index(), Role.NUMBER, "0", items, changes);
    }

    private void number(int row, PlanColumn column, String formula, double points) {
        pen.formula(row, column.index(), Role.NUMBER, NARROW, formula, points);
    }

    /** Better no book than one whose saved figures are not those of the plan. */
    private static void mustAgree(PlanBlock block, PlanState state, double shownPoints) {
        double plannedPoints = state.of(block.bag()).score().penaltyPoints();
        if (!(Math.abs(shownPoints - plannedPoints) <= 1e-9 * Math.max(1, plannedPoints))) {
            throw new IllegalStateException(block.golfer() + ": the sheet Plan would show " + shownPoints + " points "
                    + state.label() + " where the plan has " + plannedPoints + "; nothing was written");
        }
    }

    /** A state's points in the slots of some rows. */
    private static String sum(PlanState state, int first, int last) {
        return sum(state, PlanColumn.of(state, PlanQuantity.PENALTY), first, last);
    }

    /** The sum over the slots in some rows, or a question mark where a choice is no option. */
    private static String sum(PlanState state, SheetColumn column, int first, int last) {
        return "IF(COUNTIF(" + PlanColumn.of(state, PlanQuantity.ROW).from(first, last) + ",0)>0,\"?\",SUMIF("
                + PlanColumn.SLOT.from(first, last) + ",\">0\"," + column.from(first, last) + "))";
    }
}
