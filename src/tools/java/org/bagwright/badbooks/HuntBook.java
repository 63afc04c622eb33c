package org.bagwright.badbooks;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.DemoBooks;
import org.bagwright.domain.option.ChartedBook;
import org.bagwright.planning.Charting;
import org.bagwright.planning.WorkbookProblems;
import org.bagwright.search.BagSearch;

/** A demo in which one number at a time is changed. It is planned as the command does, without what the command adds to explain it. */
final class HuntBook implements AutoCloseable {
    private static final List<String> INPUTS =
            List.of("Start", "Golfers", "Clubs", "Sleeves", "Readings", "Shots", "Weights", "Stock", "Aims");

    private static final List<String> FIRST_HEADINGS = List.of("Golfer", "Sleeve", "Kit", "Item", "Measure");

    private final Path file;
    private final BagSearch search;
    private final XSSFWorkbook book;
    private final HuntPlan untouched;

    /**
     * @param name a demo, or {@code filled}
     * @param folder where a book may be made
     * @param search for all books of a hunt, since the first plan of a search is slow
     */
    HuntBook(String name, Path folder, BagSearch search) throws IOException {
        this.file = folder.resolve("hunt.xlsx");
        this.search = search;
        if (name.equals("filled")) {
            HuntFilled.write(file);
        } else {
            Files.write(file, DemoBooks.plain(name));
        }
        try (InputStream input = Files.newInputStream(file)) {
            this.book = new XSSFWorkbook(input);
        }
        this.untouched = plan();
    }

    /** A number in the book; the row and the cell count from 0. */
    record Place(String sheet, String column, int row, int cell) {
        String address() {
            return sheet + "!" + new CellReference(row, cell).formatAsString(false);
        }
    }

    /**
     * All numbers, or some of each column, spread over its rows.
     *
     * @param mostOfAColumn how many of a column
     */
    List<Place> places(int mostOfAColumn) {
        Map<String, List<Place>> columns = new LinkedHashMap<>();
        for (String sheet : INPUTS) {
            for (Place place : numbers(sheet)) {
                columns.computeIfAbsent(sheet + "!" + place.column(), name -> new ArrayList<>())
                        .add(place);
            }
        }
        List<Place> kept = new ArrayList<>();
        for (List<Place> column : columns.values()) {
            int count = Math.min(mostOfAColumn, column.size());
            for (int index = 0; index < count; index++) {
                kept.add(column.get(index * column.size() / count));
            }
        }
        return kept;
    }

    private List<Place> numbers(String sheet) {
        List<Place> places = new ArrayList<>();
        Row headings = headings(sheet);
        for (Row row : book.getSheet(sheet)) {
            for (Cell cell : row) {
                if (row.getRowNum() > headings.getRowNum() && isNumber(cell) && !isExample(row)) {
                    places.add(new Place(sheet, heading(cell, headings), row.getRowNum(), cell.getColumnIndex()));
                }
            }
        }
        return places;
    }

    /** The row in which the first column is named; the first row of the sheet Start, which has no headings. */
    private Row headings(String sheet) {
        for (Row row : book.getSheet(sheet)) {
            if (FIRST_HEADINGS.contains(text(row.getCell(0)))
                    && !text(row.getCell(1)).isEmpty()) {
                return row;
            }
        }
        return book.getSheet(sheet).getRow(0);
    }

    /** The heading of its column, or on the sheets Start and Aims with the text that begins the row. */
    private static String heading(Cell cell, Row headings) {
        String sheet = cell.getSheet().getSheetName();
        String first = text(cell.getRow().getCell(0));
        if (sheet.equals("Start")) {
            return first;
        }
        String heading = text(headings.getCell(cell.getColumnIndex()));
        return sheet.equals("Aims") ? heading + " of " + first : heading;
    }

    private static String text(Cell cell) {
        return cell != null && cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "";
    }

    /** A 0 multiplied is no other number. */
    private static boolean isNumber(Cell cell) {
        return cell.getCellType() == CellType.NUMERIC && cell.getNumericCellValue() != 0;
    }

    private static boolean isExample(Row row) {
        return text(row.getCell(0)).startsWith("Example");
    }

    /** Changes one number, plans, and puts the number back. */
    HuntTry run(Place place, HuntChange change) throws IOException {
        Cell cell = book.getSheet(place.sheet()).getRow(place.row()).getCell(place.cell());
        double before = cell.getNumericCellValue();
        change.change(cell);
        HuntPlan after = plan();
        cell.setCellValue(before);
        return new HuntTry(place, before, change, untouched, after);
    }

    private HuntPlan plan() throws IOException {
        try (OutputStream output = Files.newOutputStream(file)) {
            book.write(output);
        }
        try {
            ChartedBook charted = new Charting(file).chart();
            return HuntPlan.of(charted, search.plan(charted.options()));
        } catch (WorkbookProblems problems) {
            return HuntPlan.refused(problems.messages());
        }
    }

    @Override
    public void close() throws IOException {
        book.close();
        Files.deleteIfExists(file);
    }
}
