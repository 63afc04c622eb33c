package org.bagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.cli.text.Terminal;

/** The results of the demo books, each planned once for all tests that only read them. */
public final class PlannedDemos {
    private static final Map<String, byte[]> RESULTS = new TreeMap<>();

    private PlannedDemos() {}

    /** The result as a file of the caller's own. */
    public static Path file(String demo, Path folder) throws IOException {
        return Files.write(folder.resolve(demo + "-plan.xlsx"), result(demo));
    }

    public static XSSFWorkbook open(String demo) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(result(demo)));
    }

    private static synchronized byte[] result(String demo) throws IOException {
        if (!RESULTS.containsKey(demo)) {
            Path folder = Files.createTempDirectory("bagwright-demo");
            Path result = folder.resolve(demo + "-plan.xlsx");
            Terminal run = Terminal.run("plan", DemoBooks.kept(demo), "-o", result);
            assertEquals(0, run.code(), run.err());
            RESULTS.put(demo, Files.readAllBytes(result));
            Files.delete(result);
            Files.delete(folder);
        }
        return RESULTS.get(demo);
    }
}
