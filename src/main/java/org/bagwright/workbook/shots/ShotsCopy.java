package org.bagwright.workbook.shots;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.files.SourceFile;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.CellContents;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.FormulaValues;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.UserCells;
import org.bagwright.workbook.schema.ShotColumn;

/** A copy of a fitter's book with more rows on its sheet Shots; everything else in it stays. */
public final class ShotsCopy implements AutoCloseable {
    private static final String DATE_FORMAT = "yyyy-mm-dd";
    private static final List<ShotColumn> NUMBERS = List.of(
            ShotColumn.HEAD_SPEED,
            ShotColumn.BALL_SPEED,
            ShotColumn.LAUNCH,
            ShotColumn.SPIN,
            ShotColumn.ATTACK,
            ShotColumn.CARRY,
            ShotColumn.SIDE,
            ShotColumn.LANDING);

    private final XSSFWorkbook workbook;
    private final Book book;
    private final BookContext context;
    private final FormulaValues values;
    private final Map<Key, Integer> existing = new HashMap<>();
    private final Map<Short, XSSFCellStyle> dated = new HashMap<>();
    private final List<Message> notWritten = new ArrayList<>();
    private InputTable table;

    private ShotsCopy(XSSFWorkbook workbook, Book book) {
        this.workbook = workbook;
        this.book = book;
        this.context =
                new BookContext(new CellContents(workbook), book.settings().units(), new Findings());
        this.values = FormulaValues.of(workbook);
        this.table = InputTable.in(workbook, ShotColumn.SHEET, context).orElseGet(this::newTable);
        table.rows().forEach(row -> existing.merge(key(row), 1, Integer::sum));
    }

    /**
     * Opens a copy of a book that is known to be sound.
     *
     * @throws IOException if the file cannot be read
     */
    public static ShotsCopy of(SourceFile source, Book book) throws IOException {
        try (InputStream input = new ByteArrayInputStream(source.bytes())) {
            return new ShotsCopy(new XSSFWorkbook(input), book);
        }
    }

    /** A sheet of its own where the book has none. */
    private InputTable newTable() {
        XSSFSheet sheet = workbook.createSheet(ShotColumn.SHEET.name());
        sheet.createRow(0).createCell(0).setCellValue(ShotColumn.CLUB.header());
        return InputTable.on(sheet, ShotColumn.SHEET, context).orElseThrow();
    }

    /**
     * Adds the shots of one file that the book has not: a row for each, with all that is known.
     *
     * @return the shots that were added; the book had the others
     */
    public List<Shot> add(List<Shot> shots) {
        Map<Key, Integer> found = new HashMap<>();
        List<Shot> added = new ArrayList<>();
        for (Shot shot : shots) {
            Key key = key(shot);
            if (found.merge(key, 1, Integer::sum) > existing.getOrDefault(key, 0)) {
                added.add(shot);
            }
        }
        found.forEach((key, count) -> existing.merge(key, count, Math::max));
        TableRange range = new TableRange(table.sheet(), table.lastFilled());
        List<Shot> written = new ArrayList<>();
        for (Shot shot : added) {
            if (write(shot)) {
                written.add(shot);
            }
        }
        range.reach(table.lastFilled());
        return written;
    }

    /** Writes what headings of files of shots mean into the sheet Start. */
    public void learn(String headings) {
        new LearntCell(workbook, context).write(headings);
    }

    /** What could not be written, and why. */
    public List<Message> notWritten() {
        return List.copyOf(notWritten);
    }

    /** Writes the whole book. */
    public void writeTo(OutputStream target) throws IOException {
        values.refresh();
        workbook.setForceFormulaRecalculation(true);
        new UserCells(workbook).keepFormats();
        workbook.write(target);
    }

    @Override
    public void close() throws IOException {
        workbook.close();
    }

    private boolean write(Shot shot) {
        prepare(shot);
        Optional<InputRow> row = table.nextRow();
        if (row.isEmpty()) {
            notWritten.add(
                    Message.warning(ShotColumn.SHEET.name(), "the sheet is full; " + shot.cell() + " is not added."));
            return false;
        }
        values(shot).forEach((column, value) -> put(row.get(), column, value));
        return true;
    }

    /** Adds the columns that the sheet lacks and the shot needs. */
    private void prepare(Shot shot) {
        for (ShotColumn column : values(shot).keySet()) {
            boolean only = column == ShotColumn.GOLFER && book.golfers().size() == 1;
            if (!table.has(column) && !only) {
                table = table.with(column);
            }
        }
    }

    private Map<ShotColumn, Object> values(Shot shot) {
        ShotCells cells = new ShotCells(table::unit);
        Map<ShotColumn, Object> values = cells.setup(shot.setup());
        values.put(ShotColumn.GOLFER, shot.golfer());
        values.put(ShotColumn.CLUB, shot.club());
        shot.series().date().ifPresent(day -> values.put(ShotColumn.DATE, day));
        if (shot.series().shots() > 1) {
            values.put(ShotColumn.SHOTS, (double) shot.series().shots());
        }
        values.putAll(cells.measured(shot.measured()));
        return values;
    }

    private void put(InputRow row, ShotColumn column, Object value) {
        row.cellToWrite(column).ifPresent(cell -> {
            look(cell);
            ShotCells.put(cell, value);
            if (column == ShotColumn.DATE && !DateUtil.isCellDateFormatted(cell)) {
                cell.setCellStyle(
                        dated.computeIfAbsent(cell.getCellStyle().getIndex(), index -> dated(cell.getCellStyle())));
            }
        });
    }

    /** Gives a cell without a look of its own the look of the one above, but for that of a heading. */
    private void look(XSSFCell cell) {
        int row = cell.getRowIndex() - 1;
        XSSFRow rowAbove =
                row < 0 || table.isHeadings(row) ? null : cell.getSheet().getRow(row);
        XSSFCell above = rowAbove == null ? null : rowAbove.getCell(cell.getColumnIndex());
        if (cell.getCellStyle().getIndex() == 0 && above != null) {
            cell.setCellStyle(above.getCellStyle());
        }
    }

    private XSSFCellStyle dated(XSSFCellStyle plain) {
        XSSFCellStyle style = plain.copy();
        style.setDataFormat(workbook.createDataFormat().getFormat(DATE_FORMAT));
        return style;
    }

    /** What two rows of the same shot have in common. */
    private record Key(
            String golfer, String club, Optional<LocalDate> day, int shots, Map<ShotColumn, Object> measured) {
        Key {
            golfer = CloseNames.key(golfer);
            club = CloseNames.key(club);
        }
    }

    private Key key(InputRow row) {
        String only = book.golfers().size() == 1 ? book.golfers().get(0).name() : "";
        Map<ShotColumn, Object> measured = new EnumMap<>(ShotColumn.class);
        for (ShotColumn column : NUMBERS) {
            OptionalDouble value = row.number(column);
            value.ifPresent(found -> measured.put(column, new ShotCells(table::unit).written(column, found)));
        }
        return new Key(
                row.text(ShotColumn.GOLFER).orElse(only),
                row.text(ShotColumn.CLUB).orElse(""),
                row.date(ShotColumn.DATE),
                row.whole(ShotColumn.SHOTS).orElse(1),
                measured);
    }

    private Key key(Shot shot) {
        Map<ShotColumn, Object> measured = new ShotCells(table::unit).measured(shot.measured());
        return new Key(
                shot.golfer(), shot.club(), shot.series().date(), shot.series().shots(), measured);
    }
}
