package org.bagwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.Step;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/**
 * The page adds up what the program adds up: many set-ups of each demo book, chosen by hand in a browser. {@code -Dset.ups=300}
 * chooses more of them.
 */
@Tag("regression")
class PageNumbersTest {
    private static final int SET_UPS = Integer.getInteger("set.ups", 90);

    /** As many taps from one set-up of the address to the next. */
    private static final int TAPS = 3;

    private static Browser browser;

    private final Random random = new Random(21);

    @BeforeAll
    static void start() throws IOException {
        browser = PlannedPage.browser();
        browser.screen(1366, 768);
    }

    @AfterAll
    static void end() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void anySetUp_costsAndBreaksWhatTheProgramSays(String demo) throws IOException {
        PlannedPage page = PlannedPage.demo(demo);
        browser.open(page.file(), "");
        ShownNumbers.of(browser, page.result()).agree();
        for (int setUp = 0; setUp < SET_UPS; setUp++) {
            if (setUp % TAPS == 0) {
                browser.run(
                        "location.hash = arguments[0]; dispatchEvent(new HashChangeEvent('hashchange'))",
                        anyAddress(page));
            } else {
                tapAnything();
            }
            ShownNumbers.of(browser, page.result()).agree();
        }
    }

    /** Another golfer's turn with any option in every slot; the other bags as planned or anyhow. */
    private String anyAddress(PlannedPage page) {
        String digest = (String) browser.run("return JSON.parse(document.getElementById('book').textContent).digest");
        int golfers = page.result().bags().size();
        String bags = IntStream.range(0, golfers)
                .filter(golfer -> golfers == 1 || random.nextBoolean())
                .mapToObj(
                        golfer -> "&c" + golfer + "=" + any(page.result().bags().get(golfer)))
                .collect(Collectors.joining());
        return "#b=" + digest + "&g=" + random.nextInt(golfers) + bags;
    }

    private String any(BagResult bag) {
        return bag.options().slots().stream()
                .map(SlotOptions::options)
                .map(options -> Integer.toString(random.nextInt(options.size()), 36))
                .collect(Collectors.joining("."));
    }

    /** A tap on a mark or a step, or a key on a dial or a list. */
    private void tapAnything() {
        WebElement control = (WebElement) browser.run(
                """
                const all = [...document.querySelectorAll(".club .mark, .club .step:enabled, .club select")];
                const control = all[Math.floor(all.length * arguments[0])];
                control.scrollIntoView({block: "center"});
                return control;
                """,
                random.nextDouble());
        if (control.getTagName().equals("select")) {
            control.sendKeys(random.nextBoolean() ? Keys.ARROW_DOWN : Keys.ARROW_UP);
        } else if (random.nextInt(3) == 0 && control.getAttribute("class").contains("mark")) {
            browser.run("arguments[0].parentNode.querySelector('[tabindex=\"0\"]').focus()", control);
            browser.press(random.nextBoolean() ? Keys.ARROW_RIGHT : Keys.ARROW_UP);
        } else {
            control.click();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full"})
    void slider_showsTheBestBagForEachNumberOfChanges(String demo) throws IOException {
        PlannedPage page = PlannedPage.demo(demo);
        browser.open(page.file(), "");
        List<Step> steps = page.result().bags().get(0).steps();
        assertTrue(steps.size() > 2, "some steps");
        WebElement slider = browser.find(".steps input");
        slider.sendKeys(Keys.HOME);
        for (Step step : steps) {
            ShownNumbers shown = ShownNumbers.of(browser, page.result());
            assertEquals(step.state().chosen(), shown.chosen(0), "step " + step.changes());
            assertEquals(step.state().score().penaltyPoints(), shown.points(), 1e-9 * shown.points());
            slider.sendKeys(Keys.ARROW_RIGHT);
        }
    }
}
