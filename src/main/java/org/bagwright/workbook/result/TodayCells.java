package org.bagwright.workbook.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.CellChange;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.plan.TodayChange;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.CellContents;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.text.CellContent;

/** Writes what is in the bag today into the sheet Clubs: values only, so that formats and notes stay. */
final class TodayCells {
    private final List<InputRow> rows;
    private final List<CellChange> written = new ArrayList<>();
    private final List<Message> notWritten = new ArrayList<>();

    TodayCells(XSSFWorkbook workbook) {
        BookContext context = new BookContext(new CellContents(workbook), BookSettings.DEFAULT.units(), new Findings());
        rows = InputTable.in(workbook, ClubColumn.SHEET, context)
                .map(InputTable::rows)
                .orElse(List.of());
    }

    WrittenCells write(List<TodayChange> changes) {
        changes.forEach(this::put);
        return new WrittenCells(written, List.of(), 0, notWritten);
    }

    private void put(TodayChange change) {
        Club after = change.after();
        Choice was = change.before().today();
        Choice is = after.today();
        InputRow row = row(after);
        if (!was.setting().equals(is.setting())) {
            text(row, ClubColumn.SETTING, is.setting().orElseThrow());
        }
        if (!was.weighting().equals(is.weighting())) {
            text(row, ClubColumn.WEIGHTING, weighting(row, after));
        }
        bend(row, ClubColumn.LOFT_BEND, was.bend().loftDeg(), is.bend().loftDeg());
        bend(row, ClubColumn.LIE_BEND, was.bend().lieDeg(), is.bend().lieDeg());
        if (change.otherClub()) {
            inBag(row, after.inBag());
        }
    }

    private InputRow row(Club club) {
        return rows.stream()
                .filter(found -> found.cell(ClubColumn.CLUB).equals(club.cell()))
                .findFirst()
                .orElseThrow();
    }

    private void inBag(InputRow row, boolean inBag) {
        if (row.yesNo(ClubColumn.IN_BAG).filter(given -> given == inBag).isEmpty()) {
            text(row, ClubColumn.IN_BAG, inBag ? "yes" : "no");
        }
    }

    /** The weighting alone, or with its kit where the row names the kit in no other place. */
    private static String weighting(InputRow row, Club club) {
        String name = club.today().weighting().orElseThrow();
        return row.isGiven(ClubColumn.KIT) ? name : club.kit().orElseThrow() + ": " + name;
    }

    private void text(InputRow row, Column column, String after) {
        place(row, column, after).ifPresent(cell -> {
            String was = was(row, column);
            if (after.matches("0|[1-9][0-9]{0,8}") && cell.getCellType() != CellType.STRING) {
                cell.setCellValue(Double.parseDouble(after));
            } else {
                cell.setCellValue(after);
            }
            written.add(new CellChange(row.cell(column), column.subject(), was, after));
        });
    }

    private void bend(InputRow row, Column column, double beforeDeg, double afterDeg) {
        String shown = Numbers.trimmed(afterDeg);
        if (!shown.equals(Numbers.trimmed(beforeDeg))) {
            place(row, column, shown).ifPresent(cell -> {
                String was = was(row, column);
                cell.setCellValue(afterDeg);
                written.add(new CellChange(row.cell(column), column.subject(), was, shown));
            });
        }
    }

    private static String was(InputRow row, Column column) {
        CellContent content = row.content(column);
        return content instanceof CellContent.Words words
                ? words.text()
                : content.isBlank() ? "blank" : content.shown();
    }

    private Optional<XSSFCell> place(InputRow row, Column column, String value) {
        Optional<XSSFCell> cell = row.cellToWrite(column);
        if (cell.isEmpty()) {
            skip(row, column, value, "the sheet has no column " + column.header() + "; add it and enter the value");
            return Optional.empty();
        }
        if (cell.get().getCellType() == CellType.FORMULA || cell.get().isPartOfArrayFormulaGroup()) {
            skip(row, column, value, "the cell holds a formula, which is kept; change it by hand");
            return Optional.empty();
        }
        return cell;
    }

    private void skip(InputRow row, Column column, String value, String why) {
        notWritten.add(Message.warning(
                row.cell(column), "the live " + column.subject() + " " + value + " is not written: " + why));
    }
}
