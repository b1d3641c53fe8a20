package hafthold.transport;

import hafthold.quantity.Temperature;
import hafthold.source.PublishedModel;

/**
 * Liquid water that a face takes up by its pores: mass per area A sqrt(t), and A with temperature as the square root of
 * surface tension over viscosity,
 *
 * <pre>
 * A(T) = A(20 C) sqrt[ (sigma/mu)(T) / (sigma/mu)(20 C) ]
 * </pre>
 *
 * <p>Surface tension sigma = 0.2358 (1 - T/647.096)^1.256 [1 - 0.625 (1 - T/647.096)] N/m and viscosity
 * mu = 2.414e-5 x 10^(247.8/(T - 140)) Pa s, T in kelvin, both from memory.
 *
 * @param coefficientAt20Celsius A at 20 C, kg/(m2 s^0.5), positive
 */
@PublishedModel(
        source = "washburn-1921",
        locator =
                "penetration of a capillary: length squared in proportion to sigma t/(2 mu); A sqrt(t) as in ISO 15148",
        validity = "before the water has gone through; 0 to 100 C")
public record CapillaryUptake(double coefficientAt20Celsius) {
    private static final double ROOM_CELSIUS = 20;
    private static final double CRITICAL_KELVIN = 647.096;

    /** Rejects what takes up nothing. */
    public CapillaryUptake {
        if (!(coefficientAt20Celsius > 0)) {
            throw new IllegalArgumentException(
                    "water uptake needs a positive coefficient, got " + coefficientAt20Celsius);
        }
    }

    /** A at a temperature in degrees Celsius, kg/(m2 s^0.5). */
    public double coefficient(double celsius) {
        return coefficientAt20Celsius * Math.sqrt(drive(celsius) / drive(ROOM_CELSIUS));
    }

    /** What a face has taken up after a time in seconds under water of one temperature, kg/m2. */
    public double kilogramsPerSquareMetre(double celsius, double seconds) {
        return coefficient(celsius) * Math.sqrt(seconds);
    }

    private static double drive(double celsius) {
        double kelvin = celsius + Temperature.ZERO_CELSIUS_KELVIN;
        double below = 1 - kelvin / CRITICAL_KELVIN;
        double tension = 0.2358 * Math.pow(below, 1.256) * (1 - 0.625 * below);
        double viscosity = 2.414e-5 * Math.pow(10, 247.8 / (kelvin - 140));
        return tension / viscosity;
    }
}
