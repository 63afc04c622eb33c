package org.bagwright.workbook;

import static org.bagwright.workbook.BookStyles.Role;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFPatternFormatting;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.BagResult;
import org.bagwright.domain.BookResult;
import org.bagwright.domain.Club;
import org.bagwright.domain.DistanceUnit;
import org.bagwright.domain.GapTerm;
import org.bagwright.domain.Option;

/** The sheet Plan: each club today, as planned, and live from choice cells that a person may change. */
final class PlanSheet {
    static final String NAME = "Plan";
    static final int HEADING_ROW = 4;
    static final int FIRST_ROW = HEADING_ROW + 1;
    static final List<String> STATES = List.of("TODAY", "PLANNED", "LIVE");
    static final List<String> TERMS = List.of("LOFT", "LIE", "SITS", "CARRY", "GAP", "CHANGE");

    private final SheetPen pen;
    private final BookResult result;
    private final SettingsSheet settings;
    private final PlanFormulas formulas;
    private final DistanceUnit distance;
    private final List<PlanRow> rows = new ArrayList<>();

    private PlanSheet(SheetPen pen, BookResult result, SettingsSheet settings) {
        this.pen = pen;
        this.result = result;
        this.settings = settings;
        this.formulas = new PlanFormulas(settings, hasWildcards(result));
        this.distance = result.book().settings().units().distance();
        for (BagResult bag : result.bags()) {
            for (int index = 0; index < bag.options().slots().size(); index++) {
                rows.add(new PlanRow(bag, index));
            }
        }
    }

    private static boolean hasWildcards(BookResult result) {
        return result.bags().stream()
                .flatMap(bag -> bag.options().slots().stream())
                .flatMap(club -> club.options().stream())
                .anyMatch(option -> option.key().matches(".*[*?~].*"));
    }

    /** Writes the sheet, which stands before Settings but looks its numbers up there. */
    static void write(XSSFWorkbook workbook, BookStyles styles, BookResult result, SettingsSheet settings) {
        SheetPen pen = new SheetPen(workbook.getSheet(NAME), styles);
        PlanSheet plan = new PlanSheet(pen, result, settings);
        plan.headings();
        int below = FIRST_ROW + plan.rows.size() + 1;
        int lastAim = PlanAims.write(pen, result.book(), below);
        for (int index = 0; index < plan.rows.size(); index++) {
            plan.row(FIRST_ROW + index, plan.rows.get(index));
        }
        int end = Math.max(PlanTotals.write(pen, result, below), lastAim);
        plan.finish(end);
    }

    private void headings() {
        pen.text(0, 0, Role.TITLE, result.book().settings().title().orElse("The plan"));
        pen.text(1, 0, Role.PLAIN, PlanWords.verdict(result));
        pen.text(
                2,
                0,
                Role.FAINT,
                "Choose other settings or bends in the framed cells of \"Your choice\": everything under \"Live\" follows. "
                        + ResultSheets.MADE_ANEW);
        String group = "";
        int groupStart = 0;
        for (PlanColumn column : PlanColumn.values()) {
            pen.heading(
                    HEADING_ROW, column.ordinal(), column.heading.replace("DIST", distance.label()), column.widthChars);
            if (!column.group.equals(group)) {
                group(group, groupStart, column.ordinal() - 1);
                group = column.group;
                groupStart = column.ordinal();
            }
        }
        group(group, groupStart, PlanColumn.values().length - 1);
        pen.height(HEADING_ROW, 54);
    }

    private void group(String title, int first, int last) {
        if (!title.isEmpty()) {
            for (int column = first; column <= last; column++) {
                pen.blank(HEADING_ROW - 1, column, Role.GROUP);
            }
            pen.text(HEADING_ROW - 1, first, Role.GROUP, title);
        }
    }

    private void row(int row, PlanRow values) {
        pen.text(row, PlanColumn.GOLFER.ordinal(), Role.TEXT, values.golfer().name());
        pen.number(
                row, PlanColumn.SLOT.ordinal(), Role.NUMBER, "0", values.club().slot());
        pen.text(row, PlanColumn.CLUB.ordinal(), Role.TEXT, values.club().name());
        wanted(row, values);
        for (String state : STATES) {
            choice(row, values, state);
            pen.formula(
                    row,
                    PlanColumn.of(state, "ROW").ordinal(),
                    Role.FAINT,
                    "0",
                    formulas.lookupRow(state, row),
                    settings.lookupRow(values.option(state)));
            looked(
                    row,
                    state,
                    "LOFT",
                    SettingsSheet.Column.LOFT,
                    "0.0",
                    values.option(state).pose().gaugeLoftDeg());
            carryAndGap(row, values, state);
            terms(row, values, state);
        }
        live(row, values);
    }

