package hafthold.transport;

import hafthold.air.SaturationPressure;
import hafthold.source.PublishedModel;

/**
 * How long a slab takes to forget: the e-folding time of its slowest mode, h^2/(D beta^2) with beta the first root of beta
 * tan(beta) = L, L = h k/D, k = p_sat (dphi/dM)/(R rho0); without film it is 4 h^2/(pi^2 D).
 *
 * <p>D and the slope of the isotherm are taken at rest with one air; D changes with moisture, so this is a guide, not a
 * date. After one such time 37 %, after three 5 % of a change is still to come.
 */
@PublishedModel(
        source = "crank-1975",
        locator = "section 4.3.6, equations 4.50 to 4.53",
        validity = "constant D and straight isotherm over the change")
public final class SettlingTime {
    private static final int NEWTON_ROUNDS = 60;
    private static final double ROOT_TOLERANCE = 1e-14;

    private SettlingTime() {}

    /**
     * e-folding time in seconds.
     *
     * @param slab the scale
     * @param temperatureCelsius air temperature in degrees Celsius
     * @param relativeHumidityFraction relative humidity, 0 to 1
     * @param saturation saturation pressure
     */
    public static double eFoldingSeconds(
            Slab slab, double temperatureCelsius, double relativeHumidityFraction, SaturationPressure saturation) {
        double moisture = slab.isotherm().moistureFraction(relativeHumidityFraction, temperatureCelsius);
        double diffusivity = slab.diffusivity().squareMetresPerSecond(moisture, temperatureCelsius);
        double exchange = saturation.pascals(temperatureCelsius)
                * slab.isotherm().waterActivitySlope(moisture, temperatureCelsius)
                / (slab.surfaceResistanceSquareMetreSecondPascalsPerKilogram()
                        * slab.dryDensityKilogramsPerCubicMetre());
        double h = slab.thicknessMetres();
        double beta = firstRoot(h * exchange / diffusivity);
        return h * h / (diffusivity * beta * beta);
    }

    /**
     * First root of beta tan(beta) = L, in (0, pi/2).
     *
     * @param biot L, positive
     */
    static double firstRoot(double biot) {
        double low = 0;
        double high = 0.5 * Math.PI;
        double beta = Math.sqrt(biot / (1 + 4 * biot / (Math.PI * Math.PI)));
        for (int i = 0; i < NEWTON_ROUNDS; i++) {
            double value = beta * Math.sin(beta) - biot * Math.cos(beta);
            if (value < 0) {
                low = beta;
            } else {
                high = beta;
            }
            double next = beta - value / ((1 + biot) * Math.sin(beta) + beta * Math.cos(beta));
            if (Math.abs(next - beta) <= ROOT_TOLERANCE) {
                return next;
            }
            beta = next > low && next < high ? next : 0.5 * (low + high);
        }
        return beta;
    }
}
