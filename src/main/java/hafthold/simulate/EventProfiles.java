package hafthold.simulate;

import hafthold.numeric.GradedGrid;
import hafthold.simulate.EventWindow.Sample;
import hafthold.transport.coupled.CoupledProfile;
import java.util.Arrays;

/**
 * Profiles of heat and water in a scale, read as layers and samples and built from layers again: how two solvers hand a
 * scale over to each other.
 *
 * @param scale whose profiles they are
 */
record EventProfiles(EventScale scale) {
    /** Layers that hand a profile over; a multiple of those that strain is worked out in. */
    static final int FINE_LAYERS = 5 * LayerMoisture.LAYERS;

    private static final int READINGS_A_LAYER = 4;

    /** A profile as a sample, so many seconds after the start of the event, in air of this temperature and humidity. */
    Sample sample(double seconds, double celsius, double humidity, CoupledProfile profile) {
        GradedGrid grid = profile.grid();
        double warmth = 0;
        for (int i = 0; i + 1 < grid.size(); i++) {
            warmth += 0.5
                    * (profile.temperatureCelsius(i) + profile.temperatureCelsius(i + 1))
                    * (grid.position(i + 1) - grid.position(i))
                    / grid.thickness();
        }
        return new Sample(
                seconds,
                celsius,
                humidity,
                warmth,
                profile.temperatureCelsius(grid.size() - 1),
                profile.temperatureCelsius(0),
                scale.scale().meanFraction(profile),
                scale.scale().surfaceFraction(profile),
                profile.waterKilogramsPerCubicMetre(0) / density(),
                layers(profile, LayerMoisture.LAYERS));
    }

    /** Mean moisture content of so many equal layers from the tang outwards, kg/kg. */
    double[] layers(CoupledProfile profile, int count) {
        double thickness = scale.slab().thicknessMetres();
        double[] means = new double[count];
        int readings = READINGS_A_LAYER * FINE_LAYERS / count;
        for (int k = 0; k < count; k++) {
            for (int j = 0; j < readings; j++) {
                means[k] += profile.waterAtKilogramsPerCubicMetre(thickness * (k + (j + 0.5) / readings) / count)
                        / density()
                        / readings;
            }
        }
        return means;
    }

    /**
     * Straight lines from middle to middle of the layers, and to the face.
     *
     * @param moisture of {@link #FINE_LAYERS} layers, kg/kg
     * @param face moisture content of the face, kg/kg
     */
    CoupledProfile profile(double[] moisture, double face, double celsius) {
        GradedGrid grid = scale.scale().evenly(0, celsius).grid();
        double[] water = new double[grid.size()];
        double[] temperature = new double[grid.size()];
        Arrays.fill(temperature, celsius);
        for (int i = 0; i < water.length; i++) {
            double place = grid.position(i) / grid.thickness() * FINE_LAYERS - 0.5;
            water[i] = density() * between(moisture, face, place);
        }
        return new CoupledProfile(grid, water, temperature);
    }

    private static double between(double[] moisture, double face, double place) {
        if (place <= 0) {
            return moisture[0];
        }
        int outermost = FINE_LAYERS - 1;
        if (place >= outermost) {
            return moisture[outermost] + 2 * (place - outermost) * (face - moisture[outermost]);
        }
        int below = (int) place;
        return moisture[below] + (place - below) * (moisture[below + 1] - moisture[below]);
    }

    private double density() {
        return scale.slab().dryDensityKilogramsPerCubicMetre();
    }
}
