package hafthold.simulate;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.air.HeldAir;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.Outdoors;
import hafthold.air.SeasonalSine;
import hafthold.knife.BenchStock;
import hafthold.knife.Blank;
import hafthold.knife.Handle;
import hafthold.knife.UnfitBuildException;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.quantity.Length;
import hafthold.quantity.MoistureContent;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.table.FinishTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import hafthold.table.UsualBuild;
import hafthold.transport.SettlingTime;
import hafthold.transport.Slab;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Stock that was read today, and scales that lie glued before they are sanded. */
class BlankYearsTest {
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TableSet.builtIn());
    private static final Material WALNUT = LIBRARY.plain("walnut-black");
    private static final Temperature ROOM = new Temperature(20);
    private static final AirSeries SEASONS = new SeasonalSine(20, 0.35, 0.72).year();
    private static final AirSeries EVEN = new HeldAir(20, 0.5).year();
    private static final int JULY = 195;
    private static final double HYGROMETER = 0.05;

    private static final Blank BLANK = new Blank(
            Length.ofMillimetres(25),
            Length.ofMillimetres(40),
            Length.ofMillimetres(130),
            new Blank.Open(true, true, true));

    /** Who reads what the workshop's year says anyway learns nothing new. */
    @Test
    void aReadingThatSaysTheSameChangesNothing() {
        BlankYear year = year(Optional.empty(), 0, SEASONS);
        double now = year.dailyMean().get(JULY);
        BlankYear read = year(Optional.of(now), 0, SEASONS);
        assertFalse(read.reading().orElseThrow().contradicts());
        for (int day = 0; day < 365; day++) {
            assertEquals(year.dailyMean().get(day), read.dailyMean().get(day), 2e-4, "day " + day);
        }
    }

    /**
     * A small change in even air fades as the slowest wave of a sheet with a film (Crank 1975, 4.3.6): between four and eight
     * weeks what is left falls by exp(-28 d / tau), to be met within 3 % as D hardly moves.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-0.003, 0.003})
    void aReadingIsForgottenAsASheetForgets(double more) {
        BlankYear year = year(Optional.empty(), 0, EVEN);
        double rest = year.dailyMean().get(JULY);
        BlankYear read = year(Optional.of(rest + more), 0, EVEN);
        Slab slab = PartSlab.blank(WALNUT, Cut.FLAT, BLANK).orElseThrow();
        double days = SettlingTime.eFoldingSeconds(slab, 20, 0.5, new HylandWexlerSaturationPressure()) / 86_400;
        double early = read.dailyMean().get(JULY + 10) - rest;
        double late = read.dailyMean().get(JULY + 30) - rest;
        assertEquals(Math.exp(-20 / days), late / early, 0.03);
        assertEquals(rest, read.dailyMean().get(JULY - 1), 1e-4);
    }

    @Test
    void theWeekOfTheReadingHoldsWhatWasRead() {
        BlankYear read = year(Optional.of(0.09), 0, SEASONS);
        BlankYear.Reading reading = read.reading().orElseThrow();
        BlankYear.Week week = read.weeks().get(BlankYear.weekOf(JULY));
        Hybrid.Part part = HandleEngine.partsOf(WALNUT, Cut.FLAT).get(0);
        FinishState sanded = read.sandedIn(BlankYear.weekOf(JULY), ROOM, ROOM);
        assertAll(
                () -> assertEquals(0.09, week.meanFraction(), 1e-6),
                () -> assertEquals(0.09, sanded.stockFraction(part, Doubt.NONE), 1e-6),
                () -> assertEquals(0.10, sanded.stockFraction(part, Doubt.alone(Input.STOCK, 1)), 1e-4),
                () -> assertEquals(0.09, sanded.stockFraction(part, Doubt.alone(Input.HYGROMETER, 1)), 1e-4),
                () -> assertEquals(0.09, sanded.stockFraction(part, Doubt.alone(Input.SORPTION, 1)), 1e-4),
                () -> assertTrue(reading.contradicts()),
                () -> assertEquals(0.136, reading.settledFraction(), 0.002),
                () -> assertTrue(reading.doubtFraction() > 0.015 && reading.doubtFraction() < 0.03));
    }

    /** Long after the reading the workshop's hygrometer is in doubt as it is without one. */
    @Test
    void theReadingsDoubtIsForgottenToo() {
        Hybrid.Part part = HandleEngine.partsOf(WALNUT, Cut.FLAT).get(0);
        FinishState read = year(Optional.of(0.09), 0, SEASONS).sandedIn(10, ROOM, ROOM);
        FinishState unread = year(Optional.empty(), 0, SEASONS).sandedIn(10, ROOM, ROOM);
        for (Input input : List.of(Input.HYGROMETER, Input.SORPTION, Input.STOCK, Input.DIFFUSIVITY)) {
            for (double position : new double[] {-1, 1}) {
                Doubt doubt = Doubt.alone(input, position);
                assertEquals(
                        unread.stockFraction(part, doubt),
                        read.stockFraction(part, doubt),
                        2e-3,
                        input + " " + position);
            }
        }
    }

    /** After long enough on its tang a scale holds what the air makes of it, whatever the blank held. */
    @Test
    void aGluedScaleGoesToItsOwnRest() {
        Hybrid.Part part = HandleEngine.partsOf(WALNUT, Cut.FLAT).get(0);
        double rest = year(Optional.empty(), 0, EVEN).dailyMean().get(JULY);
        int week = BlankYear.weekOf(JULY + 64);
        double left = Double.POSITIVE_INFINITY;
        for (int days : new int[] {1, 5, 20, 60}) {
            BlankYear year = new BlankYears(
                            stock(Optional.of(0.14), days), EVEN, HYGROMETER, JULY + 64 - days, Optional.of(order()))
                    .year(WALNUT, Cut.FLAT);
            FinishState state = year.sandedIn(week, ROOM, ROOM);
            double sanded = state.stockFraction(part, Doubt.NONE) - rest;
            assertTrue(sanded < left && sanded > -1e-4, days + " d: " + sanded);
            left = sanded;
            assertTrue(state.gluedIn().orElseThrow().stockFraction(part, Doubt.NONE) > rest + sanded);
        }
        assertEquals(0, left, 2e-4);
    }

    /**
     * Stock read 4.6 points below the workshop's year on the day it is sanded did not lie on that year three weeks before: a
     * drying blank forgets such a difference over weeks (Crank 1975, 4.3.6), and none grows out of nothing. Glue-up hence lies
     * as far off it, under the meter's doubt as well (common practice, no source: one meter, one error); of a point of the meter
     * 0.88 are left at 60 days, and 0.8 are asked for.
     */
    @ParameterizedTest
    @ValueSource(ints = {1, 21, 60})
    void whatWasGluedBeforeTheReadingLiesAsFarOffTheYear(int days) {
        Hybrid.Part part = HandleEngine.partsOf(WALNUT, Cut.FLAT).get(0);
        int week = BlankYear.weekOf(JULY);
        BlankYear read = year(Optional.of(0.09), days, SEASONS);
        List<Double> unread = year(Optional.empty(), 0, SEASONS).dailyMean();
        double off = 0.09 - unread.get(JULY);
        FinishState glued = read.sandedIn(week, ROOM, ROOM).gluedIn().orElseThrow();
        assertAll(
                () -> assertEquals(unread.get(JULY - days) + off, read.gluedFraction(week), 1e-3),
                () -> assertEquals(
                        0.01, glued.stockFraction(part, Doubt.alone(Input.STOCK, 1)) - read.gluedFraction(week), 2e-3));
    }

    /** Once it is glued after the reading, what the blank has become by then counts, and nothing is shifted. */
    @Test
    void whatIsGluedAfterTheReadingIsFollowedFromIt() {
        BlankYear read = year(Optional.of(0.09), 21, SEASONS);
        int week = BlankYear.weekOf(JULY + 60);
        double sum = 0;
        for (int day = 7 * week; day < 7 * week + 7; day++) {
            sum += read.dailyMean().get(day - 21);
        }
        assertEquals(sum / 7, read.gluedFraction(week), 1e-9);
    }

    /** Stress counts from glue-up, steps from final sanding: each as if the whole handle had been made at that moment. */
    @Test
    void stressCountsFromGlueUpAndStepsFromSanding() {
        HandleEngine engine = new HandleEngine(order(), new Sampling(30, 1));
        FinishState damp = held(0.13, Optional.empty());
        FinishState dry = held(0.08, Optional.empty());
        FinishState gluedDamp = held(0.08, Optional.of(damp));
        List<HandleYear> years = engine.years(WALNUT, Cut.FLAT, List.of(damp, dry, gluedDamp));
        HandleYear found = years.get(2);
        assertAll(
                () -> assertEquals(years.get(0).load(), found.load()),
                () -> assertEquals(years.get(1).edge(), found.edge()),
                () -> assertEquals(years.get(1).pins(), found.pins()),
                () -> assertTrue(years.get(0).load().orElseThrow().glueUse().value()
                        > years.get(1).load().orElseThrow().glueUse().value()));
    }

    private static FinishState held(double fraction, Optional<FinishState> glued) {
        return new FinishState() {
            @Override
            public Temperature temperature() {
                return ROOM;
            }

            @Override
            public double stockFraction(Hybrid.Part part, Doubt doubt) {
                return fraction;
            }

            @Override
            public Optional<FinishState> gluedIn() {
                return glued;
            }
        };
    }

    @Test
    void rejectsWhatNobodyWorks() {
        Executable wet = () -> stock(Optional.of(0.5), 0);
        Executable late = () -> stock(Optional.empty(), 200);
        assertThrows(UnfitBuildException.class, wet);
        assertThrows(UnfitBuildException.class, late);
    }

    private static BenchStock stock(Optional<Double> reading, int gluedDays) {
        return new BenchStock(BLANK, reading.map(MoistureContent::new), gluedDays);
    }

    private static BlankYear year(Optional<Double> reading, int gluedDays, AirSeries air) {
        return new BlankYears(stock(reading, gluedDays), air, HYGROMETER, JULY, Optional.of(order()))
                .year(WALNUT, Cut.FLAT);
    }

    private static Conditions order() {
        return new Conditions(
                new Handle(
                        Length.ofMillimetres(110),
                        Length.ofMillimetres(26),
                        Length.ofMillimetres(8),
                        Length.ofMillimetres(6),
                        Length.ofMillimetres(0),
                        Length.ofMillimetres(70)),
                ROOM,
                new RelativeHumidity(0.5),
                FinishTable.read(TableSet.builtIn()).find("bare"),
                Destination.recorded("home", "home", Outdoors.usual(), new SeasonalSine(20, 0.25, 0.55).year(), 0.03),
                LIBRARY.plain("steel-stainless-martensitic")
                        .thermalExpansionPerKelvin()
                        .get(Axis.ALONG),
                LIBRARY.plain("brass-free-cutting").thermalExpansionPerKelvin().get(Axis.ALONG),
                Optional.of(UsualBuild.bond(LIBRARY, Length.ofMillimetres(4))));
    }
}
