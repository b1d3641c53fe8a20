package hafthold.transport.coupled;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.SaturationPressure;
import hafthold.material.HailwoodHorrobinIsotherm;
import hafthold.material.MoistureDiffusivity;
import hafthold.transport.MoistureHistory;
import hafthold.transport.Slab;
import hafthold.transport.StillAirFilm;
import hafthold.transport.TransientMoisture;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** When the heat of a walnut-like scale matters, and when the slab at the temperature of its air is enough. */
class WarmScaleTest {
    private static final double HOUR = 3600;
    private static final double DENSITY = 550;
    private static final Slab SLAB = new Slab(
            0.007,
            DENSITY,
            new HailwoodHorrobinIsotherm(),
            new MoistureDiffusivity(1.6e-11, 12, 38_500, 20),
            StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM);
    private static final WarmScale SCALE = new WarmScale(
            SLAB, new WoodHandbookConductivity(DENSITY), 1237, WarmScale.STEEL_JOULES_PER_CUBIC_METRE_KELVIN * 0.002);
    private static final double START = SLAB.isotherm().moistureFraction(0.5, 20);

    @Test
    void withoutHeatItIsTheIsothermalSlab() {
        SaturationPressure saturation = new HylandWexlerSaturationPressure();
        AirSeries air = constant(20, 0.95, 25);
        PorousMaterial wood = new PorousMaterial(
                new WoodStorage(SLAB.isotherm(), DENSITY),
                VapourPermeability.NONE,
                LiquidConductivity.NONE,
                (w, t) -> SLAB.diffusivity().squareMetresPerSecond(w / DENSITY, t),
                (w, t) -> 0.15,
                new HeatCapacity(DENSITY * 1237, 0));
        OpenFace face = new OpenFace(
                SLAB.surfaceResistanceSquareMetreSecondPascalsPerKilogram(), 1e6, Surroundings.of(air, saturation));
        CoupledSlab slab = new CoupledSlab(wood, SealedFace.BARE, face, saturation, 0, Sources.NONE);
        CoupledHistory coupled =
                CoupledSolution.through(slab, SCALE.evenly(START, 20), new Accuracy(0.005, 0.01), 6 * HOUR, 24 * HOUR);
        MoistureHistory isothermal = TransientMoisture.from(SLAB, START, air);
        assertAll(
                () -> assertEquals(
                        isothermal.meanFraction(6),
                        SCALE.meanFraction(coupled.profiles().get(0)),
                        1e-4),
                () -> assertEquals(isothermal.meanFraction(24), SCALE.meanFraction(coupled.last()), 1e-4),
                () -> assertEquals(isothermal.surfaceFraction(24), SCALE.surfaceFraction(coupled.last()), 1e-3));
    }

    /** Four months of a heated room, invented: 20 to 24 C, 25 to 60 %, with a daily swing. */
    @Test
    void aSeasonIndoorsNeedsNoHeat() {
        int hours = 24 * 120;
        double[] temperature = new double[hours + 1];
        double[] humidity = new double[hours + 1];
        for (int i = 0; i <= hours; i++) {
            double day = Math.sin(2 * Math.PI * i / 24);
            double season = Math.sin(Math.PI * i / hours);
            temperature[i] = 21 + 2 * season + day;
            humidity[i] = 0.3 + 0.25 * season - 0.05 * day;
        }
        AirSeries air = new AirSeries(HOUR, temperature, humidity);
        double start = SLAB.isotherm().moistureFraction(humidity[0], temperature[0]);
        double[] times = new double[hours / 6];
        Arrays.setAll(times, i -> 6 * HOUR * (i + 1));
        CoupledHistory coupled = SCALE.inAir(SCALE.evenly(start, temperature[0]), air, times);
        MoistureHistory isothermal = TransientMoisture.from(SLAB, start, air);
        double largest = 0;
        double sum = 0;
        for (int i = 0; i < times.length; i++) {
            double apart = SCALE.meanFraction(coupled.profiles().get(i)) - isothermal.meanFraction(6 * (i + 1));
            largest = Math.max(largest, Math.abs(apart));
            sum += apart;
        }
        double mean = Math.abs(sum / times.length);
        double apart = largest;
        assertAll(
                () -> assertTrue(apart < 1e-3, () -> "largest " + apart),
                () -> assertTrue(mean < 2e-4, () -> "on average " + mean),
                () -> assertTrue(coupled.waterBalanceResidual() < 1e-10),
                () -> assertTrue(coupled.heatBalanceResidual() < 1e-10));
    }

