package org.bagwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ChildJava;
import org.bagwright.ResultCells;

/**
 * Runs {@code bagwright watch} as a process of its own, saves the book a hundred times and more in quick succession, some of
 * them broken, and prints what came of it. The arguments: how many saves, and the fewest milliseconds between them.
 */
public final class WatchSaves {
    private static final long MOST_WAIT_S = 120;

    private final Path book;
    private final Path result;
    private final Path said;
    private final Path scratch;
    private final long pauseMs;

    private WatchSaves(Path folder, long pauseMs) throws IOException {
        Path watched = Files.createDirectories(folder.resolve("watched"));
        book = watched.resolve("bag.xlsx");
        result = watched.resolve("bag-plan.xlsx");
        said = folder.resolve("said.txt");
        scratch = Files.createDirectories(folder.resolve("scratch"));
        this.pauseMs = pauseMs;
    }

    public static void main(String[] args) throws Exception {
        int saves = args.length > 0 ? Integer.parseInt(args[0]) : 120;
        long pauseMs = args.length > 1 ? Long.parseLong(args[1]) : 200;
        Path folder = Files.createTempDirectory("watch-saves-");
        try {
            new WatchSaves(folder, pauseMs).run(saves);
        } finally {
            remove(folder);
        }
    }

    private void run(int count) throws Exception {
        BookSaves saves = new BookSaves(book, scratch, pauseMs);
        saves.all(0);
        Process process = start();
        awaitPlanOf(0);
        saves.all(count);
        long lastNs = System.nanoTime();
        boolean last = awaitPlanOf(count);
        System.out.println(count + " saves, " + pauseMs + " to " + 5 * pauseMs + " ms apart, " + saves.broken()
                + " of them broken");
        System.out.println("plan of the last save " + (last ? "written" : "MISSING") + " after "
                + TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - lastNs) + " ms");
        System.out.println("alive: " + process.isAlive());
        end(process);
        report();
    }

    private Process start() throws IOException {
        return ChildJava.of("org.bagwright.cli.Main", "watch", book)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
    }

    private boolean awaitPlanOf(int number) throws Exception {
        long endNs = System.nanoTime() + TimeUnit.SECONDS.toNanos(MOST_WAIT_S);
        while (System.nanoTime() < endNs) {
            if (Files.exists(result) && Math.abs(loftDeg() - BookSaves.loftDeg(number)) < 1e-9) {
                return true;
            }
            Thread.sleep(100);
        }
        return false;
    }

    private double loftDeg() throws IOException {
        try (XSSFWorkbook workbook = ResultCells.open(result)) {
            return workbook.getSheet("Clubs").getRow(1).getCell(4).getNumericCellValue();
        }
    }

    /** As Ctrl-C does. */
    private static void end(Process process) throws Exception {
        int interrupted = new ProcessBuilder("kill", "-INT", String.valueOf(process.pid()))
                .start()
                .waitFor();
        boolean ended = process.waitFor(30, TimeUnit.SECONDS);
        System.out.println("Ctrl-C sent: " + (interrupted == 0) + ", ended: " + ended
                + (ended ? ", exit code " + process.exitValue() : ""));
    }

    private void report() throws IOException {
        List<String> lines = Files.readAllLines(said, StandardCharsets.UTF_8);
        for (String part : List.of("  penalty ", "  not planned", "the book is missing", "fault of the program")) {
            System.out.println("lines with \"" + part.strip() + "\": "
                    + lines.stream().filter(line -> line.contains(part)).count());
        }
        System.out.println("last line: " + lines.get(lines.size() - 1));
        try (Stream<Path> files = Files.list(book.getParent())) {
            System.out.println("files: " + files.map(Path::getFileName).sorted().toList());
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
