package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.Comparison.Ranked;
import hafthold.decide.Reason;
import hafthold.decide.Verdict;
import hafthold.quantity.Band;
import hafthold.simulate.HandleDays;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Settling;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** By the equator a handle takes its size once; what asks for care is named for what it is. */
class YearCourseTest {
    private static final HandleYear WALNUT = answer("walnut-black").year();
    private static final Optional<Settling> SETTLING = Optional.of(new Settling(new Band(1, 2, 4)));

    @Test
    void aSwingSmallAgainstWhatLastsIsNoMatterOfSeasons() {
        assertTrue(new YearCourse(0.03e-3, 0.12e-3).isOnce());
        assertTrue(new YearCourse(0.03e-3, -0.12e-3).isOnce());
        assertFalse(new YearCourse(0.05e-3, 0.12e-3).isOnce());
        assertFalse(new YearCourse(0.20e-3, -0.02e-3).isOnce());
    }

    @Test
    void whatNoFingerMindsIsNoSwing() {
        assertTrue(new YearCourse(0.02e-3, 0.04e-3).isOnce());
        assertFalse(new YearCourse(0, 0.01e-3).isOnce());
    }

    @Test
    void careIsWordedByWhatAsksForIt() {
        List<Reason> edge = reasons(Reason.Kind.EDGE_PROUD);
        assertEquals("care", YearCourse.word(Verdict.CARE, through(-0.02, 0.13), edge, true));
        assertEquals("care.once", YearCourse.word(Verdict.CARE, through(0.11, 0.13), edge, true));
        assertEquals(
                "care.watch",
                YearCourse.word(Verdict.CARE, through(-0.02, 0.13), reasons(Reason.Kind.GLUE_LINE), true));
        assertEquals("change", YearCourse.word(Verdict.CHANGE, through(0.11, 0.13), edge, true));
    }

    /** What moves by a hundredth does not move with the seasons, whatever else asks for care. */
    @Test
    void aFlushLaminateDoesNotMoveWithTheSeasons() {
        HandleYear laminate = answer("glass-epoxy-g10").year();
        assertEquals("care.watch", YearCourse.word(Verdict.CARE, laminate, reasons(Reason.Kind.PIN_HEAD_PROUD), true));
    }

    @Test
    void theBenchReadsHowMuchStaysAndWhenToSandIt() {
        String clause = new AnswerWords(BenchStyle.ENGLISH)
                .verdictOf(Verdict.CARE, through(0.11, 0.13), reasons(Reason.Kind.EDGE_PROUD), SETTLING);
        assertTrue(clause.startsWith("swells once here, within "), clause);
        assertTrue(
                Paragraph.plain(clause).endsWith("then stays about 0.12 mm proud: sand it flush once after that"),
                clause);
    }

    @Test
    void theCardSaysItToo() {
        Ranked answer = answer("walnut-black");
        HandleYear year = through(-0.13, -0.10);
        CardHandle handle = new CardHandle(
                InventedCard.order(Wording.english(), LengthUnits.MM),
                new Ranked(1, year, Verdict.CARE, reasons(Reason.Kind.EDGE_SHY), SETTLING, answer.holds()));
        assertTrue(handle.verdict().startsWith("This handle shrinks once, within "), handle.verdict());
        assertTrue(handle.timing().bestMonth().orElseThrow().contains("No month is better than another"));
    }

    @Test
    void nothingIsSaidToDoNoHarmThatMayCrack() {
        CardOrder order = InventedCard.order(Wording.english(), LengthUnits.MM);
        HandleYear year = through(-0.02, 0.13);
        Reason edge = reasons(Reason.Kind.EDGE_PROUD).get(0);
        Reason crack = reasons(Reason.Kind.SCALE_SPLIT).get(0);
        String harmless = new CardHandle(order, new Ranked(1, year, Verdict.CARE, List.of(edge), SETTLING)).verdict();
        String watched =
                new CardHandle(order, new Ranked(1, year, Verdict.CARE, List.of(edge, crack), SETTLING)).verdict();
        assertTrue(harmless.contains("It does no harm."), harmless);
        assertFalse(watched.contains("no harm"), watched);
    }

    /** The gap that is called normal is never one to call about. */
    @Test
    void whatIsNormalEndsBelowWhatIsACall() {
        for (CustomerCard card : InventedCard.all(InventedCard.order(Wording.english(), LengthUnits.MM))) {
            CardHandle handle = card.handles().get(0);
            assertTrue(
                    handle.bounds().normalGap().millimetres()
                            <= handle.bounds().alarmGap().millimetres(),
                    handle.name());
            assertTrue(1000 * handle.year().pins().gap().value()
                    <= handle.bounds().normalGap().millimetres() + 1e-9);
        }
    }

    private static Ranked answer(String id) {
        return InventedComparison.glued().ranked().stream()
                .filter(answer -> answer.year().scale().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<Reason> reasons(Reason.Kind kind) {
        return List.of(new Reason(
                kind, Band.exact(0.15e-3), InventedComparison.limits().get(2), true));
    }

    /** Black walnut whose edge goes evenly from one offset to the other, in millimetres. */
    private static HandleYear through(double from, double to) {
        List<Band> edge = IntStream.range(0, InventedComparison.DAYS)
                .mapToObj(day -> Band.exact(1e-3 * (from + (to - from) * day / (InventedComparison.DAYS - 1))))
                .toList();
        return WALNUT.with(WALNUT.grounds(), new HandleDays(edge, WALNUT.days().moisture()), List.of());
    }
}
