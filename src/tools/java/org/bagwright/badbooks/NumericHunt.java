package org.bagwright.badbooks;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.planning.Planning;
import org.bagwright.planning.ShippedBook;
import org.bagwright.planning.WorkbookProblems;

/**
 * Changes the numbers of the input sheets of a demo one at a time, plans each, and finds what changes much without a word.
 * Every result is planned as the command does.
 */
final class NumericHunt {
    private static final List<String> INPUTS =
            List.of("Start", "Golfers", "Clubs", "Sleeves", "Readings", "Shots", "Weights", "Stock", "Aims");
    private static final int HEADINGS_ROW = 3;
    private static final double MOST_S = 5;

    private final ShippedBook demo;
    private final Path file;
    private final HuntPlan untouched;

    /** @param folder where a book may be made */
    NumericHunt(ShippedBook demo, Path folder) throws IOException {
        this.demo = demo;
        this.file = folder.resolve("hunt.xlsx");
        this.untouched = planned(book());
    }

    /** A number in the book. */
    record Place(String sheet, String column, int row, int cell) {}

    /**
     * All numbers, or some of each column, spread over its rows.
     *
     * @param mostOfAColumn how many of a column
     */
    List<Place> places(int mostOfAColumn) throws IOException {
        Map<String, List<Place>> columns = new HashMap<>();
        List<Place> kept = new ArrayList<>();
        for (String sheet : INPUTS) {
            for (Place place : numbers(sheet)) {
                columns.computeIfAbsent(sheet + "!" + place.column(), name -> new ArrayList<>())
                        .add(place);
            }
        }
        for (List<Place> column : columns.values()) {
            int count = Math.min(mostOfAColumn, column.size());
            for (int index = 0; index < count; index++) {
                kept.add(column.get(index * column.size() / count));
            }
        }
        return kept;
    }

    private List<Place> numbers(String sheet) throws IOException {
        List<Place> places = new ArrayList<>();
        try (XSSFWorkbook book = book()) {
            for (Row row : book.getSheet(sheet)) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.NUMERIC && row.getRowNum() > HEADINGS_ROW && !isExample(row)) {
                        places.add(new Place(sheet, heading(cell), row.getRowNum(), cell.getColumnIndex()));
                    }
                }
            }
        }
        return places;
    }

    /** The heading of its column, or on the sheet Start the text to the left. */
    private static String heading(Cell cell) {
        Row named = cell.getSheet().getSheetName().equals("Start")
                ? cell.getRow()
                : cell.getSheet().getRow(HEADINGS_ROW);
        int column = cell.getColumnIndex();
        while (named == cell.getRow() && column > 0 && !isText(named.getCell(column))) {
            column--;
        }
        return named.getCell(column).getStringCellValue();
    }

    private static boolean isText(Cell cell) {
        return cell != null && cell.getCellType() == CellType.STRING;
    }

    private static boolean isExample(Row row) {
        return isText(row.getCell(0)) && row.getCell(0).getStringCellValue().startsWith("Example");
    }

    /** Changes one number and plans. */
    HuntTry run(Place place, HuntChange change) throws IOException {
        XSSFWorkbook book = book();
        Cell cell = book.getSheet(place.sheet()).getRow(place.row()).getCell(place.cell());
        String where =
                place.sheet() + "!" + cell.getAddress() + " " + cell.getNumericCellValue() + " " + change.label();
        change.change(cell);
        return new HuntTry(place.sheet(), place.column(), where, change, untouched, planned(book), place.row() + 1);
    }

    private XSSFWorkbook book() throws IOException {
        Files.deleteIfExists(file);
        demo.create(file);
        try (InputStream input = Files.newInputStream(file)) {
            return new XSSFWorkbook(input);
        }
    }

    private HuntPlan planned(XSSFWorkbook book) throws IOException {
        try (book;
                OutputStream output = Files.newOutputStream(file)) {
            book.write(output);
        }
        try {
            return HuntPlan.of(new Planning(1, MOST_S).plan(file));
        } catch (WorkbookProblems problems) {
            return HuntPlan.refused(problems.messages());
        }
    }

    /** Takes the most numbers of a column to try in each demo, and the folder to work in; prints each try. */
    public static void main(String[] arguments) throws IOException {
        int most = Integer.parseInt(arguments[0]);
        Path folder = Path.of(arguments[1]);
        List<String> names = Stream.of(arguments).skip(2).toList();
        for (String name : names) {
            NumericHunt hunt = new NumericHunt(ShippedBook.demo(name).orElseThrow(), folder);
            for (Place place : hunt.places(most)) {
                for (HuntChange change : HuntChange.values()) {
                    System.out.println(name + " " + hunt.run(place, change).line());
                }
            }
        }
    }
}
