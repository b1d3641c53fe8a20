package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.FullTangFit;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FullTangChartsTest {
    private static final int LARGEST_BYTES = 150_000;
    private static final FullTangCharts CHARTS = new FullTangCharts(BenchStyle.ENGLISH, InventedKnives.LIMITS);

    static Stream<FullTangFit> knives() {
        return Stream.of(InventedKnives.WALNUT, InventedKnives.ODD_PAIR, InventedKnives.GLASS);
    }

    @ParameterizedTest
    @MethodSource("knives")
    void theDaysOfAnUseReachItsYear(FullTangFit fit) {
        for (StrengthUse use : StrengthUse.of(fit, BenchStyle.ENGLISH)) {
            double highest = Collections.max(use.daily());
            assertTrue(highest <= use.worst().value() + 1e-12, use.name());
        }
        if (fit.year().sides().size() == 1) {
            for (StrengthUse use : StrengthUse.of(fit, BenchStyle.ENGLISH)) {
                assertEquals(use.worst().value(), Collections.max(use.daily()), 1e-12, use.name());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("knives")
    void areSmall(FullTangFit fit) {
        for (ReportChart chart : CHARTS.of(fit)) {
            for (String svg : List.of(chart.wideSvg(), chart.narrowSvg(), chart.fileSvg())) {
                assertTrue(svg.getBytes(StandardCharsets.UTF_8).length < LARGEST_BYTES, chart.id());
            }
        }
    }

    @Test
    void readAKnifeThatMoves() {
        String section = CHARTS.section(InventedKnives.WALNUT).reading();
        double shy = 1000 * InventedKnives.WALNUT.whole().edge().bonded().shy().value();
        assertTrue(section.startsWith("Cut across at its widest place, 26 mm. On "), section);
        assertTrue(section.contains(String.format(Locale.ROOT, "%.2f mm shy half way up the scale", shy)), section);
        String pins = CHARTS.pins(InventedKnives.WALNUT).reading();
        assertTrue(pins.startsWith("The hole closes most on pin 1, by "), pins);
    }

    @Test
    void readAKnifeThatStaysPut() {
        assertTrue(CHARTS.section(InventedKnives.GLASS).reading().contains("stays where it was sanded all year"));
        assertTrue(CHARTS.edgeYear(InventedKnives.GLASS).reading().endsWith("stays flush in every month."));
    }

    @Test
    void drawEachScaleOfAnOddPairByItself() {
        ReportChart section = CHARTS.section(InventedKnives.ODD_PAIR);
        assertEquals(5, section.numbers().head().size());
        assertTrue(section.wideSvg().contains("left: flat-sawn"));
        assertTrue(section.wideSvg().contains("right: quarter-sawn"));
        assertTrue(section.wideSvg().contains("liners and glue"));
        assertTrue(section.reading().contains("the right edge, quarter-sawn,"));
    }

    @Test
    void markTheRoomThatAPinWasGiven() {
        String pins = CHARTS.pins(InventedKnives.WALNUT).wideSvg();
        assertTrue(pins.contains("as drilled"));
        assertTrue(pins.contains("4 mm in 4.1 mm, open, across"));
        assertEquals(
                "0.100",
                CHARTS.pins(InventedKnives.WALNUT).numbers().rows().get(1).get(1));
    }
}
