package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.Advice;
import hafthold.decide.KnifeFit;
import hafthold.decide.Reason;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FitPageTest {
    private static final String COMMAND = "hafthold fit \"my knife.toml\" --out report";
    private static final String INPUT = "[tang]\nwidth = \"26 mm\" # <edge> & edge\n";
    private static final List<Finding> CAUTIONS =
            List.of(new Finding(Finding.Kind.CAUTION, "all", Message.verbatim("Dust: sand with extraction.")));
    private static final FitPage PAGE =
            new FitPage(BenchStyle.ENGLISH, InventedKnives.LIMITS, CAUTIONS, INPUT, COMMAND);

    static Stream<KnifeFit> knives() {
        return Stream.of(InventedKnives.WALNUT, InventedKnives.ODD_PAIR, InventedKnives.GLASS, InventedKnives.STACK);
    }

    @ParameterizedTest
    @MethodSource("knives")
    void isWellFormedEnoughForAStrictReader(KnifeFit fit) {
        org.jsoup.parser.Parser strict = org.jsoup.parser.Parser.htmlParser().setTrackErrors(50);
        strict.parseInput(PAGE.of(fit), "");
        assertEquals(List.of(), strict.getErrors());
    }

    @ParameterizedTest
    @MethodSource("knives")
    void givesTheVerdictFirstThenWhatDecidesThenWhatToDo(KnifeFit fit) {
        Document page = page(fit);
        assertEquals(1, page.select("h1").size());
        Element first = page.selectFirst("main > *");
        assertEquals(fit.verdict().word(), first.selectFirst(".stamp").text());
        assertTrue(plain(first.text()).contains(plain(FitText.verdictSentence(fit, BenchStyle.ENGLISH))));
        assertEquals(
                List.of("What decides", "What to do"),
                page.select("h2").eachText().subList(0, 2));
        int before = 1;
        for (Element heading : page.select("h1, h2, h3, h4")) {
            int level = heading.tagName().charAt(1) - '0';
            assertTrue(level <= before + 1, heading.text());
            before = level;
        }
    }

    @ParameterizedTest
    @MethodSource("knives")
    void fetchesNothingAndRunsNothing(KnifeFit fit) {
        Document page = page(fit);
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

    @ParameterizedTest
    @MethodSource("knives")
    void tellsEveryPictureInWordsAndUsesNoIdTwice(KnifeFit fit) {
        Document page = page(fit);
        for (Element svg : page.select("svg")) {
            assertEquals("img", svg.attr("role"));
            for (String id : svg.attr("aria-labelledby").split(" ", -1)) {
                Element words = page.getElementById(id);
                assertNotNull(words, id);
                assertFalse(words.text().isBlank(), id);
            }
        }
        List<String> ids = page.select("[id]").eachAttr("id");
        assertEquals(ids.size(), new HashSet<>(ids).size(), ids.toString());
    }

    @ParameterizedTest
    @MethodSource("knives")
    void givesEveryChartATitleASentenceAndItsNumbers(KnifeFit fit) {
        for (Element figure : page(fit).select("figure")) {
            assertEquals(1, figure.select("> h3").size());
            assertTrue(figure.selectFirst("> p").text().endsWith("."), figure.id());
            assertEquals(1, figure.select("> .wide > svg").size());
            assertEquals(1, figure.select("> .narrow > svg").size());
            assertFalse(figure.select("> details table tbody tr").isEmpty());
        }
    }

    @Test
    void drawsWhatTheBuildHas() {
        assertEquals(
                List.of("section", "edge-year", "pins", "stress-year"),
                page(InventedKnives.WALNUT).select("figure").eachAttr("id"));
        assertEquals(
                List.of("section", "edge-year", "stress-year"),
                page(InventedKnives.ODD_PAIR).select("figure").eachAttr("id"));
        assertEquals(
                List.of("stack-parts", "stack-year"),
                page(InventedKnives.STACK).select("figure").eachAttr("id"));
    }

    @ParameterizedTest
    @MethodSource("knives")
    void headsEveryTableAndBoxesIt(KnifeFit fit) {
        for (Element table : page(fit).select("table")) {
            assertFalse(table.selectFirst("caption").text().isBlank());
            assertEquals(
                    table.select("tbody tr").size(),
                    table.select("tbody th[scope=row]").size());
            assertTrue(table.parent().hasClass("scroll"));
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
        String script = "<script>alert(1)</script>\"><img src=x onerror=y>";
        Document odd = page(InventedKnives.walnut(script));
        assertTrue(odd.select("script, img").isEmpty());
        assertEquals(script + " for Invented <air>", odd.selectFirst("h1").text());
    }

    @ParameterizedTest
    @MethodSource("knives")
    void saysTheSameAsTheTerminal(KnifeFit fit) {
        String note = new FitText(BenchStyle.ENGLISH).of(fit).replaceAll("\\s+", " ");
        Document page = page(fit);
        List<String> rows = page.select("dl.situation dd").eachText();
        assertTrue(rows.size() >= 5, rows.toString());
        rows.forEach(row -> assertTrue(note.contains(plain(row)), row));
        ReasonWords words = new ReasonWords(BenchStyle.ENGLISH, false);
        List<String> reasons = page.select("section ol.reasons:not(.advice) li").eachText();
        assertEquals(fit.reasons().size(), reasons.size());
        for (int i = 0; i < reasons.size(); i++) {
            Reason reason = fit.reasons().get(i);
            assertTrue(plain(words.clause(reason) + ".").equalsIgnoreCase(plain(reasons.get(i))), reasons.get(i));
        }
        List<Element> advice = page.select("ol.advice > li");
        assertEquals(fit.advice().size(), advice.size());
        for (int i = 0; i < advice.size(); i++) {
            Advice one = fit.advice().get(i);
            assertEquals(
                    plain(new AdviceWords(BenchStyle.ENGLISH).toDo(one.change()) + "."),
                    plain(advice.get(i).selectFirst("b").text()));
            assertEquals(
                    one.verdict().word(), advice.get(i).selectFirst(".stamp").text());
        }
    }

    @Test
    void carriesTheFiguresOfTheJson() {
        Map<String, String> json = ComparisonJsonTest.leaves(FitJson.of(InventedKnives.WALNUT));
        Document page = page(InventedKnives.WALNUT);
        List<Element> pins = page.select("figure#pins details tbody tr");
        List<String> keys = List.of(
                "squeeze_across_mm",
                "gap_across_mm",
                "squeeze_along_mm",
                "gap_along_mm",
                "head_proud_mm",
                "head_sunk_mm");
        assertEquals(2, pins.size());
        for (int pin = 0; pin < pins.size(); pin++) {
            for (int k = 0; k < keys.size(); k++) {
                String path = "pins/" + pin + "/" + keys.get(k);
                double value = Double.parseDouble(json.get(path + "/value"));
                assertEquals(
                        value,
                        Double.parseDouble(pins.get(pin).child(k + 2).text().split(" ", -1)[0]),
                        0.0005 + 1e-9);
            }
        }
        Element year = page.select("figure#stress-year details tbody tr").last();
        List<String> uses = List.of("glue_use", "middle_use", "tear_use", "pin_crack_use");
        for (int k = 0; k < uses.size(); k++) {
            double percent = 100 * Double.parseDouble(json.get(uses.get(k) + "/value"));
            assertEquals(percent, Double.parseDouble(year.child(k + 1).text().split(" ", -1)[0]), 0.05 + 1e-9);
        }
        Element half = page.select("figure#section details tbody tr").get(2);
        assertEquals(
                -Double.parseDouble(json.get("edge_shy_mm/value")),
                Double.parseDouble(half.child(1).text().replace('\u2212', '-')),
                0.0005 + 1e-9);
        assertEquals(
                Double.parseDouble(json.get("edge_proud_mm/value")),
                Double.parseDouble(half.child(2).text().replace('\u2212', '-')),
                0.0005 + 1e-9);
    }

    @Test
    void carriesTheFiguresOfAStack() {
        Map<String, String> json = ComparisonJsonTest.leaves(FitJson.of(InventedKnives.STACK));
        List<Element> parts = page(InventedKnives.STACK).select("figure#stack-parts details tbody tr");
        assertEquals(4, parts.size());
        for (int part = 0; part < parts.size(); part++) {
            double shrinks = Double.parseDouble(json.get("parts/" + part + "/shrinks_mm/value"));
            assertEquals(
                    shrinks, Double.parseDouble(parts.get(part).child(2).text().split(" ", -1)[0]), 0.0005 + 1e-9);
        }
    }

    @Test
    void repeatsTheCommandAndEchoesTheFileExactly() {
        Document page = page(InventedKnives.WALNUT);
        assertEquals(INPUT, page.selectFirst("details pre").wholeText());
        assertEquals(COMMAND, page.select("pre").last().wholeText());
        String inputs = page.select("section.inputs table").text();
        for (String word : List.of("26 mm wide", "6.05 mm", "4.1 mm", "20 °C and 55 % humidity", "good-new")) {
            assertTrue(plain(inputs).contains(word), word);
        }
    }

    @ParameterizedTest
    @MethodSource("knives")
    void showsEveryFindingAndEveryCaution(KnifeFit fit) {
        Document page = page(fit);
        for (Finding finding :
                Stream.concat(fit.findings().stream(), CAUTIONS.stream()).toList()) {
            String text = BenchStyle.ENGLISH.tell(finding.message());
            long shown = page.select("li").stream()
                    .filter(item -> plain(item.text()).endsWith(plain(text)))
                    .count();
            assertEquals(1, shown, text);
        }
        assertTrue(page.selectFirst("section.mind").text().contains("extraction"));
    }

    @Test
    void statesTheLimitsOfTheClassThatWasJudgedBy() {
        List<String> good = verdictRows(InventedKnives.WALNUT);
        assertTrue(good.get(0).startsWith("stays good new work"), good.toString());
        assertTrue(good.get(2).startsWith("change retouch work"), good.toString());
        List<String> seasonal = verdictRows(InventedKnives.STACK);
        assertTrue(seasonal.get(0).startsWith("stays seasonal work"), seasonal.toString());
        assertTrue(seasonal.get(1).startsWith("care retouch work"), seasonal.toString());
        assertTrue(seasonal.get(2).contains("worked too hard"), seasonal.toString());
    }

    @Test
    void givesEqualBytesForEqualRunsWhateverTheLocale() {
        Locale before = Locale.getDefault();
        String html = PAGE.of(InventedKnives.ODD_PAIR);
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(html, PAGE.of(InventedKnives.ODD_PAIR));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void writesEveryFileOfTheReport() {
        FitReport report = new FitReport(
                new BenchStyle(LengthUnits.BOTH, Wording.english()), InventedKnives.LIMITS, CAUTIONS, INPUT, COMMAND);
        Map<String, String> files = report.files(InventedKnives.WALNUT);
        assertEquals(
                List.of(
                        "section.svg",
                        "edge-year.svg",
                        "pins.svg",
                        "stress-year.svg",
                        "fit.json",
                        "fit.txt",
                        "fit.html"),
                List.copyOf(files.keySet()));
        assertTrue(files.get("fit.txt").endsWith("\nMind\n  - Dust: sand with extraction.\n"));
        assertTrue(files.get("fit.html").contains("thou"));
    }

    private static List<String> verdictRows(KnifeFit fit) {
        return page(fit).select("table").stream()
                .filter(table -> table.selectFirst("caption").text().startsWith("Limits behind"))
                .findFirst()
                .orElseThrow()
                .select("tbody tr")
                .eachText();
    }

    private static Document page(KnifeFit fit) {
        return Jsoup.parse(PAGE.of(fit));
    }

    private static String plain(String text) {
        return Paragraph.plain(text);
    }
}
