package org.bagwright.workbook.edits;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Swingweight;
import org.bagwright.workbook.cells.InputCell;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.GolferColumn;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.Unit;

/** How the value of an input column is read and written where its cells do not all hold plain numbers. */
enum WishedValue {
    NUMBER,
    /** A look at address: a bare number means the side of its column, whatever its sign; words may name the other side. */
    LOOK,
    /** A letter and points, or points from A0. */
    SWINGWEIGHT;

    private static final int DIGITS = 12;

    static WishedValue of(Column column) {
        if (column == GolferColumn.MOST_OPEN || column == GolferColumn.MOST_CLOSED) {
            return LOOK;
        }
        return column == ClubColumn.SWINGWEIGHT_TARGET ? SWINGWEIGHT : NUMBER;
    }

    /** The value of a cell in the domain's unit; empty where it is blank, or wrong and reported. */
    OptionalDouble read(InputCell cell, Unit unit) {
        if (this == LOOK) {
            return cell.look(cell.column() == GolferColumn.MOST_OPEN, unit);
        }
        return this == SWINGWEIGHT && cell.content() instanceof CellContent.Words words
                ? swingweight(cell, words.text())
                : cell.number(cell.column().quantity(), unit);
    }

    private static OptionalDouble swingweight(InputCell cell, String text) {
        return Swingweight.parsed(text)
                .map(parsed -> OptionalDouble.of(parsed.scalePoints()))
                .orElseGet(() -> {
                    cell.problem()
                            .accept(cell.column().subject()
                                    + " must be a letter A to G and points 0 to 9.9, such as D2 or" + " C9.5, found "
                                    + cell.content().shown() + ".");
                    return OptionalDouble.empty();
                });
    }

    /** The value as the input cell takes it: a number, or words where a number would not say it. */
    CellContent written(Column column, double value, Unit unit) {
        if (this == SWINGWEIGHT) {
            return CellContent.words(new Swingweight(value).text());
        }
        boolean open = column == GolferColumn.MOST_OPEN;
        if (this == LOOK && (open ? value > 0 : value < 0)) {
            return CellContent.words(Numbers.trimmed(Math.abs(value)) + (open ? " closed" : " open"));
        }
        double inUnit = new BigDecimal(value / unit.sizeMeasureUnits())
                .round(new MathContext(DIGITS))
                .doubleValue();
        return new CellContent.Amount(inUnit, false);
    }
}
