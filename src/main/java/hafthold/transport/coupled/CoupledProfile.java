package hafthold.transport.coupled;

import hafthold.numeric.GradedGrid;
import java.util.Arrays;

/** Water content and temperature at the points of a grid, immutable; between points on cubics. */
public final class CoupledProfile {
    private final GradedGrid grid;
    private final double[] water;
    private final double[] temperature;

    /**
     * Copies two columns, one number a grid point.
     *
     * @param grid points from back to front
     * @param waterKilogramsPerCubicMetre water content, kg/m3, zero or more
     * @param temperatureCelsius temperature, degrees Celsius
     */
    public CoupledProfile(GradedGrid grid, double[] waterKilogramsPerCubicMetre, double[] temperatureCelsius) {
        if (waterKilogramsPerCubicMetre.length != grid.size() || temperatureCelsius.length != grid.size()) {
            throw new IllegalArgumentException("a profile needs a water content and a temperature for each of "
                    + grid.size() + " points, got " + waterKilogramsPerCubicMetre.length + " and "
                    + temperatureCelsius.length);
        }
        this.grid = grid;
        water = waterKilogramsPerCubicMetre.clone();
        temperature = temperatureCelsius.clone();
    }

    /** The same water content and temperature at every depth. */
    public static CoupledProfile even(GradedGrid grid, double waterKilogramsPerCubicMetre, double temperatureCelsius) {
        double[] water = new double[grid.size()];
        double[] temperature = new double[grid.size()];
        Arrays.fill(water, waterKilogramsPerCubicMetre);
        Arrays.fill(temperature, temperatureCelsius);
        return new CoupledProfile(grid, water, temperature);
    }

    /** The points. */
    public GradedGrid grid() {
        return grid;
    }

    /** Water content at a grid point, kg/m3. */
    public double waterKilogramsPerCubicMetre(int point) {
        return water[point];
    }

    /** Temperature at a grid point, degrees Celsius. */
    public double temperatureCelsius(int point) {
        return temperature[point];
    }

    /** Water content at a place in metres from the back, kg/m3. */
    public double waterAtKilogramsPerCubicMetre(double metres) {
        return at(water, metres);
    }

    /** Temperature at a place in metres from the back, degrees Celsius. */
    public double temperatureAtCelsius(double metres) {
        return at(temperature, metres);
    }

    /** Mean water content over the thickness, kg/m3, as the solver counts it. */
    public double meanWaterKilogramsPerCubicMetre() {
        double sum = 0;
        for (int i = 0; i + 1 < water.length; i++) {
            sum += 0.5 * (water[i] + water[i + 1]) * (grid.position(i + 1) - grid.position(i));
        }
        return sum / grid.thickness();
    }

    double[] water() {
        return water.clone();
    }

    double[] temperature() {
        return temperature.clone();
    }

    private double at(double[] value, double metres) {
        if (!(metres >= 0 && metres <= grid.thickness())) {
            throw new IllegalArgumentException(
                    "the slab reaches from 0 to " + grid.thickness() + " m, got " + metres + " m");
        }
        int first = 0;
        while (first + 4 < value.length && grid.position(first + 2) < metres) {
            first++;
        }
        int count = Math.min(4, value.length);
        double sum = 0;
        for (int j = first; j < first + count; j++) {
            double weight = value[j];
            for (int k = first; k < first + count; k++) {
                if (k != j) {
                    weight *= (metres - grid.position(k)) / (grid.position(j) - grid.position(k));
                }
            }
            sum += weight;
        }
        return sum;
    }
}
