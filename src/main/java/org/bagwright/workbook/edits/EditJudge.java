package org.bagwright.workbook.edits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputCell;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.Quantity;
import org.bagwright.workbook.text.Unit;

/**
 * Decides whether a cell of the sheet Plan was changed and whether its input cell takes the change. An input cell that was
 * changed since that plan too keeps its own value: it is the book, the sheet Plan only its copy.
 */
final class EditJudge {
    private static final double SAME = 1e-6;
    /** The words of columns for a blank cell that means no value. */
    private static final Set<String> NO_VALUE = Set.of("nothing", "no limit");

    private final Findings findings;
    private final List<PlanEdit> edits = new ArrayList<>();

    EditJudge(Findings findings) {
        this.findings = findings;
    }

    List<PlanEdit> edits() {
        return edits;
    }

    /**
     * Judges one cell with a number.
     *
     * @param planCell where it is
     * @param found what it holds
     * @param filled what the plan filled in, in the same unit
     * @param unit the unit of the sheet Plan
     * @param rows gives the row of the input sheet that takes it, in a column that the sheet has
     */
    void number(String planCell, InputCell found, OptionalDouble filled, Unit unit, Supplier<Optional<InputRow>> rows) {
        OptionalDouble now = WishedValue.of(found.column()).read(found, unit);
        boolean isWrong = now.isEmpty() && !found.content().isBlank();
        if (isWrong || same(now, inDomain(filled, unit))) {
            return;
        }
        rows.get()
                .ifPresentOrElse(
                        row -> changed(planCell, found, filled, unit, row),
                        () -> findings.warning(
                                planCell,
                                found.column().subject() + " " + PlanEdit.shown(found.content())
                                        + " is not taken: the input sheets have no row for it any more."));
    }

    private void changed(String planCell, InputCell found, OptionalDouble filled, Unit unit, InputRow row) {
        Column column = found.column();
        WishedValue kind = WishedValue.of(column);
        OptionalDouble now = kind.read(found, unit);
        OptionalDouble then = inDomain(filled, unit);
        Unit inputUnit = column.quantity() == Quantity.PLAIN ? unit : row.unit(column);
        OptionalDouble own = kind.read(new InputCell(column, row.content(column), ignored -> {}), inputUnit);
        boolean meansNothing = NO_VALUE.contains(column.blank());
        if (same(now, own) && (now.isPresent() || meansNothing)) {
            return;
        }
        if (own.isPresent() ? !same(own, then) : filled.isPresent() && meansNothing) {
            keepInput(planCell, found, row);
        } else if (now.isEmpty() && own.isEmpty()) {
            findings.warning(
                    planCell,
                    column.subject() + " cannot be taken out here: blank in " + row.cell(column) + " means "
                            + column.blank() + ". It stays " + shown(filled) + ".");
        } else {
            take(new PlanEdit(
                    planCell,
                    row,
                    column,
                    now.isEmpty() ? CellContent.blank() : kind.written(column, now.getAsDouble(), inputUnit)));
        }
    }

    /** Takes an edit unless the input cell holds something that it must not replace. */
    void take(PlanEdit edit) {
        boolean formula = edit.meetsFormula();
        if (formula || edit.row().isSpread(edit.column())) {
            findings.warning(
                    edit.planCell(),
                    edit.column().subject() + " " + PlanEdit.shown(edit.value()) + " is not taken: "
                            + edit.row().cell(edit.column()) + " holds a " + (formula ? "formula" : "range")
                            + ", which is kept. Change it by hand.");
        } else {
            edits.add(edit);
        }
    }

    /** The input cell was changed since that plan too. */
    void keepInput(String planCell, InputCell found, InputRow row) {
        Column column = found.column();
        findings.warning(
                planCell,
                column.subject() + " " + PlanEdit.shown(found.content()) + " is not taken: " + row.cell(column)
                        + " was changed since that plan too, and its " + PlanEdit.shown(row.content(column))
                        + " counts, because the input sheet is the book and the sheet Plan a copy.");
    }

    private static OptionalDouble inDomain(OptionalDouble value, Unit unit) {
        return value.isPresent() ? OptionalDouble.of(unit.toDomain(value.getAsDouble())) : value;
    }

    private static boolean same(OptionalDouble one, OptionalDouble other) {
        return one.isPresent() == other.isPresent()
                && (one.isEmpty() || Math.abs(one.getAsDouble() - other.getAsDouble()) <= SAME);
    }

    private static String shown(OptionalDouble value) {
        return value.isPresent() ? Numbers.trimmed(value.getAsDouble(), 2) : "blank";
    }
}
