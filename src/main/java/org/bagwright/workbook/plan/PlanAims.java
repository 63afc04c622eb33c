package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import org.apache.poi.ss.usermodel.Name;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.workbook.pen.SheetPen;

/** The tolerances and importances on the sheet Plan, which its formulas use by name. */
final class PlanAims {
    private static final List<String> HEADINGS = List.of("Tolerance", "Unit", "Importance", "Must");

    private final SheetPen pen;
    private final BookSettings settings;
    private final PlanLayout layout;

    private PlanAims(SheetPen pen, BookSettings settings, PlanLayout layout) {
        this.pen = pen;
        this.settings = settings;
        this.layout = layout;
    }

    /** Writes the aims from a row on and gives the last row used. */
    static int write(SheetPen pen, Book book, PlanLayout layout, int row) {
        PlanAims aims = new PlanAims(pen, book.settings(), layout);
        for (int place = 0; place < HEADINGS.size() + 2; place++) {
            pen.blank(row, aims.column(place), Role.GROUP);
        }
        pen.text(row, aims.column(0), Role.GROUP, "What counts how much");
        aims.headings(row + 1);
        int next = row + 2;
        for (Measure measure : Measure.values()) {
            aims.aim(book.aims().of(measure), next++);
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
        LengthUnit distance = settings.units().distance();
        double tolerance =
                measure.isDistance() ? distance.fromM(aim.toleranceMeasureUnits()) : aim.toleranceMeasureUnits();
        measure(row, Role.TEXT, measure.label());
        pen.number(row, column(2), Role.INPUT, "0.0##", tolerance);
        pen.text(row, column(3), Role.TEXT, unit(measure));
        pen.number(row, column(4), Role.INPUT, "0.0##", aim.importancePoints());
        pen.text(row, column(5), Role.TEXT, aim.must() ? "yes" : "no");
        name(PlanFormulas.tolerance(measure.label()), row, column(2));
        name(PlanFormulas.importance(measure.label()), row, column(4));
    }

    private String unit(Measure measure) {
        return switch (measure) {
            case CARRY, GAP -> settings.units().distance().label();
            case SWINGWEIGHT -> "points";
            case SPREAD -> SettingsSheet.matchUnit(settings.matching());
            case CHANGE -> "item";
            case LOFT, LIE, SITS -> "deg";
        };
    }

    private void name(String text, int row, int column) {
        Name name = pen.sheet().getWorkbook().createName();
        name.setNameName(text);
        name.setRefersToFormula(PlanSheet.NAME + "!" + SheetPen.held(row, column));
    }
}
