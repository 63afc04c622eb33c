package org.bagwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.bagwright.domain.plan.BagResult;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Pages of unusual books, in a browser. */
@Tag("regression")
class PageBooksTest {
    private static Browser browser;

    @TempDir
    Path folder;

    @BeforeAll
    static void start() throws IOException {
        browser = PlannedPage.browser();
        browser.screen(820, 1180);
    }

    @AfterAll
    static void end() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    private PlannedPage open(PageBooks book) throws IOException {
        PlannedPage page = PlannedPage.of(book.write(folder.resolve("book.xlsx")), folder.resolve("book.html"));
        browser.logged("browser");
        browser.open(page.file(), "");
        return page;
    }

    private static long count(String selector) {
        return (long) browser.run("return document.querySelectorAll(arguments[0]).length", selector);
    }

    private static String text(String selector) {
        return (String) browser.run("return document.querySelector(arguments[0]).textContent", selector);
    }

    @ParameterizedTest
    @EnumSource
    void everyBook_showsWhatTheProgramSays_withoutAComplaint(PageBooks book) throws IOException {
        PlannedPage page = open(book);
        ShownNumbers.of(browser, page.result()).agree();
        browser.run("document.querySelectorAll('.actions button')[2].click()");
        ShownNumbers.of(browser, page.result()).agree();
        assertEquals("[]", browser.logged("browser").toString());
    }

    @Test
    void brokenLimits_areSaidInWords() throws IOException {
        PlannedPage page = open(PageBooks.BROKEN);
        assertTrue(page.result().plannedBreaks() > 0, "the plan cannot keep them");
        assertTrue(text(".broken").contains(" accepted"), text(".broken"));
        assertTrue(text(".story").contains("Still broken: "), text(".story"));
        assertTrue(count(".club .faults li") > 0, "the cards say it too");
        assertTrue(text("[role=status]").contains(" broken: "), text("[role=status]"));
    }

    @Test
    void ratedSleeves_haveAList() throws IOException {
        open(PageBooks.RATED);
        assertEquals(0, count(".dial"));
        assertEquals(10, count(".marks [role=radio]"));
        assertTrue(text(".marks").matches(".*Std\\d+\\.\\d\u00b0 \\d+\\.\\d\u00b0.*"), text(".marks"));
    }

    @Test
    void leftHander_hasTheTargetOnHisRight() throws IOException {
        open(PageBooks.LEFT);
        String hourOf3 = "return [...document.querySelectorAll('.dial')][0].querySelectorAll('.mark')"
                + "[2].style.left.replace('%', '')";
        assertTrue(Double.parseDouble((String) browser.run(hourOf3)) > 80, "hour 3 is toward the target");
        assertEquals("3", browser.run("return document.querySelectorAll('.dial .mark')[2].textContent"));
        assertEquals(3, count(".looks g[transform*='scale(-1 1)']"));
        open(PageBooks.BROKEN);
        assertTrue(
                Double.parseDouble((String) browser.run(hourOf3.replace("[2].style", "[6].style"))) < 20,
                "a right-hander has it on his left");
        assertEquals("3", browser.run("return document.querySelectorAll('.dial .mark')[6].textContent"));
    }

    @Test
    void fourteenCandidates_areInOneList() throws IOException {
        PlannedPage page = open(PageBooks.CANDIDATES);
        assertEquals(14, count(".club:first-child .field:first-of-type option"));
        browser.run("const list = document.querySelector('.club select'); list.value = 11;"
                + " list.dispatchEvent(new Event('change'))");
        assertEquals("Driver 12", text(".club h3"));
        ShownNumbers shown = ShownNumbers.of(browser, page.result());
        shown.agree();
        BagResult bag = page.result().bags().get(0);
        assertEquals(
                "Driver 12", bag.options().chosen(shown.chosen(0)).get(0).club().name());
    }

    @Test
    void hostileNames_areText() throws IOException {
        PlannedPage page = open(PageBooks.HOSTILE);
        assertEquals(page.result().bags().get(0).golfer().name(), text("h1"));
        assertEquals("<img src=x onerror=document.title='hit'>", text(".club h3"));
        assertEquals(0, count("img, b b, .club script"));
        assertEquals(
                "\u2068\u05d0\u05d1\u202e gnorw\u2069",
                browser.run("return document.querySelectorAll('.club h3')[2].textContent"));
        assertEquals(2, count("script"));
        assertTrue(!"hit".equals(browser.driver().getTitle()), browser.driver().getTitle());
        String pdf = new String(browser.printed(false), StandardCharsets.ISO_8859_1);
        assertTrue(pdf.startsWith("%PDF"), "it prints");
    }
}
