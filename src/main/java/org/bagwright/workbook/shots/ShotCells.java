package org.bagwright.workbook.shots;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.bagwright.domain.book.Shot;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.ShotColumn;
import org.bagwright.workbook.text.Unit;

/**
 * What the cells of a row of the sheet Shots take: numbers in the unit of their column.
 *
 * @param unitOf the unit of each column
 */
public record ShotCells(Function<Column, Unit> unitOf) {
    private static final double STEPS_A_UNIT = 1e4;
    private static final Pattern WHOLE = Pattern.compile("0|[1-9][0-9]{0,8}");

    /** How the club was set up. */
    public Map<ShotColumn, Object> setup(Shot.Setup setup) {
        Map<ShotColumn, Object> values = new TreeMap<>();
        setup.setting().ifPresent(mark -> values.put(ShotColumn.SETTING, mark));
        setup.weighting().ifPresent(name -> values.put(ShotColumn.WEIGHTING, name));
        setup.loftBendDeg().ifPresent(bendDeg -> values.put(ShotColumn.LOFT_BEND, bendDeg));
        setup.lieBendDeg().ifPresent(bendDeg -> values.put(ShotColumn.LIE_BEND, bendDeg));
        put(values, ShotColumn.LENGTH, setup.lengthM());
        return values;
    }

    /** What was measured. */
    Map<ShotColumn, Object> measured(Shot.Measured measured) {
        Map<ShotColumn, Object> values = new EnumMap<>(ShotColumn.class);
        put(values, ShotColumn.HEAD_SPEED, measured.headSpeedMps());
        put(values, ShotColumn.BALL_SPEED, measured.ballSpeedMps());
        put(values, ShotColumn.LAUNCH, measured.launchDeg());
        put(values, ShotColumn.SPIN, measured.spinRpm());
        put(values, ShotColumn.ATTACK, measured.attackDeg());
        put(values, ShotColumn.CARRY, measured.carryM());
        put(values, ShotColumn.SIDE, measured.sideRightM());
        put(values, ShotColumn.LANDING, measured.landingDeg());
        return values;
    }

    /** A number as the sheet writes it, without the last digits that only the change of its unit has made. */
    private void put(Map<ShotColumn, Object> values, ShotColumn column, OptionalDouble value) {
        if (value.isPresent()) {
            values.put(column, written(column, value.getAsDouble()));
        }
    }

    /** A number of the domain in the unit of its column. */
    double written(Column column, double value) {
        return Math.rint(value / unitOf.apply(column).sizeMeasureUnits() * STEPS_A_UNIT) / STEPS_A_UNIT;
    }

    /** Writes a number, a date, or a text; one that is a whole number as such a number. */
    public static void put(XSSFCell cell, Object value) {
        if (value instanceof Double number) {
            cell.setCellValue(number);
        } else if (value instanceof LocalDate day) {
            cell.setCellValue(day);
        } else if (WHOLE.matcher(String.valueOf(value)).matches()) {
            cell.setCellValue(Double.parseDouble(String.valueOf(value)));
        } else {
            cell.setCellValue(String.valueOf(value));
        }
    }
}
