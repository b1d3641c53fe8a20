package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.EventSchedule;
import hafthold.knife.FullTangKnife;
import hafthold.material.ScaleMaterial;
import hafthold.simulate.Destination;
import hafthold.simulate.Sampling;
import hafthold.table.BuildFile;
import hafthold.table.EventTable;
import hafthold.table.EventWords;
import hafthold.table.LimitTable;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Advice is sought in the year without events; what the first comes to with them is the knife's own answer. */
class EventAdviceTest {
    private static final List<ScaleMaterial> STEADY = Stream.of("glass-epoxy-g10", "linen-phenolic-le")
            .map(FitOrders.LIBRARY::find)
            .toList();
    private static final KnifeJudge JUDGE =
            new KnifeJudge(LimitTable.read(FitOrders.TABLES), new Offer(STEADY, List.of()), Sampling.VALUE_ONLY);

    @Test
    void theFirstAdviceIsAnsweredWithTheEvents() {
        Destination rooms = FitOrders.swinging(20, 0.35, 0.25);
        EventSchedule dishes = new EventSchedule(
                List.of(EventWords.read(
                        "dishwasher from 02-10 20:00 every 7 d", EventTable.read(FitOrders.TABLES), rooms.outdoors())),
                1);
        FullTangKnife walnut = (FullTangKnife) FitOrders.knife(BuildFile.example());
        EventFit fit = JUDGE.fit(walnut, rooms, dishes, List.of());
        Advice first = fit.fit().advice().get(0);
        EventFit changed = JUDGE.fit((FullTangKnife) first.knife(), rooms, dishes, List.of());
        EventFit.Remedied remedied = fit.remedied().orElseThrow();
        assertEquals(changed.fit().verdict(), remedied.verdict());
        assertEquals(
                changed.fit().reasons().get(0).kind(), remedied.reasons().get(0).kind());
        assertTrue(first.isEnough() && remedied.verdict().compareTo(Verdict.CARE) > 0, "" + remedied.verdict());
    }

    @Test
    void withoutEventsNothingIsToldOfThem() {
        FullTangKnife walnut = (FullTangKnife) FitOrders.knife(BuildFile.example());
        assertTrue(EventFit.quiet(JUDGE.fit(walnut, FitOrders.steady(20, 0.5), List.of()))
                .remedied()
                .isEmpty());
    }
}
