package org.bagwright.badbooks;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.text.Numbers;
import org.bagwright.planning.Planning;
import org.bagwright.planning.ShippedBook;
import org.bagwright.planning.WorkbookProblems;

/**
 * Changes the numbers of a demo one at a time, by 1.1, by 2 and by sign, plans each, and lists what no message says although
 * the plan changes. Not run by the tests. Arguments: a demo, a folder to work in, and the share of the cells to try.
 */
public final class NumericHunt {
    private static final List<String> INPUTS = List.of("Golfers", "Clubs", "Sleeves", "Shots", "Weights", "Aims");
    private static final int FIRST_ROW = 5;
    private static final double MOST_S = 5;

    private enum Change {
        TENTH("x 1.1", value -> 1.1 * value),
        DOUBLE("x 2", value -> 2 * value),
        SIGN("sign", value -> -value);

        private final String label;
        private final DoubleUnaryOperator of;

        Change(String label, DoubleUnaryOperator of) {
            this.label = label;
            this.of = of;
        }
    }

    private record Outcome(List<String> choices, double points, List<String> warnings) {}

    private final ShippedBook demo;
    private final Path file;
    private final Outcome untouched;

    private NumericHunt(ShippedBook demo, Path folder) throws IOException {
        this.demo = demo;
        this.file = folder.resolve("hunt.xlsx");
        this.untouched = planned(book());
    }

    public static void main(String[] arguments) throws IOException {
        NumericHunt hunt = new NumericHunt(ShippedBook.demo(arguments[0]).orElseThrow(), Path.of(arguments[1]));
        hunt.run(Double.parseDouble(arguments[2]), new Random(17));
    }

    private void run(double share, Random random) throws IOException {
        for (String sheet : INPUTS) {
            for (int[] place : numbers(sheet)) {
                if (random.nextDouble() < share) {
                    for (Change change : Change.values()) {
                        tell(sheet, place, change);
                    }
                }
            }
        }
    }

    private XSSFWorkbook book() throws IOException {
        Files.deleteIfExists(file);
        demo.create(file);
        try (InputStream input = Files.newInputStream(file)) {
            return new XSSFWorkbook(input);
        }
    }

    private List<int[]> numbers(String sheet) throws IOException {
        List<int[]> places = new ArrayList<>();
        XSSFSheet rows = book().getSheet(sheet);
        for (Row row : rows) {
            for (Cell cell : row) {
                if (row.getRowNum() >= FIRST_ROW && cell.getCellType() == CellType.NUMERIC) {
                    places.add(new int[] {row.getRowNum(), cell.getColumnIndex()});
                }
            }
        }
        return places;
    }

    private void tell(String sheet, int[] place, Change change) throws IOException {
        XSSFWorkbook book = book();
        Cell cell = book.getSheet(sheet).getRow(place[0]).getCell(place[1]);
        double before = cell.getNumericCellValue();
        cell.setCellValue(change.of.applyAsDouble(before));
        String where = sheet + "!" + cell.getAddress() + " " + Numbers.brief(before) + " " + change.label;
        Outcome outcome = planned(book);
        long moved = outcome.choices().stream()
                .filter(choice -> !untouched.choices().contains(choice))
                .count();
        boolean silent = untouched.warnings().containsAll(outcome.warnings());
        String points = Double.isNaN(outcome.points())
                ? "refused"
                : Numbers.signed(outcome.points() - untouched.points(), 2) + " points";
        System.out.println(
                (silent ? moved > 0 ? "SILENT " : "same   " : "said   ") + where + ": " + moved + " choices, "
                        + points
                        + (silent ? "" : ": " + outcome.warnings()));
    }

    private Outcome planned(XSSFWorkbook book) throws IOException {
        try (OutputStream output = Files.newOutputStream(file)) {
            book.write(output);
        }
        try {
            return outcome(new Planning(1, MOST_S).plan(file));
        } catch (WorkbookProblems problems) {
            return new Outcome(List.of(), Double.NaN, warnings(problems.messages()));
        }
    }

    private static Outcome outcome(BookResult result) {
        List<String> choices = new ArrayList<>();
        for (BagResult bag : result.bags()) {
            bag.optionsOf(bag.planned()).stream()
                    .map(Option::key)
                    .map(key -> bag.golfer().name() + " " + key)
                    .forEach(choices::add);
        }
        return new Outcome(choices, result.plannedPoints(), warnings(result.messages()));
    }

    private static List<String> warnings(List<Message> messages) {
        return messages.stream()
                .filter(message -> message.severity().compareTo(Message.Severity.WARNING) <= 0)
                .map(message -> message.where() + " " + message.text())
                .toList();
    }
}
