package org.bagwright.speed;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * How long {@code bagwright watch} takes from a save to the line of the new plan. The arguments: a book, how many edits are timed, and
 * the command that starts the program. Each edit changes the first driver speed and is saved as spreadsheet programs do.
 */
public final class WatchEdits {
    private static final int WARM_UP = 10;
    private static final long PAUSE_MS = 500;

    private final byte[] book;
    private final Path watched;

    private WatchEdits(byte[] book, Path watched) {
        this.book = book;
        this.watched = watched;
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("watch-edits-");
        try {
            new WatchEdits(Files.readAllBytes(Path.of(arguments[0])), folder.resolve("bag.xlsx"))
                    .run(Integer.parseInt(arguments[1]), arguments[2]);
        } finally {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
            Files.delete(folder);
        }
    }

    private void run(int edits, String program) throws Exception {
        save(0);
        Process process = new ProcessBuilder(program, "watch", watched.toString())
                .redirectErrorStream(true)
                .start();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            awaitPlan(lines);
            double[] seconds = new double[edits];
            for (int edit = -WARM_UP; edit < edits; edit++) {
                Thread.sleep(PAUSE_MS);
                save(WARM_UP + edit + 1);
                long startNs = System.nanoTime();
                awaitPlan(lines);
                if (edit >= 0) {
                    seconds[edit] = (System.nanoTime() - startNs) / 1e9;
                }
            }
            Arrays.sort(seconds);
            System.out.printf(
                    "%d edits: median %.2f s, best %.2f s, worst %.2f s%n",
                    edits, seconds[edits / 2], seconds[0], seconds[edits - 1]);
        } finally {
            process.destroy();
            process.waitFor();
        }
    }

    private static void awaitPlan(BufferedReader lines) throws IOException {
        String line = lines.readLine();
        while (line != null && !line.contains("penalty ")) {
            line = lines.readLine();
        }
        if (line == null) {
            throw new IllegalStateException("the program has ended");
        }
    }

    private void save(int number) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(book))) {
            Cell speed = driverSpeed(workbook);
            speed.setCellValue(speed.getNumericCellValue() + 0.1 * number);
            workbook.write(bytes);
        }
        Path temporary = Files.write(watched.resolveSibling("~temporary.tmp"), bytes.toByteArray());
        Files.move(temporary, watched, StandardCopyOption.REPLACE_EXISTING);
    }

    private static Cell driverSpeed(XSSFWorkbook workbook) {
        int column = -1;
        for (Row row : workbook.getSheet("Golfers")) {
            for (Cell cell : row) {
                if (cell.toString().startsWith("Driver speed")) {
                    column = cell.getColumnIndex();
                }
            }
            Cell cell = column < 0 ? null : row.getCell(column);
            if (cell != null && cell.getCellType() == CellType.NUMERIC) {
                return cell;
            }
        }
        throw new IllegalStateException("the sheet Golfers has no driver speed");
    }
}
