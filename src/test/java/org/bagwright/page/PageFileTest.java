package org.bagwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.codec.digest.DigestUtils;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The file of a page as text: its size, its policy, and what its scripts do not do. */
@Tag("regression")
class PageFileTest {
    private static final Path SOURCES = Path.of("src", "main", "resources", "org", "bagwright", "page");

    /** Ways to make markup or code from text, to store, or to reach out. */
    private static final Pattern FORBIDDEN = Pattern.compile(
            "innerHTML|outerHTML|insertAdjacentHTML|document\\.write|\\beval\\b|\\bFunction\\(|DOMParser|createContextualFragment"
                    + "|setHTML|srcdoc|javascript:|setTimeout\\(\\s*[\"'`]|localStorage|sessionStorage|indexedDB|cookie"
                    + "|\\bfetch\\b|XMLHttpRequest|WebSocket|sendBeacon|\\bimport\\b|@import|url\\(");

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.list(SOURCES)) {
            return files.sorted().toList();
        }
    }

    @Test
    void sources_doNothingForbidden() throws IOException {
        for (Path source : sources()) {
            Matcher found = FORBIDDEN.matcher(Files.readString(source));
            assertFalse(found.find(), () -> source + " has " + found.group());
        }
    }

    @Test
    void sources_areSmallAndAllInThePage() throws IOException {
        String page = Files.readString(PlannedPage.demo("trio").file());
        for (Path source : sources()) {
            String text = Files.readString(source);
            assertTrue(text.lines().count() <= 220, source + " is long");
            assertTrue(page.contains(text), source + " is not in the page");
        }
    }

    /** The bounds of the design, bytes. */
    @ParameterizedTest
    @CsvSource({"trio, 200000", "full, 600000", "team, 3000000"})
    void page_isSmall(String demo, long mostBytes) throws IOException {
        long bytes = Files.size(PlannedPage.demo(demo).file());
        assertTrue(bytes < mostBytes, demo + ": " + bytes);
    }

    @Test
    void policy_allowsTheStyleAndTheScriptOfTheFileAlone() throws IOException {
        String page = Files.readString(PlannedPage.demo("trio").file());
        String policy = between(page, "Content-Security-Policy\" content=\"", "\"");
        assertEquals(
                "default-src 'none'; style-src " + source(between(page, "<style>", "</style>")) + "; script-src "
                        + source(between(page, "<script>", "</script>")) + "; base-uri 'none'; form-action 'none'",
                policy);
        assertEquals(1, count(page, "<style"));
        assertEquals(2, count(page, "<script"));
        assertEquals(0, count(page, " style="));
        assertEquals(1, count(page, "http://") + count(page, "https://"), "the name of drawings, and no address");
    }

    private static String source(String text) {
        byte[] digest = DigestUtils.sha256(text.getBytes(StandardCharsets.UTF_8));
        return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    }

    private static String between(String text, String from, String to) {
        int start = text.indexOf(from) + from.length();
        return text.substring(start, text.indexOf(to, start));
    }

    private static long count(String text, String part) {
        return Pattern.compile(Pattern.quote(part)).matcher(text).results().count();
    }

    @Test
    void data_cannotEndItsElement() throws IOException {
        Path folder = Files.createTempDirectory("bagwright-hostile");
        PlannedPage page =
                PlannedPage.of(PageBooks.HOSTILE.write(folder.resolve("book.xlsx")), folder.resolve("a.html"));
        String text = Files.readString(page.file());
        String data = between(text, "id=\"book\">", "</script>");
        assertTrue(data.endsWith("}") && data.contains("\\u003c/script>"), "the whole data");
        assertFalse(data.contains("<"), "no tag in it");
        assertEquals(2, count(text, "</script>"));
    }
}
