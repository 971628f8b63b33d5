package headgate.it.page;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.logging.Level;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A Chromium without a window. Where there is none, tests are skipped and say so; in CI they fail. */
final class Browser implements AutoCloseable {

    private static final List<String> BROWSERS = List.of("chromium", "chromium-browser", "google-chrome");
    private static final String DRIVER = "chromedriver";

    private final ChromeDriver driver;
    private final Path profile;

    private Browser(ChromeDriver driver, Path profile) {
        this.driver = driver;
        this.profile = profile;
    }

    static Browser open() throws IOException {
        Optional<Path> browser =
                BROWSERS.stream().flatMap(b -> onPath(b).stream()).findFirst();
        Optional<Path> control = onPath(DRIVER);
        if (browser.isEmpty() || control.isEmpty()) {
            String reason = "the page is not looked at: no Chromium with chromedriver is on the PATH";
            if ("true".equals(System.getenv("CI"))) {
                fail(reason + ", and in CI there must be one");
            }
            abort(reason);
        }
        Path profile = Files.createTempDirectory("headgate-page");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.orElseThrow().toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                "--user-data-dir=" + profile);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(control.orElseThrow().toFile())
                .withSilent(true)
                .build();
        return new Browser(new ChromeDriver(service, options), profile);
    }

    private static Optional<Path> onPath(String name) {
        return Arrays.stream(
                        Objects.requireNonNullElse(System.getenv("PATH"), "").split(File.pathSeparator))
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Shows a page in a window whose inside is so wide. */
    void show(Path page, int width) {
        driver.manage().window().setSize(new Dimension(width, 900));
        driver.get(page.toUri().toString());
    }

    ChromeDriver driver() {
        return driver;
    }

    /** What the browser complained of since it was last asked. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::toString)
                .toList();
    }

    /** Runs one of the functions of page.js. */
    Object ask(String function, Object... arguments) {
        return Objects.requireNonNull(
                driver.executeScript(script() + "\nreturn " + function + ".apply(null, arguments);", arguments));
    }

    /** Runs one of the functions of page.js that answers with a list of words. */
    List<String> list(String function, Object... arguments) {
        return ((List<?>) ask(function, arguments))
                .stream().map(String::valueOf).toList();
    }

    private static String script() {
        try (var in = Objects.requireNonNull(Browser.class.getResourceAsStream("page.js"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        driver.quit();
        delete(profile.toFile());
    }

    private static void delete(File file) {
        File[] inside = file.listFiles();
        if (inside != null) {
            Arrays.stream(inside).forEach(Browser::delete);
        }
        // A file that is left behind lies in the folder for temporary files.
        file.delete();
    }
}
