package org.bagwright.workbook.template;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.MeasureUnit;
import org.bagwright.workbook.schema.AimColumns;
import org.bagwright.workbook.schema.ClubColumns;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.GolferColumns;
import org.bagwright.workbook.schema.ReadingColumns;
import org.bagwright.workbook.schema.SheetSchema;
import org.bagwright.workbook.schema.ShotColumns;
import org.bagwright.workbook.schema.SleeveColumns;
import org.bagwright.workbook.schema.StockColumns;
import org.bagwright.workbook.schema.WeightColumns;

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
    private static final String NOT_READ = "An example. Bagwright does not read it.";

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
        int rows = schema.equals(GolferColumns.SHEET) ? GOLFER_ROWS : INPUT_ROWS;
        return FIRST_ROW + (filled.isEmpty() ? rows + (example.isEmpty() ? 0 : 1) : filled.size()) - 1;
    }

    /** The last row whose cells offer lists and are checked: a book may outgrow the rows that look like input. */
    int lastCheckedRow() {
        return filled.isEmpty() ? FIRST_ROW + CHECKED_ROWS - 1 : lastRow();
    }

    private static TemplateLayout golfers() {
        return new TemplateLayout(
                GolferColumns.SHEET,
                GolferColumns.SHEET.columns(),
                Map.of(
                        GolferColumns.GOLFER, "The golfer",
                        GolferColumns.MOST_OPEN, "Accepted looks",
                        GolferColumns.GAP_WISH, "Gaps and changes"),
                1,
                Arrays.asList("Example golfer", "R", 95, 78, 0, "yes", "yes", -1, 1, "even", 8, 16, 6, NOT_READ),
                List.of());
    }

    private static TemplateLayout clubs() {
        Map<Column, Object> example = Map.ofEntries(
                Map.entry(ClubColumns.GOLFER, "Example golfer"),
                Map.entry(ClubColumns.SLOT, 1),
                Map.entry(ClubColumns.CLUB, "Driver"),
                Map.entry(ClubColumns.KIND, "driver"),
                Map.entry(ClubColumns.LOFT, 10.5),
                Map.entry(ClubColumns.LIE, 58),
                Map.entry(ClubColumns.FACE, 0),
                Map.entry(ClubColumns.STATED_AT, 1),
                Map.entry(ClubColumns.LENGTH, 45.5),
                Map.entry(ClubColumns.SLEEVE, "Example sleeve"),
                Map.entry(ClubColumns.SETTING, 1),
                Map.entry(ClubColumns.KIT, "Example kit"),
                Map.entry(ClubColumns.WEIGHTING, "Heavy back"),
                Map.entry(ClubColumns.IN_BAG, "yes"),
                Map.entry(ClubColumns.PINNED, "no"),
                Map.entry(ClubColumns.OPTIONAL, "no"),
                Map.entry(ClubColumns.ALLOWED, "1, 2, 3"),
                Map.entry(ClubColumns.LOFT_TARGET, 11),
                Map.entry(ClubColumns.GAP_WISH, 15),
                Map.entry(ClubColumns.SWINGWEIGHT_TARGET, "D3"),
                Map.entry(ClubColumns.GOLFER_LIE, 57.5),
                Map.entry(ClubColumns.HEAD_MASS, 188),
                Map.entry(ClubColumns.SOLE_RADIUS, "200/250"),
                Map.entry(ClubColumns.CG_HEIGHT, 30),
                Map.entry(ClubColumns.CG_DEPTH, 34),
                Map.entry(ClubColumns.HEAD_INERTIA, 4700),
                Map.entry(ClubColumns.SWINGWEIGHT, "D2"),
                Map.entry(ClubColumns.SHAFT_MASS, 58),
                Map.entry(ClubColumns.SHAFT_BALANCE, 22.5),
                Map.entry(ClubColumns.GRIP_MASS, 50),
                Map.entry(ClubColumns.NOTE, NOT_READ));
        return new TemplateLayout(
                ClubColumns.SHEET,
                ClubColumns.SHEET.columns(),
                Map.of(
                        ClubColumns.GOLFER, "The club as it is today",
                        ClubColumns.PINNED, "What a plan may change",
                        ClubColumns.LOFT_TARGET, "What it should have",
                        ClubColumns.HEAD_MASS, "The head, where known",
                        ClubColumns.SWINGWEIGHT, "Its balance, where known"),
                3,
                ClubColumns.SHEET.columns().stream()
                        .map(column -> example.getOrDefault(column, NOTHING))
                        .toList(),
                List.of());
    }

    private static TemplateLayout sleeves() {
        return new TemplateLayout(
                SleeveColumns.SHEET,
                SleeveColumns.SHEET.columns(),
                Map.of(
                        SleeveColumns.SLEEVE, "The setting",
                        SleeveColumns.CLOCK, "Its geometry",
                        SleeveColumns.LOFT_CHANGE, "Or its own table"),
                2,
                Arrays.asList("Example sleeve", 2, "1:30", 1.7, NOTHING, NOTHING, "yes", NOTHING, NOTHING, NOTHING),
                List.of());
    }

    private static TemplateLayout readings() {
        return new TemplateLayout(
                ReadingColumns.SHEET,
                ReadingColumns.SHEET.columns(),
                Map.of(),
                2,
                Arrays.asList("Example golfer", "Driver", 2, 11.5, 58, NOTHING),
                List.of());
    }

    private static TemplateLayout shots() {
        return new TemplateLayout(
                ShotColumns.SHEET,
                ShotColumns.SHEET.columns(),
                Map.of(),
                2,
                Arrays.asList("Example golfer", "Driver", 95, 139, 12.5, 2800, 0, 221),
                List.of());
    }

    private static TemplateLayout weights() {
        return new TemplateLayout(
                WeightColumns.SHEET,
                WeightColumns.SHEET.columns(),
                Map.of(
                        WeightColumns.KIT, "The weighting",
                        WeightColumns.PORT, "A piece in a port",
                        WeightColumns.X, "Where it sits"),
                2,
                Arrays.asList("Example kit", "Heavy back", "Back", 12, -60, 0, -10),
                List.of());
    }

    private static TemplateLayout stock() {
        return new TemplateLayout(
                StockColumns.SHEET,
                StockColumns.SHEET.columns(),
                Map.of(),
                1,
                Arrays.asList("Example kit: 12 g", 1),
                List.of());
    }

    private static TemplateLayout aims() {
        return new TemplateLayout(
                AimColumns.SHEET,
                AimColumns.SHEET.columns(),
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
