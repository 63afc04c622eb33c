package org.bagwright.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPOutputStream;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.planning.Planning;
import org.bagwright.planning.WorkbookProblems;

/**
 * Sizes and times of the pages of the demo books, on a processor that the browser slows down: {@code PageTimes [TIMES]},
 * where 4 stands for a slow tablet.
 */
public final class PageTimes {
    private static final int OPENED = 5;
    private static final int TAPS = 40;
    private static final String FIRST_PICTURE = """
            const done = arguments[arguments.length - 1];
            const told = () => {
              const paint = performance.getEntriesByName("first-contentful-paint")[0];
              paint ? done(paint.startTime) : setTimeout(told, 20);
            };
            told();
            """;

    /** From a tap to the moment after the next frame is drawn, ms, for taps on one mark after another. */
    private static final String ANSWERS = """
            const [count, done] = [arguments[0], arguments[arguments.length - 1]];
            const times = [];
            const tap = place => {
              const marks = [...document.querySelectorAll(".club .mark, .club .step:enabled")];
              const start = performance.now();
              marks[(place * 7) % marks.length].click();
              const handled = performance.now() - start;
              requestAnimationFrame(() => {
                const channel = new MessageChannel();
                channel.port1.onmessage = () => {
                  times.push([handled, performance.now() - start]);
                  times.length < count ? setTimeout(() => tap(place + 1), 30) : done(times);
                };
                channel.port2.postMessage("");
              });
            };
            tap(1);
            """;

    private PageTimes() {}

    public static void main(String[] args) throws IOException, WorkbookProblems {
        double times = args.length > 0 ? Double.parseDouble(args[0]) : 4;
        Path folder = Files.createTempDirectory("bagwright-times");
        System.out.println("| book | kB | kB packed | first picture, ms | tap handled, ms | tap drawn, ms | worst drawn, ms |");
        System.out.println("|---|---|---|---|---|---|---|");
        try (Browser browser = new Browser()) {
            browser.screen(820, 1180);
            for (String demo : List.of("trio", "full", "team")) {
                Path page = folder.resolve(demo + ".html");
                BookResult result = new Planning(1, 20).plan(Path.of("demo-data", demo + ".xlsx"));
                try (OutputStream output = Files.newOutputStream(page)) {
                    new BenchPage(result).write(output);
                }
                browser.slower(times);
                row(browser, demo, page);
                Files.delete(page);
            }
        }
        Files.delete(folder);
    }

    private static void row(Browser browser, String demo, Path page) throws IOException {
        byte[] bytes = Files.readAllBytes(page);
        double firstMs = 0;
        for (int opened = 0; opened < OPENED; opened++) {
            browser.open(page, "");
            firstMs = Math.max(firstMs, ((Number) browser.driver().executeAsyncScript(FIRST_PICTURE)).doubleValue());
        }
        List<double[]> answersMs = ((List<?>) browser.driver().executeAsyncScript(ANSWERS, TAPS))
                .stream()
                .map(List.class::cast)
                .map(pair -> new double[] {((Number) pair.get(0)).doubleValue(), ((Number) pair.get(1)).doubleValue()})
                .toList();
        System.out.printf(
                Locale.ROOT,
                "| %s | %.0f | %.0f | %.0f | %.1f | %.1f | %.1f |%n",
                demo,
                bytes.length / 1e3,
                packed(bytes) / 1e3,
                firstMs,
                median(answersMs, 0),
                median(answersMs, 1),
                answersMs.stream().mapToDouble(each -> each[1]).max().orElseThrow());
    }

    private static double median(List<double[]> answersMs, int place) {
        return answersMs.stream()
                .mapToDouble(each -> each[place])
                .sorted()
                .skip(answersMs.size() / 2)
                .findFirst()
                .orElseThrow();
    }

    private static int packed(byte[] bytes) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream output = new GZIPOutputStream(packed)) {
            output.write(bytes);
        }
        return packed.size();
    }
}
