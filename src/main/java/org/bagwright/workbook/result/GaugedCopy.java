package org.bagwright.workbook.result;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.CellChange;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.gauge.Correction;
import org.bagwright.domain.gauge.Correction.Item;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.Numbers;
import org.bagwright.files.SourceFile;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.BookFile;
import org.bagwright.workbook.cells.CellContents;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.FormulaValues;
import org.bagwright.workbook.cells.GaugeNote;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.UserCells;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.SheetSchema;
import org.bagwright.workbook.schema.SleeveColumn;
import org.bagwright.workbook.text.CellContent;

/** A copy of a fitter's book in which gauged numbers take the place of stated ones, each with a note; the rest stays. */
public final class GaugedCopy implements AutoCloseable {
    private static final Map<Item, Column> COLUMNS = new EnumMap<>(Map.of(
            Item.LOFT, ClubColumn.LOFT,
            Item.LIE, ClubColumn.LIE,
            Item.FACE, ClubColumn.FACE,
            Item.CLOCK, SleeveColumn.CLOCK,
            Item.BEND, SleeveColumn.BEND,
            Item.CLOCK_2, SleeveColumn.CLOCK_2,
            Item.BEND_2, SleeveColumn.BEND_2));

    private final XSSFWorkbook workbook;
    private final CellContents contents;
    private final List<InputRow> clubs;
    private final List<InputRow> settings;
    private final List<CellChange> changes = new ArrayList<>();
    private final List<Message> notWritten = new ArrayList<>();

    private GaugedCopy(XSSFWorkbook workbook) {
        this.workbook = workbook;
        this.contents = new CellContents(workbook);
        BookContext context = new BookContext(contents, BookSettings.DEFAULT.units(), new Findings());
        this.clubs = rows(ClubColumn.SHEET, context);
        this.settings = rows(SleeveColumn.SHEET, context);
    }

    /**
     * Opens a copy of a book that is known to be sound.
     *
     * @throws IOException if the file cannot be read
     */
    public static GaugedCopy of(SourceFile source) throws IOException {
        return new GaugedCopy(BookFile.openAgain(source));
    }

    /** Writes the cells. */
    public void put(List<Correction> corrections) {
        FormulaValues values = FormulaValues.of(workbook);
        corrections.forEach(this::put);
        values.refresh();
        workbook.setForceFormulaRecalculation(true);
    }

    /** What was written, in the order asked for. */
    public List<CellChange> changes() {
        return List.copyOf(changes);
    }

    /** What could not be written, and why. */
    public List<Message> notWritten() {
        return List.copyOf(notWritten);
    }

    /** Writes the whole book. */
    public void writeTo(OutputStream target) throws IOException {
        new UserCells(workbook).keepFormats();
        workbook.write(target);
    }

    @Override
    public void close() throws IOException {
        workbook.close();
    }

    private List<InputRow> rows(SheetSchema schema, BookContext context) {
        return InputTable.in(workbook, schema, context).map(InputTable::rows).orElse(List.of());
    }

    private void put(Correction correction) {
        InputRow row = row(correction.place()).orElseThrow();
        Column column = COLUMNS.get(correction.item());
        Optional<XSSFCell> place = row.cellToWrite(column);
        if (place.isEmpty()) {
            skip(row.cell(column), correction, "the sheet has no column " + column.header());
        } else if (place.get().isPartOfArrayFormulaGroup()) {
            skip(row.cell(column), correction, "the cell is part of an array formula");
        } else {
            write(row, column, place.get(), correction);
        }
    }

    private void write(InputRow row, Column column, XSSFCell cell, Correction correction) {
        String before = before(cell, correction);
        double value = correction.valueMeasureUnits();
        boolean timeOfDay =
                correction.isClock() && row.content(column) instanceof CellContent.Amount amount && amount.dated();
        if (cell.getCellType() == CellType.FORMULA) {
            cell.removeFormula();
        }
        cell.setCellValue(timeOfDay ? value / 24 : value);
        new GaugeNote(cell).write(correction, before);
        changes.add(new CellChange(row.cell(column), correction.item().label(), before, GaugeNote.shown(value)));
    }

    private void skip(String cell, Correction correction, String why) {
        notWritten.add(Message.warning(
                cell,
                "the gauged " + correction.item().label() + " " + GaugeNote.shown(correction.valueMeasureUnits()) + " "
                        + correction.item().unit() + " is not written: " + why));
    }

    /** What the cell holds, as a person reads it; a formula with its value. */
    private String before(XSSFCell cell, Correction correction) {
        String value = shown(contents.of(cell), correction);
        return cell.getCellType() == CellType.FORMULA ? "=" + cell.getCellFormula() + " giving " + value : value;
    }

    private static String shown(CellContent content, Correction correction) {
        if (content instanceof CellContent.Words words) {
            return words.text();
        }
        if (content instanceof CellContent.Amount amount && !amount.dated()) {
            return Numbers.trimmed(amount.valueMeasureUnits());
        }
        return content.isBlank() ? "blank" : GaugeNote.shown(correction.statedMeasureUnits());
    }

    private Optional<InputRow> row(Correction.Place place) {
        if (place instanceof Correction.ClubRow club) {
            return clubs.stream()
                    .filter(row -> row.cell(ClubColumn.CLUB).equals(club.clubCell()))
                    .findFirst();
        }
        Correction.SettingRow setting = (Correction.SettingRow) place;
        return settings.stream()
                .filter(row -> isCalled(row, SleeveColumn.SLEEVE, setting.sleeve()))
                .filter(row -> isCalled(row, SleeveColumn.SETTING, setting.mark()))
                .findFirst();
    }

    private static boolean isCalled(InputRow row, Column column, String name) {
        return row.text(column)
                .filter(text -> CloseNames.key(text).equals(CloseNames.key(name)))
                .isPresent();
    }
}
