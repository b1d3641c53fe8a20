package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

class ComparisonPageTest {
    private static final String COMMAND = "hafthold compare --place nordhavn --made-rh \"55 %\" --width \"26 mm\"";
    private static final ComparisonPage PAGE =
            new ComparisonPage(BenchStyle.ENGLISH, Optional.of("walnut-black"), InventedComparison.limits(), COMMAND);

    private final Comparison comparison = InventedComparison.glued();
    private final String html = PAGE.of(comparison);
    private final Document page = Jsoup.parse(html);

    @Test
    void isWellFormedEnoughForAStrictReader() {
        org.jsoup.parser.Parser strict = org.jsoup.parser.Parser.htmlParser().setTrackErrors(50);
        strict.parseInput(html, "");
        assertEquals(List.of(), strict.getErrors());
    }

    @Test
    void stepsDownItsHeadingsWithoutGaps() {
        assertEquals(1, page.select("h1").size());
        int before = 1;
        for (Element heading : page.select("h1, h2, h3, h4")) {
            int level = heading.tagName().charAt(1) - '0';
            assertTrue(level <= before + 1, heading.text());
            before = level;
        }
    }

    @Test
    void givesTheVerdictBeforeAnythingElse() {
        assertEquals(
                "Of 17 materials 5 stay put, 5 need care, 4 need a changed build, 2 do not belong here and 1 cannot be"
                        + " judged.",
                page.selectFirst("main > *").text());
        assertEquals("The answer", page.selectFirst("h2").text());
        assertEquals("Flat-sawn black walnut", page.selectFirst("article h3").text());
    }

    @Test
    void fetchesNothingAndRunsNothing() {
        assertTrue(page.select("script, link, iframe, object, embed, img, form").isEmpty());
        for (Element element : page.getAllElements()) {
            for (Attribute attribute : element.attributes()) {
                assertFalse(attribute.getKey().startsWith("on"), attribute.toString());
                assertFalse(
                        attribute.getValue().contains("://")
                                && !attribute.getKey().equals("xmlns"),
                        attribute.toString());
            }
        }
        assertFalse(Pattern.compile("url\\(|@import")
                .matcher(page.select("style").html())
                .find());
    }

    @Test
    void tellsEveryPictureInWords() {
        assertFalse(page.select("svg").isEmpty());
        for (Element svg : page.select("svg")) {
            assertEquals("img", svg.attr("role"));
            for (String id : svg.attr("aria-labelledby").split(" ", -1)) {
                Element words = page.getElementById(id);
                assertNotNull(words, id);
                assertFalse(words.text().isBlank(), id);
            }
        }
    }

    @Test
    void usesNoIdTwice() {
        List<String> ids = page.select("[id]").eachAttr("id");
        assertEquals(ids.size(), new HashSet<>(ids).size(), ids.toString());
    }

    @Test
    void givesEveryChartATitleASentenceAndItsNumbers() {
        assertEquals(5, page.select("figure").size());
        for (Element figure : page.select("figure")) {
            assertEquals(1, figure.select("> h3").size());
            assertTrue(figure.selectFirst("> p").text().endsWith("."), figure.id());
            assertEquals(1, figure.select("> .wide > svg").size());
            assertEquals(1, figure.select("> .narrow > svg").size());
            assertFalse(figure.select("> details table tbody tr").isEmpty());
        }
    }

    @Test
    void headsEveryTableAndBoxesItSoThatThePageNeverScrollsSideways() {
        for (Element table : page.select("table")) {
            assertFalse(table.selectFirst("caption").text().isBlank());
            assertFalse(table.select("thead th[scope=col]").isEmpty());
            assertEquals(
                    table.select("tbody tr").size(),
                    table.select("tbody th[scope=row]").size());
            assertTrue(table.parent().hasClass("scroll"));
            assertEquals("0", table.parent().attr("tabindex"), "a box that scrolls must be reachable by keyboard");
            int columns = table.select("thead tr > *").size();
            for (Element row : table.select("tbody tr")) {
                int cells = row.children().stream()
                        .mapToInt(cell -> cell.hasAttr("colspan") ? Integer.parseInt(cell.attr("colspan")) : 1)
                        .sum();
                assertEquals(columns, cells, row.text());
            }
        }
    }

    @Test
    void keepsMarkupInNamesAsText() {
        String script = "<script>alert('x')</script>\"><img src=x onerror=y>";
        Document odd = Jsoup.parse(PAGE.of(InventedComparison.glued(text -> text + script)));
        assertTrue(odd.select("script, img").isEmpty());
        assertTrue(odd.selectFirst("h1").text().endsWith(script));
    }

