package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.HeldAir;
import hafthold.knife.FullTangKnife;
import hafthold.knife.KnifeHistory;
import hafthold.knife.MeasuredStep;
import hafthold.knife.MeasuringPoint;
import hafthold.numeric.SampleQuantile;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.Cause;
import hafthold.simulate.Destination;
import hafthold.simulate.FitYear;
import hafthold.simulate.ReturnEngine;
import hafthold.simulate.ReturnSample;
import hafthold.simulate.Sampling;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A knife that has long settled stands, on any day, where {@code fit} has it on that day of the year that repeats. */
class ClaimAgreesWithFitTest {
    private static final Sampling SAMPLING = new Sampling(200, 1);
    private static final LocalDate DELIVERED = LocalDate.of(2024, 3, 1);
    private static final List<LocalDate> DAYS =
            List.of(LocalDate.of(2026, 1, 20), LocalDate.of(2026, 4, 20), LocalDate.of(2026, 8, 10));

    private final FullTangKnife knife = ClaimOrders.walnut(50);
    private final Destination home = ClaimOrders.home(0);
    private final ReturnEngine engine = new ReturnEngine(knife, home, history(), SAMPLING);

    private static KnifeHistory history() {
        return new KnifeHistory(
                DELIVERED,
                DELIVERED,
                Optional.empty(),
                DAYS.stream()
                        .map(day ->
                                new MeasuredStep(day, MeasuringPoint.EDGES, new Length(0), Length.ofMillimetres(0.05)))
                        .toList(),
                List.of());
    }

    @Test
    void stepsAndTheirSpreadAreThoseOfFit() {
        FitYear year = new BondedEngine(knife, home, SAMPLING).year();
        double[] nominal = engine.nominal();
        List<ReturnSample> samples = engine.samples(Cause.WEATHER, Optional.empty());
        for (int i = 0; i < DAYS.size(); i++) {
            int step = i;
            Band fit = year.days().edge().get(DAYS.get(i).getDayOfYear() - 1);
            assertEquals(fit.value(), nominal[i], 1.5e-6, "on " + DAYS.get(i));
            SampleQuantile claim = new SampleQuantile(
                    samples.stream().mapToDouble(sample -> sample.steps()[step]).toArray());
            double width = claim.at(0.9) - claim.at(0.1);
            assertEquals(fit.high() - fit.low(), width, 0.25 * width, "on " + DAYS.get(i));
        }
    }

    /** Back in the air it was made in it is flush; in other held air it stands where a year of that air brings it. */
    @Test
    void atRestItStandsWhereAYearOfThatAirBringsIt() {
        ReturnSample value = engine.samples(Cause.WEATHER, Optional.empty()).get(0);
        for (double humidity : new double[] {0.3, 0.7}) {
            double claim = engine.settled(value, new HeldAir(20, humidity))[0];
            FitYear fit =
                    new BondedEngine(knife, FitOrders.steady(20, humidity), Sampling.VALUE_ONLY).yearWithoutBands();
            Band edge = humidity < 0.5
                    ? fit.whole().edge().bonded().shy()
                    : fit.whole().edge().bonded().proud();
            assertEquals(humidity > 0.5, claim > 0);
            // One draw of the wood, so the same side and size, not the same figure.
            assertTrue(Math.abs(claim) > 0.4 * edge.value() && Math.abs(claim) < 2.5 * edge.value());
        }
    }
}
