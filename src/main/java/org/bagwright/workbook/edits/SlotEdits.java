package org.bagwright.workbook.edits;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputCell;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.plan.PlanSheet;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.ColumnSpec;
import org.bagwright.workbook.schema.GolferColumn;
import org.bagwright.workbook.schema.SheetSchema;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.PlanMemory;
import org.bagwright.workbook.text.Unit;

/** What was changed in the rows of the slots: wishes of a club, limits of a golfer. */
final class SlotEdits {
    private static final Column GOLFER = ColumnSpec.of(Column.Kind.TEXT, "Golfer", "Whose slot.");
    private static final Column SLOT = ColumnSpec.of(Column.Kind.WHOLE, "Slot", "The slot.");
    private static final Column FILLED = ColumnSpec.of(Column.Kind.MARKS, "Filled in by the plan", "By column.");

    private static final List<Column> OF_CLUBS = List.of(
            ClubColumn.LOFT_TARGET,
            ClubColumn.LIE_TARGET,
            ClubColumn.CARRY_TARGET,
            ClubColumn.GAP_WISH,
            ClubColumn.GAP_LEAST,
            ClubColumn.GAP_MOST,
            ClubColumn.CARRY_LEAST,
            ClubColumn.CARRY_MOST,
            ClubColumn.LANDING_LEAST,
            ClubColumn.SWINGWEIGHT_TARGET);
    private static final List<Column> OF_GOLFERS = List.of(GolferColumn.MOST_OPEN, GolferColumn.MOST_CLOSED);

    private final XSSFWorkbook workbook;
    private final BookContext context;
    private final BookContext silent;
    private final EditJudge judge;

    SlotEdits(XSSFWorkbook workbook, BookContext context) {
        this.workbook = workbook;
        this.context = context;
        this.silent = new BookContext(context.contents(), context.units(), new Findings());
        this.judge = new EditJudge(context.findings());
    }

    List<PlanEdit> all() {
        InputTable.on(workbook.getSheet(PlanSheet.NAME), planColumns(), silent).stream()
                .flatMap(table -> table.rows().stream())
                .filter(row -> row.isGiven(FILLED) && row.content(SLOT) instanceof CellContent.Amount)
                .forEach(this::slot);
        return judge.edits();
    }

    /** The columns to fill in, on the sheet Plan without units of their own. */
    private static SheetSchema planColumns() {
        List<Column> columns = Stream.concat(
                        Stream.of(GOLFER, SLOT, FILLED),
                        Stream.concat(OF_CLUBS.stream(), OF_GOLFERS.stream()).map(SlotEdits::onPlan))
                .toList();
        return new SheetSchema(PlanSheet.NAME, "One row a slot.", columns, List.of());
    }

    private static Column onPlan(Column input) {
        return ColumnSpec.of(Column.Kind.TEXT, input.header(), input.help());
    }

    private void slot(InputRow planRow) {
        PlanMemory memory = PlanMemory.parse(planRow.text(FILLED).orElse(""));
        for (Column column : OF_CLUBS) {
            if (memory.of(column.header()).isPresent()) {
                edit(planRow, column, memory, () -> clubs(planRow, column));
            }
        }
        for (Column column : OF_GOLFERS) {
            if (memory.of(column.header()).isPresent()) {
                edit(planRow, column, memory, () -> golfers(planRow, column));
            }
        }
    }

    private void edit(InputRow planRow, Column column, PlanMemory memory, Supplier<Optional<InputRow>> row) {
        Column onPlan = onPlan(column);
        String cell = planRow.cell(onPlan);
        InputCell found = new InputCell(
                column, planRow.content(onPlan), text -> context.findings().problem(cell, text));
        Unit unit = column.quantity().usual(context.units());
        judge.number(cell, found, memory.number(column.header()), unit, row);
    }

    /** The row of the only club of a slot. */
    private Optional<InputRow> clubs(InputRow planRow, Column column) {
        List<InputRow> rows = rows(ClubColumn.SHEET, column)
                .filter(row -> same(row, ClubColumn.SLOT, planRow, SLOT))
                .filter(row -> !row.isGiven(ClubColumn.GOLFER) || same(row, ClubColumn.GOLFER, planRow, GOLFER))
                .toList();
        return rows.size() == 1 ? Optional.of(rows.get(0)) : Optional.empty();
    }

    private Optional<InputRow> golfers(InputRow planRow, Column column) {
        return rows(GolferColumn.SHEET, column)
                .filter(row -> same(row, GolferColumn.GOLFER, planRow, GOLFER))
                .findFirst();
    }

    /** The rows of an input sheet, which has the column from now on. */
    private Stream<InputRow> rows(SheetSchema schema, Column column) {
        return InputTable.in(workbook, schema, silent).stream().flatMap(table -> table.with(column).rows().stream());
    }

    private static boolean same(InputRow one, Column column, InputRow other, Column otherColumn) {
        Optional<String> key = one.text(column).map(CloseNames::key);
        return key.isPresent() && key.equals(other.text(otherColumn).map(CloseNames::key));
    }
}
