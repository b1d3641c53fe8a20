package hafthold.material;

import hafthold.source.PublishedModel;

/**
 * Multilayer sorption isotherm of Guggenheim, Anderson and de Boer: M = Mm C K H / ((1 - KH)(1 - KH + C K H)), taken as
 * independent of temperature.
 *
 * @param monolayerFraction Mm, moisture of the first layer, kg/kg, positive
 * @param energyConstant C, dimensionless, positive
 * @param multilayerConstant K, dimensionless, in (0, 1)
 */
@PublishedModel(
        source = "van-den-berg-bruin-1981",
        locator = "GAB equation",
        validity = "0 to about 95 % relative humidity; used to 100 %")
public record GuggenheimAndersonDeBoerIsotherm(
        double monolayerFraction, double energyConstant, double multilayerConstant) implements SorptionIsotherm {

    /** Rejects constants outside their ranges. */
    public GuggenheimAndersonDeBoerIsotherm {
        if (!(monolayerFraction > 0) || !(energyConstant > 0) || !(multilayerConstant > 0 && multilayerConstant < 1)) {
            throw new IllegalArgumentException("GAB needs Mm > 0, C > 0, 0 < K < 1, got " + monolayerFraction + ", "
                    + energyConstant + ", " + multilayerConstant);
        }
    }

    @Override
    public double moistureFraction(double relativeHumidityFraction, double temperatureCelsius) {
        double z = multilayerConstant * relativeHumidityFraction;
        return monolayerFraction * energyConstant * z / ((1 - z) * (1 - z + energyConstant * z));
    }

    @Override
    public double waterActivity(double moistureFraction, double temperatureCelsius) {
        return moistureFraction <= 0 ? 0 : Math.min(1, root(moistureFraction) / multilayerConstant);
    }

    @Override
    public double waterActivitySlope(double moistureFraction, double temperatureCelsius) {
        double z = root(Math.max(0, moistureFraction));
        double c = energyConstant;
        double denominator = (1 - z) * (1 - z + c * z);
        double denominatorSlope = -(1 - z + c * z) + (1 - z) * (c - 1);
        double moistureByRoot =
                monolayerFraction * c * (denominator - z * denominatorSlope) / (denominator * denominator);
        return 1 / (moistureByRoot * multilayerConstant);
    }

    @Override
    public void waterActivity(double moistureFraction, double temperatureCelsius, LocalActivity local) {
        double z = root(Math.max(0, moistureFraction));
        double c = energyConstant;
        double denominator = (1 - z) * (1 - z + c * z);
        double denominatorSlope = c - 2 - 2 * (c - 1) * z;
        double numerator = 1 + (c - 1) * z * z;
        double unit = monolayerFraction * c / (denominator * denominator);
        double first = unit * numerator; // dM/dz
        double second = 2 * unit * ((c - 1) * z - numerator * denominatorSlope / denominator); // d2M/dz2
        double slope = 1 / (first * multilayerConstant);
        local.set(Math.min(1, z / multilayerConstant), slope, -second / (first * first) * slope);
    }

    /** z = KH: root in [0, 1) of M (c-1) z^2 - (M (c-2) - Mm c) z - M = 0, written so that nothing cancels. */
    private double root(double moisture) {
        double c = energyConstant;
        double quadratic = moisture * (c - 1);
        double linear = monolayerFraction * c - moisture * (c - 2);
        double discriminant = Math.sqrt(linear * linear + 4 * quadratic * moisture);
        return linear >= 0 ? 2 * moisture / (linear + discriminant) : (discriminant - linear) / (2 * quadratic);
    }
}
