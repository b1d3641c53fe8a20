package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.Setting;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Handle;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.ShrinkageSwelling;
import hafthold.material.WaterUptake;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.BondedEngine;
import hafthold.simulate.Conditions;
import hafthold.simulate.Destination;
import hafthold.simulate.FitYear;
import hafthold.simulate.HandleEngine;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Sampling;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.table.FinishTable;
import hafthold.table.LimitTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Bands, probabilities and drivers of whole years. */
class SampledYearTest {
    private static final TableSet TABLES = TableSet.builtIn();
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TABLES);
    private static final Judgement JUDGEMENT = new Judgement(LimitTable.read(TABLES));
    private static final Material WALNUT = LIBRARY.plain("walnut-black");

    @Test
    void valuesOnlyAreTheValuesOfTheBands() {
        HandleYear sampled = year(WALNUT, Sampling.USUAL);
        HandleYear value = year(WALNUT, Sampling.VALUE_ONLY);
        assertTrue(value.edge().bonded().shy().isExact());
        assertTrue(value.grounds().samples().isEmpty());
        assertEquals(Likelihood.NONE, JUDGEMENT.likelihood(value));
        assertEquals(
                value.edge().bonded().shy().value(),
                sampled.edge().bonded().shy().value(),
                0);
        assertEquals(100, sampled.grounds().samples().size());
        assertTrue(sampled.edge().bonded().shy().low()
                < sampled.edge().bonded().shy().high());
    }

    /** Bit for bit, whatever runs beside it and on however many threads. */
    @Test
    void aMaterialFaresTheSameWhateverElseRunsAndOnHoweverManyThreads()
            throws InterruptedException, ExecutionException {
        HandleYear alone = year(WALNUT, Sampling.USUAL);
        for (int threads : new int[] {1, 4}) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            try {
                HandleEngine engine = new HandleEngine(conditions(), Sampling.USUAL);
                List<HandleYear> years = pool.submit(
                                () -> Stream.of("teak", "walnut-black", "beech-european", "antler-reindeer")
                                        .parallel()
                                        .map(id -> engine.year(LIBRARY.plain(id), Cut.FLAT))
                                        .toList())
                        .get();
                assertEquals(alone, years.get(1), threads + " threads");
            } finally {
                pool.shutdown();
            }
        }
    }

    /** A figure that the workshop has measured (low = value = high) narrows the band. */
    @Test
    void bandsShrinkWhenTheMovementIsMeasured() {
        HandleYear before = year(WALNUT, Sampling.USUAL);
        HandleYear after = year(withMeasuredMovement(WALNUT), Sampling.USUAL);
        assertEquals(
                before.edge().bonded().shy().value(),
                after.edge().bonded().shy().value(),
                1e-12);
        assertTrue(
                width(after.edge().bonded().shy())
                        < width(before.edge().bonded().shy()),
                after.edge().bonded().shy() + " " + before.edge().bonded().shy());
        assertTrue(after.grounds().drivers().stream()
                .noneMatch(driver -> driver.input().equals("swelling")));
    }

    @Test
    void classesThatAllowMoreAreKeptMoreOften() {
        Likelihood likelihood = JUDGEMENT.likelihood(year(WALNUT, Sampling.USUAL));
        double last = 0;
        for (Likelihood.ClassShare share : likelihood.classes()) {
            assertTrue(share.keeps() >= last && share.keeps() <= 1);
            last = share.keeps();
        }
        double holds = likelihood.verdictHolds().orElseThrow();
        assertTrue(holds > 0 && holds <= 1);
    }

    /** Samples read between three stiffnesses: the knife's own band against one whose sections are all solved. */
    @Test
    void aBondedKnifeHasABandAProbabilityAndDrivers() {
        FullTangKnife knife = (FullTangKnife) FitOrders.fullTang("walnut-black", "flat", 110, 55, "");
        FitYear year = new BondedEngine(knife, FitOrders.swinging(20, 0.2, 0.5), new Sampling(40, 1)).year();
        Band edge = year.whole().edge().bonded().shy();
        assertTrue(edge.low() < edge.value() && edge.value() < edge.high(), "" + edge);
        assertEquals(40, JUDGEMENT.likelihood(year).samples());
        assertEquals(40, year.samples().size());
        assertTrue(year.drivers().stream().anyMatch(driver -> driver.input().equals("swelling")));
    }

    private static double width(Band band) {
        return band.high() - band.low();
    }

    private static Material withMeasuredMovement(Material wood) {
        WaterUptake water = wood.water().orElseThrow();
        ShrinkageSwelling swelling = (ShrinkageSwelling) water.swelling();
        Map<Axis, Figure> exact = new EnumMap<>(Axis.class);
        swelling.shrinkage()
                .forEach((axis, figure) -> exact.put(
                        axis, new Figure(Band.exact(figure.value()), Evidence.MEASURED, figure.sourceKey(), "")));
        return new Material(
                wood.id(),
                wood.name(),
                wood.family(),
                wood.evidence(),
                wood.usualCut(),
                wood.sheet(),
                Optional.of(new WaterUptake(
                        water.dryDensity(),
                        water.isotherm(),
                        water.sorptionFactor(),
                        water.diffusivity(),
                        water.diffusivityReference(),
                        water.alongRatio(),
                        water.acrossRatio(),
                        new ShrinkageSwelling(exact, swelling.fibreSaturationFraction()))),
                wood.thermalExpansionPerKelvin(),
                wood.findings());
    }

    private static HandleYear year(Material material, Sampling sampling) {
        return new HandleEngine(conditions(), sampling).year(material, Cut.FLAT);
    }

    private static Conditions conditions() {
        return new Conditions(
                new Handle(
                        Length.ofMillimetres(110),
                        Length.ofMillimetres(26),
                        Length.ofMillimetres(8),
                        Length.ofMillimetres(6),
                        Length.ofMillimetres(0),
                        Length.ofMillimetres(70)),
                new Temperature(20),
                new RelativeHumidity(0.5),
                FinishTable.read(TABLES).find("bare"),
                Destination.of(
                        PlaceTable.read(TABLES).find("oslo"),
                        Setting.find("heated-home").orElseThrow()),
                LIBRARY.plain("steel-stainless-martensitic")
                        .thermalExpansionPerKelvin()
                        .get(Axis.ALONG),
                LIBRARY.plain("brass-free-cutting").thermalExpansionPerKelvin().get(Axis.ALONG),
                Optional.empty());
    }
}
