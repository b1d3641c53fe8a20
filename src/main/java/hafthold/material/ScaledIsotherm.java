package hafthold.material;

/**
 * An isotherm with every moisture content multiplied by one factor: species above or below the handbook curve, resins
 * that fill the cell wall.
 *
 * @param base isotherm to scale
 * @param factor positive
 */
public record ScaledIsotherm(SorptionIsotherm base, double factor) implements SorptionIsotherm {

    /** Rejects factors that are not positive. */
    public ScaledIsotherm {
        if (!(factor > 0)) {
            throw new IllegalArgumentException("a sorption factor must be positive, got " + factor);
        }
    }

    @Override
    public double moistureFraction(double relativeHumidityFraction, double temperatureCelsius) {
        return factor * base.moistureFraction(relativeHumidityFraction, temperatureCelsius);
    }

    @Override
    public double waterActivity(double moistureFraction, double temperatureCelsius) {
        return base.waterActivity(moistureFraction / factor, temperatureCelsius);
    }

    @Override
    public double waterActivitySlope(double moistureFraction, double temperatureCelsius) {
        return base.waterActivitySlope(moistureFraction / factor, temperatureCelsius) / factor;
    }

    @Override
    public void waterActivity(double moistureFraction, double temperatureCelsius, LocalActivity local) {
        base.waterActivity(moistureFraction / factor, temperatureCelsius, local);
        local.set(local.value(), local.slope() / factor, local.curvature() / (factor * factor));
    }
}
