package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Name;
import org.bagwright.workbook.pen.SheetPen;

/**
 * A line of totals on the sheet Plan: whose they are, points today, planned and live, and what the live choices break.
 *
 * @param pen the pen of the sheet
 * @param row the row, counted from 0
 */
record TotalsLine(SheetPen pen, int row) {
    private static final Map<PlanState, PlanColumn> LABELS = new EnumMap<>(Map.of(
            PlanState.TODAY, PlanColumn.LIVE_LOFT,
            PlanState.PLANNED, PlanColumn.LIVE_SITS,
            PlanState.LIVE, PlanColumn.GAP_WISH));
    private static final Map<PlanState, String> LABEL =
            new EnumMap<>(Map.of(PlanState.TODAY, "today", PlanState.PLANNED, "plan", PlanState.LIVE, "live"));
    private static final Map<PlanState, PlanColumn> POINTS = new EnumMap<>(Map.of(
            PlanState.TODAY, PlanColumn.LIVE_LIE,
            PlanState.PLANNED, PlanColumn.LIVE_CARRY,
            PlanState.LIVE, PlanColumn.LIVE_PENALTY));
    /** Where the words about the live choices begin. */
    static final PlanColumn WORDS = PlanColumn.LIVE_FIT;

    /** The column with the points of a state. */
    static PlanColumn points(PlanState state) {
        return POINTS.get(state);
    }

    /** Colours the line up to the chart and labels the points. */
    void ground() {
        for (int column = 0; column <= PlanColumn.CHART.index(); column++) {
            pen.blank(row, column, Role.GROUP);
        }
        for (PlanState state : PlanState.values()) {
            pen.text(row, LABELS.get(state).index(), Role.LABEL, LABEL.get(state));
        }
    }

    void owner(PlanColumn column, String text) {
        pen.text(row, column.index(), Role.GROUP, text);
    }

    void owner(PlanColumn column, String formula, String cached) {
        pen.formula(row, column.index(), Role.GROUP, formula, cached);
    }

    void points(PlanState state, String formula, double points) {
        pen.formula(row, points(state).index(), Role.SUM, PlanTotals.NARROW, formula, points);
    }

    void words(String formula, String cached) {
        pen.formula(row, WORDS.index(), Role.SAYS, formula, cached);
    }

    /** Names the cells with the points, so that formulas of the fitter find them wherever they are. */
    void name(TotalsName of) {
        for (PlanState state : PlanState.values()) {
            Name name = pen.sheet().getWorkbook().createName();
            name.setNameName(of.text(state));
            name.setRefersToFormula(pen.sheet().getSheetName() + "!"
                    + SheetPen.held(row, points(state).index()));
        }
    }
}
