package org.bagwright.badbooks;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Documents of a hundred books that no one made by hand; {@link Terminal} holds each against its schema. */
@Tag("analytic")
class JsonOfRandomBooksTest {
    private static final int BOOKS = 100;
    private static final Set<String> VARIED = Set.of(
            "Loft",
            "Lie",
            "Length",
            "Driver speed",
            "Iron speed",
            "Head speed",
            "Ball speed",
            "Launch",
            "Spin",
            "Carry");

    private final Map<String, Integer> documents = new TreeMap<>();

    @TempDir
    Path folder;

    @Test
    void documents_keepTheirContract() throws Exception {
        FuzzBooks books = new FuzzBooks(folder);
        for (int number = 0; number < BOOKS; number++) {
            Random random = new Random(2400 + number);
            TryFiles files = new TryFiles(folder, "shots.csv");
            book(books, random, number % 4 == 0, files.book());
            Path copy = Files.copy(files.book(), folder.resolve("copy" + number + ".xlsx"));
            run("check", files.book());
            run("chart", files.book());
            run("gauge", files.book());
            run("plan", files.book(), "--seconds", 1, "-o", folder.resolve("out.xlsx"));
            if (number % 5 == 0) {
                run("compare", files.book(), copy, "--seconds", 1);
                Path shots = Files.writeString(
                        folder.resolve(files.shots()),
                        "Player,Date,Club,Carry (yd)\nGolfer A,2026-05-14,Driver," + random.nextInt(180, 240)
                                + "\nGolfer A,2026-05-14,no club,180\n");
                run("add-shots", files.book(), shots, "--dry-run");
            }
        }
        assertTrue(documents.get("check") >= BOOKS * 9 / 10, "" + documents);
        for (String command : List.of("chart", "gauge", "plan")) {
            assertTrue(documents.get(command) > BOOKS / 2, "" + documents);
        }
        assertTrue(documents.get("compare") > BOOKS / 10 && documents.get("add-shots") > BOOKS / 10, "" + documents);
    }

    private void run(Object... words) {
        List<Object> typed = new ArrayList<>(List.of(words));
        typed.add("--json");
        if (!Terminal.run(typed.toArray()).out().isBlank()) {
            documents.merge(words[0].toString(), 1, Integer::sum);
        }
    }

    /** A book with other numbers, or one that is spoilt. */
    private static void book(FuzzBooks books, Random random, boolean spoilt, Path file) throws IOException {
        try (XSSFWorkbook book = books.pick(random).workbook();
                OutputStream output = Files.newOutputStream(file)) {
            if (spoilt) {
                new CellMutations(book, random).apply();
            } else {
                book.forEach(sheet -> vary(sheet, random));
            }
            book.write(output);
        }
    }

    /** Other lofts, lengths, speeds and the like, by a few percent. */
    private static void vary(Sheet sheet, Random random) {
        List<Integer> columns = new ArrayList<>();
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.STRING && VARIED.contains(heading(cell))) {
                    columns.add(cell.getColumnIndex());
                } else if (cell.getCellType() == CellType.NUMERIC && columns.contains(cell.getColumnIndex())) {
                    cell.setCellValue(cell.getNumericCellValue() * (1 + 0.02 * random.nextGaussian()));
                }
            }
        }
    }

    private static String heading(Cell cell) {
        return cell.getStringCellValue().replaceFirst(" *\\[.*", "");
    }
}
