package hafthold.browser;

import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A browser without a window that opens the pages of reports as a customer's would. */
final class Browser implements AutoCloseable {
    /** The width of a small phone, CSS pixels. */
    static final int PHONE = 360;

    static final int DESK = 1200;

    private final ChromeDriver driver;

    Browser() {
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(System.getProperty("hafthold.chromium", "/usr/bin/chromium"));
        options.setCapability("goog:loggingPrefs", logs);
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--no-first-run");
        driver = new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(
                                Path.of(System.getProperty("hafthold.chromedriver", "/usr/bin/chromedriver"))
                                        .toFile())
                        .build(),
                options);
    }

    ChromeDriver driver() {
        return driver;
    }

    /** Opens a page as wide as a device, on a light or dark screen. */
    void open(Path page, int width, String scheme) {
        driver.manage().logs().get(LogType.BROWSER);
        driver.manage().logs().get(LogType.PERFORMANCE);
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", 800, "deviceScaleFactor", 1, "mobile", false));
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "media",
                        "screen",
                        "features",
                        List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
        driver.get(page.toAbsolutePath().toUri().toString());
    }

    /** What a script in the page answers. */
    Object ask(String script) {
        return driver.executeScript(script);
    }

    /** What the page complained of since it was opened. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Every address the page asked for since it was opened. */
    List<String> requests() {
        return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
                .map(LogEntry::getMessage)
                .filter(message -> message.contains("\"Network.requestWillBeSent\""))
                .map(message -> message.replaceAll("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"))
                .toList();
    }

    /** The page as it prints, a PDF; the page stays as for print. */
    byte[] printed(Paper paper) {
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        Map<String, Object> answer = driver.executeCdpCommand(
                "Page.printToPDF",
                Map.of(
                        "paperWidth", paper.widthInches(),
                        "paperHeight", paper.heightInches(),
                        "preferCSSPageSize", false,
                        "printBackground", true));
        return Base64.getDecoder().decode((String) answer.get("data"));
    }

    @Override
    public void close() {
        driver.quit();
    }

    /** What lies in the customer's printer. */
    enum Paper {
        A4(210 / 25.4, 297 / 25.4),
        LETTER(8.5, 11);

        private final double widthInches;
        private final double heightInches;

        Paper(double widthInches, double heightInches) {
            this.widthInches = widthInches;
            this.heightInches = heightInches;
        }

        double widthInches() {
            return widthInches;
        }

        double heightInches() {
            return heightInches;
        }
    }
}
