package org.bagwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The manual as one file: nothing outside it is needed. */
@Tag("regression")
class ManualHtmlTest {
    private static final Pattern SOURCE = Pattern.compile("src=\"([^\"]{0,20})");
    private static final Pattern LINK = Pattern.compile("href=\"([^\"]*)\"");

    @Test
    void pictures_areInside() throws IOException {
        List<MatchResult> sources = SOURCE.matcher(ManualHtml.page()).results().toList();
        assertTrue(sources.size() > 10, sources.size() + " pictures");
        for (MatchResult source : sources) {
            assertTrue(source.group(1).startsWith("data:image/"), source.group(1));
        }
    }

    @Test
    void links_stayInThePage() throws IOException {
        String page = ManualHtml.page();
        for (MatchResult link : LINK.matcher(page).results().toList()) {
            assertTrue(link.group(1).startsWith("#"), link.group(1));
            assertTrue(page.contains("id=\"" + link.group(1).substring(1) + "\""), link.group(1));
        }
    }

    @Test
    void chapters_comeInOrderWithTheirTables() throws IOException {
        String page = ManualHtml.page();
        int at = 0;
        for (ManualChapter chapter : ManualChapter.all()) {
            String title = chapter.text().lines().findFirst().orElseThrow().substring(2);
            int next = page.indexOf("<h1>" + title + "</h1>");
            assertTrue(next > at, title);
            at = next;
        }
        assertTrue(page.contains("<td>Stated at</td>"));
    }

    @Test
    void marksForTheMaker_areLeftOut() throws IOException {
        String page = ManualHtml.page();
        assertFalse(page.contains("<!--"));
        assertEquals(1, page.split("<style>", -1).length - 1);
    }
}