    private void choice(int row, PlanRow values, String state) {
        Option option = values.option(state);
        boolean live = state.equals("LIVE");
        pen.mark(
                row,
                PlanColumn.of(state, "SETTING").ordinal(),
                role(values, live, SettingsSheet.Column.SETTING),
                option.choice().settingText());
        bend(
                row,
                values,
                state,
                "LOFT_BEND",
                SettingsSheet.Column.LOFT_BEND,
                option.choice().bend().loftDeg());
        bend(
                row,
                values,
                state,
                "LIE_BEND",
                SettingsSheet.Column.LIE_BEND,
                option.choice().bend().lieDeg());
        if (live) {
            dropDown(row, PlanColumn.of(state, "SETTING"), values, SettingsSheet.Column.SETTING);
            dropDown(row, PlanColumn.of(state, "LOFT_BEND"), values, SettingsSheet.Column.LOFT_BEND);
            dropDown(row, PlanColumn.of(state, "LIE_BEND"), values, SettingsSheet.Column.LIE_BEND);
        }
    }

    private void bend(int row, PlanRow values, String state, String what, SettingsSheet.Column column, double bendDeg) {
        boolean live = state.equals("LIVE");
        pen.number(row, PlanColumn.of(state, what).ordinal(), role(values, live, column), "+0.0##;-0.0##;0", bendDeg);
    }

    private static Role role(PlanRow values, boolean live, SettingsSheet.Column column) {
        boolean many = SettingsSheet.choices(values.options(), column).size() > 1;
        return live && many ? Role.CHOICE : Role.COUNT;
    }

    private void dropDown(int row, PlanColumn column, PlanRow values, SettingsSheet.Column list) {
        DataValidationHelper helper = pen.sheet().getDataValidationHelper();
        DataValidation validation = helper.createValidation(
                helper.createFormulaListConstraint(settings.list(values.options(), list)),
                new CellRangeAddressList(row, row, column.ordinal(), column.ordinal()));
        validation.setShowErrorBox(true);
        validation.createErrorBox("Not an option", "Choose one of the values in this cell's list.");
        pen.sheet().addValidationData(validation);
    }

    private void looked(int row, String state, String what, SettingsSheet.Column column, String format, double cached) {
        pen.formula(
                row,
                PlanColumn.of(state, what).ordinal(),
                Role.NUMBER,
                format,
                formulas.looked(state, column, row),
                cached);
    }

    private void carryAndGap(int row, PlanRow values, String state) {
        OptionalDouble carryM = values.option(state).carryM();
        if (carryM.isPresent()) {
            looked(row, state, "CARRY", SettingsSheet.Column.CARRY, "0.0", distance.fromM(carryM.getAsDouble()));
        } else {
            pen.blank(row, PlanColumn.of(state, "CARRY").ordinal(), Role.NUMBER);
        }
        int gapColumn = PlanColumn.of(state, "GAP").ordinal();
        values.gap(state)
                .ifPresentOrElse(
                        gap -> pen.formula(
                                row,
                                gapColumn,
                                Role.NUMBER,
                                "0.0",
                                formulas.gap(state, row, row + values.rowsToNext()),
                                distance.fromM(gap.gapM())),
                        () -> pen.blank(row, gapColumn, Role.NUMBER));
    }

    private void terms(int row, PlanRow values, String state) {
        for (String term : TERMS) {
            pen.formula(
                    row,
                    PlanColumn.of(state, term + "_TERM").ordinal(),
                    Role.NUMBER,
                    "0.000",
                    formulas.term(state, term, row),
                    PlanTotals.points(values.option(state), values.gap(state), term));
        }
        pen.formula(
                row,
                PlanColumn.of(state, "PENALTY").ordinal(),
                Role.NUMBER,
                "0.00",
                formulas.penalty(state, row),
                values.penaltyPoints(state));
    }

