package org.bagwright.workbook.edits;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.MeasureUnit;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputCell;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.plan.PlanAims;
import org.bagwright.workbook.plan.PlanSheet;
import org.bagwright.workbook.schema.AimColumn;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.PlanMemory;
import org.bagwright.workbook.text.Quantity;
import org.bagwright.workbook.text.Unit;

/** What was changed in the tolerances, importances and musts of the measures, found by the names of their cells. */
final class AimEdits {
    private final XSSFWorkbook workbook;
    private final BookContext context;
    private final BookContext silent;
    private final EditJudge judge;

    AimEdits(XSSFWorkbook workbook, BookContext context) {
        this.workbook = workbook;
        this.context = context;
        this.silent = new BookContext(context.contents(), context.units(), new Findings());
        this.judge = new EditJudge(context.findings());
    }

    List<PlanEdit> all() {
        for (Measure measure : Measure.values()) {
            memory(measure).ifPresent(memory -> measure(measure, memory));
        }
        return judge.edits();
    }

    private Optional<PlanMemory> memory(Measure measure) {
        return cell(PlanAims.filled(measure))
                .map(cell -> context.contents().of(cell))
                .filter(CellContent.Words.class::isInstance)
                .map(words -> PlanMemory.parse(((CellContent.Words) words).text()));
    }

    private void measure(Measure measure, PlanMemory memory) {
        number(PlanAims.tolerance(measure), AimColumn.TOLERANCE, measure, memory);
        number(PlanAims.importance(measure), AimColumn.IMPORTANCE, measure, memory);
        cell(PlanAims.must(measure)).ifPresent(cell -> must(cell, measure, memory));
    }

    private void number(String name, Column column, Measure measure, PlanMemory memory) {
        cell(name).ifPresent(cell -> {
            InputCell found = found(cell, column);
            Unit unit = quantity(column, measure).usual(context.units());
            OptionalDouble filled = memory.number(column.header());
            boolean isZero = column == AimColumn.TOLERANCE
                    && found.content() instanceof CellContent.Amount amount
                    && amount.valueMeasureUnits() == 0;
            if (isZero) {
                found.problem().accept("tolerance must be above 0, found 0.");
            } else {
                judge.number(address(cell), found, filled, unit, () -> row(measure, column));
            }
        });
    }

    private static Quantity quantity(Column column, Measure measure) {
        return column == AimColumn.TOLERANCE && measure.unit() == MeasureUnit.DISTANCE
                ? Quantity.DISTANCE
                : column.quantity();
    }

    private InputCell found(XSSFCell cell, Column column) {
        String address = address(cell);
        return new InputCell(
                column, context.contents().of(cell), text -> context.findings().problem(address, text));
    }

    private static String address(XSSFCell cell) {
        return BookContext.address(cell.getSheet(), cell.getRowIndex(), cell.getColumnIndex());
    }

    /** A must that was changed; a blank is a no. */
    private void must(XSSFCell cell, Measure measure, PlanMemory memory) {
        InputCell found = found(cell, AimColumn.MUST);
        Optional<Boolean> now = found.content().isBlank() ? Optional.of(false) : found.yesNo();
        boolean then = "yes".equals(memory.of(AimColumn.MUST.header()).orElse("no"));
        if (now.isEmpty() || now.get() == then) {
            return;
        }
        row(measure, AimColumn.MUST).ifPresent(row -> {
            boolean own = row.yesNo(AimColumn.MUST).orElse(false);
            if (own == then) {
                CellContent value = CellContent.words(now.get() ? "yes" : "no");
                judge.take(new PlanEdit(address(cell), row, AimColumn.MUST, value));
            }
        });
    }

    private Optional<XSSFCell> cell(String name) {
        Name known = workbook.getName(name);
        if (known == null || !known.getRefersToFormula().startsWith(PlanSheet.NAME + "!")) {
            return Optional.empty();
        }
        CellReference at = new CellReference(known.getRefersToFormula());
        return Optional.ofNullable(workbook.getSheet(PlanSheet.NAME).getRow(at.getRow()))
                .map(row -> row.getCell(at.getCol()));
    }

    /** The row of a measure on the sheet Aims, made if need be, in a sheet made if need be. */
    private Optional<InputRow> row(Measure measure, Column column) {
        return InputTable.in(workbook, AimColumn.SHEET, silent)
                .or(this::newTable)
                .map(table -> row(table.with(AimColumn.MEASURE).with(column), measure));
    }

    private static InputRow row(InputTable table, Measure measure) {
        return table.rows().stream()
                .filter(row -> row.text(AimColumn.MEASURE)
                        .map(CloseNames::key)
                        .filter(measure.label()::equals)
                        .isPresent())
                .findFirst()
                .orElseGet(() -> {
                    InputRow row = table.newRow();
                    row.cellToWrite(AimColumn.MEASURE).orElseThrow().setCellValue(measure.label());
                    return row;
                });
    }

    /** A sheet of its own; nothing where the book has one that cannot be read, which is reported elsewhere. */
    private Optional<InputTable> newTable() {
        if (IntStream.range(0, workbook.getNumberOfSheets())
                .mapToObj(workbook::getSheetName)
                .anyMatch(AimColumn.SHEET::isCalled)) {
            return Optional.empty();
        }
        XSSFSheet sheet = workbook.createSheet(AimColumn.SHEET.name());
        XSSFRow headings = sheet.createRow(0);
        for (Column column : AimColumn.SHEET.columns()) {
            headings.createCell(headings.getPhysicalNumberOfCells()).setCellValue(column.header());
        }
        return InputTable.on(sheet, AimColumn.SHEET, silent);
    }
}
