package org.bagwright.workbook.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.Option;
import org.bagwright.workbook.pen.BookColour;
import org.bagwright.workbook.pen.SheetPen;

/** Colours on the sheet Plan: the figure of a measure that is close to its tolerance or outside it, and the word of a row. */
final class MissColours {
    private static final Map<PlanColumn, List<Measure>> MEASURES = new EnumMap<>(Map.of(
            PlanColumn.LIVE_LOFT, List.of(Measure.LOFT),
            PlanColumn.LIVE_LIE, List.of(Measure.LIE),
            PlanColumn.LIVE_SITS, List.of(Measure.SITS),
            PlanColumn.LIVE_CARRY, List.of(Measure.CARRY, Measure.REACH),
            PlanColumn.LIVE_GAP, List.of(Measure.GAP),
            PlanColumn.LIVE_SWINGWEIGHT, List.of(Measure.SWINGWEIGHT)));
    /** Limits, beyond which a figure is off whatever its tolerance. */
    private static final Map<PlanColumn, PlanColumn> BEYOND = new EnumMap<>(Map.of(
            PlanColumn.LIVE_SITS, PlanColumn.BEYOND_SITS,
            PlanColumn.LIVE_CARRY, PlanColumn.BEYOND_CARRY,
            PlanColumn.LIVE_GAP, PlanColumn.BEYOND_GAP,
            PlanColumn.LIVE_LANDING, PlanColumn.BEYOND_LANDING));

    private final SheetPen pen;
    private final int firstRow;
    private final int lastRow;
    private final XSSFSheetConditionalFormatting rules;

    MissColours(SheetPen pen, int firstRow, int lastRow) {
        this.pen = pen;
        this.firstRow = firstRow;
        this.lastRow = lastRow;
        this.rules = pen.sheet().getSheetConditionalFormatting();
    }

    void write() {
        BEYOND.forEach((column, beyond) -> colour(column, over(beyond, PlanRules.NOISE), BookColour.OFF));
        String gap = PlanColumn.LIVE_GAP.at(firstRow);
        colour(
                PlanColumn.LIVE_GAP,
                "AND(ISNUMBER(" + slot() + "),ISNUMBER(" + gap + ")," + gap + "<=0)",
                BookColour.OFF);
        MEASURES.forEach((column, measures) -> {
            colour(column, over(measures, PlanFormulas.CLOSE), BookColour.OFF);
            colour(column, over(measures, PlanFormulas.INSIDE), BookColour.CLOSE);
        });
        word();
    }

    private String slot() {
        return PlanColumn.SLOT.at(firstRow);
    }

    private String over(List<Measure> measures, double tolerances) {
        return "OR("
                + measures.stream()
                        .map(measure -> over(new MissColumn(measure).at(firstRow), tolerances))
                        .collect(Collectors.joining(","))
                + ")";
    }

    private static String over(String cell, double bound) {
        return "AND(ISNUMBER(" + cell + ")," + cell + ">" + bound + ")";
    }

    private String over(PlanColumn column, double bound) {
        return over(column.at(firstRow), bound);
    }

    /** The rows with a number of a slot only: others have texts of their own in the column. */
    private void word() {
        String cell = PlanColumn.LIVE_FIT.at(firstRow);
        String close = "AND(ISNUMBER(" + slot() + "),LEFT(" + cell + ",6)=\"close:\")";
        String off = "AND(ISNUMBER(" + slot() + ")," + cell + "<>\"inside\"," + cell + "<>\"" + Option.LEFT_OUT + "\")";
        colour(PlanColumn.LIVE_FIT, close, BookColour.CLOSE);
        colour(PlanColumn.LIVE_FIT, off, BookColour.OFF);
    }

    /** Adds a rule; of two that hold, the one that was added first counts. */
    private void colour(PlanColumn column, String condition, BookColour colour) {
        CellRangeAddress[] area = {new CellRangeAddress(firstRow, lastRow, column.index(), column.index())};
        int added = rules.addConditionalFormatting(area, rules.createConditionalFormattingRule(condition));
        pen.sheet()
                .getCTWorksheet()
                .getConditionalFormattingArray(added)
                .getCfRuleArray(0)
                .setDxfId(pen.ruleFill(colour));
    }
}
