package org.bagwright.workbook;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.bagwright.domain.Aim;
import org.bagwright.domain.Aims;
import org.bagwright.domain.DistanceUnit;
import org.bagwright.domain.Measure;

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
    private static final String NOTHING = "";
    private static final String NOT_READ = "An example; the tool does not read it.";

    static TemplateLayout of(SheetSchema schema) {
        return switch (schema.name()) {
            case "Golfers" -> golfers();
            case "Clubs" -> clubs();
            case "Sleeves" -> sleeves();
            case "Readings" -> readings();
            case "Shots" -> shots();
            case "Aims" -> aims();
            default -> throw new IllegalArgumentException("no layout for " + schema.name());
        };
    }

    /** The last row that looks like input. */
    int lastRow() {
        return FIRST_ROW + (filled.isEmpty() ? INPUT_ROWS + (example.isEmpty() ? 0 : 1) : filled.size()) - 1;
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
        List<Object> example = Arrays.asList(
                "Example golfer",
                1,
                "Driver",
                "driver",
                10.5,
                58,
                0,
                1,
                45.5,
                "Example sleeve",
                1,
                NOTHING,
                NOTHING,
                "no",
                "1, 2, 3",
                NOTHING,
                NOTHING,
                11,
                NOTHING,
                NOTHING,
                15,
                57.5,
                200,
                "200/250",
                30,
                NOT_READ);
        return new TemplateLayout(
                ClubColumns.SHEET,
                ClubColumns.USED,
                Map.of(
                        ClubColumns.GOLFER, "The club as it is today",
                        ClubColumns.PINNED, "What a plan may change",
                        ClubColumns.LOFT_TARGET, "What it should have",
                        ClubColumns.HEAD_MASS, "The head, where known"),
                3,
                example,
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

    private static TemplateLayout aims() {
        return new TemplateLayout(
                AimColumns.SHEET,
                AimColumns.SHEET.columns(),
                Map.of(),
                1,
                List.of(),
                AimColumns.USED.stream().map(TemplateLayout::usual).toList());
    }

    private static List<Object> usual(Measure measure) {
        Aim aim = Aims.defaults().of(measure);
        double tolerance = measure.isDistance()
                ? DistanceUnit.YARD.fromM(aim.toleranceMeasureUnits())
                : aim.toleranceMeasureUnits();
        return List.of(measure.label(), tolerance, aim.importancePoints(), aim.must() ? "yes" : "no");
    }
}
