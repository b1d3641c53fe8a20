package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.Reason;
import hafthold.decide.Verdict;
import hafthold.quantity.Band;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ComparisonTextTest {
    private static final ComparisonText WITH_WALNUT =
            new ComparisonText(BenchStyle.ENGLISH, Optional.of("walnut-black"));

    @Test
    void readsAsItDidBefore() throws IOException {
        String fresh = WITH_WALNUT.of(InventedComparison.glued());
        assertEquals(Golden.text("comparison.txt", fresh), fresh);
    }

    @Test
    void readsInThouAsItDidBefore() throws IOException {
        ComparisonText inch = new ComparisonText(new BenchStyle(LengthUnits.BOTH, Wording.english()), Optional.empty());
        String fresh = inch.of(InventedComparison.unglued());
        assertEquals(Golden.text("comparison-unglued-inch.txt", fresh), fresh);
    }

    @Test
    void readsForADampPlaceAsItDidBefore() throws IOException {
        String fresh = WITH_WALNUT.of(InventedComparison.damp());
        assertEquals(Golden.text("comparison-damp.txt", fresh), fresh);
    }

    @Test
    void fitsATerminalOfAboutAHundredColumns() {
        for (Comparison comparison : List.of(InventedComparison.glued(), InventedComparison.damp())) {
            List<String> lines = WITH_WALNUT.of(comparison).lines().toList();
            assertTrue(lines.stream().allMatch(line -> line.length() <= 104));
            assertTrue(lines.stream().noneMatch(line -> line.endsWith(" ")));
        }
    }

    @Test
    void holdsNoControlCharactersButLineFeeds() {
        String text = WITH_WALNUT.of(InventedComparison.glued());
        assertFalse(Pattern.compile("[\\p{Cntrl}&&[^\\n]]").matcher(text).find());
    }

    @Test
    void saysUngluedWhereTheGluedEdgeEqualsTheFreeOne() {
        assertTrue(WITH_WALNUT.of(InventedComparison.unglued()).contains("taken as unglued"));
        assertTrue(WITH_WALNUT.of(InventedComparison.unglued()).contains("mm, unglued)"));
        assertFalse(WITH_WALNUT.of(InventedComparison.glued()).contains("unglued"));
    }

    @Test
    void speaksOfTheBestTheWorstThatCanBeJudgedAndTheNamedMaterial() {
        Comparison comparison = InventedComparison.glued();
        List<Ranked> ranked = comparison.ranked();
        List<Ranked> spoken = ChosenAnswers.spokenOf(comparison, Optional.of("teak"));
        assertEquals(ranked.get(0), spoken.get(0));
        assertEquals(ranked.get(ranked.size() - 2), spoken.get(1), "the last of all cannot be judged");
        assertEquals(
                List.of("teak", "teak"),
                spoken.subList(2, spoken.size()).stream()
                        .map(answer -> answer.year().scale().id())
                        .toList());
    }

    /** Of a few materials each has its line or its sentence, also one whose ends decide. */
    @Test
    void aShortListTellsWhatDecidesEach() {
        Comparison few = first(InventedComparison.unglued(), 5);
        String text = Paragraph.plain(WITH_WALNUT.of(few)).replaceAll("\\s+", " ");
        List<Ranked> brief = ChosenAnswers.inBrief(few, Optional.of("walnut-black"));
        assertFalse(brief.isEmpty());
        AnswerWords words = new AnswerWords(BenchStyle.ENGLISH);
        brief.forEach(answer -> assertTrue(text.contains(Paragraph.plain(words.line(answer))), words.line(answer)));
        assertEquals(List.of(), ChosenAnswers.inBrief(InventedComparison.unglued(), Optional.of("walnut-black")));
        Ranked last = few.ranked().get(4);
        Reason end = new Reason(
                Reason.Kind.END_GAP,
                Band.exact(0.13e-3),
                InventedComparison.limits().get(2),
                false);
        assertTrue(Paragraph.plain(words.line(new Ranked(5, last.year(), Verdict.CHANGE, List.of(end))))
                .endsWith(": change; the scale falls 0.13 mm short of the steel at bolster and butt, more than seasonal"
                        + " work allows (0.1 mm)."));
    }

    private static Comparison first(Comparison all, int count) {
        return new Comparison(
                all.placeId(),
                all.placeName(),
                all.settingId(),
                all.settingRule(),
                all.handle(),
                all.madeTemperature(),
                all.madeHumidity(),
                all.finishName(),
                all.dailyOutdoors(),
                all.dailyIndoors(),
                all.ranked().subList(0, count),
                all.findings());
    }

    @Test
    void usesNoEngineersWords() {
        String text = WITH_WALNUT.of(InventedComparison.glued());
        for (String word : List.of("strain", "MPa", "coefficient", "anisotrop", "hygro-", "sorption", "tangential")) {
            assertFalse(text.contains(word), word);
        }
    }
}
