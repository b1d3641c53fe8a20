package hafthold.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import hafthold.browser.Browser.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

/** Every kind of page in a real browser: on a phone, on a desk, in the dark, by keyboard and on paper. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PageTest {
    /** Success criteria of WCAG 2.1, levels A and AA, and the good habits that the checker knows. */
    private static final List<String> ACCESSIBILITY =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "best-practice");

    private Pages pages;
    private Browser browser;

    @BeforeAll
    void open() throws IOException {
        pages = Pages.made();
        browser = new Browser();
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    Stream<Path> pages() {
        return pages.all().stream();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void showsItsHeadingAndItsPictures(Path page) {
        browser.open(page, Browser.DESK, "light");
        assertFalse(browser.driver().getTitle().isBlank());
        assertEquals(1L, browser.ask("return document.querySelectorAll('h1').length"));
        assertTrue(
                (Long) browser.ask("return [...document.querySelectorAll('svg')]"
                                + ".filter(s => s.getClientRects().length && s.getBoundingClientRect().height > 40).length")
                        > 0,
                "at least one picture is to be seen");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void neverScrollsSidewaysOnAPhone(Path page) {
        browser.open(page, Browser.PHONE, "light");
        assertEquals(
                browser.ask("return document.documentElement.clientWidth"),
                browser.ask("return document.documentElement.scrollWidth"),
                "width of the page on " + Browser.PHONE + " px");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void asksForNothingButItselfAndComplainsOfNothing(Path page) {
        browser.open(page, Browser.DESK, "light");
        assertEquals(List.of(), browser.complaints());
        List<String> asked = browser.requests();
        assertEquals(List.of("file://" + page.toAbsolutePath()), asked.stream().distinct().toList());
    }

    @ParameterizedTest
    @MethodSource("pages")
    void hasContrastOrderAndNamesForEveryone(Path page) {
        for (String scheme : List.of("light", "dark")) {
            for (int width : List.of(Browser.DESK, Browser.PHONE)) {
                browser.open(page, width, scheme);
                List<Rule> broken = new AxeBuilder()
                        .withTags(ACCESSIBILITY)
                        .analyze(browser.driver())
                        .getViolations();
                assertEquals("", described(broken), scheme + " screen, " + width + " px wide");
            }
        }
    }

    private static String described(List<Rule> rules) {
        return rules.stream()
                .map(rule -> rule.getId() + " (" + rule.getHelp() + "): "
                        + rule.getNodes().stream()
                                .limit(3)
                                .map(node -> node.getTarget() + " " + node.getFailureSummary())
                                .collect(Collectors.joining(" | ")))
                .collect(Collectors.joining("\n"));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void leadsTheKeyboardDownThePage(Path page) {
        browser.open(page, Browser.DESK, "light");
        browser.ask("[...document.querySelectorAll('a[href], button, input, select, summary, [tabindex=\"0\"]')]"
                + ".filter(e => e.checkVisibility()).forEach((e, i) => e.dataset.stop = i)");
        long stops = (Long) browser.ask("return document.querySelectorAll('[data-stop]').length");
        for (long stop = 0; stop < stops; stop++) {
            new Actions(browser.driver()).sendKeys(Keys.TAB).perform();
            assertEquals(
                    Long.toString(stop),
                    browser.ask("return document.activeElement.dataset.stop"),
                    "element that the keyboard comes to as number " + stop);
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void printsWithoutEmptyPagesOrCutPictures(Path page) throws IOException {
        browser.open(page, Browser.DESK, "light");
        for (Paper paper : Paper.values()) {
            try (PDDocument print = Loader.loadPDF(browser.printed(paper))) {
                for (int number = 1; number <= print.getNumberOfPages(); number++) {
                    PDFTextStripper stripper = new PDFTextStripper();
                    stripper.setStartPage(number);
                    stripper.setEndPage(number);
                    assertFalse(stripper.getText(print).isBlank(), paper + ", page " + number + " of " + print.getNumberOfPages() + " is empty");
                }
                PDPage first = print.getPage(0);
                assertEquals(paper.widthInches() * 72, first.getMediaBox().getWidth(), 1);
            }
        }
        assertEquals(
                List.of(),
                browser.ask("return [...document.querySelectorAll('figure svg')]"
                        + ".filter(s => s.getClientRects().length && getComputedStyle(s.closest('figure')).breakInside != 'avoid'"
                        + " && getComputedStyle(s).breakInside != 'avoid' && getComputedStyle(s.parentElement).breakInside != 'avoid')"
                        + ".map(s => s.closest('figure').id)"),
                "pictures that a page break may cut");
        assertEquals(
                List.of(),
                browser.ask("return [...document.querySelectorAll('h1, h2, h3')]"
                        + ".filter(h => !['avoid', 'avoid-page'].includes(getComputedStyle(h).breakAfter))"
                        + ".map(h => h.textContent)"),
                "headings that may be left alone at the foot of a page");
    }

    @ParameterizedTest
    @MethodSource("cards")
    void printsACardOnOneSheet(Path card) throws IOException {
        browser.open(card, Browser.DESK, "light");
        for (Paper paper : Paper.values()) {
            try (PDDocument print = Loader.loadPDF(browser.printed(paper))) {
                assertEquals(1, print.getNumberOfPages(), paper + ": " + card);
            }
        }
    }

    Stream<Path> cards() {
        return pages().filter(page -> page.endsWith("card.html") || page.endsWith("quote.html"));
    }

    @Test
    void keepsAScriptInACustomersNameAsText() {
        String script = "<script>document.title='run'</script><img src=x onerror=\"document.title='run'\">";
        Path folder = Pages.FOLDER.resolve("script-in-name");
        Pages.run("card", "--place", "oslo", "--material", "walnut-black", "--customer", script, "--town", script,
                "--knife", script, "--out", folder.toString());
        browser.open(folder.resolve("card.html"), Browser.DESK, "light");
        assertEquals(0L, browser.ask("return document.querySelectorAll('script, img').length"));
        assertFalse(browser.driver().getTitle().equals("run"));
        assertTrue(((String) browser.ask("return document.body.innerText")).contains("onerror"));
        assertEquals(List.of(), browser.complaints());
    }
}
