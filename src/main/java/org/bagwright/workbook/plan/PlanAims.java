package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import org.apache.poi.ss.usermodel.Name;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Measure;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.ResultSheet;

/** The tolerances and importances on the sheet Plan, which its formulas use by name. */
final class PlanAims {
    private static final List<String> HEADINGS = List.of("Tolerance", "Unit", "Importance", "Must");

    private final SheetPen pen;
    private final BookSettings settings;
    private final PlanLayout layout;

    PlanAims(SheetPen pen, BookSettings settings, PlanLayout layout) {
        this.pen = pen;
        this.settings = settings;
        this.layout = layout;
    }

    /** The name of the cell with a measure's tolerance, such as {@code BW_loft_tolerance}. */
    static String tolerance(Measure measure) {
        return ResultSheet.NAME_PREFIX + measure.label() + "_tolerance";
    }

    /** The name of the cell with a measure's importance. */
    static String importance(Measure measure) {
        return ResultSheet.NAME_PREFIX + measure.label() + "_importance";
    }

    /** The name of the cell that says whether a measure is a must. */
    static String must(Measure measure) {
        return ResultSheet.NAME_PREFIX + measure.label() + "_must";
    }

    /** Writes the aims from a row on and gives the last row used. */
    int write(Aims aims, int row) {
        for (int place = 0; place < HEADINGS.size() + 2; place++) {
            pen.blank(row, column(place), Role.GROUP);
        }
        pen.text(row, column(0), Role.GROUP, "How much each measure counts");
        headings(row + 1);
        int next = row + 2;
        for (Measure measure : Measure.values()) {
            aim(aims.of(measure), next++);
        }
        return next - 1;
    }

    /** The columns that are shown, from the choices on, so that one page holds them; a measure's name takes two. */
    private int column(int place) {
        return layout.shown(PlanColumn.LIVE_CLUB, place);
    }

    private void headings(int row) {
        measure(row, Role.HEADING, "Measure");
        for (int place = 0; place < HEADINGS.size(); place++) {
            pen.text(row, column(2 + place), Role.HEADING, HEADINGS.get(place));
        }
    }

    private void measure(int row, Role role, String text) {
        pen.text(row, column(0), role, text);
        pen.blank(row, column(1), role);
        pen.merge(row, row, column(0), column(1));
    }

    private void aim(Aim aim, int row) {
        Measure measure = aim.measure();
        measure(row, Role.TEXT, measure.label());
        pen.number(row, column(2), Role.INPUT, "0.0##", measure.unit().shown(aim.toleranceMeasureUnits(), settings));
        pen.text(row, column(3), Role.TEXT, measure.unit().label(settings));
        pen.number(row, column(4), Role.INPUT, "0.0##", aim.importancePoints());
        pen.text(row, column(5), Role.TEXT, aim.must() ? "yes" : "no");
        name(tolerance(measure), row, column(2));
        name(importance(measure), row, column(4));
        name(must(measure), row, column(5));
    }

    private void name(String text, int row, int column) {
        Name name = pen.sheet().getWorkbook().createName();
        name.setNameName(text);
        name.setRefersToFormula(pen.sheet().getSheetName() + "!" + SheetPen.held(row, column));
    }
}
