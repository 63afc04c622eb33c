package org.bagwright.badbooks;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;

/** One spoilt book and what the commands make of it. */
final class FuzzTry {
    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");
    private static final Pattern BAD_TEXT =
            Pattern.compile("NaN|Infinity|\\tat |Exception|fault of the program|null\\b|Optional[\\[.]");
    private static final List<String> RESULT_SHEETS = List.of(
            "Plan",
            "Settings",
            "Ladder",
            "Steps",
            "Others",
            "Measure next",
            "Bench card",
            "Golfer card",
            "Team",
            "Messages");

    private final TryFiles files;
    private final boolean formulas;
    private final byte[] before;
    private String fault = "";

    /** @param formulas whether the book has formulas, whose values a new loft may change */
    private FuzzTry(TryFiles files, boolean formulas) throws IOException {
        this.files = files;
        this.formulas = formulas;
        this.before = Files.readAllBytes(files.book());
    }

    /**
     * What one try found.
     *
     * @param sound whether it was still a valid book
     * @param command the command that was run after {@code check}
     * @param cpuS how long the commands kept the processor busy, seconds
     * @param fault what the program did wrong, empty if nothing
     */
    record Outcome(boolean sound, String command, double cpuS, String fault) {}

    /**
     * Spoils a book and runs {@code check} and another command on it.
     *
     * @param changes takes the book's name and how it was spoilt
     */
    static Outcome run(FuzzBooks books, Random random, Path folder, List<String> changes) throws IOException {
        FuzzCommand command = FuzzCommand.ALL.get(random.nextInt(FuzzCommand.ALL.size()));
        changes.add(command.name());
        TryFiles files = new TryFiles(folder, random.nextInt(15) == 0 ? "shots.xlsx" : "shots.csv");
        Files.write(files.book(), spoilt(books, random, changes, command.readsShots() ? 3 : 15));
        if (command.readsShots()) {
            boolean book = random.nextInt(10) == 0;
            Path shots = folder.resolve(files.shots());
            Files.write(shots, book ? spoilt(books, random, changes, 3) : new ShotFiles(random, changes).bytes());
        }
        boolean formulas =
                changes.stream().anyMatch(change -> change.contains("formula") || change.contains("refers to"));
        FuzzTry tried = new FuzzTry(files, formulas);
        long startNs = cpuNs();
        boolean sound = tried.judge(command);
        return new Outcome(sound, command.name(), (cpuNs() - startNs) / 1e9, tried.fault);
    }

    /** @param soundOneIn one book in so many is left as it is */
    private static byte[] spoilt(FuzzBooks books, Random random, List<String> changes, int soundOneIn)
            throws IOException {
        FuzzBooks.Picked picked = books.pick(random);
        changes.add(picked.name());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (XSSFWorkbook book = picked.workbook()) {
            boolean left = random.nextInt(soundOneIn) == 0;
            boolean parts = random.nextInt(4) == 0;
            if (!left && !parts) {
                changes.addAll(new CellMutations(book, random).apply());
            }
            book.write(bytes);
            return left || !parts
                    ? bytes.toByteArray()
                    : new PartMutations(bytes.toByteArray(), random, changes).apply();
        }
    }

    private static long cpuNs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private boolean judge(FuzzCommand other) throws IOException {
        Terminal check = command("check", files.book());
        boolean sound = check.code() == 0;
        require(sound || check.code() == 3, "check gives " + check.code() + ": " + check.out() + check.err());
        boolean listed = check.out().matches("(?s).*\\d+ problems? to fix\\.\\s*");
        require(listed == (check.code() == 3), "check gives " + check.code() + " and prints " + check.out());
        Files.copy(files.book(), files.folder().resolve("copy.xlsx"), StandardCopyOption.REPLACE_EXISTING);
        Terminal run = command(other.arguments(files).toArray());
        String found = "check finds " + (sound ? "nothing" : "problems") + ", " + other.name() + " gives " + run.code();
        require(other.mayEnd(run.code(), sound), found + ": " + run.out() + run.err());
        if (other.name().equals("plan") && !sound) {
            require(run.err().equals(check.out()), "check and plan say different things: " + run.err());
        }
        written(run, sound);
        require(Arrays.equals(before, Files.readAllBytes(files.book())), "the book was written to");
        return sound;
    }

    /** A command that did not do its work leaves nothing; what another wrote is whole, and as sound as the book. */
    private void written(Terminal run, boolean sound) throws IOException {
        List<Path> written = files.written();
        boolean done = run.code() == 0 || run.code() == 4;
        require(done || written.isEmpty(), "left in the folder: " + written);
        for (Path result : written) {
            String name = result.getFileName().toString();
            require(name.startsWith("out."), "left in the folder: " + name);
            if (name.endsWith(".xlsx")) {
                errorCell(result).ifPresent(cell -> require(false, "an error in the result at " + cell));
                Terminal again = command("check", result);
                require(again.code() == 0 || !sound || formulas, "the result is not sound: " + again.out());
            }
        }
    }

    private Terminal command(Object... arguments) {
        Terminal terminal = Terminal.run(arguments);
        String said = QUOTED.matcher(terminal.out() + terminal.err()).replaceAll("\"\"");
        var bad = BAD_TEXT.matcher(said);
        if (bad.find()) {
            int from = Math.max(0, bad.start() - 300);
            require(false, arguments[0] + " prints: " + said.substring(from, Math.min(said.length(), bad.end() + 300)));
        }
        return terminal;
    }

    /** The first cell of the result sheets whose saved value is an error, which is how a NaN is saved. */
    private static Optional<String> errorCell(Path result) throws IOException {
        try (XSSFWorkbook book = ResultCells.open(result)) {
            for (String name : RESULT_SHEETS) {
                Sheet sheet = book.getSheet(name);
                for (Row row : sheet == null ? List.<Row>of() : sheet) {
                    for (Cell cell : row) {
                        if (type(cell) == CellType.ERROR) {
                            return Optional.of(name + "!" + cell.getAddress());
                        }
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static CellType type(Cell cell) {
        return cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
    }

    private void require(boolean holds, String problem) {
        if (!holds && fault.isEmpty()) {
            fault = problem;
        }
    }
}
