package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.Claim;
import hafthold.decide.ClaimVerdict;
import hafthold.knife.MeasuringPoint;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ClaimTextTest {
    /** What most newspapers keep to (common practice, no source). */
    private static final double HIGHEST_GRADE = 8;

    private static final List<String> WORKSHOP_WORDS = List.of(
            "humidity", "moisture", "mc", "%", "shy", "proud", "tang", "verdict", "coefficient", "strain", "chance");

    @Test
    void readsAsItDidBefore() throws IOException {
        String fresh = new ClaimText(BenchStyle.ENGLISH).of(InventedClaim.of(ClaimVerdict.FINISH));
        assertEquals(Golden.text("claim.txt", fresh), fresh);
    }

    /** Everything the text says is in the note for notes too, each table as one. */
    @ParameterizedTest
    @EnumSource(ClaimVerdict.class)
    void markdownSaysWhatTheTextSays(ClaimVerdict verdict) {
        Claim claim = InventedClaim.of(verdict);
        String note = ClaimMarkdown.of(claim, BenchStyle.ENGLISH);
        assertTrue(note.startsWith("# "), note);
        ClaimAdvice advice = new ClaimAdvice(BenchStyle.ENGLISH, claim);
        List.of(advice.back(), new ClaimToDo(BenchStyle.ENGLISH, claim).words(), advice.sure())
                .forEach(said -> said.forEach(
                        sentence -> assertTrue(note.contains("- " + MarkdownText.escape(sentence) + "\n"), sentence)));
        assertTrue(note.contains("| 8 Feb 2026 | home | edges | 0.20 shy |"), note);
        assertTrue(note.contains(MarkdownText.escape(new ClaimForCustomer(BenchStyle.ENGLISH, claim).words())));
    }

    /** Where stock and home may be off at once the one that is named is not said to be all of it. */
    @Test
    void whatMayBeInPartIsSaidToBe() {
        Claim claim = InventedClaim.of(ClaimVerdict.FINISH);
        String text = new ClaimText(BenchStyle.ENGLISH).of(claim);
        assertTrue(claim.mayBeInPart());
        assertTrue(text.replaceAll("\\s+", " ").contains("perhaps in part only"), text);
        assertTrue(
                text.replaceAll("\\s+", " ")
                        .contains(
                                "Perhaps not yours alone. Besides it may be that the air where it lives is other than the tables have it (10 chances in 100)"),
                text);
    }

    /** A knife that is as it should be is told to be so, at the bench and to the customer. */
    @Test
    void aFlushKnifeIsSaidToBeFlush() {
        Claim claim = InventedClaim.measured(ClaimVerdict.WEATHER, InventedClaim.edge(MeasuringPoint.EDGES, 0.01));
        assertTrue(claim.isFlush());
        assertTrue(new ClaimWords(BenchStyle.ENGLISH, claim).verdict().startsWith("Nothing amiss"));
        String customer = new ClaimForCustomer(BenchStyle.ENGLISH, claim).words();
        assertTrue(customer.startsWith("We find nothing wrong") && !customer.contains("sand"), customer);
        assertFalse(String.join(" ", new ClaimToDo(BenchStyle.ENGLISH, claim).words())
                .contains("Do not sand it flush"));
        assertFalse(InventedClaim.of(ClaimVerdict.WEATHER).isFlush());
    }

    /** Damp moves both sides alike: one proud and one shy on a day is a slip or scales that sit askew. */
    @Test
    void sidesThatGoApartAreNamed() {
        Claim claim = InventedClaim.measured(
                ClaimVerdict.NOT_EXPLAINED,
                InventedClaim.edge(MeasuringPoint.EDGE_LEFT, -0.2),
                InventedClaim.edge(MeasuringPoint.EDGE_RIGHT, 0.2));
        String said = new ClaimWords(BenchStyle.ENGLISH, claim).verdict();
        assertTrue(said.contains("go apart by 0.40\u00a0mm") || said.contains("go apart by 0.40 mm"), said);
        assertTrue(String.join(" ", new ClaimToDo(BenchStyle.ENGLISH, claim).words())
                .contains("Measure again"));
    }

    /** What was suspected and would leave no trace is neither tried nor cleared, and that is said first. */
    @Test
    void whatWasSuspectedInVainIsNamed() {
        Claim claim = InventedClaim.of(ClaimVerdict.NOT_EXPLAINED);
        assertEquals(List.of(), claim.suspectedInVain());
        Claim vain = InventedClaim.suspecting(ClaimVerdict.NOT_EXPLAINED, "dishwasher", "soak");
        assertEquals(List.of("dishwasher"), vain.suspectedInVain());
        assertTrue(new ClaimWords(BenchStyle.ENGLISH, vain)
                .verdict()
                .contains("dishwasher would not show in what was measured"));
    }

    @Test
    void jsonAndCsvAreAsTheyWereBefore() throws IOException {
        Claim claim = InventedClaim.of(ClaimVerdict.FINISH);
        assertEquals(Golden.text("claim.json", ClaimJson.of(claim)), ClaimJson.of(claim));
        assertEquals(Golden.text("claim.csv", ClaimCsv.of(claim)), ClaimCsv.of(claim));
    }

    @ParameterizedTest
    @EnumSource(ClaimVerdict.class)
    void theVerdictComesFirstAndEveryLineFitsATerminal(ClaimVerdict verdict) {
        String text = new ClaimText(BenchStyle.ENGLISH).of(InventedClaim.of(verdict));
        String called = BenchStyle.ENGLISH.say("claim.called." + verdict.word());
        assertTrue(text.lines().findFirst().orElseThrow().contains(": " + called), text);
        assertTrue(text.lines().allMatch(line -> line.length() <= 104 && !line.endsWith(" ")), text);
        List<String> order = List.of("as far out", "Whose part", "comes back", "What to do", "How sure", "rests on");
        for (int i = 1; i < order.size(); i++) {
            assertTrue(text.indexOf(order.get(i - 1)) < text.indexOf(order.get(i)), order.get(i));
        }
        assertTrue(text.contains("loose handle is a hazard") && text.contains("no proof"), text);
    }

    @ParameterizedTest
    @EnumSource(ClaimVerdict.class)
    void theCustomerReadsPlainWords(ClaimVerdict verdict) {
        for (double edge : new double[] {-0.2, 0.2}) {
            String words = new ClaimForCustomer(
                            BenchStyle.ENGLISH, InventedClaim.of(InventedFit.walnut(), verdict, edge))
                    .words();
            double grade = FleschKincaid.of(words).grade();
            assertTrue(grade <= HIGHEST_GRADE, grade + ": " + words);
            String plain = words.toLowerCase(Locale.ROOT);
            WORKSHOP_WORDS.forEach(word -> assertFalse(
                    Pattern.compile("(?<![a-z])" + Pattern.quote(word) + "(?![a-z])")
                            .matcher(plain)
                            .find(),
                    word + ": " + words));
            assertTrue(words.contains("feels loose"), words);
        }
    }

    @Test
    void thePageHoldsThePictureAndEveryTableAndNoScript() {
        Map<String, String> files = new ClaimReport(
                        BenchStyle.ENGLISH, InventedKnives.LIMITS, List.of(), "width = \"26 mm\"", "hafthold claim x")
                .files(InventedClaim.of(ClaimVerdict.FINISH));
        Document page = Jsoup.parse(files.get(ClaimReport.PAGE));
        assertEquals(1, page.select("h1").size());
        assertEquals(0, page.select("script").size());
        assertTrue(page.select("figure#claim-course svg").size() == 2);
        assertTrue(page.select("table").size() >= 5);
        assertTrue(page.text().contains("width = \"26 mm\""));
        assertTrue(files.get("claim-course.svg").contains("0.20\u00a0mm shy"));
    }

    @Test
    void thouAreTheOnlyUnitWhereTheyAreAskedFor() {
        String text = new ClaimText(new BenchStyle(LengthUnits.THOU, Wording.english()))
                .of(InventedClaim.of(ClaimVerdict.WEATHER));
        String above = text.substring(0, text.indexOf("What was told"));
        assertTrue(above.contains(" thou"), above);
        assertFalse(Pattern.compile("\\d[\u00a0 ]mm").matcher(above).find(), above);
    }
}
