package org.bagwright.workbook.template;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.MeasureUnit;
import org.bagwright.workbook.schema.AimColumn;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.GolferColumn;
import org.bagwright.workbook.schema.ReadingColumn;
import org.bagwright.workbook.schema.SheetSchema;
import org.bagwright.workbook.schema.ShotColumn;
import org.bagwright.workbook.schema.SleeveColumn;
import org.bagwright.workbook.schema.StockColumn;
import org.bagwright.workbook.schema.WeightColumn;

/**
 * How the template shows one input sheet.
 *
 * @param schema the sheet
 * @param columns its columns in order
 * @param groups for the first column of a group the group's name
 * @param fixedColumns how many columns stay in sight when scrolling
 * @param example the example row; empty for none
 * @param filled rows that are filled in already
 */
record TemplateLayout(
        SheetSchema schema,
        List<Column> columns,
        Map<Column, String> groups,
        int fixedColumns,
        List<Object> example,
        List<List<Object>> filled) {
    static final int TITLE_ROW = 0;
    static final int ABOUT_ROW = 1;
    static final int GROUP_ROW = 2;
    static final int HEADING_ROW = 3;
    static final int FIRST_ROW = 4;
    private static final int INPUT_ROWS = 40;
    /** As many as a page holds. */
    private static final int GOLFER_ROWS = 24;

    private static final int CHECKED_ROWS = 1000;
    private static final String NOTHING = "";
    private static final String NOT_READ = "An example, not read.";

    static TemplateLayout of(SheetSchema schema) {
        return switch (schema.name()) {
            case "Golfers" -> golfers();
            case "Clubs" -> clubs();
            case "Sleeves" -> sleeves();
            case "Readings" -> readings();
            case "Shots" -> shots();
            case "Weights" -> weights();
            case "Stock" -> stock();
            case "Aims" -> aims();
            default -> throw new IllegalArgumentException("no layout for " + schema.name());
        };
    }

    /** The last row that looks like input. */
    int lastRow() {
        int rows = schema.equals(GolferColumn.SHEET) ? GOLFER_ROWS : INPUT_ROWS;
        return FIRST_ROW + (filled.isEmpty() ? rows + (example.isEmpty() ? 0 : 1) : filled.size()) - 1;
    }

    /** The last row whose cells offer lists and are checked: a book may outgrow the rows that look like input. */
    int lastCheckedRow() {
        return filled.isEmpty() ? FIRST_ROW + CHECKED_ROWS - 1 : lastRow();
    }

    private static TemplateLayout golfers() {
        return new TemplateLayout(
                GolferColumn.SHEET,
                GolferColumn.SHEET.columns(),
                Map.of(
                        GolferColumn.GOLFER, "The golfer",
                        GolferColumn.MOST_OPEN, "Accepted looks",
                        GolferColumn.GAP_WISH, "Gaps and changes"),
                1,
                Arrays.asList("Example golfer", "R", 95, 78, 0, "yes", "yes", -1, 1, "even", 8, 16, 6, NOT_READ),
                List.of());
    }

    private static TemplateLayout clubs() {
        Map<Column, Object> example = Map.ofEntries(
                Map.entry(ClubColumn.GOLFER, "Example golfer"),
                Map.entry(ClubColumn.SLOT, 1),
                Map.entry(ClubColumn.CLUB, "Driver"),
                Map.entry(ClubColumn.KIND, "driver"),
                Map.entry(ClubColumn.LOFT, 10.5),
                Map.entry(ClubColumn.LIE, 58),
                Map.entry(ClubColumn.FACE, 0),
                Map.entry(ClubColumn.STATED_AT, 1),
                Map.entry(ClubColumn.LENGTH, 45.5),
                Map.entry(ClubColumn.SLEEVE, "Example sleeve"),
                Map.entry(ClubColumn.SETTING, 1),
                Map.entry(ClubColumn.KIT, "Example kit"),
                Map.entry(ClubColumn.WEIGHTING, "Heavy back"),
                Map.entry(ClubColumn.IN_BAG, "yes"),
                Map.entry(ClubColumn.PINNED, "no"),
                Map.entry(ClubColumn.OPTIONAL, "no"),
                Map.entry(ClubColumn.ALLOWED, "1, 2, 3"),
                Map.entry(ClubColumn.LOFT_TARGET, 11),
                Map.entry(ClubColumn.GAP_WISH, 15),
                Map.entry(ClubColumn.SWINGWEIGHT_TARGET, "D3"),
                Map.entry(ClubColumn.GOLFER_LIE, 57.5),
                Map.entry(ClubColumn.HEAD_MASS, 188),
                Map.entry(ClubColumn.SOLE_RADIUS, "200/250"),
                Map.entry(ClubColumn.CG_HEIGHT, 30),
                Map.entry(ClubColumn.CG_DEPTH, 34),
                Map.entry(ClubColumn.HEAD_INERTIA, 4700),
                Map.entry(ClubColumn.SWINGWEIGHT, "D2"),
                Map.entry(ClubColumn.SHAFT_MASS, 58),
                Map.entry(ClubColumn.SHAFT_BALANCE, 22.5),
                Map.entry(ClubColumn.GRIP_MASS, 50),
                Map.entry(ClubColumn.NOTE, NOT_READ));
        return new TemplateLayout(
                ClubColumn.SHEET,
                ClubColumn.SHEET.columns(),
                Map.of(
                        ClubColumn.GOLFER, "The club as it is today",
                        ClubColumn.PINNED, "What a plan may change",
                        ClubColumn.LOFT_TARGET, "What it should have",
                        ClubColumn.HEAD_MASS, "The head, where known",
                        ClubColumn.SWINGWEIGHT, "Its balance, where known"),
                3,
                row(ClubColumn.SHEET, example),
                List.of());
    }

    private static TemplateLayout sleeves() {
        return new TemplateLayout(
                SleeveColumn.SHEET,
                SleeveColumn.SHEET.columns(),
                Map.of(
                        SleeveColumn.SLEEVE, "The setting",
                        SleeveColumn.CLOCK, "Its geometry",
                        SleeveColumn.LOFT_CHANGE, "Or its own table"),
                2,
                Arrays.asList("Example sleeve", 2, "1:30", 1.7, NOTHING, NOTHING, "yes", NOTHING, NOTHING, NOTHING),
                List.of());
    }

    private static TemplateLayout readings() {
        return new TemplateLayout(
                ReadingColumn.SHEET,
                ReadingColumn.SHEET.columns(),
                Map.of(),
                2,
                Arrays.asList("Example golfer", "Driver", 2, 11.5, 58, NOTHING),
                List.of());
    }

    private static TemplateLayout shots() {
        Map<Column, Object> example = Map.ofEntries(
                Map.entry(ShotColumn.GOLFER, "Example golfer"),
                Map.entry(ShotColumn.CLUB, "Driver"),
                Map.entry(ShotColumn.DATE, "2026-05-31"),
                Map.entry(ShotColumn.SETTING, 1),
                Map.entry(ShotColumn.WEIGHTING, "Heavy back"),
                Map.entry(ShotColumn.LENGTH, 45.5),
                Map.entry(ShotColumn.HEAD_SPEED, 95),
                Map.entry(ShotColumn.BALL_SPEED, 139),
                Map.entry(ShotColumn.LAUNCH, 12.5),
                Map.entry(ShotColumn.SPIN, 2800),
                Map.entry(ShotColumn.ATTACK, 0),
                Map.entry(ShotColumn.CARRY, 221),
                Map.entry(ShotColumn.SIDE, -6),
                Map.entry(ShotColumn.LANDING, 38),
                Map.entry(ShotColumn.SHOTS, 5),
                Map.entry(ShotColumn.SPREAD, 7));
        return new TemplateLayout(
                ShotColumn.SHEET,
                ShotColumn.SHEET.columns(),
                Map.of(
                        ShotColumn.GOLFER, "The club and the day",
                        ShotColumn.SETTING, "How it was set up, if not as today",
                        ShotColumn.HEAD_SPEED, "What was measured",
                        ShotColumn.SHOTS, "What the row is"),
                2,
                row(ShotColumn.SHEET, example),
                List.of());
    }

    private static List<Object> row(SheetSchema sheet, Map<Column, Object> values) {
        return sheet.columns().stream()
                .map(column -> values.getOrDefault(column, NOTHING))
                .toList();
    }

    private static TemplateLayout weights() {
        return new TemplateLayout(
                WeightColumn.SHEET,
                WeightColumn.SHEET.columns(),
                Map.of(
                        WeightColumn.KIT, "The weighting",
                        WeightColumn.PORT, "A piece in a port",
                        WeightColumn.X, "Where it sits"),
                2,
                Arrays.asList("Example kit", "Heavy back", "Back", 12, -60, 0, -10),
                List.of());
    }

    private static TemplateLayout stock() {
        return new TemplateLayout(
                StockColumn.SHEET,
                StockColumn.SHEET.columns(),
                Map.of(),
                1,
                Arrays.asList("Example kit: 12 g", 1),
                List.of());
    }

    private static TemplateLayout aims() {
        return new TemplateLayout(
                AimColumn.SHEET,
                AimColumn.SHEET.columns(),
                Map.of(),
                1,
                List.of(),
                Arrays.stream(Measure.values()).map(TemplateLayout::usual).toList());
    }

    /** A measure whose unit depends on the sheet Start has no tolerance here. */
    private static List<Object> usual(Measure measure) {
        Aim aim = Aims.defaults().of(measure);
        Object tolerance = measure.unit() == MeasureUnit.MATCH
                ? NOTHING
                : measure.unit().shown(aim.toleranceMeasureUnits(), BookSettings.DEFAULT);
        return List.of(measure.label(), tolerance, aim.importancePoints(), aim.must() ? "yes" : "no");
    }
}
