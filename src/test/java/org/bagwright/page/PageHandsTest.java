package org.bagwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** What hands do on the page: taps, drags, keys, undo, ticks, the address, another golfer, print. */
@Tag("regression")
class PageHandsTest {
    private static Browser browser;

    private final PlannedPage trio = PlannedPage.demo("trio");

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

    private static WebElement mark(String club, String mark) {
        return (WebElement) browser.run(
                "const card = [...document.querySelectorAll('.club')].find(each => each.querySelector('h3').textContent"
                        + " === arguments[0]);"
                        + " const found = [...card.querySelectorAll('.mark')].find(each =>"
                        + " each.querySelector('.name').textContent === arguments[1]);"
                        + " found.scrollIntoView({block: 'center'}); return found",
                club,
                mark);
    }

    private static boolean isChosen(String club, String mark) {
        return mark(club, mark).getAttribute("aria-checked").equals("true");
    }

    private static String text(String selector) {
        return (String) browser.run("return document.querySelector(arguments[0]).textContent", selector);
    }

    private static void press(String name) {
        browser.run(
                "[...document.querySelectorAll('.actions button')].find(each => each.textContent === arguments[0])"
                        + ".click()",
                name);
    }

    private static String hash() {
        return (String) browser.run("return location.hash");
    }

    @Test
    void tapOnAMark_turnsTheSleeve_andUndoTurnsItBack() throws IOException {
        browser.open(trio.file(), "");
        double planned = ShownNumbers.of(browser, trio.result()).points();
        mark("Driver", "3").click();
        assertTrue(isChosen("Driver", "3"));
        assertNotEquals(planned, ShownNumbers.of(browser, trio.result()).points());
        press("Undo");
        assertTrue(isChosen("Driver", "8"));
        assertEquals(planned, ShownNumbers.of(browser, trio.result()).points());
        mark("Driver", "3").click();
        browser.pressWithControl("z");
        assertTrue(isChosen("Driver", "8"));
    }

    @Test
    void dragOfTheHub_turnsTheSleeve_andIsUndoneAtOnce() {
        browser.open(trio.file(), "");
        WebElement from = mark("Driver", "8");
        List<WebElement> way =
                Stream.of("7", "6", "5").map(mark -> mark("Driver", mark)).toList();
        Actions drag = new Actions(browser.driver()).moveToElement(from).clickAndHold();
        way.forEach(drag::moveToElement);
        drag.release().perform();
        assertTrue(isChosen("Driver", "5"));
        press("Undo");
        assertTrue(isChosen("Driver", "8"));
    }

    @Test
    void arrowKeys_goRoundTheClock() {
        browser.open(trio.file(), "");
        browser.run("arguments[0].focus()", mark("Driver", "8"));
        browser.press(Keys.ARROW_RIGHT);
        assertTrue(isChosen("Driver", "7"), "the next mark clockwise as a right-hander sees it from the grip");
        browser.press(Keys.ARROW_LEFT, Keys.ARROW_LEFT);
        assertTrue(isChosen("Driver", "1"));
        assertEquals("1", browser.run("return document.activeElement.querySelector('.name').textContent"));
    }

    @Test
    void everyControl_isReachedByTab() {
        browser.open(trio.file(), "");
        browser.run("window.seen = new Set(); document.addEventListener('focusin', event => seen.add(event.target))");
        for (int tab = 0; tab < 25; tab++) {
            browser.press(Keys.TAB);
        }
        assertEquals(
                0L,
                browser.run(
                        "return [...document.querySelectorAll('button:enabled:not([tabindex=\"-1\"]), input, select,"
                                + " summary')].filter(each => each.checkVisibility() && !seen.has(each)).length"));
    }

    @Test
    void todayAndPlan_areOneTapAway() throws IOException {
        browser.open(trio.file(), "");
        press("Today");
        ShownNumbers today = ShownNumbers.of(browser, trio.result());
        assertEquals(trio.result().bags().get(0).today().chosen(), today.chosen(0));
        today.agree();
        press("Plan");
        assertEquals("#", browser.run("return location.href").toString().replaceAll(".*html", ""));
    }

