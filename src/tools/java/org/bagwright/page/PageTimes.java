package org.bagwright.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.GZIPOutputStream;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.planning.Planning;
import org.bagwright.planning.WorkbookProblems;

/**
 * Sizes and times of the pages of the demo books, on a processor that the browser slows down: {@code PageTimes [TIMES]},
 * where 4 is a slow tablet.
 */
public final class PageTimes {
    private static final int OPENED = 5;
    private static final int TAPS = 40;
    private static final String FIRST_PICTURE =
            """
            const done = arguments[arguments.length - 1];
            const told = () => {
              const paint = performance.getEntriesByName("first-contentful-paint")[0];
              paint ? done(paint.startTime) : setTimeout(told, 20);
            };
            told();
            """;

    /** Taps one mark or step and waits for the frame after it; gives the time between, ms. */
    private static final String TAP =
            """
            const [place, done] = [arguments[0], arguments[arguments.length - 1]];
            const marks = [...document.querySelectorAll(".club .mark, .club .step:enabled")];
            const start = performance.now();
            marks[(place * 7) % marks.length].click();
            requestAnimationFrame(() => {
              const channel = new MessageChannel();
              channel.port1.onmessage = () => done(performance.now() - start);
              channel.port2.postMessage("");
            });
            """;

    private static final List<String> WORK = List.of("ScriptDuration", "RecalcStyleDuration", "LayoutDuration");

    private PageTimes() {}

    public static void main(String[] args) throws IOException, WorkbookProblems {
        double times = args.length > 0 ? Double.parseDouble(args[0]) : 4;
        Path folder = Files.createTempDirectory("bagwright-times");
        System.out.println("| book | kB | kB packed | first picture, ms | tap, ms | tap: processor time, ms |");
        System.out.println("|---|---|---|---|---|---|");
        try (Browser browser = new Browser()) {
            browser.screen(820, 1180);
            for (String demo : List.of("trio", "full", "team")) {
                Path page = folder.resolve(demo + ".html");
                BookResult result = new Planning(1, 20).plan(Path.of("demo-data", demo + ".xlsx"));
                try (OutputStream output = Files.newOutputStream(page)) {
                    new BenchPage(result).write(output);
                }
                row(browser, demo, page, times);
                Files.delete(page);
            }
        }
        Files.delete(folder);
    }

    private static void row(Browser browser, String demo, Path page, double times) throws IOException {
        byte[] bytes = Files.readAllBytes(page);
        browser.slower(times);
        List<Double> firstMs = new ArrayList<>();
        for (int opened = 0; opened < OPENED; opened++) {
            browser.open(page, "");
            firstMs.add(asked(browser, FIRST_PICTURE));
        }
        List<Double> tapMs = new ArrayList<>();
        for (int tap = 0; tap < TAPS; tap++) {
            tapMs.add(asked(browser, TAP, tap));
        }
        System.out.printf(
                Locale.ROOT,
                "| %s | %.0f | %.0f | %.0f | %.0f | %.0f |%n",
                demo,
                bytes.length / 1e3,
                packed(bytes) / 1e3,
                median(firstMs),
                median(tapMs),
                times * workMs(browser, page));
    }

    private static double asked(Browser browser, String script, Object... arguments) {
        return ((Number) browser.driver().executeAsyncScript(script, arguments)).doubleValue();
    }

    private static double median(List<Double> valuesMs) {
        return valuesMs.stream().sorted().toList().get(valuesMs.size() / 2);
    }

    /** What the page's thread works for a tap at full speed, ms: scripts, styles and layout; other programs do not count. */
    private static double workMs(Browser browser, Path page) {
        browser.slower(1);
        browser.driver().executeCdpCommand("Performance.enable", Map.of("timeDomain", "threadTicks"));
        browser.open(page, "");
        double beforeMs = workMs(browser);
        for (int tap = 0; tap < TAPS; tap++) {
            asked(browser, TAP, tap);
        }
        double afterMs = workMs(browser);
        browser.driver().executeCdpCommand("Performance.disable", Map.of());
        return (afterMs - beforeMs) / TAPS;
    }

    private static double workMs(Browser browser) {
        List<?> metrics = (List<?>) browser.driver()
                .executeCdpCommand("Performance.getMetrics", Map.of())
                .get("metrics");
        return metrics.stream()
                .map(Map.class::cast)
                .filter(metric -> WORK.contains(metric.get("name")))
                .mapToDouble(metric -> 1000 * ((Number) metric.get("value")).doubleValue())
                .sum();
    }

    private static int packed(byte[] bytes) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream output = new GZIPOutputStream(packed)) {
            output.write(bytes);
        }
        return packed.size();
    }
}
