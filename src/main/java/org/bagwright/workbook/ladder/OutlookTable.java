package org.bagwright.workbook.ladder;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.CarryBand;
import org.bagwright.domain.plan.Sensitivity;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.SheetPen;

/** To the right of a golfer's ladder, club by club in the rows of that: how the planned carries answer to small changes, and where single shots land. */
final class OutlookTable {
    static final int FIRST_COLUMN = LadderCharts.LAST_COLUMN + 2;
    static final int LOW_COLUMN = FIRST_COLUMN + 6;
    static final int HIGH_COLUMN = FIRST_COLUMN + 7;
    static final int LAST_COLUMN = FIRST_COLUMN + 9;

    private static final int CARRY_SD_COLUMN = FIRST_COLUMN + 8;
    private static final int GAP_SD_COLUMN = FIRST_COLUMN + 9;
    private static final double[] WIDTHS_CHARS = {18, 9, 9, 9, 32, 9, 9, 9, 9, 9};
    /** How many rows are above the first club. */
    private static final int ROWS_ABOVE = 2;

    private final SheetPen pen;
    private final Units units;
    private final BagOutlook outlook;

    OutlookTable(SheetPen pen, Units units, BagOutlook outlook) {
        this.pen = pen;
        this.units = units;
        this.outlook = outlook;
    }

    /**
     * Writes from a row on, one row for each of these slots; gives the first free row.
     */
    int write(List<SlotOptions> slots, int row) {
        for (int column = FIRST_COLUMN; column <= LAST_COLUMN; column++) {
            pen.blank(row, column, Role.GROUP);
        }
        pen.text(row, FIRST_COLUMN, Role.GROUP, "At the planned setting. These numbers do not change with Live.");
        headings(row + 1);
        int next = row + ROWS_ABOVE;
        for (SlotOptions slot : slots) {
            int line = next++;
            pen.text(line, FIRST_COLUMN, Role.TEXT, slot.main().name() + " (not planned)");
            IntStream.range(0, outlook.clubs().size())
                    .filter(place -> outlook.clubs().get(place).slot() == slot.slot())
                    .forEach(place -> row(place, line));
        }
        for (String line : words()) {
            pen.text(next++, FIRST_COLUMN, Role.FAINT, line);
        }
        return next;
    }

    private void row(int place, int row) {
        club(row, outlook.clubs().get(place), outlook.bands().get(place));
        range(row, CARRY_SD_COLUMN, outlook.bands().get(place).average().carrySdM());
        if (place < outlook.gaps().size()) {
            range(row, GAP_SD_COLUMN, outlook.gaps().get(place).gapSdM());
        }
    }

    private void headings(int row) {
        String distance = units.distance().label();
        List<String> headings = List.of(
                "Club",
                distance + " per deg of loft",
                distance + " per " + units.speed().label(),
                "Best loft [deg]",
                "For carry at this speed and path",
                "Face per deg of lie [deg]",
                "Band low [" + distance + "]",
                "Band high [" + distance + "]",
                "Carry +/- [" + distance + "]",
                "Gap +/- [" + distance + "]");
        for (int column = 0; column < headings.size(); column++) {
            pen.heading(row, FIRST_COLUMN + column, headings.get(column), WIDTHS_CHARS[column]);
        }
    }

    private void club(int row, Sensitivity club, CarryBand band) {
        pen.text(row, FIRST_COLUMN, Role.TEXT, club.club());
        signed(row, FIRST_COLUMN + 1, club.carryPerLoftDegM());
        double perSpeedM = units.speed().toMps(1) * club.carryPerHeadMpsM();
        pen.number(row, FIRST_COLUMN + 2, Role.NUMBER, "0.0", units.distance().fromM(perSpeedM));
        OptionalDouble best = club.best().loftDeg();
        if (best.isPresent()) {
            pen.number(row, FIRST_COLUMN + 3, Role.NUMBER, "0.0", best.getAsDouble());
        } else {
            pen.text(row, FIRST_COLUMN + 3, Role.NUMBER, "far off");
        }
        pen.text(row, FIRST_COLUMN + 4, Role.TEXT, club.best().advice().words());
        pen.number(row, FIRST_COLUMN + 5, Role.NUMBER, "0.00", club.facePerLieDegRatio());
        pen.number(row, LOW_COLUMN, Role.NUMBER, "0", units.distance().fromM(band.lowM()));
        pen.number(row, HIGH_COLUMN, Role.NUMBER, "0", units.distance().fromM(band.highM()));
    }

    /** How far each end of the range is from its middle that holds eight of ten likely values. */
    private void range(int row, int column, double sdM) {
        pen.number(row, column, Role.NUMBER, "0.0", units.distance().fromM(CarryBand.EIGHT_OF_TEN * sdM));
    }

    private void signed(int row, int column, double valueM) {
        pen.number(row, column, Role.NUMBER, "+0.0;-0.0;0.0", units.distance().fromM(valueM));
    }

    private List<String> words() {
        return List.of(
                "Best loft: as presented at address, for greatest carry; \"far off\" is more than 8 degrees away.",
                "Band: 8 in 10 single shots. +/-: 8 in 10 likely values of the true average carry, or gap to the next club.",
                "Chance: how likely the gap between true average carries is inside the golfer's limits (or the wish",
                "and its tolerance), given all that is known of his shots. How sure each choice is: sheet Measure next.");
    }
}