    private void live(int row, PlanRow values) {
        Option option = values.option("LIVE");
        var pose = option.pose();
        looked(row, "LIVE", "LIE", SettingsSheet.Column.LIE, "0.0", pose.gaugeLieDeg());
        looked(row, "LIVE", "SITS", SettingsSheet.Column.SITS, "0.0", pose.sitsClosedDeg());
        looked(row, "LIVE", "CONTACT", SettingsSheet.Column.CONTACT, "0.0", pose.contactShiftMm());
        looked(row, "LIVE", "SHAFT_TURN", SettingsSheet.Column.SHAFT_TURN, "0", pose.shaftTurnDeg());
        values.option("LIVE")
                .shot()
                .ifPresentOrElse(
                        shot -> {
                            looked(row, "LIVE", "START_LINE", SettingsSheet.Column.START, "0.0", shot.startClosedDeg());
                            looked(row, "LIVE", "LAUNCH", SettingsSheet.Column.LAUNCH, "0.0", shot.launchDeg());
                            looked(row, "LIVE", "SPIN", SettingsSheet.Column.SPIN, "0", shot.spinRpm());
                            looked(row, "LIVE", "LANDING", SettingsSheet.Column.LANDING, "0.0", shot.landingDeg());
                        },
                        () -> List.of("START_LINE", "LAUNCH", "SPIN", "LANDING")
                                .forEach(what -> pen.blank(
                                        row, PlanColumn.of("LIVE", what).ordinal(), Role.NUMBER)));
        pen.formula(
                row,
                PlanColumn.LIVE_CHANGES.ordinal(),
                Role.NUMBER,
                "0",
                formulas.changes("LIVE", row),
                values.option("LIVE").changes());
        double worst = values.worstTolerances(result.book().aims());
        boolean outOfOrder = values.gap("LIVE").map(GapTerm::gapM).orElse(1.0) <= 0;
        pen.formula(row, PlanColumn.LIVE_WORST.ordinal(), Role.NUMBER, "0.00", formulas.worst(row), worst);
        pen.formula(
                row,
                PlanColumn.LIVE_FIT.ordinal(),
                Role.TEXT,
                formulas.fit(row),
                PlanFormulas.fitWord(outOfOrder, worst));
    }

    private void wanted(int row, PlanRow values) {
        Club club = values.club();
        optional(row, PlanColumn.LOFT_TARGET, club.targets().loftDeg());
        optional(row, PlanColumn.LIE_TARGET, OptionalDouble.of(club.lieTargetDeg()));
        optional(row, PlanColumn.CARRY_TARGET, distance(club.targets().carryM()));
        optional(row, PlanColumn.MOST_OPEN, values.golfer().sitsRange().mostOpenDeg());
        optional(row, PlanColumn.MOST_CLOSED, values.golfer().sitsRange().mostClosedDeg());
        values.gap("TODAY")
                .ifPresentOrElse(
                        gap -> optional(row, PlanColumn.GAP_WISH, OptionalDouble.of(distance.fromM(gap.wishM()))),
                        () -> pen.blank(row, PlanColumn.GAP_WISH.ordinal(), Role.NUMBER));
    }

    private OptionalDouble distance(OptionalDouble valueM) {
        return valueM.isPresent() ? OptionalDouble.of(distance.fromM(valueM.getAsDouble())) : valueM;
    }

    private void optional(int row, PlanColumn column, OptionalDouble value) {
        if (value.isPresent()) {
            String format = column == PlanColumn.GAP_WISH ? "0.0" : "0.0##";
            pen.number(row, column.ordinal(), Role.INPUT, format, value.getAsDouble());
        } else {
            pen.blank(row, column.ordinal(), Role.INPUT);
        }
    }

    private void finish(int lastRow) {
        pen.sheet().createFreezePane(PlanColumn.TODAY_SETTING.ordinal(), FIRST_ROW);
        pen.sheet().groupColumn(PlanColumn.TODAY_LOFT_BEND.ordinal(), PlanColumn.LIVE_WORST.ordinal());
        colourFit();
        ResultSheets.printLandscape(pen.sheet(), HEADING_ROW, lastRow, PlanColumn.LIVE_FIT.ordinal());
    }

    private void colourFit() {
        XSSFSheetConditionalFormatting formatting = pen.sheet().getSheetConditionalFormatting();
        int last = FIRST_ROW + rows.size() - 1;
        CellRangeAddress[] area = {
            new CellRangeAddress(FIRST_ROW, last, PlanColumn.LIVE_FIT.ordinal(), PlanColumn.LIVE_FIT.ordinal())
        };
        String cell = "$" + PlanColumn.LIVE_FIT.letters() + (FIRST_ROW + 1);
        formatting.addConditionalFormatting(area, rule(formatting, cell + "=\"close\"", "F6E3B8"));
        formatting.addConditionalFormatting(
                area, rule(formatting, "AND(" + cell + "<>\"close\"," + cell + "<>\"inside\")", "E7B8A2"));
    }

    private static XSSFConditionalFormattingRule rule(
            XSSFSheetConditionalFormatting formatting, String condition, String rgb) {
        XSSFConditionalFormattingRule rule = formatting.createConditionalFormattingRule(condition);
        XSSFPatternFormatting pattern = rule.createPatternFormatting();
        pattern.setFillBackgroundColor(BookStyles.colour(rgb));
        pattern.setFillPattern(org.apache.poi.ss.usermodel.PatternFormatting.SOLID_FOREGROUND);
        return rule;
    }
}
