package hafthold.transport;

import hafthold.air.AirSeries;
import hafthold.air.SaturationPressure;

/**
 * How a slab is brought near the year that repeats: the moisture that it must have deep inside, and how long it is to be
 * led in before it has forgotten the rest.
 */
final class LeadIn {
    /** e^-12 of a change is still felt after the lead-in: 6e-6. */
    private static final double FOLDS = 12;
    /** About so many samples stand for the year. */
    private static final int LOOKS = 96;

    private final AirSeries air;
    private final SaturationPressure saturation;
    private final int stride;

    LeadIn(AirSeries air, SaturationPressure saturation) {
        this.air = air;
        this.saturation = saturation;
        stride = air.size() / LOOKS | 1; // odd, so that it meets each time of day in turn
    }

    /**
     * Samples back from the end of the year until the slab has forgotten what was before, or the whole year.
     */
    int samples(Slab slab) {
        double folds = 0;
        int samples = 0;
        while (folds < FOLDS && samples < air.size()) {
            int i = air.size() - 1 - samples;
            int next = Math.min(air.size(), samples + stride);
            folds += (next - samples)
                    * air.stepSeconds()
                    / SettlingTime.eFoldingSeconds(
                            slab, air.temperatureCelsius(i), air.relativeHumidityFraction(i), saturation);
            samples = next;
        }
        return samples;
    }

    /**
     * Moisture deep in a slow bare slab. In a year that repeats no water passes any depth on balance, so the year's mean of
     * D_T psi is the same at all depths; at the surface, at rest with the air, it is known.
     */
    double deepMoisture(Slab slab) {
        double a = slab.diffusivity().moistureExponent();
        double weight = 0;
        double sum = 0;
        for (int i = 0; i < air.size(); i += stride) {
            double t = air.temperatureCelsius(i);
            double moisture = slab.isotherm().moistureFraction(air.relativeHumidityFraction(i), t);
            double speed = slab.diffusivity().temperatureFactor(t);
            weight += speed;
            sum += speed * (a == 0 ? moisture : Math.expm1(a * moisture) / a);
        }
        double psi = sum / weight;
        return a == 0 ? psi : Math.log1p(a * psi) / a;
    }
}
