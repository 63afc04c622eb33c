package org.bagwright.workbook.settings;

import org.bagwright.workbook.pen.SheetPen;

/** A column of the sheet Plan or Settings. Rows and columns count from 0. */
public interface SheetColumn {
    /** Its place on the sheet. */
    int index();

    /** Its heading, with {@code DIST}, {@code LEN} and the like in the place of units. */
    String heading();

    double widthChars();

    /** The title over it and its neighbours; empty for none. */
    default String group() {
        return "";
    }

    /** The letters of the column, such as {@code AB}. */
    default String letters() {
        return SheetPen.letters(index());
    }

    /** The cell of this column in a row, such as {@code $AB7}. */
    default String at(int row) {
        return SheetPen.ref(row, index());
    }

    /** This column from a row to another, such as {@code $AB7:$AB12}. */
    default String from(int firstRow, int lastRow) {
        return at(firstRow) + ":" + at(lastRow);
    }
}
