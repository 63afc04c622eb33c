package org.bagwright.workbook.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.MeasureUnit;
import org.bagwright.domain.text.Numbers;

/** Tables of the sheets' columns and of the measures for the manual, in Markdown, from what the reader and template use. */
public final class ColumnTables {
    private ColumnTables() {}

    /** Every table by its name: the sheet's, and Measures. */
    public static Map<String, Supplier<String>> byName() {
        Map<String, Supplier<String>> tables = new LinkedHashMap<>();
        tables.put(StartSetting.SHEET, ColumnTables::start);
        for (InputSheet sheet : InputSheet.values()) {
            tables.put(sheet.schema().name(), () -> input(sheet.schema()));
        }
        tables.put("Measures", ColumnTables::measures);
        return tables;
    }

    private static String start() {
        List<String> lines = head("Setting", "What it is", "Blank means");
        for (StartSetting setting : StartSetting.values()) {
            lines.add(line(setting.label(), setting.help(), setting.blank()));
        }
        return text(lines);
    }

    private static String input(SheetSchema sheet) {
        List<String> lines = new ArrayList<>(List.of(sheet.about(), ""));
        lines.addAll(head("Column", "What to enter", "Blank means"));
        for (Column column : sheet.columns()) {
            String blank = column.needed() ? "**must be filled in**" : column.blank();
            lines.add(line(column.header(), column.help(), blank));
        }
        return text(lines);
    }

    private static String measures() {
        List<String> lines = head("Measure", "What counts as off", "Tolerance", "Importance");
        for (Measure measure : Measure.values()) {
            Aim aim = Aims.defaults().of(measure);
            double toleranceShown = measure.unit().shown(aim.toleranceMeasureUnits(), BookSettings.DEFAULT);
            String tolerance = Numbers.fixed(toleranceShown, 1) + " " + unit(measure);
            lines.add(line(measure.label(), meaning(measure), tolerance, Numbers.fixed(aim.importancePoints(), 2)));
        }
        return text(lines);
    }

    private static String unit(Measure measure) {
        return measure.unit() == MeasureUnit.DEGREE ? "degrees" : measure.unit().label(BookSettings.DEFAULT);
    }

    private static String meaning(Measure measure) {
        return switch (measure) {
            case LOFT -> "The gauge loft against Loft target of the row. No target, no points.";
            case LIE -> "The gauge lie against Lie target, or else against Golfer lie of the row.";
            case SITS -> "How far the look at address is outside Most open and Most closed of the golfer.";
            case CARRY -> "The carry against Carry target of the row. No target, no points.";
            case REACH ->
                "How much less far the longest club, the first in slot order that flies, carries than today's longest.";
            case GAP -> "The carry gap to the next club against the gap wish of the club, or else of the golfer.";
            case SWINGWEIGHT -> "The swingweight against Swingweight target of the row. No target, no points.";
            case SPREAD -> "Each club against the mean of its group (Match by and Match over on the sheet Start).";
            case CHANGE -> "Every item that is not as today: a setting, a weighting, a loft bend, a lie bend, a club.";
        };
    }

    private static List<String> head(String... cells) {
        return new ArrayList<>(List.of(line(cells), "|" + "---|".repeat(cells.length)));
    }

    private static String line(String... cells) {
        return "| " + String.join(" | ", cells).replace("\n", " ") + " |";
    }

    private static String text(List<String> lines) {
        return String.join("\n", lines) + "\n";
    }
}
