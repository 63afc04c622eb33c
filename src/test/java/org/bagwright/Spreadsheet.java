package org.bagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** LibreOffice as the referee of formulas. */
public final class Spreadsheet {
    private static final long MOST_WAIT_S = 120;

    private Spreadsheet() {}

    /** Opens a book, calculates all of it and saves it into a folder. Without LibreOffice: aborts, and fails in CI. */
    public static Path recalculated(Path book, Path folder) throws IOException, InterruptedException {
        return converted(List.of(book), folder, "xlsx").get(0);
    }

    /** As {@link #recalculated(Path, Path)} for several books in one run of the program. */
    public static List<Path> recalculated(List<Path> books, Path folder) throws IOException, InterruptedException {
        return converted(books, folder, "xlsx");
    }

    /**
     * Opens books, calculates all of them and saves the texts of each sheet, which is quicker than to save the books: {@code
     * <book>-<sheet>.csv}.
     */
    public static void texts(List<Path> books, Path folder) throws IOException, InterruptedException {
        run(books, folder, "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1");
    }

    /** As {@link #recalculated}, saved in another format, such as {@code pdf} for what is printed. */
    public static Path converted(Path book, Path folder, String format) throws IOException, InterruptedException {
        return converted(List.of(book), folder, format).get(0);
    }

    private static List<Path> converted(List<Path> books, Path folder, String format)
            throws IOException, InterruptedException {
        run(books, folder, format);
        return books.stream()
                .map(book -> book.getFileName().toString())
                .map(name -> folder.resolve(name.substring(0, name.lastIndexOf('.') + 1) + format))
                .toList();
    }

    private static void run(List<Path> books, Path folder, String format) throws IOException, InterruptedException {
        Files.createDirectories(folder);
        Process process = start(books, folder, format);
        assertTrue(process.waitFor(MOST_WAIT_S, TimeUnit.SECONDS), "LibreOffice did not end");
        assertEquals(
                0, process.exitValue(), new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
    }

    private static Process start(List<Path> books, Path folder, String format) {
        List<String> command = new ArrayList<>(List.of(
                "soffice",
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                "--convert-to",
                format,
                "--outdir",
                folder.toString()));
        books.forEach(book -> command.add(book.toString()));
        try {
            return new ProcessBuilder(command).redirectErrorStream(true).start();
        } catch (IOException missing) {
            Needed.here(false, "LibreOffice");
            throw new IllegalStateException(missing);
        }
    }
}
