package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import hafthold.knife.Workshop;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CardPageTest {
    private static final String SCRIPT = "<script>alert('x')</script>\"><img src=x onerror=y>";

    static Stream<CustomerCard> cards() {
        return Stream.of(
                InventedCard.english("walnut-black"),
                InventedCard.english("glass-epoxy-g10"),
                InventedCard.english("greywood"),
                InventedCard.english("walnut-black", "walnut-black+lumen-resin", "linen-phenolic-le"));
    }

    @ParameterizedTest
    @MethodSource("cards")
    void isAWholePageThatFetchesAndRunsNothing(CustomerCard card) {
        org.jsoup.parser.Parser strict = org.jsoup.parser.Parser.htmlParser().setTrackErrors(50);
        strict.parseInput(card.html(), "");
        assertEquals(List.of(), strict.getErrors());
        Document page = Jsoup.parse(card.html());
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
    @MethodSource("cards")
    void readsInOrderWithAndWithoutEyes(CustomerCard card) {
        Document page = Jsoup.parse(card.html());
        assertEquals("en", page.selectFirst("html").attr("lang"));
        assertEquals(1, page.select("h1").size());
        int before = 1;
        for (Element heading : page.select("h1, h2, h3")) {
            int level = heading.tagName().charAt(1) - '0';
            assertTrue(level <= before + 1, heading.text());
            before = level;
        }
        for (Element svg : page.select("svg")) {
            for (String id : svg.attr("aria-labelledby").split(" ", -1)) {
                assertNotNull(page.getElementById(id), id);
                assertFalse(page.getElementById(id).text().isBlank(), id);
            }
        }
        List<String> ids = page.select("[id]").eachAttr("id");
        assertEquals(ids.size(), new HashSet<>(ids).size(), ids.toString());
        for (Element table : page.select("table")) {
            assertEquals("0", table.parent().attr("tabindex"), "a box that scrolls must be reachable by keyboard");
            assertFalse(table.selectFirst("caption").text().isBlank());
        }
    }

    @Test
    void whatAUserTypesStaysText() {
        CardOrder plain = InventedCard.order(Wording.english(), LengthUnits.MM);
        CardOrder odd = new CardOrder(
                Optional.of(SCRIPT),
                Optional.of(SCRIPT),
                Optional.of(SCRIPT),
                plain.date(),
                new Workshop(
                        Optional.of(SCRIPT),
                        Optional.of(SCRIPT),
                        Map.of("stays", SCRIPT, "care", SCRIPT, "change", SCRIPT, "refuse", SCRIPT),
                        Map.of("walnut-black", SCRIPT)),
                plain.limits(),
                plain.units(),
                plain.wording());
        for (CustomerCard card : List.of(
                InventedCard.of(odd, InventedComparison.glued(text -> text + SCRIPT), "walnut-black"),
                InventedCard.of(odd, InventedComparison.glued(text -> text + SCRIPT), "walnut-black", "teak"))) {
            Document page = Jsoup.parse(card.html());
            assertTrue(page.select("script, img").isEmpty());
            assertTrue(page.selectFirst("h1").text().contains(SCRIPT));
            assertTrue(page.body().text().contains("For " + SCRIPT));
            assertFalse(Pattern.compile("(?<!\\\\)<").matcher(card.markdown()).find(), "markdown lets markup through");
            assertTrue(card.markdown().contains("\\<script\\>"));
            assertTrue(card.json().contains("<script>alert('x')"), "JSON keeps text as it is");
        }
    }

    @ParameterizedTest
    @MethodSource("cards")
    void everyFormCarriesTheNumbersOfTheJson(CustomerCard card) throws IOException {
        Map<String, List<Double>> json = numbers(card.json());
        List<Double> months = json.get("month_mean_edge_mm");
        List<Double> printed = new ArrayList<>();
        Document page = Jsoup.parse(card.html());
        page.select("table tbody td").forEach(cell -> read(cell.text()).forEach(printed::add));
        boolean known = card.handles().stream().noneMatch(CardHandle::isUnknown);
        if (known) {
            List<Double> expected = new ArrayList<>();
            int handles = card.handles().size();
            expected.addAll(months.subList(0, 12 * handles));
            expected.addAll(months.subList(12 * handles, months.size()));
            assertEquals(expected.size(), printed.size());
            for (int i = 0; i < expected.size(); i++) {
                assertEquals(expected.get(i), printed.get(i), 0.005 + 1e-9);
            }
        }
        String text = card.text().replaceAll("\\s+", " ");
        String markdown = card.markdown().replace("\\", "");
        String body = Paragraph.plain(page.body().text());
        for (CardHandle handle : card.handles()) {
            String number = Paragraph.plain(handle.number());
            assertTrue(text.contains(number), number);
            assertTrue(markdown.contains(number), number);
            assertTrue(body.contains(number), number);
            if (!handle.isUnknown() && !handle.size().isNothing()) {
                assertTrue(json.get("step_printed_mm").contains(handle.size().millimetres()));
                assertTrue(number.contains(handle.size().number()));
            }
        }
        for (String cell : page.select("table tbody td").eachText()) {
            assertTrue(text.contains(cell), cell);
            assertTrue(markdown.contains("| " + cell + " |") || markdown.contains(" " + cell + " |"), cell);
        }
    }

    @Test
    void textAndQuoteReadAsTheyDid() throws IOException {
        String card = InventedCard.english("walnut-black").text();
        assertEquals(Golden.text("card.txt", card), card);
        String quote = InventedCard.of(
                        InventedCard.order(Wording.english(), LengthUnits.BOTH),
                        InventedComparison.damp(),
                        "walnut-black",
                        "antler-reindeer",
                        "linen-phenolic-le")
                .markdown();
        assertEquals(Golden.text("card-quote.md", quote), quote);
    }

    private static List<Double> read(String cell) {
        String plain = cell.replace('\u2212', '-').replace("+", "");
        return plain.matches("-?\\d+\\.\\d+") ? List.of(Double.valueOf(plain)) : List.of();
    }

    /** Numbers by the key they stand under, arrays flattened, in file order. */
    private static Map<String, List<Double>> numbers(String json) throws IOException {
        Map<String, List<Double>> numbers = new java.util.TreeMap<>();
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            String key = "";
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.FIELD_NAME) {
                    key = parser.currentName();
                } else if (token.isNumeric()) {
                    numbers.computeIfAbsent(key, any -> new ArrayList<>()).add(parser.getDoubleValue());
                }
            }
        }
        return numbers;
    }
}
