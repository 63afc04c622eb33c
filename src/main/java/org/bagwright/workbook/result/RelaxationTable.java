package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.Comparator;
import java.util.List;
import org.bagwright.domain.plan.Relaxation;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;

/** On the sheet Others: what holds a golfer's plan back, the greatest first. */
final class RelaxationTable {
    static final int LAST_COLUMN = 3;

    private final SheetPen pen;
    private final TablePen table;
    private final List<Relaxation> relaxations;

    RelaxationTable(SheetPen pen, TablePen table, List<Relaxation> relaxations) {
        this.pen = pen;
        this.table = table;
        this.relaxations = relaxations;
    }

    /** Writes from a row on and gives the first free row. */
    int write(int row) {
        table.band(row, LAST_COLUMN, "What holds the plan back");
        if (relaxations.isEmpty()) {
            pen.text(row + 1, 0, Role.PLAIN, "Nothing: no pin, limit, must or scarce piece costs it anything.");
            return row + 2;
        }
        table.headings(
                row + 1,
                List.of("Without this", "Where", "Penalty lower by [points]", "Musts missed less by [tolerances]"),
                30);
        int next = row + 2;
        for (Relaxation relaxation : biggestFirst()) {
            pen.text(next, 0, Role.CELL, relaxation.what());
            pen.text(next, 1, Role.CELL, relaxation.cell());
            pen.number(next, 2, Role.NUMBER, TablePen.POINTS, relaxation.gainPoints());
            table.breaks(next, 3, Role.NUMBER, relaxation.fewerBreaks());
            pen.height(next++, TablePen.heightPoints(relaxation.what(), OtherPlans.LABEL_CHARS));
        }
        return next;
    }

    /** Broken musts weigh more than any penalty. */
    private List<Relaxation> biggestFirst() {
        return relaxations.stream()
                .sorted(Comparator.comparingLong(Relaxation::fewerBreaks)
                        .thenComparingDouble(Relaxation::gainPoints)
                        .reversed())
                .toList();
    }
}
