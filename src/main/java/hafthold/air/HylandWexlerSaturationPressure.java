package hafthold.air;

import hafthold.quantity.Temperature;
import hafthold.source.PublishedModel;

/**
 * Saturation pressure over liquid water after Hyland and Wexler, as printed in the ASHRAE handbooks:
 *
 * <pre>
 * ln p = C8/T + C9 + C10 T + C11 T^2 + C12 T^3 + C13 ln T        p in Pa, T in K
 * </pre>
 *
 * <p>We depart from the print below 0 C: the handbook turns to ice there, we stay with water, because relative
 * humidity is reported over water at every temperature. Between -40 and 0 C that extrapolation lies within 1 % of Murphy and
 * Koop 2005. Outside the range the equation is still evaluated.
 */
@PublishedModel(
        source = "hyland-wexler-1983",
        locator = "equation for saturation over liquid water; ASHRAE Handbook of Fundamentals, chapter Psychrometrics",
        validity = "0 to 200 C; used from -60 C over undercooled water")
public final class HylandWexlerSaturationPressure implements SaturationPressure {
    private static final double C8 = -5.8002206e3;
    private static final double C9 = 1.3914993;
    private static final double C10 = -4.8640239e-2;
    private static final double C11 = 4.1764768e-5;
    private static final double C12 = -1.4452093e-8;
    private static final double C13 = 6.5459673;

    @Override
    public double pascals(double temperatureCelsius) {
        double t = temperatureCelsius + Temperature.ZERO_CELSIUS_KELVIN;
        return Math.exp(C8 / t + C9 + t * (C10 + t * (C11 + t * C12)) + C13 * Math.log(t));
    }
}
