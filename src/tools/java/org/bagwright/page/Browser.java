package org.bagwright.page;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The browser of the machine without a window, with nothing kept from earlier runs. */
public final class Browser implements AutoCloseable {
    private static final List<String> NAMES = List.of("chromium", "chromedriver");
    private static final String[] SWITCHES = {
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync"
    };

    private final Path profile;
    private final ChromeDriver driver;

    /**
     * Starts the browser.
     *
     * @throws IllegalStateException if it or its driver is not on the PATH
     */
    public Browser() throws IOException {
        profile = Files.createTempDirectory("bagwright-browser");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(onPath("chromium").orElseThrow(() -> new IllegalStateException("no chromium")));
        options.addArguments(SWITCHES);
        options.addArguments("--user-data-dir=" + profile);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(
                        onPath("chromedriver").orElseThrow(() -> new IllegalStateException("no chromedriver")))
                .build();
        driver = new ChromeDriver(service, options);
    }

    /** What is missing to start it, by name; empty where all is there. */
    public static List<String> missing() {
        return NAMES.stream().filter(name -> onPath(name).isEmpty()).toList();
    }

    private static Optional<File> onPath(String name) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(folder -> new File(folder, name))
                .filter(File::canExecute)
                .findFirst();
    }

    /** The driver itself. */
    public ChromeDriver driver() {
        return driver;
    }

    /** Shows a file, with an address after #, which may be empty. */
    public void open(Path page, String address) {
        driver.get("about:blank");
        driver.get(page.toUri() + address);
    }

    /** Runs a script in the page and gives what it returns. */
    public Object run(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    /** The first element that a selector finds. */
    public WebElement find(String selector) {
        return (WebElement) run("return document.querySelector(arguments[0])", selector);
    }

    /** A screen of this size in CSS pixels, as the page sees it. */
    public void screen(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    }

    /** Light or dark, and whether motion is to be reduced. */
    public void scheme(boolean dark, boolean still) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "features",
                        List.of(
                                Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"),
                                Map.of("name", "prefers-reduced-motion", "value", still ? "reduce" : ""))));
    }

    /** A processor so many times slower. */
    public void slower(double times) {
        driver.executeCdpCommand("Emulation.setCPUThrottlingRate", Map.of("rate", times));
    }

    /** A picture of the screen, or of the page in its whole length. */
    public void picture(Path file, boolean whole) throws IOException {
        if (whole) {
            Object data = driver.executeCdpCommand("Page.captureScreenshot", Map.of("captureBeyondViewport", true))
                    .get("data");
            Files.write(file, Base64.getDecoder().decode((String) data));
        } else {
            Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
        }
    }

    /** The page as it is printed, a PDF. */
    public byte[] printed(boolean letter) {
        Map<String, Object> paper = Map.of(
                "paperWidth",
                letter ? 8.5 : 8.27,
                "paperHeight",
                letter ? 11 : 11.69,
                "preferCSSPageSize",
                false,
                "printBackground",
                true);
        return Base64.getDecoder().decode((String)
                driver.executeCdpCommand("Page.printToPDF", paper).get("data"));
    }

    /** Presses keys where the focus is. */
    public void press(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    /** Presses a letter together with Control. */
    public void pressWithControl(String letter) {
        new Actions(driver)
                .keyDown(Keys.CONTROL)
                .sendKeys(letter)
                .keyUp(Keys.CONTROL)
                .perform();
    }

    /** What the browser has logged since the last time, such as requests or complaints about the page. */
    public List<String> logged(String type) {
        return driver.manage().logs().get(type).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    @Override
    public void close() throws IOException {
        driver.quit();
        try (Stream<Path> files = Files.walk(profile)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }
}