    @Test
    void address_keepsTheSetUp() throws IOException {
        browser.open(trio.file(), "");
        mark("5 wood", "6").click();
        browser.run("document.querySelector('.todo input').click()");
        String kept = hash();
        List<Integer> chosen = ShownNumbers.of(browser, trio.result()).chosen(0);
        browser.open(trio.file(), kept);
        assertTrue(isChosen("5 wood", "6"));
        assertEquals(chosen, ShownNumbers.of(browser, trio.result()).chosen(0));
        assertEquals(true, browser.run("return document.querySelector('.todo input').checked"));
        assertEquals("0", browser.run("return String(localStorage.length + sessionStorage.length)"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"#b=0&c0=1.1.1", "#b=DIGEST&c0=zz.1.1", "#b=DIGEST&c0=1", "#b=DIGEST&g=9&t0=77", "#<b>", "#c0"})
    void strangeAddress_showsThePlan(String address) throws IOException {
        browser.open(trio.file(), "");
        String digest = (String) browser.run("return JSON.parse(document.getElementById('book').textContent).digest");
        browser.open(trio.file(), address.replace("DIGEST", digest));
        assertEquals(
                trio.result().plannedPoints(),
                ShownNumbers.of(browser, trio.result()).points(),
                1e-9);
        assertEquals(address.contains("c0="), !text(".notice").isEmpty());
    }

    @Test
    void liveRegion_tellsTheScore() {
        browser.open(trio.file(), "");
        mark("Driver", "3").click();
        String told = text("[role=status]");
        assertTrue(told.matches("\\d+\\.\\d\\d points, \\d+\\.\\d\\d more than the plan\\. .*"), told);
    }

    @Test
    void bench_listsTheWork_withTicks() {
        browser.open(trio.file(), "");
        assertTrue(text(".todo").contains("sleeve 7 \u2192 8, 1 mark counter-clockwise"), text(".todo"));
        press("Today");
        assertEquals("", text(".todo"));
    }

    @Test
    void otherGolfer_isPickedAndKept() throws IOException {
        PlannedPage team = PlannedPage.demo("team");
        browser.open(team.file(), "");
        new Actions(browser.driver()).click(browser.find(".pick select")).perform();
        browser.find(".pick select").sendKeys(Keys.ARROW_DOWN, Keys.ENTER);
        ShownNumbers second = ShownNumbers.of(browser, team.result());
        assertEquals(1, second.golfer());
        second.agree();
        browser.open(team.file(), hash());
        assertEquals(team.result().bags().get(1).golfer().name(), text("h1"));
    }

    @Test
    void stock_isSharedByAllGolfers() throws IOException {
        PlannedPage team = PlannedPage.demo("team");
        browser.open(team.file(), "");
        boolean runsShort = false;
        for (int golfer = 0; golfer < team.result().bags().size(); golfer++) {
            browser.run(
                    "const list = document.querySelector('.pick select'); list.value = arguments[0];"
                            + " list.dispatchEvent(new Event('change'))",
                    golfer);
            browser.run("document.querySelectorAll('.club .field select').forEach(list => {"
                    + " list.value = list.options[list.options.length - 1].value;"
                    + " list.dispatchEvent(new Event('change')); })");
            runsShort = runsShort || text(".broken").contains(" there");
            ShownNumbers.of(browser, team.result()).agree();
        }
        assertTrue(runsShort, "the last weighting for everyone takes more than there is");
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void printedCard_isOnePage(String demo) {
        browser.open(PlannedPage.demo(demo).file(), "");
        for (boolean letter : new boolean[] {false, true}) {
            String pdf = new String(browser.printed(letter), StandardCharsets.ISO_8859_1);
            assertEquals(
                    1,
                    Pattern.compile("/Type\\s*/Page\\b").matcher(pdf).results().count(),
                    demo);
        }
        assertFalse(browser.find(".club").getText().isEmpty(), "the page is there again after printing");
    }
}
