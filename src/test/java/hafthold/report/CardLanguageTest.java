package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.Setting;
import hafthold.decide.Reason;
import hafthold.decide.Verdict;
import hafthold.material.Cut;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;

/** A second language is one file: held by a pretend one, whose every text stands in brackets. */
class CardLanguageTest {
    private static final Pattern HOLE = Pattern.compile("\\{[a-z-]+}");
    private static final Pattern OPTIONAL = Pattern.compile("(material|treatment|cut|table)\\..*");
    private static final Pattern SENTENCE = Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"");

    @Test
    void aSecondLanguageHasTheKeysAndHolesOfTheFirst() {
        assertEquals(keys(Wording.english()), keys(PretendLanguage.WORDING));
        Wording.english().texts().forEach((key, text) -> {
            if (PretendLanguage.WORDING.has(key)) {
                assertEquals(holes(text), holes(PretendLanguage.WORDING.texts().get(key)), key);
            }
        });
    }

    @Test
    void hasATextForEverythingThatCanBeTheCase() {
        Wording english = Wording.english();
        for (Setting setting : Setting.all()) {
            assertTrue(english.has("setting." + setting.id()), setting.id());
        }
        for (Verdict verdict : Verdict.values()) {
            assertTrue(english.has("verdict." + verdict.word()), verdict.word());
            assertTrue(english.has("bench.count." + verdict.word() + ".one"), verdict.word());
        }
        for (Reason.Kind kind : Reason.Kind.values()) {
            String word = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
            assertTrue(english.has("bench.effect." + word), word);
            assertTrue(!kind.isUse() || english.has("reason." + word), word);
        }
        for (Cut cut : Cut.values()) {
            assertTrue(english.has("bench.cut." + cut.name().toLowerCase(Locale.ROOT)), cut.name());
        }
        for (CardCautions caution : CardCautions.values()) {
            assertTrue(english.has(caution.key()), caution.key());
        }
    }

    @Test
    void everyCardRendersInIt() {
        for (CustomerCard card : cards()) {
            assertFalse(card.html().isBlank());
            assertFalse(card.text().isBlank());
            assertFalse(card.markdown().isBlank());
            assertFalse(card.json().isBlank());
        }
    }

    @Test
    void everyWordOfACardComesFromItsLanguageFile() {
        for (CustomerCard card : cards()) {
            String name = card.handles().get(0).name();
            assertNoWord(card.text().replaceAll("\\s+", " "), card, name);
            assertNoWord(Jsoup.parse(card.html()).body().text(), card, name);
        }
    }

    private static void assertNoWord(String text, CustomerCard card, String name) {
        CardOrder order = card.order();
        List<String> invented = new ArrayList<>(List.of(order.shop().contact().orElse("-")));
        Stream.of(order.customer(), order.town(), order.knife(), order.shop().name())
                .forEach(word -> word.ifPresent(invented::add));
        invented.addAll(order.shop().prices().values());
        for (CardHandle handle : Stream.concat(
                        card.handles().stream(),
                        card.why().stream()
                                .flatMap(why -> why.ranked().stream())
                                .map(answer -> new CardHandle(card.order(), answer)))
                .toList()) {
            Stream.of(handle.name(), handle.nameAsHeading())
                    .map(own -> PretendLanguage.outside(own, List.of()).strip())
                    .filter(own -> !own.isEmpty())
                    .forEach(invented::add);
            handle.promise().ifPresent(invented::add);
        }
        assertEquals(List.of(), PretendLanguage.wordsOutside(text, invented), name + " says of itself");
    }

    @Test
    void writesNumbersInItsStyle() {
        String card = InventedCard.of(
                        InventedCard.order(PretendLanguage.WORDING, LengthUnits.MM),
                        InventedComparison.glued(),
                        "walnut-black")
                .html();
        assertTrue(Pattern.compile("\\d,\\d").matcher(card).find());
        String seen = Jsoup.parse(card).body().text().replaceAll("0\\.1 mm thick", "");
        assertFalse(Pattern.compile("\\d\\.\\d").matcher(seen).find(), seen);
    }

    @Test
    void namesWhatALanguageLacks() {
        assertEquals(Optional.empty(), Wording.of("xx"));
        assertEquals(Optional.empty(), Wording.of("../en"));
        assertThrows(IllegalStateException.class, () -> Wording.english().say("no.such.key"));
        assertThrows(IllegalStateException.class, () -> Wording.english().say("card.for"));
    }

    /** A literal with two words in it is a sentence; faults of the program's own making are not said to customers. */
    @Test
    void theCardsCodeHoldsNoSentence() throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/hafthold/report"))) {
            for (Path file : files.filter(path -> path.getFileName().toString().matches("(Card|CustomerCard).*\\.java"))
                    .toList()) {
                for (String line : Files.readAllLines(file)) {
                    boolean isComment =
                            line.strip().startsWith("*") || line.strip().startsWith("/*");
                    Matcher literal = SENTENCE.matcher(isComment ? "" : line);
                    while (literal.find()) {
                        if (literal.group().matches("\".*\\p{L}{2,} \\p{L}{2,}.*\"")) {
                            found.add(file.getFileName() + ": " + literal.group());
                        }
                    }
                }
            }
        }
        found.removeIf(text -> text.contains("a card ")); // faults of the program's own making
        found.removeIf(text -> text.contains("<body")); // markup
        found.removeIf(text -> text.startsWith("CardCautions")); // words looked for in a table, not said
        assertEquals(List.of(), found);
    }

    private static Set<String> keys(Wording wording) {
        Set<String> keys = new TreeSet<>(wording.texts().keySet());
        keys.removeIf(key -> OPTIONAL.matcher(key).matches());
        return keys;
    }

    private static Set<String> holes(String text) {
        Set<String> holes = new TreeSet<>();
        HOLE.matcher(text).results().forEach(hole -> holes.add(hole.group()));
        return holes;
    }

    private static List<CustomerCard> cards() {
        CardOrder order = InventedCard.order(PretendLanguage.WORDING, LengthUnits.BOTH);
        List<CustomerCard> cards = new ArrayList<>(InventedCard.all(order));
        cards.add(InventedCard.of(
                order, InventedComparison.glued(), "walnut-black", "walnut-black+lumen-resin", "linen-phenolic-le"));
        return cards;
    }
}
