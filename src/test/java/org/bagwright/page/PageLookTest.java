package org.bagwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** How the page fits screens, people and browsers: sizes, an audit of accessibility, and nothing that leaves the machine. */
@Tag("regression")
class PageLookTest {
    private static final List<String> SERIOUS = List.of("serious", "critical");

    /** The least contrast of text and the least target of a finger: WCAG 2.2 AA [memory], and what the design asks for. */
    private static final String AUDIT =
            """
            const done = arguments[arguments.length - 1];
            axe.run(document, {runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]})
              .then(found => done(found.passes.length < 20 ? [["serious", "the audit did not run"]] : found.violations.map(each => [each.impact, each.id + ": "
                + each.nodes.map(node => node.html.slice(0, 120)).slice(0, 3).join(" | ")])));
            """;

    private static final String SMALL_TARGETS =
            """
            return [...document.querySelectorAll("button, select, input[type=range], .todo label, summary")]
              .filter(each => each.checkVisibility())
              .map(each => [each.getBoundingClientRect(), each.outerHTML.slice(0, 90)])
              .filter(([box]) => box.height < 43.9 || box.width < 43.9).map(([box, text]) => text);
            """;

    private static Browser browser;

    @BeforeAll
    static void start() throws IOException {
        browser = PlannedPage.browser();
    }

    @AfterAll
    static void end() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    static Stream<Arguments> screens() {
        return Stream.of("trio", "full", "team")
                .flatMap(demo -> Stream.of(new int[] {360, 740}, new int[] {820, 1180}, new int[] {1920, 1080})
                        .map(screen -> Arguments.of(demo, screen[0], screen[1])));
    }

    @ParameterizedTest
    @MethodSource("screens")
    void nothing_isWiderThanTheScreen_orTooSmallForAFinger(String demo, int width, int height) {
        browser.screen(width, height);
        browser.open(PlannedPage.demo(demo).file(), "");
        long wide = (long) browser.run("return document.documentElement.scrollWidth");
        assertTrue(wide <= width, wide + " px wide");
        assertEquals(List.of(), browser.run(SMALL_TARGETS));
        Map<?, ?> glance =
                (Map<?, ?>) browser.run("const box = document.querySelector('.story').getBoundingClientRect();"
                        + " return {top: box.top, bottom: box.bottom}");
        double bottom = ((Number) glance.get("bottom")).doubleValue();
        assertTrue(bottom <= height, "the first screen tells the story, which ends at " + bottom);
    }

    @ParameterizedTest
    @CsvSource({"trio, false", "full, false", "team, false", "trio, true", "full, true", "team, true"})
    void audit_findsNothingSerious(String demo, boolean dark) throws IOException {
        browser.screen(820, 1180);
        browser.scheme(dark, true);
        browser.open(PlannedPage.demo(demo).file(), "");
        browser.run("document.querySelectorAll('details').forEach(each => { each.open = true; })");
        try (InputStream script = PageLookTest.class.getResourceAsStream("/axe.min.js")) {
            browser.run(new String(script.readAllBytes(), StandardCharsets.UTF_8));
        }
        List<?> found = (List<?>) browser.driver().executeAsyncScript(AUDIT);
        assertEquals(
                List.of(),
                found.stream()
                        .map(List.class::cast)
                        .filter(each -> SERIOUS.contains(each.get(0)))
                        .map(each -> each.get(1))
                        .toList());
    }

    @Test
    void noRequest_leavesTheFile_andNothingIsBlocked() {
        browser.screen(820, 1180);
        browser.logged("performance");
        browser.logged("browser");
        PlannedPage page = PlannedPage.demo("full");
        browser.open(page.file(), "");
        browser.run("document.querySelectorAll('.mark').forEach(each => each.click())");
        browser.printed(false);
        List<String> requests = browser.logged("performance").stream()
                .filter(line -> line.contains("Network.requestWillBeSent\""))
                .filter(line -> !line.contains(page.file().toUri().toString()) && !line.contains("about:blank"))
                .toList();
        assertEquals(List.of(), requests);
        assertEquals(List.of(), browser.run("return performance.getEntriesByType('resource').map(each => each.name)"));
        assertEquals(List.of(), browser.logged("browser"));
    }

    @Test
    void policy_refusesWhatIsNotInTheFile() {
        browser.open(PlannedPage.demo("trio").file(), "");
        assertEquals(
                "refused",
                browser.driver()
                        .executeAsyncScript("const done = arguments[arguments.length - 1];"
                                + " fetch('https://example.org/').then(() => done('sent'), () => done('refused'))"));
        browser.run("const script = document.createElement('script'); script.textContent = 'window.ran = true';"
                + " document.body.append(script)");
        assertEquals(null, browser.run("return window.ran"));
    }
}
