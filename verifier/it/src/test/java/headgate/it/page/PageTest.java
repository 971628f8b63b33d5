package headgate.it.page;

import static org.assertj.core.api.Assertions.assertThat;

import headgate.verifier.report.Report;
import headgate.verifier.report.html.HtmlReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

class PageTest {

    /** Least contrast of text of normal size: WCAG 2.2, success criterion 1.4.3 (level AA). */
    private static final double LEAST_CONTRAST = 4.5;

    private static final Map<String, Path> FILES = new LinkedHashMap<>();
    private static final Map<String, Report> REPORTS = new LinkedHashMap<>();
    private static @Nullable Browser browser;

    @BeforeAll
    static void writePagesAndOpenTheBrowser() throws Exception {
        browser = Browser.open();
        for (String plan : List.of("lettuce-45-weeding", "lettuce-45-planting", "leek-75-planting")) {
            REPORTS.put(plan, Pages.sample(plan));
        }
        REPORTS.put("hostile", Pages.hostile());
        REPORTS.put("crowded", Pages.crowded());
        REPORTS.put("upright", Pages.upright());
        REPORTS.put("without-sheet", Pages.withoutSheet());
        Path folder = Path.of("target", "pages").toAbsolutePath();
        Files.createDirectories(folder);
        for (Map.Entry<String, Report> each : REPORTS.entrySet()) {
            Path file = folder.resolve(each.getKey() + ".html");
            Files.writeString(file, HtmlReport.of(each.getValue()));
            FILES.put(each.getKey(), file);
        }
    }

    @AfterAll
    static void closeTheBrowser() {
        if (browser != null) {
            browser.close();
        }
    }

    private static Browser show(String page, int width) {
        Browser open = Objects.requireNonNull(browser);
        open.show(Objects.requireNonNull(FILES.get(page)), width);
        return open;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lettuce-45-weeding",
                "lettuce-45-planting",
                "leek-75-planting",
                "hostile",
                "crowded",
                "upright",
                "without-sheet"
            })
    void aPageIsLegibleWholeAndQuiet(String page) {
        Browser open = show(page, 1280);
        Report report = Objects.requireNonNull(REPORTS.get(page));

        assertThat(open.complaints()).as("what the browser complains of").isEmpty();
        assertThat(open.list("fetched")).as("what the page fetches").isEmpty();
        assertThat(open.list("strangers")).as("what must not be on the page").isEmpty();
        WebElement verdict = open.driver().findElement(By.id("verdict"));
        assertThat(verdict.isDisplayed()).isTrue();
        assertThat(verdict.getText()).containsIgnoringCase(report.verdict().label());
        assertThat(verdict.getLocation().getY())
                .as("the verdict is seen without scrolling")
                .isLessThan(600);

        assertThat((Long) open.ask("labelCount"))
                .as("labels that were looked at")
                .isGreaterThan(20);
        assertThat(open.list("labels"))
                .as("labels outside their picture, or touching")
                .isEmpty();

        assertThat(open.ask("overflow")).as("pixels to scroll sideways").isEqualTo(0L);
        assertThat((Long) open.ask("textCount")).as("texts that were looked at").isGreaterThan(50);
        assertThat(open.list("pale", LEAST_CONTRAST))
                .as("texts that are too pale")
                .isEmpty();
        assertThat(open.ask("overflow"))
                .as("pixels to scroll sideways, unfolded")
                .isEqualTo(0L);
        assertThat(open.list("sticking")).as("what sticks out on the right").isEmpty();
    }

    @Test
    void theWholePageIsReachedByTheTabKeyInItsOrder() {
        Browser open = show("lettuce-45-planting", 1280);
        List<String> stops = open.list("stops");
        assertThat(stops).hasSizeGreaterThan(8);
        List<String> reached = new ArrayList<>();
        for (int i = 0; i < stops.size(); i++) {
            new Actions(open.driver()).sendKeys(Keys.TAB).perform();
            reached.add((String) open.ask("active"));
            assertThat(open.ask("focusShows"))
                    .as("focus shows on " + reached.get(i))
                    .isEqualTo(true);
        }
        assertThat(reached).isEqualTo(stops);
        assertThat(reached.get(0)).contains("Skip to the findings");
    }

    @Test
    void theSkipLinkLeadsToTheFindingsAndFoldsOpenByKey() {
        Browser open = show("lettuce-45-weeding", 1280);
        new Actions(open.driver()).sendKeys(Keys.TAB).sendKeys(Keys.ENTER).perform();
        assertThat(open.driver().getCurrentUrl()).endsWith("#findings");
        assertThat(open.driver().findElements(By.cssSelector("details[open]"))).isEmpty();
        new Actions(open.driver()).sendKeys(Keys.TAB).sendKeys(Keys.ENTER).perform();
        assertThat(open.driver().findElements(By.cssSelector("details[open]"))).hasSize(1);
    }

    /** The checks themselves must be able to find something. */
    @Test
    void theLookSeesWhatIsWrong() {
        Browser open = show("lettuce-45-weeding", 1280);
        open.driver().executeScript("""
                document.querySelectorAll('svg[role=img] text').forEach(t => t.setAttribute('x', '1030'));
                document.querySelector('h1').style.color = '#999';
                document.querySelector('h1').style.width = '3000px';
                document.body.append(document.createElement('iframe'));
                """);
        assertThat(open.list("labels")).anyMatch(b -> b.startsWith("outside"));
        assertThat(open.list("labels")).anyMatch(b -> b.startsWith("touching"));
        assertThat(open.list("pale", LEAST_CONTRAST)).anyMatch(b -> b.contains("h1"));
        assertThat((Long) open.ask("overflow")).isGreaterThan(1000);
        assertThat(open.list("sticking")).anyMatch(b -> b.contains("h1"));
        assertThat(open.list("strangers")).hasSize(1);
    }

    @Test
    void theBrowserItselfTellsOfAScriptThatThePolicyStops() throws IOException {
        Path file = Path.of("target", "pages", "broken.html").toAbsolutePath();
        String page = Files.readString(Objects.requireNonNull(FILES.get("lettuce-45-weeding")));
        Files.writeString(file, page.replace("</body>", "<script>document.title = 'ran';</script></body>"));
        Browser open = Objects.requireNonNull(browser);
        open.show(file, 1280);
        assertThat(open.complaints()).anyMatch(c -> c.contains("Content Security Policy"));
        assertThat(open.driver().getTitle()).isNotEqualTo("ran");
    }
}
