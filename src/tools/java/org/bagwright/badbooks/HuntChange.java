package org.bagwright.badbooks;

import java.util.function.DoubleUnaryOperator;
import org.apache.poi.ss.usermodel.Cell;

/** A way in which a number may be mistyped. */
enum HuntChange {
    HUNDREDTH("x 1.01", value -> 1.01 * value),
    TENTH("x 1.1", value -> 1.1 * value),
    DOUBLE("x 2", value -> 2 * value),
    SIGN("sign", value -> -value),
    BLANK("blank", value -> Double.NaN);

    private final String label;
    private final DoubleUnaryOperator of;

    HuntChange(String label, DoubleUnaryOperator of) {
        this.label = label;
        this.of = of;
    }

    String label() {
        return label;
    }

    /** Changes a cell with a number. */
    void change(Cell cell) {
        double now = of.applyAsDouble(cell.getNumericCellValue());
        if (Double.isNaN(now)) {
            cell.setBlank();
        } else {
            cell.setCellValue(now);
        }
    }
}
