package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the sums hand over as keys and values is put into words by the language and the units of the report. */
class SpokenWordsTest {
    private static final Message RIDGE = Message.movement(new Band(0.02e-3, 0.05e-3, 0.08e-3));

    /** A thousandth of an inch is 0.0254 mm. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "MM; 0.05 (0.02 to 0.08) mm; 0.8 mm",
                "THOU; 2.0 (0.8 to 3.1) thou; 0.031 in",
                "BOTH; 0.05 (0.02 to 0.08) mm or 2.0 (0.8 to 3.1) thou; 0.8 mm (0.031 in)"
            })
    void lengthsAreInTheUnitsOfTheReader(LengthUnits units, String movement, String size) {
        BenchStyle style = new BenchStyle(units, Wording.english());
        assertEquals(movement, style.tell(RIDGE));
        assertEquals(size, style.tell(Message.size(Length.ofMillimetres(0.8))));
    }

    @Test
    void numbersCarryTheMarksOfTheLanguage() {
        BenchStyle pretend = new BenchStyle(LengthUnits.MM, PretendLanguage.WORDING);
        assertEquals("\u221217,8", pretend.tell(Message.number(-17.778, 1)));
        assertEquals("\u221217.8", BenchStyle.ENGLISH.tell(Message.number(-17.778, 1)));
    }

    @Test
    void aBandWithoutWidthIsANumber() {
        assertEquals("0.4", BenchStyle.ENGLISH.tell(Message.number(Band.exact(0.4), 1)));
        assertEquals("0.4 (0.3 to 0.6)", BenchStyle.ENGLISH.tell(Message.number(new Band(0.3, 0.4, 0.6), 1)));
    }

    @Test
    void messagesFillMessages() {
        Message stays = Message.list(
                "bench.semicolon",
                List.of(
                        Message.of(
                                "rule.way.stay", Map.of("name", Message.verbatim("{rule}"), "date", Message.day(3, 9))),
                        Message.verbatim("home")));
        assertEquals(
                "The outdoor air as it is, out of rain and sun. The way: {rule} from 9 March; home.",
                BenchStyle.ENGLISH.tell(
                        Message.of("rule.way", Map.of("rule", Message.of("rule.outdoors"), "stays", stays))));
    }

    @Test
    void tablesHoldTheirWordsUnlessTheLanguageHasItsOwn() {
        Message nickel = Message.tabled("table.caution.nickel", "Holds nickel.");
        assertEquals("Holds nickel.", BenchStyle.ENGLISH.tell(nickel));
        assertNotEquals("Holds nickel.", new BenchStyle(LengthUnits.MM, PretendLanguage.WORDING).tell(nickel));
    }

    @Test
    void whatHasNoTextIsNamed() {
        Message unknown = Message.of("note.zorg");
        assertEquals(
                "the language file 'en' has no text for note.zorg",
                assertThrows(IllegalStateException.class, () -> BenchStyle.ENGLISH.tell(unknown))
                        .getMessage());
    }

    /** Different messages may come to the same words; readers meet words. */
    @Test
    void equalSentencesAreToldOnceWhateverTheyAreMadeOf() {
        List<FindingDigest> digests = FindingDigest.of(
                BenchStyle.ENGLISH,
                List.of(
                        new Finding(Finding.Kind.CAUTION, "teak", Message.of("note.rust")),
                        new Finding(
                                Finding.Kind.CAUTION,
                                "wenge",
                                Message.verbatim(BenchStyle.ENGLISH.tell(Message.of("note.rust"))))),
                Map.of());
        assertEquals(1, digests.size());
        assertEquals(List.of("teak", "wenge"), digests.get(0).subjects());
    }

    @Test
    void whatANoteIsAboutIsSaidInTheLanguage() {
        BenchStyle pretend = new BenchStyle(LengthUnits.MM, PretendLanguage.WORDING);
        assertEquals("\u27e6glue in heat\u27e7", FindingDigest.worded(pretend, "glue in heat", Map.of()));
        assertEquals("\u27e6treated wood\u27e7", FindingDigest.worded(pretend, "treated-wood", Map.of()));
        assertEquals("\u27e6hot car\u27e7", FindingDigest.worded(pretend, "hot-car", Map.of()));
        assertEquals("--samples", FindingDigest.worded(pretend, "--samples", Map.of()));
        assertEquals("tang.butt_thickness", FindingDigest.worded(pretend, "tang.butt_thickness", Map.of()));
    }
}
