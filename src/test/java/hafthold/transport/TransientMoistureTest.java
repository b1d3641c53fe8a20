package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import org.junit.jupiter.api.Test;

class TransientMoistureTest {
    private static final Slab SLAB = Rack.hardwood(6e-3, 0);

    @Test
    void aSlabAtRestWithSteadyAirStaysAtRest() {
        double rest = SLAB.isotherm().moistureFraction(0.5, Sheet.CELSIUS);
        MoistureHistory history = TransientMoisture.from(SLAB, rest, Sheet.constantAir(0.5, 3600, 100));
        assertEquals(rest, history.meanFraction(99), 1e-9);
        assertEquals(rest, history.surfaceFraction(99), 1e-9);
    }

    @Test
    void theStartIsTheFirstSampleAndEverySampleIsKept() {
        MoistureHistory history = TransientMoisture.from(SLAB, 0.08, Sheet.constantAir(0.8, 3600, 25));
        assertEquals(25, history.size());
        assertEquals(3600, history.stepSeconds());
        assertEquals(0.08, history.meanFraction(0), 1e-15);
        assertTrue(history.surfaceFraction(24) > history.backFraction(24));
        assertTrue(history.waterBalanceResidual() < 1e-12);
    }

    @Test
    void anEventTakesOverFromTheLayersOfAYear() {
        AirSeries air = RoughYear.hourly(11);
        MoistureHistory year = PeriodicMoisture.of(SLAB, air, 12).history();
        int start = 4000;
        int hours = 240;
        double[] layers = new double[12];
        for (int i = 0; i < layers.length; i++) {
            layers[i] = year.layerFraction(i, start);
        }
        double[] temperature = new double[hours];
        double[] humidity = new double[hours];
        for (int i = 0; i < hours; i++) {
            temperature[i] = air.temperatureCelsius(start + i);
            humidity[i] = air.relativeHumidityFraction(start + i);
        }
        MoistureHistory event = TransientMoisture.from(SLAB, layers, new AirSeries(3600, temperature, humidity), 12);
        assertEquals(year.meanFraction(start), event.meanFraction(0), 1e-3);
        assertEquals(year.meanFraction(start + hours - 1), event.meanFraction(hours - 1), 3e-4);
    }

    @Test
    void aSoakBringsTheSurfaceToSaturationAtOnce() {
        Slab wet = new Slab(
                SLAB.thicknessMetres(),
                SLAB.dryDensityKilogramsPerCubicMetre(),
                SLAB.isotherm(),
                SLAB.diffusivity(),
                1e3);
        MoistureHistory soak = TransientMoisture.from(wet, 0.08, Sheet.constantAir(1, 60, 61));
        double saturated = SLAB.isotherm().moistureFraction(1, Sheet.CELSIUS);
        assertEquals(saturated, soak.surfaceFraction(1), 5e-3);
        assertTrue(soak.surfaceFraction(60) <= saturated + 1e-5);
        assertEquals(0.08, soak.backFraction(60), 1e-5);
    }

    @Test
    void startsAndAirThatCannotBeAreRefused() {
        AirSeries air = Sheet.constantAir(0.5, 3600, 3);
        assertThrows(IllegalArgumentException.class, () -> TransientMoisture.from(SLAB, -0.01, air));
        assertThrows(IllegalArgumentException.class, () -> TransientMoisture.from(SLAB, Double.NaN, air));
        assertThrows(IllegalArgumentException.class, () -> TransientMoisture.from(SLAB, new double[0], air, 0));
        AirSeries one = Sheet.constantAir(0.5, 3600, 1);
        assertThrows(IllegalArgumentException.class, () -> TransientMoisture.from(SLAB, 0.1, one));
    }
}
