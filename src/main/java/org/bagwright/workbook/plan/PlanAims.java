package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Measure;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.AimColumn;
import org.bagwright.workbook.schema.ResultSheet;
import org.bagwright.workbook.text.PlanMemory;

/** Tolerances, importances and musts on the sheet Plan, which its formulas and the next plan find by name. */
public final class PlanAims {
    private static final List<String> HEADINGS = List.of("Tolerance", "Unit", "Importance", "Must", "Doubt counts");

    private final SheetPen pen;
    private final BookSettings settings;
    private final PlanLayout layout;

    PlanAims(SheetPen pen, BookSettings settings, PlanLayout layout) {
        this.pen = pen;
        this.settings = settings;
        this.layout = layout;
    }

    /** The name of the cell with a measure's tolerance, such as {@code BW_loft_tolerance}. */
    public static String tolerance(Measure measure) {
        return ResultSheet.NAME_PREFIX + measure.label() + "_tolerance";
    }

    /** The name of the cell with a measure's importance. */
    public static String importance(Measure measure) {
        return ResultSheet.NAME_PREFIX + measure.label() + "_importance";
    }

    /** The name of the cell that says whether a measure is a must. */
    public static String must(Measure measure) {
        return ResultSheet.NAME_PREFIX + measure.label() + "_must";
    }

    /** The name of the cell that says whether the variance of a measure's value costs as its deviation does. */
    static String doubt(Measure measure) {
        return ResultSheet.NAME_PREFIX + measure.label() + "_doubt";
    }

    /** Whether a measure's value can be in doubt: it comes from carries, which are not known exactly. */
    static boolean countsDoubt(Measure measure) {
        return measure == Measure.CARRY || measure == Measure.GAP;
    }

    /** The name of the cell that remembers what the plan filled in for a measure; see {@link PlanMemory}. */
    public static String filled(Measure measure) {
        return ResultSheet.NAME_PREFIX + measure.label() + "_filled";
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
        must(aim, row);
        doubt(aim, row);
        name(tolerance(measure), row, column(2));
        name(importance(measure), row, column(4));
        name(filled(measure), row, PlanColumn.FILLED.index());
        remember(aim, row);
    }

    /** A cell to choose in, but for a measure that no must can limit. */
    private void must(Aim aim, int row) {
        String text = aim.must() ? "yes" : "no";
        if (aim.measure().canBeMust()) {
            pen.text(row, column(5), Role.CHOICE, text);
            offerYesAndNo(row, column(5));
            name(must(aim.measure()), row, column(5));
        } else {
            pen.text(row, column(5), Role.TEXT, text);
        }
    }

    /** What the sheet Start asks for, to read only. */
    private void doubt(Aim aim, int row) {
        if (countsDoubt(aim.measure())) {
            pen.text(row, column(6), Role.TEXT, aim.onWhatIsLikely() ? "yes" : "no");
            name(doubt(aim.measure()), row, column(6));
        } else {
            pen.blank(row, column(6), Role.TEXT);
        }
    }

    private void offerYesAndNo(int row, int column) {
        DataValidationHelper helper = pen.sheet().getDataValidationHelper();
        DataValidation validation = helper.createValidation(
                helper.createExplicitListConstraint(new String[] {"yes", "no"}),
                new CellRangeAddressList(row, row, column, column));
        validation.setShowErrorBox(true);
        validation.createErrorBox("Must", "Write yes or no.");
        pen.sheet().addValidationData(validation);
    }

    private void remember(Aim aim, int row) {
        PlanMemory memory = new PlanMemory();
        double tolerance = aim.measure().unit().shown(aim.toleranceMeasureUnits(), settings);
        memory.put(AimColumn.TOLERANCE.header(), OptionalDouble.of(tolerance));
        memory.put(AimColumn.IMPORTANCE.header(), OptionalDouble.of(aim.importancePoints()));
        memory.put(AimColumn.MUST.header(), aim.must() ? "yes" : "no");
        pen.text(row, PlanColumn.FILLED.index(), Role.FAINT, memory.text());
    }

    private void name(String text, int row, int column) {
        Name name = pen.sheet().getWorkbook().createName();
        name.setNameName(text);
        name.setRefersToFormula(pen.sheet().getSheetName() + "!" + SheetPen.held(row, column));
    }
}
