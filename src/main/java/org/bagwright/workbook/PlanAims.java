package org.bagwright.workbook;

import static org.bagwright.workbook.BookStyles.Role;

import java.util.List;
import org.apache.poi.ss.usermodel.Name;
import org.bagwright.domain.Aim;
import org.bagwright.domain.Book;
import org.bagwright.domain.DistanceUnit;
import org.bagwright.domain.Measure;

/** The tolerances and importances on the sheet Plan, which its formulas use by name. */
final class PlanAims {
    private static final int COLUMN = PlanColumn.PLANNED_CARRY.ordinal();
    private static final List<Measure> SHOWN =
            List.of(Measure.LOFT, Measure.LIE, Measure.SITS, Measure.CARRY, Measure.GAP, Measure.CHANGE);

    private PlanAims() {}

    /** Writes the aims from a row on and gives the last row used. */
    static int write(SheetPen pen, Book book, int row) {
        pen.text(row, COLUMN, Role.GROUP, "What counts how much");
        List<String> headings = List.of("Measure", "Tolerance", "Unit", "Impor- tance", "Must");
        for (int column = 0; column < headings.size(); column++) {
            pen.text(row + 1, COLUMN + column, Role.HEADING, headings.get(column));
        }
        DistanceUnit distance = book.settings().units().distance();
        pen.height(row + 1, 28);
        int next = row + 2;
        for (Measure measure : SHOWN) {
            aim(pen, book.aims().of(measure), distance, next++);
        }
        return next - 1;
    }

    private static void aim(SheetPen pen, Aim aim, DistanceUnit distance, int row) {
        Measure measure = aim.measure();
        double tolerance =
                measure.isDistance() ? distance.fromM(aim.toleranceMeasureUnits()) : aim.toleranceMeasureUnits();
        pen.text(row, COLUMN, Role.TEXT, measure.label());
        pen.number(row, COLUMN + 1, Role.INPUT, "0.0##", tolerance);
        pen.text(row, COLUMN + 2, Role.TEXT, unit(measure, distance));
        pen.number(row, COLUMN + 3, Role.INPUT, "0.0##", aim.importancePoints());
        pen.text(row, COLUMN + 4, Role.TEXT, aim.must() ? "yes" : "no");
        name(pen, PlanFormulas.tolerance(measure.label()), row, COLUMN + 1);
        name(pen, PlanFormulas.importance(measure.label()), row, COLUMN + 3);
    }

    private static String unit(Measure measure, DistanceUnit distance) {
        if (measure.isDistance()) {
            return distance.label();
        }
        return measure == Measure.CHANGE ? "item" : "deg";
    }

    private static void name(SheetPen pen, String text, int row, int column) {
        Name name = pen.sheet().getWorkbook().createName();
        name.setNameName(text);
        name.setRefersToFormula(PlanSheet.NAME + "!" + SheetPen.held(row, column));
    }
}