    /** The latent heat of the water taken up warms the face and slows it: half a point in six hours of damp. */
    @Test
    void aShortDampSpellTakesUpHalfAPointLess() {
        AirSeries air = constant(20, 0.95, 7);
        CoupledHistory coupled = SCALE.inAir(SCALE.evenly(START, 20), air, 6 * HOUR);
        double less = TransientMoisture.from(SLAB, START, air).meanFraction(6) - SCALE.meanFraction(coupled.last());
        double face = coupled.last().temperatureCelsius(coupled.last().grid().size() - 1);
        assertAll(
                () -> assertTrue(less > 0.003 && less < 0.007, () -> "less by " + less),
                () -> assertTrue(face > 20.3 && face < 21.5, () -> "face at " + face));
    }

    /** Warm damp air on a cold scale condenses; what the wood cannot take runs off, and the face never passes saturation. */
    @Test
    void aColdScaleInWarmDampAirIsWetNotFlooded() {
        AirSeries air = constant(40, 0.95, 2);
        CoupledHistory coupled = SCALE.inAir(SCALE.evenly(START, 5), air, 120, 300, 600, HOUR);
        for (CoupledProfile profile : coupled.profiles()) {
            double t = profile.temperatureCelsius(profile.grid().size() - 1);
            assertTrue(SCALE.surfaceFraction(profile) <= SLAB.isotherm().moistureFraction(1, t) + 0.003);
        }
    }

    /** A bare scale in the dishwasher: 55 C for 30 min and 65 C for 10 min wet, then an hour of cooling in damp air. */
    @Test
    void aDishwasherWetsTheFaceAndHardlyTheBack() {
        CoupledProfile dry = SCALE.evenly(START, 20);
        CoupledHistory wash = SCALE.underWater(dry, bareWater(55), 1800);
        CoupledHistory rinse = SCALE.underWater(wash.last(), bareWater(65), 600);
        double[] temperature = new double[13];
        double[] humidity = new double[13];
        Arrays.setAll(temperature, i -> 65 - 45 * i / 12.0);
        Arrays.fill(humidity, 1);
        CoupledHistory cooling = SCALE.inAir(rinse.last(), new AirSeries(300, temperature, humidity), HOUR);
        CoupledProfile wet = rinse.last();
        double saturated = SLAB.isotherm().moistureFraction(1, 65);
        assertAll(
                () -> assertEquals(saturated, SCALE.surfaceFraction(wet), 0.01),
                () -> assertEquals(START, wet.waterKilogramsPerCubicMetre(0) / DENSITY, 0.003),
                () -> assertTrue(wet.temperatureCelsius(0) > 55),
                () -> assertTrue(SCALE.meanFraction(cooling.last()) < SCALE.meanFraction(wet)));
    }

    /** Wood Handbook chapter 4, from memory: about 0.15 W/(m K) across the grain for G 0.55 at 6 % moisture. */
    @Test
    void conductivityOfAHardwoodIsOfTheHandbooksSize() {
        assertEquals(0.139, new WoodHandbookConductivity(550).wattsPerMetreKelvin(0.06 * 550, 24), 0.005);
    }

    private static WetFace bareWater(double celsius) {
        return new WetFace(
                WetFace.BARE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM,
                WetFace.SPRAY_HEAT_TRANSFER_WATTS_PER_SQUARE_METRE_KELVIN,
                celsius);
    }

    private static AirSeries constant(double celsius, double humidityFraction, int samples) {
        double[] temperature = new double[samples];
        double[] humidity = new double[samples];
        Arrays.fill(temperature, celsius);
        Arrays.fill(humidity, humidityFraction);
        return new AirSeries(HOUR, temperature, humidity);
    }
}