    @Test
    void carriesTheFiguresOfTheComparison() {
        List<Element> rows = page.select("figure#ranking details tbody tr");
        assertEquals(comparison.ranked().size(), rows.size());
        for (int i = 0; i < rows.size(); i++) {
            Ranked answer = comparison.ranked().get(i);
            assertEquals(
                    new AnswerWords(BenchStyle.ENGLISH).nameOf(answer.year()),
                    rows.get(i).child(0).text());
            List<Band> bands = List.of(
                    answer.year().edge().bonded().shy(),
                    answer.year().edge().bonded().proud(),
                    answer.year().edge().free().shy(),
                    answer.year().edge().free().proud());
            for (int k = 0; k < bands.size(); k++) {
                List<Double> printed = numbers(rows.get(i).child(k + 1).text());
                assertEquals(1000 * bands.get(k).value(), printed.get(0), 0.0005 + 1e-9);
                if (printed.size() > 1) {
                    assertEquals(1000 * bands.get(k).low(), printed.get(1), 0.0005 + 1e-9);
                    assertEquals(1000 * bands.get(k).high(), printed.get(2), 0.0005 + 1e-9);
                }
            }
        }
    }

    @Test
    void saysTheSameAsTheTerminal() {
        String text = new ComparisonText(BenchStyle.ENGLISH, Optional.of("walnut-black")).of(comparison);
        String flowing = text.replaceAll("\\s+", " ");
        for (Ranked answer : ChosenAnswers.spokenOf(comparison, Optional.of("walnut-black"))) {
            String sentence = Paragraph.plain(new AnswerWords(BenchStyle.ENGLISH).sentence(answer));
            assertTrue(flowing.contains(sentence), sentence);
            assertTrue(plain(page.select("article").text()).contains(sentence), sentence);
        }
        List<Element> rows = page.selectFirst("section > .scroll > table").select("tbody tr");
        List<String> lines = text.lines().toList();
        for (int i = 0; i < rows.size(); i++) {
            Ranked answer = comparison.ranked().get(i);
            String lead = answer.rank() + " ";
            String line = lines.stream()
                    .filter(candidate -> candidate.startsWith(lead))
                    .findFirst()
                    .orElseThrow();
            for (int cell : new int[] {2, 4, 5, 6}) {
                assertTrue(line.contains(plain(rows.get(i).child(cell).text())), line);
            }
        }
    }

    @Test
    void repeatsTheCommandExactly() {
        assertEquals(COMMAND, page.selectFirst("pre").wholeText());
    }

    @Test
    void showsEveryFindingOnceUnderItsHeading() {
        for (FindingDigest digest : FindingDigest.of(BenchStyle.ENGLISH, comparison)) {
            long shown = page.select("li").stream()
                    .filter(item -> plain(item.text()).endsWith(digest.text()))
                    .count();
            assertEquals(1, shown, digest.text());
        }
        assertTrue(page.selectFirst("section.mind").text().contains("gloves and mask"));
    }

    @Test
    void isMadeForPhonePaperAndDark() {
        assertEquals("en-GB", page.selectFirst("html").attr("lang"));
        assertTrue(page.selectFirst("meta[name=viewport]").attr("content").contains("width=device-width"));
        String style = page.selectFirst("style").html();
        for (String rule : List.of("prefers-color-scheme:dark", "@media print", "@page{size:A4", "max-width:640px")) {
            assertTrue(style.contains(rule), rule);
        }
    }

    @Test
    void givesEqualBytesForEqualRuns() {
        assertEquals(html, PAGE.of(InventedComparison.glued()));
    }

    @Test
    void speaksOfUngluedScalesWhereNothingHoldsThem() {
        Document unglued = Jsoup.parse(PAGE.of(InventedComparison.unglued()));
        assertTrue(unglued.text().contains("taken as unglued"));
        assertFalse(unglued.text().contains("Glue holds a scale back"));
        assertTrue(page.text().contains("Glue holds a scale back"));
    }

    private static String plain(String text) {
        return Paragraph.plain(text);
    }

    private static List<Double> numbers(String text) {
        List<Double> numbers = new ArrayList<>();
        Pattern.compile("[0-9.]+")
                .matcher(text)
                .results()
                .forEach(found -> numbers.add(Double.parseDouble(found.group())));
        return numbers;
    }
}
