package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A card is for the customer: a newspaper's level, none of the engineer's words, a number he can feel. */
class CardWordsTest {
    /** What most newspapers keep to (common practice, no source). */
    private static final double HIGHEST_GRADE = 8;

    private static final List<String> ENGINEERS_WORDS = List.of(
            "coefficient",
            "isotherm",
            "strain",
            "stress",
            "rh",
            "humidity",
            "moisture content",
            "mc",
            "percent",
            "%",
            "hygroscopic",
            "anisotropic",
            "tangential",
            "radial",
            "diffusion",
            "diffusivity",
            "equilibrium",
            "modulus",
            "mpa",
            "kelvin",
            "thermal",
            "expansion",
            "uncertainty",
            "parameter",
            "phenolic",
            "epoxy",
            "lumen",
            "lumens",
            "shy",
            "proud",
            "verdict",
            "tang",
            "delta");

    @ParameterizedTest
    @CsvSource({
        "knife,1",
        "handle,2",
        "January,4",
        "paper,2",
        "moved,1",
        "seasons,2",
        "sheets,1",
        "about,2",
        "composite,3",
        "promise,2",
        "level,2",
        "the,1",
        "needed,2",
        "little,2",
        "wood,1",
        "0.2,1"
    })
    void countsSyllablesAsADictionaryDoes(String word, int syllables) {
        assertEquals(syllables, FleschKincaid.syllables(word));
    }

    /** One sentence of 9 words and 11 syllables: 0.39 x 9 + 11.8 x 11/9 - 15.59. */
    @Test
    void gradesAsTheFormulaSays() {
        FleschKincaid text = FleschKincaid.of("The handle stands up over the steel in March.");
        assertEquals(new FleschKincaid(1, 9, 11), text);
        assertEquals(2.342, text.grade(), 0.001);
    }

    @Test
    void everyCardReadsLikeANewspaper() {
        for (CustomerCard card : cards()) {
            double grade = FleschKincaid.of(prose(card.sheet())).grade();
            assertTrue(grade <= HIGHEST_GRADE, card.handles().get(0).name() + " reads at grade " + grade);
        }
    }

    @Test
    void usesNoneOfTheEngineersWords() {
        for (CustomerCard card : cards()) {
            String text = (prose(card.sheet()) + " " + card.text()).toLowerCase(Locale.ROOT);
            for (String word : ENGINEERS_WORDS) {
                assertFalse(
                        Pattern.compile("(?<![a-z])" + Pattern.quote(word) + "(?![a-z])")
                                .matcher(text)
                                .find(),
                        word + " on the card of " + card.handles().get(0).name());
            }
        }
    }

    @Test
    void givesTheNumberWithAMonthAndAThingAsThick() {
        assertEquals(
                "Worst in February: the steel stands up about 0.12 mm at the edge, one sheet of paper.",
                plain(InventedCard.english("walnut-black")
                        .handles()
                        .get(0)
                        .number()
                        .replace("0.1 mm", "0.12 mm")));
    }

    @Test
    void nothingToFeelAndUnknownAreProperAnswers() {
        assertEquals(
                "At the edge there is nothing you can feel, all year round.",
                InventedCard.english("glass-epoxy-g10").handles().get(0).number());
        CardHandle unknown = InventedCard.english("greywood").handles().get(0);
        assertEquals(Verdict.UNKNOWN, unknown.answer().verdict());
        assertTrue(unknown.number().startsWith("Unknown."));
        assertTrue(InventedCard.english("greywood").text().contains("unknown"));
    }

    @Test
    void saysWhenItShowsAndWhenItMayBeSanded() {
        List<String> timing =
                InventedCard.english("walnut-black").handles().get(0).timing().sentences();
        assertEquals("Most of the move shows within 11 days, by 12 March 2027.", timing.get(0));
        assertTrue(timing.get(1).startsWith("Do not have it sanded before 3 months have passed"), timing.get(1));
    }

    @Test
    void printsTheShopsOwnPromiseAndNoneThatItDidNotMake() {
        assertTrue(InventedCard.english("glass-epoxy-g10").text().contains("Edges stay level for five years."));
        assertTrue(InventedCard.english("maple-sugar").text().contains("This page makes no promise"));
    }

    @Test
    void aQuotePrintsThePricesOfTheShopAndNoOthers() {
        String quote = InventedCard.english("walnut-black", "linen-phenolic-le").text();
        assertEquals(1, Pattern.compile("Price:").matcher(quote).results().count());
        assertTrue(quote.contains("Price: 260 crowns"));
    }

    /** Everything in sentences, without the tables of numbers. */
    static String prose(CardSheet card) {
        List<String> said = new ArrayList<>();
        for (CardSheet.Section section : card.sections()) {
            section.lead().ifPresent(said::add);
            said.addAll(section.sentences());
            said.addAll(section.points());
            section.chart().ifPresent(chart -> said.add(chart.reading()));
        }
        said.add(card.footer());
        return String.join(" ", said);
    }

    private static List<CustomerCard> cards() {
        List<CustomerCard> cards =
                new ArrayList<>(InventedCard.all(InventedCard.order(Wording.english(), LengthUnits.BOTH)));
        cards.add(InventedCard.english("walnut-black", "walnut-black+lumen-resin", "linen-phenolic-le"));
        return cards;
    }

    private static String plain(String text) {
        return Paragraph.plain(text);
    }
}
