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

    PlanAims(SheetPen pen, BookSettings settings) {
        this.pen = pen;
        this.settings = settings;
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
        for (int column = PlanColumn.SLOT.index(); column <= PlanColumn.TODAY_SETUP.index(); column++) {
            pen.blank(row, column, Role.GROUP);
        }
        pen.text(row, PlanColumn.SLOT.index(), Role.GROUP, "How much each measure counts");
        headings(row + 1);
        int next = row + 2;
        for (Measure measure : Measure.values()) {
            aim(aims.of(measure), next++);
        }
        return next - 1;
    }

    /** A cell over several columns, which are narrow here: the columns of the slots. */
    private enum Field {
        MEASURE(PlanColumn.SLOT, PlanColumn.PIN),
        TOLERANCE(PlanColumn.LIVE_LOFT, PlanColumn.LIVE_LIE),
        UNIT(PlanColumn.LIVE_SITS, PlanColumn.LIVE_SITS),
        IMPORTANCE(PlanColumn.LIVE_CARRY, PlanColumn.LIVE_GAP),
        MUST(PlanColumn.GAP_WISH, PlanColumn.LIVE_PENALTY),
        DOUBT(PlanColumn.LIVE_FIT, PlanColumn.TODAY_SETUP);

        private final PlanColumn first;
        private final PlanColumn last;

        Field(PlanColumn first, PlanColumn last) {
            this.first = first;
            this.last = last;
        }

        int column() {
            return first.index();
        }

        /** Its cell in a row, merged. */
        void blank(SheetPen pen, int row, Role role) {
            for (int column = first.index(); column <= last.index(); column++) {
                pen.blank(row, column, role);
            }
            pen.merge(row, row, first.index(), last.index());
        }
    }

    private void headings(int row) {
        text(row, Field.MEASURE, Role.HEADING, "Measure");
        for (int place = 0; place < HEADINGS.size(); place++) {
            text(row, Field.values()[place + 1], Role.HEADING, HEADINGS.get(place));
        }
    }

    private void text(int row, Field field, Role role, String text) {
        field.blank(pen, row, role);
        pen.text(row, field.column(), role, text);
    }

    private void number(int row, Field field, double value) {
        field.blank(pen, row, Role.INPUT);
        pen.number(row, field.column(), Role.INPUT, "0.0##", value);
    }

    private void aim(Aim aim, int row) {
        Measure measure = aim.measure();
        text(row, Field.MEASURE, Role.TEXT, measure.label());
        number(row, Field.TOLERANCE, measure.unit().shown(aim.toleranceMeasureUnits(), settings));
        text(row, Field.UNIT, Role.TEXT, measure.unit().label(settings));
        number(row, Field.IMPORTANCE, aim.importancePoints());
        must(aim, row);
        doubt(aim, row);
        name(tolerance(measure), row, Field.TOLERANCE.column());
        name(importance(measure), row, Field.IMPORTANCE.column());
        name(filled(measure), row, PlanColumn.FILLED.index());
        remember(aim, row);
    }

    /** A cell to choose in, but for a measure that no must can limit. */
    private void must(Aim aim, int row) {
        String text = aim.must() ? "yes" : "no";
        if (aim.measure().canBeMust()) {
            text(row, Field.MUST, Role.ANSWER, text);
            offerYesAndNo(row, Field.MUST.column());
            name(must(aim.measure()), row, Field.MUST.column());
        } else {
            text(row, Field.MUST, Role.TEXT, text);
        }
    }

    /** What the sheet Start asks for, to read only. */
    private void doubt(Aim aim, int row) {
        if (countsDoubt(aim.measure())) {
            text(row, Field.DOUBT, Role.TEXT, aim.onWhatIsLikely() ? "yes" : "no");
            name(doubt(aim.measure()), row, Field.DOUBT.column());
        } else {
            text(row, Field.DOUBT, Role.TEXT, "");
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
