package org.bagwright.page;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.bagwright.Needed;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.planning.Planning;
import org.bagwright.planning.WorkbookProblems;

/**
 * A book that is planned, and its page in a file.
 *
 * @param result the planned book
 * @param file the page
 */
record PlannedPage(BookResult result, Path file) {
    private static final double MOST_S = 8;
    private static final Map<String, PlannedPage> DEMOS = new ConcurrentHashMap<>();

    /** The page of a demo book, planned once for all tests. */
    static PlannedPage demo(String name) {
        return DEMOS.computeIfAbsent(name, demo -> {
            try {
                Path folder = Files.createTempDirectory("bagwright-page");
                PlannedPage page = of(Path.of("demo-data", demo + ".xlsx"), folder.resolve(demo + ".html"));
                page.file.toFile().deleteOnExit();
                folder.toFile().deleteOnExit();
                return page;
            } catch (IOException fault) {
                throw new UncheckedIOException(fault);
            }
        });
    }

    /** Plans a book and writes its page. */
    static PlannedPage of(Path book, Path page) throws IOException {
        try {
            BookResult result = new Planning(1, MOST_S).plan(book);
            try (OutputStream output = Files.newOutputStream(page)) {
                new BenchPage(result).write(output);
            }
            return new PlannedPage(result, page);
        } catch (WorkbookProblems problems) {
            throw new AssertionError(problems.messages().toString(), problems);
        }
    }

    /** A browser. Without one on this machine: aborts, and fails in CI. */
    static Browser browser() throws IOException {
        List<String> missing = Browser.missing();
        Needed.here(missing.isEmpty(), "programs " + missing);
        return new Browser();
    }
}
