package org.bagwright.badbooks;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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

    private final Path folder;
    private final Path file;
    private final byte[] before;
    private String fault = "";

    private FuzzTry(Path folder, byte[] before) {
        this.folder = folder;
        this.file = folder.resolve("bag.xlsx");
        this.before = before;
    }

    /**
     * What one try found.
     *
     * @param sound whether it was still a valid book
     * @param cpuS how long the commands kept the processor busy, seconds
     * @param fault what the program did wrong, empty if nothing
     */
    record Outcome(boolean sound, double cpuS, String fault) {}

    /**
     * Spoils a book and runs the commands on it.
     *
     * @param changes takes the book's name and how it was spoilt
     * @param planning whether a book that is still valid is planned too
     */
    static Outcome run(FuzzBooks books, Random random, Path folder, List<String> changes, boolean planning)
            throws IOException {
        FuzzBooks.Picked picked = books.pick(random);
        Path file = folder.resolve("bag.xlsx");
        try (XSSFWorkbook book = picked.workbook()) {
            changes.add(picked.name());
            changes.addAll(new CellMutations(book, random).apply());
            try (OutputStream out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
        FuzzTry tried = new FuzzTry(folder, Files.readAllBytes(file));
        long startNs = cpuNs();
        boolean sound = tried.judge(planning, random.nextInt(5));
        return new Outcome(sound, (cpuNs() - startNs) / 1e9, tried.fault);
    }

    private static long cpuNs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private boolean judge(boolean planning, int extra) throws IOException {
        Terminal check = command("check", file);
        boolean sound = check.code() == 0;
        require(sound || check.code() == 3, "check gives " + check.code() + ": " + check.out() + check.err());
        boolean listed = check.out().matches("(?s).*\\d+ problems? to fix\\.\\s*");
        require(listed == (check.code() == 3), "check gives " + check.code() + " and prints " + check.out());
        if (sound && planning) {
            plan(check);
        }
        if (!sound && extra == 0) {
            refused(check);
        }
        if (sound && extra == 1) {
            others();
        }
        if (extra == 2) {
            compared(sound);
        }
        if (extra == 3) {
            page(sound);
        }
        require(Arrays.equals(before, Files.readAllBytes(file)), "the book was written to");
        require(left().isEmpty(), "left in the folder: " + left());
        return sound;
    }

    private void plan(Terminal check) throws IOException {
        Path out = folder.resolve("out.xlsx");
        List<Object> arguments = new ArrayList<>(List.of("plan", file, "-o", out, "--seconds", "3"));
        Terminal plan = command(arguments.toArray());
        require(
                plan.code() == 0 || plan.code() == 4,
                "check finds nothing, plan gives " + plan.code() + ": " + plan.err());
        require(!plan.out().isBlank() && !check.out().isBlank(), "nothing printed");
        if (Files.exists(out)) {
            errorCell(out).ifPresent(cell -> require(false, "an error in the result at " + cell));
            Files.delete(out);
        }
    }

    private void refused(Terminal check) throws IOException {
        Terminal plan = command("plan", file);
        require(plan.code() == 3, "check finds problems, plan gives " + plan.code() + ": " + plan.err());
        require(plan.err().equals(check.out()), "check and plan say different things: " + plan.err());
    }

    private void others() throws IOException {
        for (String name : List.of("chart", "gauge")) {
            Terminal other = command(name, file);
            boolean right = other.code() == 0 || (name.equals("gauge") && other.code() == 3);
            require(right, name + " gives " + other.code() + ": " + other.out() + other.err());
        }
    }

    /** The book against a copy of itself: both are sound, or both are refused. */
    private void compared(boolean sound) throws IOException {
        Path copy = Files.copy(file, folder.resolve("copy.xlsx"));
        Terminal compare = command("compare", file, copy, "--seconds", "1");
        Files.delete(copy);
        boolean right = sound ? compare.code() == 0 || compare.code() == 4 : compare.code() == 3;
        require(
                right,
                "check finds " + (sound ? "nothing" : "problems") + ", compare gives " + compare.code() + ": "
                        + compare.err());
    }

    /** The page of the book: written if it is sound, refused without a file if not. */
    private void page(boolean sound) throws IOException {
        Path written = folder.resolve("bag.html");
        Terminal page = command("page", file, "--seconds", "1");
        boolean right = sound ? page.code() == 0 || page.code() == 4 : page.code() == 3;
        require(
                right,
                "check finds " + (sound ? "nothing" : "problems") + ", page gives " + page.code() + ": " + page.err());
        require(
                Files.exists(written) == sound,
                "page gives " + page.code() + " and the file is " + Files.exists(written));
        Files.deleteIfExists(written);
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

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(found -> found.getFileName().toString())
                    .filter(name -> !name.equals("bag.xlsx"))
                    .toList();
        }
    }

    private void require(boolean holds, String problem) {
        if (!holds && fault.isEmpty()) {
            fault = problem;
        }
    }
}
